#pragma once

#include <optional>
#include <string>
#include <vector>

#include "joint/gap_readings.h"
#include "joint/job.h"

namespace sheerlap {

/// What was read of one boat.
struct BoatReadings {
  std::string file;  ///< the reading file as it was named; empty if there is none
  std::vector<GivenReading> given;
  std::optional<ReadingState> state;  ///< the latest that was read, if not given
};

/// The parts of a joint as one boat has it: its hull stands where the gap is as it was
/// read. Its holes are those of the drawing, since the jigs are the same for all boats.
///
/// @param parts  without the order, which is for a run of boats; none left out
/// @errors  of `work_out` for the joint; of `placed_readings`; at "readings": no
///          reading of the state asked for, a hull that no such gaps can be had with,
///          or of which a part cannot be worked out
Result<Job> work_out_boat(const Joint& joint,
                          const Parts& parts,
                          const BoatReadings& readings);

}  // namespace sheerlap
