#pragma once

#include <functional>
#include <string>
#include <vector>

#include "cli/joint_file.h"
#include "cli/options.h"
#include "joint/documents/origin_words.h"
#include "joint/job.h"

namespace sheerlap {

/// A job of one boat and where its readings stand.
struct BoatFile {
  Job job;
  std::string file;                ///< as the user named it
  std::vector<std::size_t> lines;  ///< of the readings
};

/// The parts asked for of the boat whose gaps a reading file holds.
///
/// @param options  with a reading file
/// @errors  `located`; Unreadable: the reading file cannot be read
Result<BoatFile> read_boat_file(const Options& options,
                                const JointFile& joint,
                                const Parts& parts);

/// Where a value stands that is told of a boat: "yours: hull-12.csv:5" of
/// "reading[3].gap_top", or else in the joint file.
OriginWords boat_origin(const BoatFile& boat, OriginWords joint);

}  // namespace sheerlap
