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
  bool is_end = false;  ///< a distance to an end that is no space
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
    const bool fixed = std::find(problem.fixed_mm.begin(), problem.fixed_mm.end(),
                                 at) != problem.fixed_mm.end();
    if (is_allowed(at, at)) result.push_back({at, at, fixed});
    if (index + 1 < cuts.size() && is_allowed(at, cuts[index + 1]))
      result.push_back({at, cuts[index + 1], false});
  }
  return result;
}

using Program = CGAL::Quadratic_program<double>;

class Enumeration {
 public:
  Enumeration(const SpacingProblem& problem,
              std::size_t points,
              const SquaresRules& rules)
      : problem_(problem), points_(points), rules_(rules), slots_(slots_of(problem)) {}

  std::optional<SquaresAnswer> best() {
    go_on(0, {problem_.from_mm, problem_.from_mm});
    return best_;
  }

 private:
  void go_on(std::size_t first_slot, Bounds reached);
  void finish(std::size_t first_slot, Bounds reached);
  Link space(double from_mm, double to_mm) const;
  Link end_distance(const StretchEnd& end,
                    double from_mm,
                    double to_mm,
                    bool on_end) const;
  Link link_to(std::size_t slot) const;
  Link last_link() const;
  Link loosened(Link link, bool both_fixed, double apart_mm) const;
  double least_excess(const Link& link, double from_mm, double to_mm) const;
  void solve(const Link& last);
  void add_link(Program& program, std::size_t index, const Link& link) const;

  const SpacingProblem& problem_;
  std::size_t points_;
  SquaresRules rules_;
  std::vector<Slot> slots_;
  std::vector<std::size_t> chosen_;
  std::vector<Link> links_;  ///< to each of the chosen
  double spent_mm_ = 0;      ///< of the excess, at least
  std::optional<SquaresAnswer> best_;
};

Link Enumeration::space(double from_mm, double to_mm) const {
  const SpaceLimits limits = limits_between(problem_, from_mm, to_mm);
  return {{limits.least_mm, std::min(limits.greatest_mm, rules_.largest_mm)}, 1};
}

Link Enumeration::end_distance(const StretchEnd& end,
                               double from_mm,
                               double to_mm,
                               bool on_end) const {
  if (!end.mirrored) return {{end.least_mm, end.greatest_mm}, 0, true};
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
  if (both_fixed && apart_mm < link.bounds.least_mm - 1e-6)
    link = {{apart_mm, apart_mm}, 0};
  const double loose = slack * problem_.limits.greatest_mm;
  link.bounds.least_mm -= loose;
  link.bounds.greatest_mm += loose;
  return link;
}

/// What a link exceeds its limit by, at least.
double Enumeration::least_excess(const Link& link, double from_mm, double to_mm) const {
  return std::max({0.0, link.bounds.least_mm - link.bounds.greatest_mm,
                   to_mm - from_mm - link.bounds.greatest_mm});
}

/// @param reached  between where and where the last point may stand
void Enumeration::go_on(std::size_t first_slot, Bounds reached) {
  if (chosen_.size() == points_) return finish(first_slot, reached);
  for (std::size_t index = first_slot; index < slots_.size(); ++index) {
    const Slot& slot = slots_[index];
    const Link link = link_to(index);
    const double spent = least_excess(link, reached.greatest_mm, slot.from_mm);
    const double most =
        link.bounds.greatest_mm + std::max(rules_.excess_mm - spent_mm_, 0.0);
    const Bounds next{std::max(slot.from_mm, reached.least_mm + link.bounds.least_mm),
                      std::min(slot.to_mm, reached.greatest_mm + most)};
    if (next.least_mm <= next.greatest_mm && spent_mm_ + spent <= rules_.excess_mm) {
      chosen_.push_back(index);
      links_.push_back(link);
      spent_mm_ += spent;
      go_on(slot.fixed ? index + 1 : index, next);
      spent_mm_ -= spent;
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
  const double spent =
      spent_mm_ + least_excess(last, reached.greatest_mm, problem_.to_mm);
  if (reached.least_mm + last.bounds.least_mm <= problem_.to_mm &&
      spent <= rules_.excess_mm)
    solve(last);
}

/// Adds the way from one point to the next, or from or to an end. Places are measured
/// from the start of the stretch; the excesses follow the points.
void Enumeration::add_link(Program& program,
                           std::size_t index,
                           const Link& link) const {
  const double length = problem_.to_mm - problem_.from_mm;
  const int point = static_cast<int>(index);
  const int excess = static_cast<int>(points_ + index);
  const double end = index == points_ ? length : 0;
  for (const double sign : {1, -1}) {
    const int row = 2 * point + (sign > 0 ? 0 : 1);
    if (index < points_) program.set_a(point, row, sign);
    if (index > 0) program.set_a(point - 1, row, -sign);
    if (sign > 0) program.set_a(excess, row, -1);
    program.set_b(
        row, sign > 0 ? link.bounds.greatest_mm - end : end - link.bounds.least_mm);
  }
  program.set_u(excess, true, rules_.excess_mm);
  program.set_a(excess, 2 * static_cast<int>(points_) + 2, 1);
  if (!link.is_end) return;
  program.set_c(excess, 4 * length);
  program.set_d(excess, excess, 2);
}

void Enumeration::solve(const Link& last) {
  Program program(CGAL::SMALLER, true, 0, false, 0);
  const double length = problem_.to_mm - problem_.from_mm;
  std::vector<double> squares(points_, 0);
  for (std::size_t index = 0; index < points_; ++index) {
    const int point = static_cast<int>(index);
    const Slot& slot = slots_[chosen_[index]];
    program.set_l(point, true, slot.from_mm - problem_.from_mm);
    program.set_u(point, true, slot.to_mm - problem_.from_mm);
    add_link(program, index, links_[index]);
    squares[index] += links_[index].weight;
    if (index == 0) continue;
    squares[index - 1] += links_[index].weight;
    program.set_d(point, point - 1, -2 * links_[index].weight);
  }
  add_link(program, points_, last);
  program.set_b(2 * static_cast<int>(points_) + 2, rules_.excess_mm);
  squares.back() += last.weight;
  program.set_c(static_cast<int>(points_) - 1, -2 * last.weight * length);
  program.set_c0(last.weight * length * length);
  for (std::size_t index = 0; index < points_; ++index)
    program.set_d(static_cast<int>(index), static_cast<int>(index), 2 * squares[index]);
  const auto solution = CGAL::solve_quadratic_program(program, CGAL::Gmpzf());
  if (!solution.is_optimal()) return;
  SquaresAnswer answer{CGAL::to_double(solution.objective_value()), {}};
  if (best_ && answer.squares_mm2 >= best_->squares_mm2) return;
  auto value = solution.variable_values_begin();
  for (std::size_t index = 0; index < points_; ++index)
    answer.points_mm.push_back(problem_.from_mm + CGAL::to_double(*value++));
  best_ = std::move(answer);
}

}  // namespace

std::optional<SquaresAnswer> least_squares(const SpacingProblem& problem,
                                           std::size_t points,
                                           const SquaresRules& rules) {
  const SquaresRules loose{rules.largest_mm * (1 + slack), rules.excess_mm};
  return Enumeration(problem, points, loose).best();
}

}  // namespace sheerlap
