#include "joint/tolerance_job.h"

#include <utility>

#include "joint/job_reasons.h"
#include "joint/tolerance_checks.h"
#include "joint/tolerance_reasons.h"

namespace sheerlap {
namespace {

Errors missing_tables(const Joint& joint) {
  Errors errors;
  if (!joint.tolerance)
    errors.push_back({ErrorKind::InvalidInput, "tolerance",
                      "[tolerance] is missing: `tolerance` needs its boats, and an "
                      "[[error]] for each thing that goes wrong"});
  if (!joint.adhesive)
    errors.push_back({ErrorKind::InvalidInput, "adhesive",
                      "[adhesive] is missing: `tolerance` needs its gap window, bead "
                      "sizes and pack"});
  return errors;
}

}  // namespace

Result<ToleranceJob> tolerance_job(Joint joint, const ToleranceHooks& hooks) {
  if (Errors missing = missing_tables(joint); !missing.empty())
    return tl::unexpected(std::move(missing));
  Parts parts;
  parts.adhesive = parts.schedule = true;
  auto drawn = work_out(std::move(joint), parts);
  if (!drawn) return tl::unexpected(drawn.error());
  auto found = tolerance(drawn->joint, drawn->perimeter,
                         {*drawn->adhesive, &*drawn->schedule}, hooks);
  if (!found) return tl::unexpected(found.error());
  Job job;
  job.joint = std::move(drawn->joint);
  job.perimeter = std::move(drawn->perimeter);
  job.checks = job.perimeter.checks;
  for (Check& check : tolerance_checks(job.joint, *found))
    job.checks.push_back(std::move(check));
  job.reasons = reasons_of(job);
  for (Explanation& reason : tolerance_reasons(*found))
    job.reasons.push_back(std::move(reason));
  return ToleranceJob{std::move(job), std::move(*found)};
}

Errors tolerance_faults(Joint joint) {
  if (!joint.tolerance || !joint.adhesive) return {};
  joint.tolerance->boats = 1;
  const auto job = tolerance_job(std::move(joint), {});
  return job ? Errors{} : job.error();
}

}  // namespace sheerlap
