#include "cli/tolerance_run.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <thread>
#include <utility>

#include "cli/interrupt.h"
#include "cli/output.h"
#include "cli/progress_line.h"
#include "joint/documents/check_text.h"
#include "joint/documents/result_object.h"
#include "joint/documents/tolerance_json.h"
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

Result<ToleranceJob> worked_out(const Options& options, Joint joint) {
  const Interrupt interrupt;
  BoatCount count(options.quiet);
  ToleranceHooks hooks;
  hooks.threads = threads_of(options.tolerance);
  hooks.progress = [&](std::size_t done, std::size_t boats) {
    count.show(done, boats);
  };
  hooks.stop = &Interrupt::came();
  return tolerance_job(asked_for(std::move(joint), options.tolerance), hooks);
}

std::string shown(const Options& options,
                  const ToleranceJob& job,
                  const ReportStyle& style) {
  if (options.json) {
    Json result = result_object(job.job, style.origin);
    result["tolerance"] = tolerance_json(job);
    return json_text(result);
  }
  if (options.quiet) return verdict_line(job.job.checks) + "\n";
  return tolerance_report(job, style);
}

}  // namespace

int run_tolerance(const Options& options, JointFile file, const ReportStyle& style) {
  const auto job = worked_out(options, std::move(file.joint));
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
