#include "geometry/spacing_follow.h"

#include <algorithm>
#include <limits>

namespace sheerlap {
namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

class Following {
 public:
  Following(const SpacingPiece& piece,
            const SpacingGround& ground,
            const SpacingRules& rules)
      : piece_(piece),
        ground_(ground),
        rules_(rules),
        may_exceed_(rules.limits == GreatestLimits::Exceeded) {}

  std::vector<SpacingPiece> all() {
    const std::size_t last = ground_.next_fixed(piece_.cell);
    double useful_to = infinity;
    const bool point = ground_.cells()[piece_.cell].is_point();
    for (std::size_t cell = piece_.cell + (point ? 1 : 0); cell <= last; ++cell) {
      if (cell == ground_.end()) useful_to = infinity;
      const SpacingStep step = step_to(cell);
      const double kept_to = piece_.cost.to_mm() + step.greatest_mm;
      const double far = may_exceed_ ? std::max(useful_to, kept_to) : kept_to;
      if (ground_.cells()[cell].from_mm > far) {
        cell = std::max(cell, last - 1);  // only a fixed place may be farther
        continue;
      }
      const bool no_point = piece_.cell == ground_.start() && cell == ground_.end();
      if (!no_point) add(cell, step, far);
      if (may_exceed_) useful_to = std::min(useful_to, useful_to_mm(cell, step));
    }
    return std::move(result_);
  }

 private:
  SpacingStep step_to(std::size_t cell) const {
    SpacingStep step = ground_.step(piece_.cell, cell, rules_.allowance);
    if (!rules_.squares) step.weight = step.excess_slope_mm = 0;
    return step;
  }
  double useful_to_mm(std::size_t cell, const SpacingStep& step) const;
  void add(std::size_t to, const SpacingStep& step, double useful_to_mm);

  const SpacingPiece& piece_;
  const SpacingGround& ground_;
  const SpacingRules& rules_;
  const bool may_exceed_;
  std::vector<SpacingPiece> result_;
};

/// How far a step is of use if there is room for a point in the cell: a longer one that
/// exceeds its limit has less excess with a point there. An end distance has it only if
/// that point's own space reaches farther.
double Following::useful_to_mm(std::size_t cell, const SpacingStep& step) const {
  const SpacingCell& room = ground_.cells()[cell];
  const double at = std::max(room.from_mm, piece_.cost.to_mm() + step.least_mm);
  const double distance = at - piece_.cost.to_mm();
  const bool gains =
      step.spaces > 0 || distance + ground_.smallest_greatest_mm() > step.greatest_mm;
  if (at > room.to_mm || !gains) return infinity;
  return at + ground_.largest_least_mm();
}

void Following::add(std::size_t to, const SpacingStep& step, double useful_to_mm) {
  const SpacingCell& cell = ground_.cells()[to];
  const double kept = std::max(step.least_mm, step.greatest_mm);
  const double room_for_rounding = kept_limit * ground_.scale_mm();
  const double longest = cell.to_mm - piece_.cost.from_mm() + room_for_rounding;
  const double beyond = may_exceed_ ? std::max(longest - kept, 0.0) : 0;
  if (step.least_mm > step.greatest_mm && beyond == 0) return;
  const double first = std::max(cell.from_mm, piece_.cost.from_mm() + step.least_mm);
  const double last =
      std::min({cell.to_mm, useful_to_mm, piece_.cost.to_mm() + kept + beyond});
  if (first > last) return;
  const auto* way_back = rules_.way_back;
  if (way_back != nullptr && !way_back->meets(to, piece_.points + 1, {first, last}))
    return;
  const SpacingCost cost = piece_.cost.after(step, beyond);
  const double from = std::max(first, cost.from_mm());
  const double to_mm = std::min(last, cost.to_mm());
  if (from <= to_mm)
    result_.push_back({cost.within(from, to_mm), to, piece_.points + 1, &piece_});
}

}  // namespace

std::vector<SpacingPiece> following(const SpacingPiece& piece,
                                    const SpacingGround& ground,
                                    const SpacingRules& rules) {
  return Following(piece, ground, rules).all();
}

}  // namespace sheerlap
