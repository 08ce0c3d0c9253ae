#include "joint/fine_histogram.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

#include "joint/sample_figures.h"

namespace sheerlap {

FineHistogram::FineHistogram(double least, double step, std::size_t steps)
    : least_(least), step_(step), counts_(steps) {
  assert(step > 0 && steps > 0 && steps % 2 == 0);
}

/// Two steps become one, and the room that this makes is below or above.
void FineHistogram::widen(bool downward) {
  const std::size_t half = counts_.size() / 2;
  std::vector<std::uint64_t> wider(counts_.size());
  for (std::size_t i = 0; i < counts_.size(); ++i)
    wider[i / 2 + (downward ? half : 0)] += counts_[i];
  if (downward) least_ -= static_cast<double>(counts_.size()) * step_;
  step_ *= 2;
  counts_ = std::move(wider);
}

void FineHistogram::add(double value) {
  assert(std::isfinite(value));
  const auto steps = static_cast<double>(counts_.size());
  while (value < least_) widen(true);
  while (value >= least_ + steps * step_) widen(false);
  const double last = steps - 1;
  const double at = std::clamp(std::floor((value - least_) / step_), 0.0, last);
  ++counts_[static_cast<std::size_t>(at)];
  ++count_;
}

/// The middle of the step that has the number of this rank, counted from 1.
double FineHistogram::at_rank(std::size_t rank) const {
  std::uint64_t below = 0;
  std::size_t at = 0;
  for (; at + 1 < counts_.size(); ++at) {
    below += counts_[at];
    if (below >= rank) break;
  }
  return least_ + (static_cast<double>(at) + 0.5) * step_;
}

Estimate FineHistogram::quantile(double share) const {
  const QuantileRanks ranks = quantile_ranks(count_, share);
  return {at_rank(ranks.at), at_rank(ranks.low), at_rank(ranks.high)};
}

Deciles FineHistogram::deciles() const {
  return {quantile(0.1), quantile(0.5), quantile(0.9), step_};
}

}  // namespace sheerlap
