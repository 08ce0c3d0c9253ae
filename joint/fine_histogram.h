#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "joint/tolerance_answers.h"

namespace sheerlap {

/// Numbers counted in fine steps, so that their quantiles are had without keeping them.
/// A number beyond the steps makes all of them twice as wide, as often as it takes.
class FineHistogram {
 public:
  /// @param step   > 0
  /// @param steps  an even number of them, to begin with from `least` on
  FineHistogram(double least, double step, std::size_t steps);

  /// @param value  finite
  void add(double value);
  std::size_t count() const { return count_; }
  double step() const { return step_; }
  /// What a share of the numbers stays below, and the interval of it, 95 %.
  /// @param share  0 < share < 1; there are numbers
  /// @accuracy  half a step
  Estimate quantile(double share) const;
  Deciles deciles() const;

 private:
  void widen(bool downward);
  double at_rank(std::size_t rank) const;

  double least_;
  double step_;
  std::size_t count_ = 0;
  std::vector<std::uint64_t> counts_;
};

}  // namespace sheerlap
