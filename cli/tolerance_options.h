#pragma once

#include <cstddef>
#include <optional>
#include <string>

#include "geometry/result.h"

namespace sheerlap {

enum class Command;

/// The options of `tolerance` as they are written; `job` has one of them.
struct RawToleranceOptions {
  std::optional<std::string> boats, seed, threads, record;
};

/// What they ask for in place of the joint file's and the machine's own.
struct ToleranceOptions {
  std::optional<std::size_t> boats;
  std::optional<std::size_t> seed;
  std::optional<std::size_t> threads;
  std::optional<std::string> record;  ///< the file of boats built
};

/// The options, understood.
///
/// @param command  `tolerance` takes all of them, `job` the record, any other none
/// @param errors  gets what is wrong
ToleranceOptions judge_tolerance(const RawToleranceOptions& raw,
                                 Command command,
                                 Errors& errors);

}  // namespace sheerlap
