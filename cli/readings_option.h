#pragma once

#include <optional>
#include <string>

#include "cli/commands.h"
#include "geometry/result.h"
#include "joint/gap_readings.h"

namespace sheerlap {

/// The options --readings and --state as they were written.
struct ReadingsWords {
  std::optional<std::string> file;
  std::optional<std::string> state;
};

/// The state that --state names.
///
/// Notes what is wrong with the two: a command that does not answer for one boat, a
/// state without a reading file, one that is not known, a file without a name.
std::optional<ReadingState> judged_readings(const ReadingsWords& words,
                                            Command command,
                                            Errors& errors);

}  // namespace sheerlap
