#include "joint/tolerance_job.h"

#include <algorithm>
#include <map>
#include <utility>

#include "joint/face_record.h"
#include "joint/job_reasons.h"
#include "joint/record_reasons.h"
#include "joint/tolerance_checks.h"
#include "joint/tolerance_reasons.h"

namespace sheerlap {
namespace {

/// Stands for what only a record will tell.
constexpr Length any_correlation = Length::mm(1000);

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

Result<ToleranceJob> tolerance_job(Joint joint,
                                   const ToleranceHooks& hooks,
                                   std::optional<RecordedFace> record,
                                   const WantedShare& wanted) {
  if (Errors missing = missing_tables(joint); !missing.empty())
    return tl::unexpected(std::move(missing));
  Parts parts;
  parts.adhesive = parts.schedule = true;
  auto drawn = work_out(std::move(joint), parts);
  if (!drawn) return tl::unexpected(drawn.error());
  auto found = tolerance(
      drawn->joint, drawn->perimeter,
      {*drawn->adhesive, &*drawn->schedule, record ? &record->pattern : nullptr},
      hooks);
  if (!found) return tl::unexpected(found.error());
  Job job;
  job.joint = std::move(drawn->joint);
  job.perimeter = std::move(drawn->perimeter);
  job.checks = job.perimeter.checks;
  for (Check& check : tolerance_checks(job.joint, *found, wanted))
    job.checks.push_back(std::move(check));
  job.reasons = reasons_of(job);
  for (Explanation& reason : tolerance_reasons(*found))
    job.reasons.push_back(std::move(reason));
  ToleranceJob all{std::move(job), std::move(*found), std::nullopt};
  if (record) tell_record(all, std::move(*record));
  return all;
}

Result<RecordedFace> recorded_face(const Joint& joint,
                                   const std::vector<std::vector<GapReading>>& boats) {
  std::map<ReadingState, std::size_t> counts;
  for (const auto& readings : boats)
    for (const GapReading& reading : readings) ++counts[reading.state];
  RecordedFace found;
  found.boats = boats.size();
  std::size_t most = 0;
  ReadingState state = ReadingState::Held;
  for (const auto& [of, count] : counts)
    if (count >= most) {
      most = count;
      state = of;
    }
  const auto line = perimeter(joint);
  if (!line) return tl::unexpected(line.error());
  const auto face = face_from_record(joint, *line, boats, state);
  if (!face) return tl::unexpected(face.error());
  if (!*face)
    return invalid_input(
        "",
        "has too few gap readings to tell the hull's face by: "
        "places that were read on two boats or more, of one state, and "
        "more than four of them");
  auto pattern = pattern_of(joint, *line, boats, state);
  if (!pattern) return tl::unexpected(pattern.error());
  found.face = **face;
  found.reach = reach_of(*line, *pattern);
  found.pattern = std::move(*pattern);
  return found;
}

void tell_record(ToleranceJob& job, RecordedFace record) {
  for (Explanation& reason : record_reasons(record.face, record.reach, record.boats))
    job.job.reasons.push_back(std::move(reason));
  if (record.given)
    job.job.checks.push_back(correlation_check(record.face, *record.given));
  job.record = std::move(record);
}

bool wants_record(const Joint& joint) {
  if (!joint.tolerance) return false;
  const auto& errors = joint.tolerance->errors;
  return std::any_of(errors.begin(), errors.end(),
                     [](const ProcessError& error) { return error.from_record; });
}

Errors tolerance_faults(Joint joint) {
  if (!joint.tolerance || !joint.adhesive) return {};
  joint.tolerance->boats = 1;
  for (ProcessError& error : joint.tolerance->errors)
    if (error.from_record) error.correlation = any_correlation;
  const auto job = tolerance_job(std::move(joint), {});
  return job ? Errors{} : job.error();
}

}  // namespace sheerlap
