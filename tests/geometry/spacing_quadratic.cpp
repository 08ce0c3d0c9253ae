#include "tests/geometry/spacing_quadratic.h"

#include <CGAL/Gmpzf.h>
#include <CGAL/QP_functions.h>
#include <CGAL/QP_models.h>

#include <algorithm>
#include <vector>

#include "tests/geometry/spacing_rules.h"

namespace sheerlap {
namespace {

constexpr double slack = 1e-9;

/// Ground that no edge of a zone and no fixed place divides.
struct Slot {
  double from_mm = 0;
  double to_mm = 0;
  bool fixed = false;
};

struct Bounds {
  double least_mm = 0;
  double greatest_mm = 0;
};

/// What a distance has to keep, and its factor in the sum of squares.
struct Link {
  Bounds bounds;
  double weight = 0;
};

std::vector<Slot> slots_of(const SpacingProblem& problem) {
  std::vector<double> cuts{problem.from_mm, problem.to_mm};
  const auto cut = [&](double at) {
    if (at > problem.from_mm && at < problem.to_mm) cuts.push_back(at);
  };
  for (const SpaceZone& zone : problem.zones) {
    cut(zone.from_mm);
    cut(zone.to_mm);
  }
  for (const Forbidden& gap : problem.forbidden) {
    cut(gap.from_mm);
    cut(gap.to_mm);
  }
  for (const double at : problem.fixed_mm) cut(at);
  std::sort(cuts.begin(), cuts.end());
  cuts.erase(std::unique(cuts.begin(), cuts.end()), cuts.end());

  const auto is_allowed = [&](double from, double to) {
    const double middle = (from + to) / 2;
    return std::none_of(
        problem.forbidden.begin(), problem.forbidden.end(),
        [&](const auto& gap) { return middle > gap.from_mm && middle < gap.to_mm; });
  };
  std::vector<Slot> result;
  for (std::size_t index = 0; index < cuts.size(); ++index) {
    const double at = cuts[index];
    const bool fixed = std::find(problem.fixed_mm.begin(), problem.fixed_mm.end(), at) !=
                       problem.fixed_mm.end();
    if (is_allowed(at, at)) result.push_back({at, at, fixed});
    if (index + 1 < cuts.size() && is_allowed(at, cuts[index + 1]))
      result.push_back({at, cuts[index + 1], false});
  }
  return result;
}

class Enumeration {
 public:
  Enumeration(const SpacingProblem& problem, std::size_t points, double largest_mm)
      : problem_(problem),
        points_(points),
        largest_mm_(largest_mm * (1 + slack)),
        slots_(slots_of(problem)) {}

  std::optional<double> best() {
    go_on(0, {problem_.from_mm, problem_.from_mm});
    return best_;
  }

 private:
  void go_on(std::size_t first_slot, Bounds reached);
  void finish(std::size_t first_slot, Bounds reached);
  Link space(double from_mm, double to_mm) const;
  Link end_distance(const StretchEnd& end, double from_mm, double to_mm, bool on_end)
      const;
  Link link_to(std::size_t slot) const;
  Link last_link() const;
  Link loosened(Link link, bool both_fixed, double apart_mm) const;
  void solve(const Link& last);

  const SpacingProblem& problem_;
  std::size_t points_;
  double largest_mm_;
  std::vector<Slot> slots_;
  std::vector<std::size_t> chosen_;
  std::vector<Link> links_;  ///< to each of the chosen
  std::optional<double> best_;
};

Link Enumeration::space(double from_mm, double to_mm) const {
  const SpaceLimits limits = limits_between(problem_, from_mm, to_mm);
  return {{limits.least_mm, std::min(limits.greatest_mm, largest_mm_)}, 1};
}

Link Enumeration::end_distance(const StretchEnd& end,
                               double from_mm,
                               double to_mm,
                               bool on_end) const {
  if (!end.mirrored) return {{end.least_mm, end.greatest_mm}, 0};
  if (on_end) return {};
  if (!(from_mm < to_mm)) return {{1, 0}, 0};  // only a fixed place may be on the end
  const Bounds both = space(from_mm, to_mm).bounds;
  return {{both.least_mm / 2, both.greatest_mm / 2}, 2};
}

/// What there is between the last of the chosen, or the start, and a slot.
Link Enumeration::link_to(std::size_t next) const {
  const Slot& slot = slots_[next];
  const double to = std::min(slot.to_mm, slot.from_mm + 1e-3);
  if (chosen_.empty()) {
    const bool on_start = slot.fixed && slot.from_mm == problem_.from_mm;
    const Link link = end_distance(problem_.start, problem_.from_mm, to, on_start);
    return loosened(link, slot.fixed, slot.from_mm - problem_.from_mm);
  }
  const Slot& before = slots_[chosen_.back()];
  if (chosen_.back() == next) return space(slot.from_mm, slot.to_mm);
  return loosened(space(std::max(before.from_mm, before.to_mm - 1e-3), to),
                  before.fixed && slot.fixed, slot.from_mm - before.to_mm);
}

Link Enumeration::last_link() const {
  const Slot& slot = slots_[chosen_.back()];
  const double from = std::max(slot.from_mm, slot.to_mm - 1e-3);
  const bool on_end = slot.fixed && slot.from_mm == problem_.to_mm;
  return loosened(end_distance(problem_.end, from, problem_.to_mm, on_end), slot.fixed,
                  problem_.to_mm - slot.to_mm);
}

/// Two fixed places may be closer than the least distance, and count for nothing then.
Link Enumeration::loosened(Link link, bool both_fixed, double apart_mm) const {
  if (both_fixed && apart_mm < link.bounds.least_mm - 1e-6) link = {{apart_mm, apart_mm}, 0};
  const double loose = slack * problem_.limits.greatest_mm;
  link.bounds.least_mm -= loose;
  link.bounds.greatest_mm += loose;
  return link;
}

/// @param reached  between where and where the last point may stand
void Enumeration::go_on(std::size_t first_slot, Bounds reached) {
  if (chosen_.size() == points_) return finish(first_slot, reached);
  for (std::size_t index = first_slot; index < slots_.size(); ++index) {
    const Slot& slot = slots_[index];
    const Link link = link_to(index);
    const Bounds next{
        std::max(slot.from_mm, reached.least_mm + link.bounds.least_mm),
        std::min(slot.to_mm, reached.greatest_mm + link.bounds.greatest_mm)};
    if (next.least_mm <= next.greatest_mm &&
        link.bounds.least_mm <= link.bounds.greatest_mm) {
      chosen_.push_back(index);
      links_.push_back(link);
      go_on(slot.fixed ? index + 1 : index, next);
      chosen_.pop_back();
      links_.pop_back();
    }
    if (slot.fixed) return;
  }
}

void Enumeration::finish(std::size_t first_slot, Bounds reached) {
  for (std::size_t slot = first_slot; slot < slots_.size(); ++slot)
    if (slots_[slot].fixed && slot != chosen_.back()) return;
  const Link last = last_link();
  if (reached.least_mm + last.bounds.least_mm <= problem_.to_mm &&
      reached.greatest_mm + last.bounds.greatest_mm >= problem_.to_mm)
    solve(last);
}

/// Places are measured from the start of the stretch.
void Enumeration::solve(const Link& last) {
  CGAL::Quadratic_program<double> program(CGAL::SMALLER, false, 0, false, 0);
  const double length = problem_.to_mm - problem_.from_mm;
  std::vector<double> squares(points_, 0);
  int row = 0;
  for (std::size_t index = 0; index < points_; ++index) {
    const int point = static_cast<int>(index);
    const Slot& slot = slots_[chosen_[index]];
    const Link& link = links_[index];
    program.set_l(point, true, slot.from_mm - problem_.from_mm);
    program.set_u(point, true, slot.to_mm - problem_.from_mm);
    for (const double sign : {1, -1}) {
      program.set_a(point, row, sign);
      if (index > 0) program.set_a(point - 1, row, -sign);
      program.set_b(row++, sign > 0 ? link.bounds.greatest_mm : -link.bounds.least_mm);
    }
    squares[index] += link.weight;
    if (index == 0) continue;
    squares[index - 1] += link.weight;
    program.set_d(point, point - 1, -2 * link.weight);
  }
  const int end = static_cast<int>(points_) - 1;
  for (const double sign : {1, -1}) {
    program.set_a(end, row, sign);
    program.set_b(row++, sign > 0 ? length - last.bounds.least_mm
                                  : last.bounds.greatest_mm - length);
  }
  squares.back() += last.weight;
  program.set_c(end, -2 * last.weight * length);
  program.set_c0(last.weight * length * length);
  for (std::size_t index = 0; index < points_; ++index)
    program.set_d(static_cast<int>(index), static_cast<int>(index), 2 * squares[index]);
  const auto solution = CGAL::solve_quadratic_program(program, CGAL::Gmpzf());
  if (!solution.is_optimal()) return;
  const double sum = CGAL::to_double(solution.objective_value());
  if (!best_ || sum < *best_) best_ = sum;
}

}  // namespace

std::optional<double> least_squares_mm2(const SpacingProblem& problem,
                                        std::size_t points,
                                        double largest_mm) {
  return Enumeration(problem, points, largest_mm).best();
}

}  // namespace sheerlap
