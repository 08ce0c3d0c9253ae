#include "geometry/spacing_cost.h"

#include <algorithm>
#include <cassert>
#include <iterator>

namespace sheerlap {
namespace {

/// The polyline of the slope of a step's own cost over its length.
std::vector<CostCorner> corners_of(const SpacingStep& step, double beyond_mm) {
  const auto corner = [&](double length, int excess) {
    double squares = 2 * step.weight * length;
    if (excess > 0 && step.excess_slope_mm > 0)
      squares += step.excess_slope_mm + 2 * (length - step.greatest_mm);
    return CostCorner{length, 0, {excess, squares}};
  };
  const double kept = std::max(step.least_mm, step.greatest_mm);
  std::vector<CostCorner> result;
  if (step.least_mm <= step.greatest_mm)
    result = {corner(step.least_mm, 0), corner(step.greatest_mm, 0)};
  if (beyond_mm > 0) {
    result.push_back(corner(kept, 1));
    result.push_back(corner(kept + beyond_mm, 1));
  }
  return result;
}

/// Where a polyline has the slope, if its corners before `next` have no more.
double place_of(const std::vector<CostCorner>& corners,
                std::size_t next,
                const CostSlope& slope) {
  if (next == 0) return corners.front().at_mm;
  if (next == corners.size()) return corners.back().at_mm;
  const CostCorner& low = corners[next - 1];
  const CostCorner& high = corners[next];
  const double rise = high.slope.squares_mm - low.slope.squares_mm;
  if (low.at_mm == high.at_mm || low.slope.excess != high.slope.excess || !(rise > 0))
    return low.at_mm;
  return low.at_mm +
         (high.at_mm - low.at_mm) * ((slope.squares_mm - low.slope.squares_mm) / rise);
}

bool is_left_of(const CostCorner& corner, double at_mm) { return corner.at_mm < at_mm; }
bool is_right_of(double at_mm, const CostCorner& corner) {
  return at_mm < corner.at_mm;
}

}  // namespace

CostCorner corner_between(const CostCorner& one,
                          const CostCorner& other,
                          double at_mm) {
  const double share = (at_mm - one.at_mm) / (other.at_mm - one.at_mm);
  const auto mix = [&](double from, double to) { return from + share * (to - from); };
  return {at_mm,
          mix(one.before_mm, other.before_mm),
          {one.slope.excess, mix(one.slope.squares_mm, other.slope.squares_mm)}};
}

SpacingCost SpacingCost::at_start(double at_mm) {
  return SpacingCost({CostCorner{at_mm, at_mm, {}}}, {});
}

SpacingCost SpacingCost::after(const SpacingStep& step, double beyond_mm) const {
  const std::vector<CostCorner> lengths = corners_of(step, beyond_mm);
  std::vector<CostCorner> sum;
  sum.reserve(corners_.size() + lengths.size());
  std::size_t own = 0;
  std::size_t other = 0;
  while (own < corners_.size() || other < lengths.size()) {
    const bool take_own =
        other == lengths.size() ||
        (own < corners_.size() && corners_[own].slope <= lengths[other].slope);
    const CostSlope slope = take_own ? corners_[own].slope : lengths[other].slope;
    const double before =
        take_own ? corners_[own].at_mm : place_of(corners_, own, slope);
    const double length =
        take_own ? place_of(lengths, other, slope) : lengths[other].at_mm;
    const double least_at = sum.empty() ? before + length : sum.back().at_mm;
    sum.push_back({std::max(before + length, least_at), before, slope});
    ++(take_own ? own : other);
  }
  const double least = step.least_mm;
  SpacingCost result(std::move(sum),
                     {first_.excess_mm + std::max(0.0, least - step.greatest_mm),
                      first_.squares_mm2 + step.weight * least * least});
  result.drop_jumps_at_ends();
  return result;
}

/// Takes away what says nothing: jumps of the slope at the ends of the interval.
void SpacingCost::drop_jumps_at_ends() {
  const double first = from_mm();
  const double last = to_mm();
  while (corners_.size() > 1 && corners_[corners_.size() - 2].at_mm == last)
    corners_.pop_back();
  std::size_t skip = 0;
  while (skip + 1 < corners_.size() && corners_[skip + 1].at_mm == first) ++skip;
  corners_.erase(corners_.begin(),
                 corners_.begin() + static_cast<std::ptrdiff_t>(skip));
}

SpacingCost SpacingCost::within(double from_mm, double to_mm) const {
  assert(from_mm >= this->from_mm() && from_mm <= to_mm && to_mm <= this->to_mm());
  const auto right =
      std::upper_bound(corners_.begin(), corners_.end(), from_mm, is_right_of);
  const auto left =
      std::lower_bound(corners_.begin(), corners_.end(), to_mm, is_left_of);
  std::vector<CostCorner> part;
  const CostCorner& before = *std::prev(right);
  part.push_back(before.at_mm == from_mm ? before
                                         : corner_between(before, *right, from_mm));
  if (from_mm < to_mm) {
    part.insert(part.end(), right, left);
    part.push_back(
        left->at_mm == to_mm ? *left : corner_between(*std::prev(left), *left, to_mm));
  }
  return SpacingCost(std::move(part), value_at(from_mm));
}

CostValue SpacingCost::value_at(double at_mm) const {
  CostValue value = first_;
  for (std::size_t next = 1; next < corners_.size(); ++next) {
    const CostCorner& low = corners_[next - 1];
    if (low.at_mm >= at_mm) break;
    if (low.at_mm == corners_[next].at_mm) continue;
    const bool whole = corners_[next].at_mm <= at_mm;
    const CostCorner high =
        whole ? corners_[next] : corner_between(low, corners_[next], at_mm);
    const double run = high.at_mm - low.at_mm;
    value.excess_mm += low.slope.excess * run;
    value.squares_mm2 += (low.slope.squares_mm + high.slope.squares_mm) / 2 * run;
  }
  return value;
}

double SpacingCost::before_mm(double at_mm) const {
  const auto next =
      std::lower_bound(corners_.begin(), corners_.end(), at_mm, is_left_of);
  if (next == corners_.end()) return corners_.back().before_mm;
  if (next == corners_.begin() || next->at_mm == at_mm) return next->before_mm;
  return corner_between(*std::prev(next), *next, at_mm).before_mm;
}

}  // namespace sheerlap
