#pragma once

#include <optional>
#include <string>
#include <vector>

namespace sheerlap {

enum class CheckState { Pass, Warn, Fail };

/// One question put to the joint, and its answer. An answer is never a verdict on
/// a rule: it says what was asked and what there is.
struct Check {
  std::string id;               ///< stable, e.g. "fit.gap_min"
  std::string what;             ///< in shop words, with the place
  double value = 0;             ///< what there is, in `unit`
  std::optional<double> limit;  ///< what is asked, in `unit`
  std::string unit;             ///< "mm", "ml", "min", "" for a count
  CheckState state = CheckState::Pass;
  std::string source;  ///< where the limit comes from
};

using Checks = std::vector<Check>;

}  // namespace sheerlap
