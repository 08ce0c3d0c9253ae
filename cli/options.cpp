#include "cli/options.h"

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <string_view>

#include "cli/commands.h"
#include "cli/explain_option.h"
#include "cli/readings_option.h"
#include "cli/version.h"
#include "joint/documents/printable.h"
#include "joint/nearest_word.h"

namespace sheerlap {
namespace {

/// The command line as words, before any of them is judged.
struct RawOptions {
  std::string command, target, unit, paper;
  std::optional<std::string> out;
  ExplainOption explain;
  ReadingsWords readings;
  RawToleranceOptions tolerance;
  bool options = false;
  bool json = false, quiet = false, help = false, version = false;
  std::vector<std::string> surplus;  ///< unknown options and arguments too many
};

/// "--units" of a message that starts with it, as the parser's do.
std::string first_word(const std::string& message) {
  return message.substr(0, message.find(':'));
}

/// One flat set of options, so that they may stand anywhere.
Result<RawOptions> raw_options(std::vector<std::string> arguments) {
  RawOptions raw;
  raw.explain = take_explain(arguments);
  CLI::App app;
  app.set_help_flag();
  app.allow_extras();
  app.add_option("command", raw.command);
  app.add_option("target", raw.target);
  std::string out, readings, state;
  const CLI::Option* out_given = app.add_option("--out", out);
  const CLI::Option* readings_given = app.add_option("--readings", readings);
  const CLI::Option* state_given = app.add_option("--state", state);
  app.add_option("--units", raw.unit);
  app.add_option("--paper", raw.paper);
  app.add_option("--boats", raw.tolerance.boats);
  app.add_option("--seed", raw.tolerance.seed);
  app.add_option("--threads", raw.tolerance.threads);
  app.add_option("--record", raw.tolerance.record);
  app.add_flag("--options", raw.options);
  app.add_flag("--json", raw.json);
  app.add_flag("--quiet", raw.quiet);
  app.add_flag("-h,--help", raw.help);
  app.add_flag("--version", raw.version);
  std::reverse(arguments.begin(), arguments.end());  // the order its parser takes
  try {
    app.parse(arguments);
  } catch (const CLI::ArgumentMismatch& error) {
    return invalid_input("", fmt::format("{} takes one value, and is given once: see "
                                         "sheerlap --help",
                                         first_word(error.what())));
  } catch (const CLI::ParseError& error) {
    return invalid_input(
        "", fmt::format("an option without a value has one, or the like ({}): see "
                        "sheerlap --help",
                        error.what()));
  }
  if (out_given->count() > 0) raw.out = out;
  if (readings_given->count() > 0) raw.readings.file = readings;
  if (state_given->count() > 0) raw.readings.state = state;
  for (const std::string& word : app.remaining())
    if (word != "--") raw.surplus.push_back(word);
  return raw;
}

std::string hint_among(const std::vector<std::string>& known, std::string_view word) {
  return word_hint(word, {known.begin(), known.end()});
}

std::string command_hint(std::string_view word) {
  std::vector<std::string> names;
  for (const CommandWords& words : all_commands()) names.push_back(words.name);
  return hint_among(names, word);
}

void judge_surplus(const RawOptions& raw, Errors& errors) {
  static const std::vector<std::string> known{
      "--json",     "--units", "--paper", "--explain", "--options",
      "--readings", "--state", "--boats", "--seed",    "--threads",
      "--record",   "--quiet", "--out",   "--version", "--help"};
  for (const std::string& word : raw.surplus) {
    const bool is_option = word.size() > 1 && word[0] == '-';
    errors.push_back(
        {ErrorKind::InvalidInput, "",
         is_option ? fmt::format("unknown option {}: {}", printable(word),
                                 hint_among(known, word))
                   : fmt::format("{} is an argument too many: one file or folder at a "
                                 "time",
                                 printable(word))});
  }
}

std::optional<Command> judge_command(const RawOptions& raw, Errors& errors) {
  const auto refuse = [&](std::string message) {
    errors.push_back({ErrorKind::InvalidInput, "", std::move(message)});
  };
  if (raw.command.empty()) {
    refuse(fmt::format("no command is given: {}", command_hint("")));
    return std::nullopt;
  }
  for (const CommandWords& words : all_commands()) {
    if (words.name != raw.command) continue;
    if (raw.target.empty() && !raw.help)
      refuse(fmt::format("{0} needs its {1}: sheerlap {0} {1}", words.name,
                         words.argument));
    return words.command;
  }
  refuse(fmt::format("unknown command {}: {}", printable(raw.command),
                     command_hint(raw.command)));
  return std::nullopt;
}

std::optional<LengthUnit> judge_unit(const RawOptions& raw, Errors& errors) {
  if (raw.unit == "mm") return LengthUnit::Millimetres;
  if (raw.unit == "in") return LengthUnit::Inches;
  if (!raw.unit.empty())
    errors.push_back(
        {ErrorKind::InvalidInput, "",
         fmt::format("--units {} is not known: mm or in", printable(raw.unit))});
  return std::nullopt;
}

std::optional<Paper> judge_paper(const RawOptions& raw, Errors& errors) {
  if (raw.paper == "a4") return Paper::A4;
  if (raw.paper == "letter") return Paper::Letter;
  if (!raw.paper.empty())
    errors.push_back(
        {ErrorKind::InvalidInput, "",
         fmt::format("--paper {} is not known: a4 or letter", printable(raw.paper))});
  return std::nullopt;
}

/// What belongs to `job` alone.
void judge_job_options(const RawOptions& raw, Command command, Errors& errors) {
  if (command == Command::New && !raw.unit.empty())
    errors.push_back({ErrorKind::InvalidInput, "",
                      "--units is for what a joint file gives: new writes millimetres, "
                      "so leave it out and set units in the file"});
  if (command == Command::Job) return;
  if (raw.out && !raw.out->empty())
    errors.push_back({ErrorKind::InvalidInput, "",
                      "--out is for the documents of job: leave it out, or run job"});
  if (!raw.paper.empty())
    errors.push_back({ErrorKind::InvalidInput, "",
                      "--paper is for the sheets of job: leave it out, or run job"});
}

void judge_explain(const ExplainOption& explain, Command command, Errors& errors) {
  if (!explain.given) return;
  const auto refuse = [&](const char* message) {
    errors.push_back({ErrorKind::InvalidInput, "", message});
  };
  if (explain.times > 1)
    refuse("--explain is given once, alone or with one hole's mark: --explain S14");
  else if (command == Command::New)
    refuse(
        "--explain is for what is worked out: new works nothing out, so leave it out");
  else if (explain.mark && explain.mark->empty())
    refuse("--explain= is empty: name a hole, as --explain=S14, or leave the = out");
  else if (explain.mark && command != Command::Schedule &&
           command != Command::Strength && command != Command::Job)
    refuse(
        "--explain with a hole's mark is for schedule, strength and job: leave the "
        "mark "
        "out");
}

void judge_compare(const RawOptions& raw, Command command, Errors& errors) {
  if (!raw.options) return;
  const auto refuse = [&](const char* message) {
    errors.push_back({ErrorKind::InvalidInput, "", message});
  };
  if (command != Command::Strength)
    refuse("--options compares what strength works out: leave it out, or run strength");
  else if (raw.explain.given)
    refuse("--options and --explain do not go together: one at a time");
  else if (raw.readings.file)
    refuse("--options chooses for all boats and --readings is for one: one at a time");
}

Options options_of(const RawOptions& raw, Command command) {
  Options options;
  options.command = command;
  options.target = raw.target;
  options.out = raw.out;
  options.explain = raw.explain.given;
  options.explain_hole = raw.explain.mark;
  options.readings = raw.readings.file;
  options.compare = raw.options;
  options.json = raw.json;
  options.quiet = raw.quiet;
  return options;
}

}  // namespace

Result<std::variant<Options, TextAsked>> parse_options(
    const std::vector<std::string>& arguments) {
  const auto raw = raw_options(arguments);
  if (!raw) return tl::unexpected(raw.error());
  if (raw->version) return TextAsked{version_text()};
  if (raw->help && raw->command.empty()) return TextAsked{help_text()};
  Errors errors;
  const auto command = judge_command(*raw, errors);
  if (raw->help && command) return TextAsked{help_text(*command)};
  const auto unit = judge_unit(*raw, errors);
  const auto paper = judge_paper(*raw, errors);
  judge_surplus(*raw, errors);
  if (raw->out && raw->out->empty())
    errors.push_back({ErrorKind::InvalidInput, "", "--out is empty: name a folder"});
  if (command) judge_job_options(*raw, *command, errors);
  if (command) judge_explain(raw->explain, *command, errors);
  if (command) judge_compare(*raw, *command, errors);
  std::optional<ReadingState> state;
  if (command) state = judged_readings(raw->readings, *command, errors);
  ToleranceOptions tolerance;
  if (command) tolerance = judge_tolerance(raw->tolerance, *command, errors);
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  Options options = options_of(*raw, *command);
  options.unit = unit;
  options.state = state;
  options.paper = paper;
  options.tolerance = tolerance;
  return options;
}

}  // namespace sheerlap
