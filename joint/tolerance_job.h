#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "joint/boat_pattern.h"
#include "joint/field_estimate.h"
#include "joint/gap_readings.h"
#include "joint/job.h"
#include "joint/tolerance.h"
#include "joint/wanted_share.h"

namespace sheerlap {

/// The hull's face as boats built have it.
struct RecordedFace {
  FieldEstimate face;           ///< about the pattern
  BuiltPattern pattern;         ///< what every boat has
  PatternReach reach;           ///< of the pattern
  std::size_t boats = 0;        ///< of the record
  std::optional<Length> given;  ///< correlation length that the joint file gives
};

/// A joint and how many of its boats will fit.
struct ToleranceJob {
  Job job;  ///< of the perimeter alone, with the checks and the reasons of both
  Tolerance tolerance;
  std::optional<RecordedFace> record;  ///< if an error was had from it
};

/// Works out the tolerance of a joint and all that it needs.
///
/// @param record  what every boat has is had from it, and the reasons of its numbers;
///                they are in the joint's errors already
/// @errors  of the perimeter, the adhesive, the schedule and `tolerance`; at
///          "tolerance", "adhesive": a table that is missing
Result<ToleranceJob> tolerance_job(Joint joint,
                                   const ToleranceHooks& hooks,
                                   std::optional<RecordedFace> record = {},
                                   const WantedShare& wanted = {});

/// What the readings of boats built say of the hull's face, by the state of which there
/// are most readings, the later of two as many.
///
/// @param boats  the readings of each
/// @errors  at "": the readings are too few; as `face_from_record`
Result<RecordedFace> recorded_face(const Joint& joint,
                                   const std::vector<std::vector<GapReading>>& boats);

/// Notes where an error was had from, with the reasons and checks of its numbers.
void tell_record(ToleranceJob& job, RecordedFace record);

/// Whether an error of the joint is to be had from a record.
bool wants_record(const Joint& joint);

/// What keeps a joint's tolerance from being worked out, found on a single boat; none
/// of a joint without [tolerance] or without [adhesive].
Errors tolerance_faults(Joint joint);

}  // namespace sheerlap
