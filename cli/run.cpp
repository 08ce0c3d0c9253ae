#include "cli/run.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>
#include <variant>

#include "cli/boat_file.h"
#include "cli/joint_file.h"
#include "cli/new_joint.h"
#include "cli/opened_record.h"
#include "cli/options.h"
#include "cli/output.h"
#include "cli/progress_line.h"
#include "cli/record_options.h"
#include "cli/record_run.h"
#include "cli/report_date.h"
#include "cli/tolerance_run.h"
#include "cli/write_documents.h"
#include "joint/candidates.h"
#include "joint/documents/check_text.h"
#include "joint/documents/json_parts.h"
#include "joint/documents/options_json.h"
#include "joint/documents/printable.h"
#include "joint/documents/report.h"
#include "joint/documents/result_json.h"
#include "joint/documents/result_object.h"
#include "joint/documents/text_table.h"
#include "joint/job.h"
#include "joint/mark_ranges.h"
#include "joint/nearest_word.h"
#include "joint/records/record_charts.h"
#include "joint/sheets/sheets.h"
#include "joint/tolerance_job.h"

namespace sheerlap {
namespace {

/// Prints the last thing a run has to say.
int finish(const std::string& text, int status) {
  const auto printed = write_out(stdout, text);
  return printed ? status : report_errors(printed.error());
}

Parts parts_of(Command command) {
  Parts parts;
  parts.fit = command == Command::Fit;
  parts.adhesive = command == Command::Adhesive;
  parts.layout = command == Command::Layout;
  parts.schedule = command == Command::Schedule;
  parts.strength = command == Command::Strength;
  parts.order = command == Command::Order;
  return parts;
}

/// Whether the input is right for every command.
Result<Job> tried(Joint joint) {
  auto job = try_out(std::move(joint));
  if (!job) return job;
  if (Errors faults = tolerance_faults(job->joint); !faults.empty())
    return tl::unexpected(std::move(faults));
  return job;
}

Result<Job> job_of(Command command, Joint joint) {
  if (command == Command::Check) return tried(std::move(joint));
  if (command == Command::Job) return work_out(std::move(joint), Parts::all());
  return work_out(std::move(joint), parts_of(command));
}

Subject subject_of(Command command) {
  switch (command) {
    case Command::Fit:
      return Subject::Fit;
    case Command::Adhesive:
      return Subject::Adhesive;
    case Command::Layout:
      return Subject::Layout;
    case Command::Schedule:
      return Subject::Schedule;
    case Command::Strength:
      return Subject::Strength;
    case Command::Order:
      return Subject::Order;
    case Command::Job:
      return Subject::Summary;
    case Command::New:
    case Command::Check:
    case Command::Tolerance:
    case Command::Record:
      break;
  }
  return Subject::Input;
}

/// The folder of `job`: the joint file's name with "-joint" in place of its ending, in
/// the current folder, if none is given.
std::filesystem::path folder_of(const Options& options) {
  if (options.out) return *options.out;
  return std::filesystem::path(options.target).stem().concat("-joint");
}

/// For whom a file is the one to open first.
struct FirstFile {
  std::string name;
  const char* whose;
};

std::string first_to_open(const std::vector<Document>& files) {
  static const std::vector<FirstFile> all{{"joint.html", "everyone, in a browser"},
                                          {"drawing.pdf", "tooling engineer"},
                                          {"drill-starboard.pdf", "jig builder"},
                                          {"order.xlsx", "purchasing"},
                                          {"sequence.pdf", "crew"}};
  std::string words;
  for (const FirstFile& first : all) {
    const auto is_first = [&](const Document& file) { return file.name == first.name; };
    if (std::any_of(files.begin(), files.end(), is_first))
      words +=
          fmt::format("{}{} ({})", words.empty() ? "" : ", ", first.name, first.whose);
  }
  return words.empty() ? "" : wrapped("Open first: " + words);
}

std::string documents_list(const std::filesystem::path& folder,
                           const std::vector<Document>& files) {
  std::string names;
  for (const Document& file : files) names += (names.empty() ? "" : ", ") + file.name;
  return "\n" + wrapped(fmt::format("Written into {}: {}", folder.string(), names)) +
         first_to_open(files);
}

/// What there is to choose from, for people or as JSON.
std::string compared(const Options& options, const Job& job, const ReportStyle& style) {
  const Candidates found = candidates(job);
  if (!options.json) return options_report(found, job, style);
  Json result = result_object(job, style.origin);
  result["options"] = options_json(found);
  return json_text(result);
}

std::string shown(const Options& options, const Job& job, const ReportStyle& style) {
  if (options.compare && !options.quiet) return compared(options, job, style);
  if (options.json) return result_json(job, style.origin);
  if (options.quiet) return verdict_line(job.checks) + "\n";
  if (options.explain_hole) return hole_report(*options.explain_hole, job, style);
  return report(subject_of(options.command), job, style);
}

SheetStyle sheet_style(const Options& options,
                       const ReportStyle& style,
                       const RecordCharts* record) {
  const Paper usual = style.unit == LengthUnit::Millimetres ? Paper::A4 : Paper::Letter;
  return {style, options.paper.value_or(usual), record};
}

/// The charts of the boats built, where a record of them is given.
Result<std::optional<RecordCharts>> charts_of(const Options& options,
                                              const Joint& joint) {
  if (!options.tolerance.record) return std::nullopt;
  const std::string& record = *options.tolerance.record;
  const auto store = opened_record(record, joint);
  if (!store) return tl::unexpected(store.error());
  auto series = store->series();
  if (!series) return of_record(series.error(), record);
  return record_charts(std::move(*series));
}

/// Sheets and documents of a job; the last is "result.json".
Result<std::vector<Document>> files_of(const Options& options,
                                       const Job& job,
                                       const ReportStyle& style) {
  const auto charts = charts_of(options, job.joint);
  if (!charts) return tl::unexpected(charts.error());
  ProgressLine line(options.quiet);
  auto files = sheets(job, sheet_style(options, style, *charts ? &**charts : nullptr),
                      [&](const std::string& name, std::size_t done, std::size_t of) {
                        line.show(fmt::format("{} of {}: {}", done + 1, of, name));
                      });
  if (!files) return files;
  for (Document& document : documents(job, style))
    files->push_back(std::move(document));
  return files;
}

/// Whether the hole asked for is there.
Result<void> judge_hole(const Options& options, const Job& job) {
  if (!options.explain_hole || !job.schedule) return {};
  const auto& stations = job.schedule->stations;
  std::vector<std::string_view> marks;
  for (const DrillStation& station : stations) {
    if (station.mark == *options.explain_hole) return {};
    marks.push_back(station.mark);
  }
  if (marks.empty()) return invalid_input("", "--explain: there are no holes");
  std::string hint = word_hint(*options.explain_hole, marks);
  if (!hint.starts_with("did you mean"))
    hint = "the marks are " +
           mark_ranges(stations, [](const DrillStation&) { return true; });
  return invalid_input("", fmt::format("--explain {}: there is no such hole: {}",
                                       printable(*options.explain_hole), hint));
}

/// The last steps: documents, then what is printed.
int hand_over(const Options& options, const Job& job, const ReportStyle& style) {
  if (const auto found = judge_hole(options, job); !found)
    return report_errors(found.error());
  std::string text = shown(options, job, style);
  if (options.command == Command::Job && (options.out || !options.json)) {
    const auto folder = folder_of(options);
    const auto files = files_of(options, job, style);
    if (!files) return report_errors(files.error());
    if (const auto written = write_documents(folder, *files); !written)
      return report_errors(written.error());
    if (!options.json && !options.quiet) text += documents_list(folder, *files);
  }
  return finish(text, verdict(job.checks) == CheckState::Fail ? 1 : 0);
}

int run_new(const Options& options) {
  const auto files = write_new_joint(options.target);
  if (!files) return report_errors(files.error());
  if (options.quiet && !options.json) return 0;
  Json result{{"format", "sheerlap/1"}, {"written", Json::array()}};
  std::string text;
  for (const auto& file : *files) {
    result["written"].push_back(file.string());
    text += "Written: " + file.string() + "\n";
  }
  if (options.json) return finish(json_text(result), 0);
  return finish(fmt::format("{}Next: sheerlap job {}\n", text, files->front().string()),
                0);
}

/// The parts asked for of one boat.
int run_boat(const Options& options, const JointFile& joint, ReportStyle style) {
  const auto boat = read_boat_file(options, joint, parts_of(options.command));
  if (!boat) return report_errors(boat.error());
  style.origin = boat_origin(*boat, std::move(style.origin));
  return hand_over(options, boat->job, style);
}

int run_command(const Options& options, const char* epoch) {
  auto date = report_date(epoch);
  if (!date) return report_errors(date.error());
  auto file = read_joint_file(options.target);
  if (!file) return report_errors(file.error());
  const OriginWords origin = [sources = file->sources](const std::string& address) {
    return origin_words(sources, address);
  };
  ReportStyle style{options.unit.value_or(file->unit), std::move(*date), origin,
                    options.explain};
  if (options.readings) return run_boat(options, *file, std::move(style));
  if (options.command == Command::Tolerance)
    return run_tolerance(options, std::move(*file), style);
  const auto job = job_of(options.command, std::move(file->joint));
  if (!job) return report_errors(located(job.error(), file->sources));
  return hand_over(options, *job, style);
}

}  // namespace

int run(const std::vector<std::string>& arguments, const char* epoch) {
  if (asks_for_record(arguments)) return run_record(arguments);
  const auto asked = parse_options(arguments);
  if (!asked) return report_errors(asked.error());
  if (const auto* text = std::get_if<TextAsked>(&*asked)) return finish(text->text, 0);
  const Options& options = std::get<Options>(*asked);
  if (options.command == Command::New) return run_new(options);
  return run_command(options, epoch);
}

}  // namespace sheerlap
