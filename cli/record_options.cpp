#include "cli/record_options.h"

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "cli/record_help.h"
#include "cli/version.h"
#include "joint/documents/printable.h"
#include "joint/nearest_word.h"
#include "joint/perimeter.h"
#include "joint/quoted_text.h"

namespace sheerlap {
namespace {

struct RecordWords {
  RecordCommand command;
  std::string_view name;
  std::string_view arguments;
};
constexpr std::array all_record_words{
    RecordWords{RecordCommand::Add, "add", "DB JOINT.toml --hull NUMBER"},
    RecordWords{RecordCommand::List, "list", "DB"},
    RecordWords{RecordCommand::Show, "show", "DB --hull NUMBER"},
    RecordWords{RecordCommand::Chart, "chart", "DB"}};

const std::vector<std::string_view> known_options{
    "--hull",  "--readings", "--litres", "--holes",   "--leak", "--out",
    "--units", "--json",     "--quiet",  "--version", "--help"};

/// The command line as words, before any of them is judged.
struct RawRecord {
  std::string record_word, command, file, joint;
  std::optional<std::string> hull, readings, litres, holes, out, unit;
  std::vector<std::string> leaks;
  bool json = false, quiet = false, help = false, version = false;
  std::vector<std::string> surplus;
};

Result<RawRecord> raw_record(std::vector<std::string> arguments) {
  RawRecord raw;
  CLI::App app;
  app.set_help_flag();
  app.allow_extras();
  app.add_option("record", raw.record_word);
  app.add_option("command", raw.command);
  app.add_option("file", raw.file);
  app.add_option("joint", raw.joint);
  app.add_option("--hull", raw.hull);
  app.add_option("--readings", raw.readings);
  app.add_option("--litres", raw.litres);
  app.add_option("--holes", raw.holes);
  app.add_option("--leak", raw.leaks)
      ->expected(1)
      ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
  app.add_option("--out", raw.out);
  app.add_option("--units", raw.unit);
  app.add_flag("--json", raw.json);
  app.add_flag("--quiet", raw.quiet);
  app.add_flag("-h,--help", raw.help);
  app.add_flag("--version", raw.version);
  std::reverse(arguments.begin(), arguments.end());  // the order its parser takes
  try {
    app.parse(arguments);
  } catch (const CLI::ArgumentMismatch& error) {
    const std::string message = error.what();
    return invalid_input("", fmt::format("{} takes one value, and only --leak may be "
                                         "given again: see sheerlap record --help",
                                         message.substr(0, message.find(':'))));
  } catch (const CLI::ParseError& error) {
    return invalid_input(
        "", fmt::format("an option without a value has one, or the like ({}): see "
                        "sheerlap record --help",
                        error.what()));
  }
  for (const std::string& word : app.remaining())
    if (word != "--") raw.surplus.push_back(word);
  return raw;
}

/// Judges the words one after the other and gathers what is wrong.
class RecordJudge {
 public:
  explicit RecordJudge(const RawRecord& raw) : raw_(raw) {}

  Result<RecordOptions> options() {
    judge_command();
    judge_surplus();
    options_.hull = whole("--hull", raw_.hull, 1, 999'999'999);
    options_.holes = whole("--holes", raw_.holes, 0, 100'000);
    judge_litres();
    judge_leaks();
    judge_unit();
    options_.readings = raw_.readings;
    options_.out = raw_.out;
    if (raw_.out && raw_.out->empty()) refuse("--out is empty: name a folder");
    options_.json = raw_.json;
    options_.quiet = raw_.quiet;
    if (command_) judge_needs();
    if (!errors_.empty()) return tl::unexpected(std::move(errors_));
    return options_;
  }

 private:
  void refuse(std::string message) {
    errors_.push_back({ErrorKind::InvalidInput, "", std::move(message)});
  }

  void judge_command() {
    std::vector<std::string_view> names;
    for (const RecordWords& words : all_record_words) {
      names.push_back(words.name);
      if (words.name == raw_.command) command_ = &words;
    }
    if (raw_.command.empty())
      return refuse(
          fmt::format("record needs a second word: {}", word_hint("", names)));
    if (command_ == nullptr)
      return refuse(fmt::format("unknown command record {}: {}",
                                printable(raw_.command),
                                word_hint(raw_.command, names)));
    options_.command = command_->command;
    options_.record = raw_.file;
    options_.joint = raw_.joint;
    const bool add = command_->command == RecordCommand::Add;
    if (raw_.file.empty() || (add && raw_.joint.empty()))
      refuse(fmt::format("record {0} needs its files: sheerlap record {0} {1}",
                         command_->name, command_->arguments));
    if (!add && !raw_.joint.empty()) surplus(raw_.joint);
  }

  void surplus(const std::string& word) {
    refuse(fmt::format("{} is an argument too many: see sheerlap record --help",
                       printable(word)));
  }

  void judge_surplus() {
    for (const std::string& word : raw_.surplus) {
      const bool is_option = word.size() > 1 && word[0] == '-';
      if (!is_option) {
        surplus(word);
      } else {
        refuse(fmt::format("unknown option {}: {}", printable(word),
                           word_hint(word, known_options)));
      }
    }
  }

  std::optional<std::int64_t> whole(const char* name,
                                    const std::optional<std::string>& text,
                                    std::int64_t least,
                                    std::int64_t most) {
    if (!text) return std::nullopt;
    std::int64_t value = 0;
    const char* end = text->data() + text->size();
    const auto [stop, error] = std::from_chars(text->data(), end, value);
    if (error == std::errc() && stop == end && value >= least && value <= most)
      return value;
    refuse(fmt::format("{} is {}: a whole number from {} to {}", name,
                       quoted_text(*text), least, most));
    return std::nullopt;
  }

  void judge_litres() {
    if (!raw_.litres) return;
    double value = 0;
    const char* end = raw_.litres->data() + raw_.litres->size();
    const auto [stop, error] = std::from_chars(raw_.litres->data(), end, value);
    if (error == std::errc() && stop == end && value >= 0 && value <= 1000)
      options_.litres = value;
    else
      refuse(fmt::format(
          "--litres is {}: a number from 0 to 1000, such as 2.15: is that in litres?",
          quoted_text(*raw_.litres)));
  }

  void judge_leaks() {
    for (const std::string& word : raw_.leaks) {
      const std::size_t colon = word.find(':');
      const std::string side = word.substr(0, colon);
      std::optional<SideName> name;
      for (const SideName known :
           {SideName::Starboard, SideName::Port, SideName::Transom})
        if (side == side_word(known)) name = known;
      if (name && colon != std::string::npos && colon + 1 < word.size())
        options_.leaks.push_back({*name, word.substr(colon + 1), word});
      else
        refuse(fmt::format("--leak is {}: SIDE:GIRTH, such as starboard:2310",
                           quoted_text(word)));
    }
  }

  void judge_unit() {
    if (!raw_.unit) return;
    if (*raw_.unit == "mm") options_.unit = LengthUnit::Millimetres;
    if (*raw_.unit == "in") options_.unit = LengthUnit::Inches;
    if (!options_.unit)
      refuse(fmt::format("--units {} is not known: mm or in", printable(*raw_.unit)));
  }

  void judge_needs() {
    const RecordCommand command = command_->command;
    const bool add = command == RecordCommand::Add;
    if ((add || command == RecordCommand::Show) && !raw_.hull)
      refuse(fmt::format("record {0} needs the boat's number: sheerlap record {0} {1}",
                         command_->name, command_->arguments));
    const bool figures =
        raw_.readings || raw_.litres || raw_.holes || !raw_.leaks.empty();
    if (add && !figures)
      refuse(
          "record add has nothing to add: --readings, --litres, --holes or --leak, one "
          "or more");
    if (!add && figures)
      refuse(
          "--readings, --litres, --holes and --leak are for record add: leave them "
          "out");
    if (command != RecordCommand::Chart && raw_.out)
      refuse("--out is for the files of record chart: leave it out");
    if (raw_.hull && !add && command != RecordCommand::Show)
      refuse("--hull is for record add and record show: leave it out");
  }

  const RawRecord& raw_;
  const RecordWords* command_ = nullptr;
  RecordOptions options_;
  Errors errors_;
};

}  // namespace

bool asks_for_record(const std::vector<std::string>& arguments) {
  static const std::vector<std::string> with_value{"--units", "--out",     "--paper",
                                                   "--hull",  "--leak",    "--litres",
                                                   "--holes", "--readings"};
  for (std::size_t i = 0; i < arguments.size(); ++i) {
    const std::string& word = arguments[i];
    if (word.empty() || word[0] != '-') return word == "record";
    if (std::find(with_value.begin(), with_value.end(), word) != with_value.end()) ++i;
  }
  return false;
}

Result<std::variant<RecordOptions, TextAsked>> parse_record_options(
    const std::vector<std::string>& arguments) {
  const auto raw = raw_record(arguments);
  if (!raw) return tl::unexpected(raw.error());
  if (raw->version) return TextAsked{version_text()};
  if (raw->help) return TextAsked{record_help_text()};
  auto options = RecordJudge(*raw).options();
  if (!options) return tl::unexpected(std::move(options.error()));
  return *options;
}

}  // namespace sheerlap
