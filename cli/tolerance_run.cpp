#include "cli/tolerance_run.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <optional>
#include <string>
#include <thread>
#include <utility>
#include <vector>

#include "cli/interrupt.h"
#include "cli/opened_record.h"
#include "cli/output.h"
#include "cli/progress_line.h"
#include "joint/documents/result_object.h"
#include "joint/documents/tolerance_json.h"
#include "joint/documents/tolerance_text.h"
#include "joint/face_record.h"
#include "joint/quoted_text.h"
#include "joint/records/boat_store.h"
#include "joint/tolerance_job.h"

namespace sheerlap {
namespace {

/// The joint with what the command line asks for in place of the file's own.
Joint asked_for(Joint joint, const ToleranceOptions& options) {
  if (!joint.tolerance) return joint;
  if (options.boats) joint.tolerance->boats = *options.boats;
  if (options.seed) joint.tolerance->seed = *options.seed;
  return joint;
}

std::size_t threads_of(const ToleranceOptions& options) {
  if (options.threads) return *options.threads;
  return std::max<std::size_t>(1, std::thread::hardware_concurrency());
}

/// Tells on the terminal how far it is, each time another hundredth is done.
class BoatCount {
 public:
  explicit BoatCount(bool quiet) : line_(quiet) {}

  void show(std::size_t done, std::size_t boats) {
    const std::size_t hundredth = 100 * done / std::max<std::size_t>(1, boats);
    if (hundredth == shown_) return;
    shown_ = hundredth;
    line_.show(fmt::format("{} of {} boats; Ctrl-C tells what is done", done, boats));
  }

 private:
  ProgressLine line_;
  std::size_t shown_ = 101;
};

/// The readings of every boat of a record.
Result<std::vector<std::vector<GapReading>>> recorded_readings(
    const std::string& record, const Joint& joint) {
  const auto store = opened_record(record, joint);
  if (!store) return tl::unexpected(store.error());
  const auto list = store->boats();
  if (!list) return of_record(list.error(), record);
  std::vector<std::vector<GapReading>> readings;
  for (const BoatLine& line : list->boats) {
    auto boat = store->boat(line.hull);
    if (!boat) return of_record(boat.error(), record);
    if (*boat) readings.push_back(std::move((*boat)->readings));
  }
  return readings;
}

/// The hull's face as the record has it, put into the errors that ask for it; nothing
/// if none does.
Result<std::optional<RecordedFace>> take_record(Joint& joint,
                                                const ToleranceOptions& options) {
  const bool wanted = wants_record(joint);
  if (!wanted && !options.record) return std::nullopt;
  if (!wanted)
    return invalid_input("",
                         "--record is given and no [[error]] asks for it: give one "
                         "from_record = true, or leave --record out");
  if (!options.record)
    return invalid_input("tolerance",
                         "an [[error]] has from_record = true: name the record of the "
                         "boats built by --record DB");
  const auto readings = recorded_readings(*options.record, joint);
  if (!readings) return tl::unexpected(readings.error());
  auto face = recorded_face(joint, *readings);
  if (!face) return of_record(face.error(), *options.record);
  for (const ProcessError& error : joint.tolerance->errors)
    if (error.from_record && error.correlation > Length())
      face->given = error.correlation;
  auto inputs = with_record(*joint.tolerance, face->face);
  if (!inputs) return tl::unexpected(inputs.error());
  joint.tolerance = std::move(*inputs);
  return std::move(*face);
}

Result<ToleranceJob> worked_out(const Options& options, JointFile file) {
  Joint joint = asked_for(std::move(file.joint), options.tolerance);
  auto record = take_record(joint, options.tolerance);
  if (!record) return tl::unexpected(record.error());
  const Interrupt interrupt;
  BoatCount count(options.quiet);
  ToleranceHooks hooks;
  hooks.threads = threads_of(options.tolerance);
  hooks.progress = [&](std::size_t done, std::size_t boats) {
    count.show(done, boats);
  };
  hooks.stop = &Interrupt::came();
  return tolerance_job(std::move(joint), hooks, std::move(*record), file.wanted);
}

std::string shown(const Options& options,
                  const ToleranceJob& job,
                  const ReportStyle& style) {
  if (options.json) {
    Json result = result_object(job.job, style.origin);
    result["tolerance"] = tolerance_json(job);
    return json_text(result);
  }
  if (options.quiet) return tolerance_verdict(job) + "\n";
  return tolerance_report(job, style);
}

}  // namespace

int run_tolerance(const Options& options, JointFile file, const ReportStyle& style) {
  const auto job = worked_out(options, file);
  if (!job) return report_errors(located(job.error(), file.sources));
  if (job->tolerance.boats == 0) {
    std::fputs("stopped before the first boats were done: there is nothing to tell\n",
               stderr);
    return 1;
  }
  if (job->tolerance.boats < job->tolerance.asked)
    std::fprintf(stderr, "stopped after %zu of %zu boats: this is told of them alone\n",
                 job->tolerance.boats, job->tolerance.asked);
  const auto printed = write_out(stdout, shown(options, *job, style));
  if (!printed) return report_errors(printed.error());
  return verdict(job->job.checks) == CheckState::Fail ? 1 : 0;
}

}  // namespace sheerlap
