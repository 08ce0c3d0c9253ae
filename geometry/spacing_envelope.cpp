#include "geometry/spacing_envelope.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sheerlap {
namespace {

/// A cost passed over from left to right.
class CostWalk {
 public:
  CostWalk(const SpacingCost& cost, double at_mm)
      : corners_(cost.corners()), at_mm_(at_mm), value_(cost.value_at(at_mm)) {
    while (next_ < corners_.size() && corners_[next_].at_mm <= at_mm) ++next_;
  }

  double next_corner_mm() const {
    return next_ < corners_.size() ? corners_[next_].at_mm
                                   : std::numeric_limits<double>::infinity();
  }
  CostValue value() const { return value_; }
  /// The slope to the right of here.
  CostSlope slope() const { return here().slope; }
  /// By how much the slope of the squares grows.
  double bend() const {
    const CostCorner& low = corners_[next_ - 1];
    const CostCorner& high = corners_[next_];
    return (high.slope.squares_mm - low.slope.squares_mm) / (high.at_mm - low.at_mm);
  }
  /// @param at_mm  no farther than the next corner
  void go_to(double at_mm) {
    const double run = at_mm - at_mm_;
    const CostSlope from = slope();
    value_.excess_mm += from.excess * run;
    value_.squares_mm2 += (from.squares_mm + bend() * run / 2) * run;
    at_mm_ = at_mm;
    while (next_ < corners_.size() && corners_[next_].at_mm <= at_mm) ++next_;
  }

 private:
  CostCorner here() const {
    const CostCorner& low = corners_[next_ - 1];
    return low.at_mm == at_mm_ ? low : corner_between(low, corners_[next_], at_mm_);
  }

  const std::vector<CostCorner>& corners_;
  std::size_t next_ = 0;
  double at_mm_;
  CostValue value_;
};

/// The challenger's cost less the holder's over a run without corners.
struct Difference {
  SpacingInterval run;
  double excess_mm = 0;
  double excess_slope = 0;
  double squares_mm2 = 0;
  double squares_slope = 0;
  double squares_bend = 0;

  double length_mm() const { return run.to_mm - run.from_mm; }
};

/// Where the excess, a straight line that is not all zero, is below zero or, if a tie
/// is won, no more than it.
void append_less_excess(const Difference& difference,
                        const CostOrder& order,
                        std::vector<SpacingInterval>& better) {
  const auto rounded = [&](double value) {
    return std::abs(value) <= order.same_excess_mm ? 0 : value;
  };
  const double start = rounded(difference.excess_mm);
  const double end =
      rounded(difference.excess_mm + difference.excess_slope * difference.length_mm());
  const auto& [from_mm, to_mm] = difference.run;
  const bool wins_ties = order.tie == CostTie::Won;
  if (start <= 0 && end <= 0) {
    append(better, {from_mm, to_mm});
  } else if (start * end < 0) {
    const double zero =
        std::min(from_mm + start / (start - end) * difference.length_mm(), to_mm);
    append(better,
           start < 0 ? SpacingInterval{from_mm, zero} : SpacingInterval{zero, to_mm});
  } else if (wins_ties && start == 0) {
    append(better, {from_mm, from_mm});
  } else if (wins_ties && end == 0) {
    append(better, {to_mm, to_mm});
  }
}

/// The places within the run where the squares, a parabola, are zero.
std::vector<double> zeros(const Difference& difference) {
  const double half = difference.squares_bend / 2;
  const double slope = difference.squares_slope;
  const double root = slope * slope - 4 * half * difference.squares_mm2;
  if (!(root > 0)) return {};
  const double sum = -(slope + std::copysign(std::sqrt(root), slope)) / 2;
  std::vector<double> result;
  for (const double zero : {sum / half, difference.squares_mm2 / sum})
    if (zero > 0 && zero < difference.length_mm()) result.push_back(zero);
  std::sort(result.begin(), result.end());
  return result;
}

/// Where the squares are below zero.
void append_less_squares(const Difference& difference,
                         std::vector<SpacingInterval>& better) {
  const auto& [from_mm, to_mm] = difference.run;
  std::vector<double> ends;
  for (const double zero : zeros(difference))
    ends.push_back(std::min(from_mm + zero, to_mm));
  ends.push_back(to_mm);
  double from = from_mm;
  for (const double to : ends) {
    const double middle = (from + to) / 2 - from_mm;
    const double value =
        difference.squares_mm2 +
        (difference.squares_slope + difference.squares_bend * middle / 2) * middle;
    if (value < 0) append(better, {from, to});
    from = to;
  }
}

/// What squares have to gain to count as less: rounding.
double rounding(const CostValue& value) { return 1e-13 * value.squares_mm2; }

bool is_better(const CostValue& one, const CostValue& other, const CostOrder& order) {
  const double excess = one.excess_mm - other.excess_mm;
  if (std::abs(excess) > order.same_excess_mm) return excess < 0;
  if (order.tie != CostTie::BySquares) return order.tie == CostTie::Won;
  return one.squares_mm2 < other.squares_mm2 - rounding(other);
}

void append_better(const CostWalk& challenger,
                   const CostWalk& holder,
                   SpacingInterval run,
                   const CostOrder& order,
                   std::vector<SpacingInterval>& better) {
  const CostValue one = challenger.value();
  const CostValue other = holder.value();
  const Difference difference{
      run,
      one.excess_mm - other.excess_mm,
      static_cast<double>(challenger.slope().excess - holder.slope().excess),
      one.squares_mm2 - other.squares_mm2 + rounding(other),
      challenger.slope().squares_mm - holder.slope().squares_mm,
      challenger.bend() - holder.bend()};
  const double at_end =
      difference.excess_mm + difference.excess_slope * difference.length_mm();
  if (std::max(std::abs(difference.excess_mm), std::abs(at_end)) > order.same_excess_mm)
    append_less_excess(difference, order, better);
  else if (order.tie == CostTie::BySquares)
    append_less_squares(difference, better);
  else if (order.tie == CostTie::Won)
    append(better, run);
}

}  // namespace

std::vector<SpacingInterval> better_parts(const SpacingCost& challenger,
                                          const SpacingCost& holder,
                                          const CostOrder& order) {
  double at = std::max(challenger.from_mm(), holder.from_mm());
  const double end = std::min(challenger.to_mm(), holder.to_mm());
  if (at > end) return {};
  std::vector<SpacingInterval> better;
  if (at == end) {
    if (is_better(challenger.value_at(at), holder.value_at(at), order))
      better.push_back({at, at});
    return better;
  }
  CostWalk one(challenger, at);
  CostWalk other(holder, at);
  while (at < end) {
    const double next = std::min({one.next_corner_mm(), other.next_corner_mm(), end});
    append_better(one, other, {at, next}, order, better);
    one.go_to(next);
    other.go_to(next);
    at = next;
  }
  return better;
}

}  // namespace sheerlap
