#include "geometry/spacing_reach.h"

#include <algorithm>
#include <limits>
#include <vector>

#include "geometry/spacing_interval.h"
#include "geometry/spacing_way_back.h"

namespace sheerlap {
namespace {

/// The ground that can be reached, point by point.
class Reach {
 public:
  /// @param way_back  where given, ground off it is left out
  Reach(const SpacingGround& ground,
        const SpacingAllowance& allowance,
        const SpacingWayBack* way_back)
      : ground_(ground),
        allowance_(allowance),
        way_back_(way_back),
        cells_(ground.cells().size()) {
    const double from = ground.cells().front().from_mm;
    cells_[ground.start()].front.push_back({from, from});
    front_.push_back(ground.start());
  }

  /// Whether any ground is reached for the first time with one point more.
  bool go_on() {
    next_.clear();
    ++steps_;
    for (const std::size_t cell : front_)
      for (const SpacingInterval& part : cells_[cell].front) spread(cell, part);
    for (const std::size_t cell : front_) cells_[cell].front.clear();
    for (const std::size_t cell : next_) settle(cells_[cell]);
    front_.swap(next_);
    return !front_.empty();
  }
  bool at_end() const { return !cells_[ground_.end()].covered.empty(); }

 private:
  /// What is reached of a cell; each in order, disjoint.
  struct Ground {
    std::vector<SpacingInterval> covered;
    std::vector<SpacingInterval> front;  ///< for the first time, with the last point
    std::vector<SpacingInterval> next;   ///< with one point more, in any order
  };

  void spread(std::size_t from, const SpacingInterval& part) {
    const std::size_t last = ground_.next_fixed(from);
    const bool point = ground_.cells()[from].is_point();
    for (std::size_t cell = from + (point ? 1 : 0); cell < last; ++cell)
      if (!step(from, part, cell)) break;
    if (from != ground_.start() || last != ground_.end()) step(from, part, last);
  }

  /// @returns  false if the cell, and so every later one, is too far
  bool step(std::size_t from, const SpacingInterval& part, std::size_t to) {
    const SpacingCell& cell = ground_.cells()[to];
    const SpacingStep step = ground_.step(from, to, allowance_);
    const double farthest = part.to_mm + step.greatest_mm;
    if (cell.from_mm > farthest) return false;
    const SpacingInterval reached{std::max(cell.from_mm, part.from_mm + step.least_mm),
                                  std::min(cell.to_mm, farthest)};
    if (step.least_mm > step.greatest_mm || reached.from_mm > reached.to_mm)
      return true;
    if (way_back_ != nullptr && !way_back_->meets(to, steps_, reached)) return true;
    for (const SpacingInterval& news : rest_of(reached, cells_[to].covered)) {
      if (cells_[to].next.empty()) next_.push_back(to);
      cells_[to].next.push_back(news);
    }
    return true;
  }

  /// Takes what is new of a cell for covered.
  static void settle(Ground& ground) {
    join(ground.next);
    ground.front.swap(ground.next);
    ground.next.clear();
    ground.covered.insert(ground.covered.end(), ground.front.begin(),
                          ground.front.end());
    join(ground.covered);
  }

  const SpacingGround& ground_;
  const SpacingAllowance allowance_;
  const SpacingWayBack* way_back_;
  std::size_t steps_ = 0;
  std::vector<Ground> cells_;
  std::vector<std::size_t> front_, next_;  ///< cells with ground reached so
};

std::optional<std::size_t> fewest_on_way(const SpacingGround& ground,
                                         const SpacingAllowance& allowance,
                                         std::size_t at_most,
                                         const SpacingWayBack* way_back) {
  Reach reach(ground, allowance, way_back);
  for (std::size_t steps = 1; steps <= at_most + 1 && reach.go_on(); ++steps)
    if (reach.at_end()) return steps - 1;
  return std::nullopt;
}

/// How much nearer the largest space is to be known before the way back is sought anew.
constexpr double nearer = 30;

}  // namespace

std::optional<std::size_t> fewest_points(const SpacingGround& ground,
                                         const SpacingAllowance& allowance,
                                         std::size_t at_most) {
  return fewest_on_way(ground, allowance, at_most, nullptr);
}

double smallest_largest_space(const SpacingGround& ground,
                              double slack,
                              std::size_t points,
                              double known_mm) {
  // a row with a smaller largest space stands on the way back of one with a larger
  std::optional<SpacingWayBack> way_back;
  const auto enough = [&](double largest) {
    return fewest_on_way(ground, {slack, largest}, points,
                         way_back ? &*way_back : nullptr)
        .has_value();
  };
  if (enough(known_mm)) return known_mm;
  double too_small = known_mm;
  double large_enough = ground.largest_space_mm();
  double known_to_mm = std::numeric_limits<double>::infinity();
  while (large_enough - too_small > 1e-13 * large_enough) {
    const double middle = (too_small + large_enough) / 2;
    if (middle <= too_small || middle >= large_enough) break;
    if (large_enough - too_small < known_to_mm / nearer) {
      known_to_mm = large_enough - too_small;
      way_back.emplace(ground, SpacingAllowance{slack, large_enough});
    }
    (enough(middle) ? large_enough : too_small) = middle;
  }
  return large_enough;
}

}  // namespace sheerlap
