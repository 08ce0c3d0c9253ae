#include "geometry/spacing_way_back.h"

#include <algorithm>

namespace sheerlap {

SpacingWayBack::SpacingWayBack(const SpacingGround& ground,
                               const SpacingAllowance& allowance)
    : ground_(ground),
      allowance_(allowance),
      rounding_mm_(kept_limit * ground.scale_mm()),
      left_(ground.cells().size()),
      covered_(ground.cells().size()),
      news_(ground.cells().size()),
      last_fixed_(ground.cells().size()) {
  for (std::size_t cell = 1; cell < last_fixed_.size(); ++cell)
    last_fixed_[cell] =
        ground.cells()[cell - 1].fixed ? cell - 1 : last_fixed_[cell - 1];
  const double end = ground.cells().back().to_mm;
  std::vector<std::size_t> front{ground.end()};
  left_[ground.end()].push_back({0, {{end, end}}});
  for (std::size_t steps = 1; !front.empty() && fewest_steps_ == 0; ++steps) {
    for (const std::size_t cell : front)
      for (const SpacingInterval& part : left_[cell].back().parts) spread(cell, part);
    settle(steps);
    front.swap(touched_);
    touched_.clear();
    if (!left_[ground.start()].empty()) fewest_steps_ = steps;
  }
}

void SpacingWayBack::spread(std::size_t to, const SpacingInterval& part) {
  const std::size_t first = last_fixed_[to];  // none may be left out
  const bool point = ground_.cells()[to].is_point();
  for (std::size_t cell = to + (point ? 0 : 1); cell-- > first + 1;)
    if (!step_back(cell, to, part)) break;
  // an end distance, or one between fixed places, may be longer than any space
  if (to != ground_.start()) step_back(first, to, part);
}

/// @returns  false if the cell, and so every earlier one, is too far
bool SpacingWayBack::step_back(std::size_t from,
                               std::size_t to,
                               const SpacingInterval& part) {
  if (from == ground_.start() && to == ground_.end()) return true;
  const SpacingCell& cell = ground_.cells()[from];
  const SpacingStep step = ground_.step(from, to, allowance_);
  const double farthest = part.from_mm - step.greatest_mm;
  if (cell.to_mm < farthest) return false;
  const SpacingInterval reached{std::max(cell.from_mm, farthest),
                                std::min(cell.to_mm, part.to_mm - step.least_mm)};
  if (step.least_mm > step.greatest_mm || reached.from_mm > reached.to_mm) return true;
  for (const SpacingInterval& part_of_it : rest_of(reached, covered_[from])) {
    if (news_[from].empty()) touched_.push_back(from);
    news_[from].push_back(part_of_it);
  }
  return true;
}

/// Takes what is new for covered.
void SpacingWayBack::settle(std::size_t steps) {
  for (const std::size_t cell : touched_) {
    join(news_[cell]);
    covered_[cell].insert(covered_[cell].end(), news_[cell].begin(), news_[cell].end());
    join(covered_[cell]);
    left_[cell].push_back({steps, std::move(news_[cell])});
    news_[cell].clear();
  }
}

bool SpacingWayBack::meets(std::size_t cell,
                           std::size_t steps,
                           const SpacingInterval& part) const {
  for (const Left& left : left_[cell]) {
    if (left.steps + steps != fewest_steps_) continue;
    return std::any_of(left.parts.begin(), left.parts.end(), [&](const auto& one) {
      return one.from_mm <= part.to_mm + rounding_mm_ &&
             one.to_mm >= part.from_mm - rounding_mm_;
    });
  }
  return false;
}

}  // namespace sheerlap
