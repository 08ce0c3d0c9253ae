#include "tests/geometry/spacing_milp.h"

#include <glpk.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <memory>
#include <utility>

#include "tests/geometry/spacing_rules.h"

namespace sheerlap {
namespace {

/// A sum of columns times factors, and a constant.
struct Sum {
  std::vector<std::pair<int, double>> terms;
  double constant = 0;

  Sum& add(double factor, int column) {
    terms.emplace_back(column, factor);
    return *this;
  }
  Sum& add(double factor, const Sum& other) {
    for (const auto& [column, own] : other.terms) terms.emplace_back(column, factor * own);
    constant += factor * other.constant;
    return *this;
  }
};

Sum constant(double value) { return {{}, value}; }
Sum column(int index) { return {{{index, 1}}, 0}; }

/// One end of a space: where it is, and its answers to "is it at or after this edge".
struct Side {
  Sum at;
  std::vector<Sum> after;  ///< by edge; as the right or the left end of a space
  Sum fixed;               ///< 1 where it is fixed
};

class Model {
 public:
  Model(const SpacingProblem& problem, std::size_t points, MilpGoal goal)
      : problem_(problem),
        scale_(problem.limits.greatest_mm),
        glpk_(glp_create_prob(), glp_delete_prob),
        goal_(goal),
        count_(points) {
    double longest = 2 * (problem.to_mm - problem.from_mm) + problem.limits.least_mm;
    const auto reach = [&](double from_mm, double to_mm) {
      longest += std::abs(from_mm - problem.from_mm) + std::abs(to_mm - problem.from_mm);
    };
    for (const SpaceZone& zone : problem.zones) {
      longest += zone.limits.greatest_mm;
      reach(zone.from_mm, zone.to_mm);
    }
    for (const Forbidden& gap : problem.forbidden) reach(gap.from_mm, gap.to_mm);
    big_ = (longest + problem.start.least_mm + problem.end.least_mm) / scale_;
    for (const SpaceZone& zone : problem.zones) {
      edges_.push_back(zone.from_mm);
      edges_.push_back(zone.to_mm);
    }
    merge_zones();
    largest_ = add_column(goal == MilpGoal::SmallestLargest ? 1 : 0, big_, false);
    for (std::size_t point = 0; point < points; ++point) add_point(point);
    require_fixed();
    for (std::size_t link = 0; link <= points; ++link) add_link(link);
  }

  std::optional<MilpAnswer> solve() {
    glp_iocp options;
    glp_init_iocp(&options);
    options.msg_lev = GLP_MSG_OFF;
    options.presolve = GLP_ON;
    options.cov_cuts = GLP_ON;
    options.tol_int = 1e-9;
    glp_term_out(GLP_OFF);
    if (glp_intopt(glpk_.get(), &options) != 0) return std::nullopt;
    if (glp_mip_status(glpk_.get()) != GLP_OPT) return std::nullopt;
    MilpAnswer answer{glp_mip_obj_val(glpk_.get()) * scale_, {}};
    for (const int point : points_)
      answer.points_mm.push_back(problem_.from_mm +
                                 glp_mip_col_val(glpk_.get(), point) * scale_);
    return answer;
  }

 private:
  double scaled(double at_mm) const { return (at_mm - problem_.from_mm) / scale_; }

  int add_column(double cost, double greatest, bool whole) {
    const int index = glp_add_cols(glpk_.get(), 1);
    glp_set_obj_coef(glpk_.get(), index, cost);
    if (whole)
      glp_set_col_kind(glpk_.get(), index, GLP_BV);
    else
      glp_set_col_bnds(glpk_.get(), index, greatest > 0 ? GLP_DB : GLP_FX, 0, greatest);
    return index;
  }
  int yes_or_no() { return add_column(0, 1, true); }

  /// The sum is no more than zero.
  void require(const Sum& sum) {
    std::vector<int> columns{0};
    std::vector<double> factors{0};
    for (const auto& [index, factor] : sum.terms) {
      const auto known = std::find(columns.begin() + 1, columns.end(), index);
      if (known != columns.end()) {
        factors[static_cast<std::size_t>(known - columns.begin())] += factor;
        continue;
      }
      columns.push_back(index);
      factors.push_back(factor);
    }
    const int row = glp_add_rows(glpk_.get(), 1);
    glp_set_row_bnds(glpk_.get(), row, GLP_UP, 0, -sum.constant);
    glp_set_mat_row(glpk_.get(), row, static_cast<int>(columns.size()) - 1,
                    columns.data(), factors.data());
  }
  /// One is no more than the other if `unless` is zero.
  void require(const Sum& one, const Sum& other, const Sum& unless) {
    require(Sum(one).add(-1, other).add(-big_, unless));
  }

  void merge_zones();
  void add_point(std::size_t point);
  std::vector<int> answers(std::size_t point, std::vector<std::vector<int>>& before);
  void require_fixed();
  Side side(std::size_t stop, bool right) const;
  Sum too_close(std::size_t link);
  void add_link(std::size_t link);
  void add_limits(const Sum& space, const SpaceLimits& limits, const Sum& unless,
                  const Sum& close, const Sum& excess);
  double least_of_all() const;
  void add_space(std::size_t link, double factor, const Sum& close, int excess);

  const SpacingProblem& problem_;
  double scale_;
  double big_ = 0;
  std::unique_ptr<glp_prob, void (*)(glp_prob*)> glpk_;
  MilpGoal goal_;
  std::size_t count_;
  std::vector<double> edges_;  ///< two by two, of the zones
  /// The ground that zones cover, by the edges it starts and ends with.
  std::vector<std::pair<std::size_t, std::size_t>> covered_;
  int largest_ = 0;
  std::vector<int> points_;
  std::vector<std::vector<int>> after_forbidden_;  ///< [point][interval]
  std::vector<std::vector<int>> right_after_;      ///< [point][edge], ends a space
  std::vector<std::vector<int>> left_after_;       ///< [point][edge], starts a space
  std::vector<std::vector<int>> fixed_;            ///< [point][fixed place]
};

void Model::merge_zones() {
  std::vector<std::size_t> order;
  for (std::size_t zone = 0; zone < problem_.zones.size(); ++zone)
    if (edges_[2 * zone] < edges_[2 * zone + 1]) order.push_back(zone);
  std::sort(order.begin(), order.end(), [&](std::size_t one, std::size_t other) {
    return edges_[2 * one] < edges_[2 * other];
  });
  for (const std::size_t zone : order) {
    if (covered_.empty() || edges_[covered_.back().second] < edges_[2 * zone])
      covered_.emplace_back(2 * zone, 2 * zone + 1);
    else if (edges_[covered_.back().second] < edges_[2 * zone + 1])
      covered_.back().second = 2 * zone + 1;
  }
}

/// A point's yes or no to each edge, kept in step with the place and with the point
/// before it.
std::vector<int> Model::answers(std::size_t point,
                                std::vector<std::vector<int>>& before) {
  std::vector<int> result;
  for (std::size_t edge = 0; edge < edges_.size(); ++edge) {
    const int after = yes_or_no();
    const Sum no = constant(1).add(-1, after);
    require(column(points_[point]), constant(scaled(edges_[edge])), column(after));
    require(constant(scaled(edges_[edge])), column(points_[point]), no);
    if (point > 0) require(column(before[point - 1][edge]).add(-1, after));
    result.push_back(after);
  }
  return result;
}

void Model::add_point(std::size_t point) {
  const double length = scaled(problem_.to_mm);
  points_.push_back(add_column(0, length, false));
  right_after_.push_back(answers(point, right_after_));
  left_after_.push_back(answers(point, left_after_));
  after_forbidden_.emplace_back();
  for (std::size_t index = 0; index < problem_.forbidden.size(); ++index) {
    const Forbidden& gap = problem_.forbidden[index];
    const int after = yes_or_no();
    after_forbidden_.back().push_back(after);
    if (!(gap.from_mm < gap.to_mm)) continue;
    require(column(points_[point]), constant(scaled(gap.from_mm)), column(after));
    require(constant(scaled(gap.to_mm)), column(points_[point]),
            constant(1).add(-1, after));
    if (point > 0) require(column(after_forbidden_[point - 1][index]).add(-1, after));
  }
  fixed_.emplace_back();
  for (const double at : problem_.fixed_mm) {
    const int here = yes_or_no();
    fixed_.back().push_back(here);
    require(column(points_[point]), constant(scaled(at)), constant(1).add(-1, here));
    require(constant(scaled(at)), column(points_[point]), constant(1).add(-1, here));
  }
}

void Model::require_fixed() {
  for (std::size_t place = 0; place < problem_.fixed_mm.size(); ++place) {
    Sum missing = constant(1);
    for (std::size_t point = 0; point < count_; ++point)
      missing.add(-1, fixed_[point][place]);
    require(missing);
  }
}

/// The start, a point or the end.
Side Model::side(std::size_t stop, bool right) const {
  Side result;
  if (stop == 0 || stop == count_ + 1) {
    const double at = stop == 0 ? problem_.from_mm : problem_.to_mm;
    result.at = constant(scaled(at));
    for (std::size_t edge = 0; edge < edges_.size(); ++edge)
      result.after.push_back(
          constant(right ? at > edges_[edge] : at >= edges_[edge]));
    result.fixed = constant(1);
    return result;
  }
  result.at = column(points_[stop - 1]);
  for (const int after : right ? right_after_[stop - 1] : left_after_[stop - 1])
    result.after.push_back(column(after));
  return result;
}

/// 1 if both ends of the link are neighbouring fixed places closer than the least
/// space: that cannot be helped.
Sum Model::too_close(std::size_t link) {
  std::vector<double> fixed = problem_.fixed_mm;
  std::sort(fixed.begin(), fixed.end());
  fixed.erase(std::unique(fixed.begin(), fixed.end()), fixed.end());
  Sum result;
  if (fixed.empty()) return result;
  const auto here = [&](std::size_t point, double at) {
    const auto place =
        std::find(problem_.fixed_mm.begin(), problem_.fixed_mm.end(), at);
    return fixed_[point][static_cast<std::size_t>(place - problem_.fixed_mm.begin())];
  };
  const bool has_start = !problem_.start.mirrored || fixed.front() > problem_.from_mm;
  const bool has_end = !problem_.end.mirrored || fixed.back() < problem_.to_mm;
  const std::vector<JudgedSpace> spaces = judged(problem_, fixed);
  for (const JudgedSpace& space : spaces) {
    if (space.space_mm >= space.limits.least_mm - 1e-6) continue;
    const bool at_start = &space == &spaces.front() && has_start;
    const bool at_end = &space == &spaces.back() && has_end;
    if (at_start != (link == 0) || at_end != (link == count_)) continue;
    const int both = yes_or_no();
    if (!at_start)
      require(column(both).add(-1, here(link - 1, space.from_mm)));
    if (!at_end) require(column(both).add(-1, here(link, space.to_mm)));
    result.add(1, both);
  }
  return result;
}

void Model::add_limits(const Sum& space,
                       const SpaceLimits& limits,
                       const Sum& unless,
                       const Sum& close,
                       const Sum& excess) {
  require(Sum(space).add(-1, excess), constant(limits.greatest_mm / scale_), unless);
  require(constant(limits.least_mm / scale_), space, Sum(unless).add(1, close));
}

double Model::least_of_all() const {
  double least = problem_.limits.least_mm;
  for (const SpaceZone& zone : problem_.zones)
    least = std::min(least, zone.limits.least_mm);
  return least / scale_;
}

/// A space: `factor` times the distance between two stops.
void Model::add_space(std::size_t link, double factor, const Sum& close, int excess) {
  const Side left = side(link, false);
  const Side right = side(link + 1, true);
  const Sum space = Sum().add(factor, right.at).add(-factor, left.at);
  const Sum over = Sum().add(factor, excess);
  for (std::size_t zone = 0; zone < problem_.zones.size(); ++zone) {
    if (!(edges_[2 * zone] < edges_[2 * zone + 1])) continue;
    const Sum outside =
        constant(1).add(-1, right.after[2 * zone]).add(1, left.after[2 * zone + 1]);
    add_limits(space, problem_.zones[zone].limits, outside, close, over);
  }
  Sum inside;
  for (const auto& [from, to] : covered_) {
    const int within = yes_or_no();
    require(column(within).add(-1, left.after[from]));
    require(column(within).add(1, right.after[to]).add(-1, constant(1)));
    inside.add(1, within);
  }
  add_limits(space, problem_.limits, inside, close, over);
  require(constant(least_of_all()), space, close);  // on an edge it overlaps no zone
  require(space, column(largest_), close);
}

void Model::add_link(std::size_t link) {
  const bool at_start = link == 0;
  const bool at_end = link == count_;
  const double most = goal_ == MilpGoal::LeastExcess ? big_ : 0;
  const int excess = add_column(goal_ == MilpGoal::LeastExcess ? 1 : 0, most, false);
  const Sum close = too_close(link);
  if (!at_start && !at_end) return add_space(link, 1, close, excess);
  const StretchEnd& end = at_start ? problem_.start : problem_.end;
  const double on_end = at_start ? problem_.from_mm : problem_.to_mm;
  const auto& fixed = problem_.fixed_mm;
  if (!end.mirrored) {
    const Sum distance = Sum().add(1, side(link + 1, true).at)
                             .add(-1, side(link, false).at);
    add_limits(distance, {end.least_mm, end.greatest_mm}, {}, close, column(excess));
  } else if (std::find(fixed.begin(), fixed.end(), on_end) == fixed.end()) {
    add_space(link, 2, close, excess);
  }
}

}  // namespace

std::optional<MilpAnswer> milp_spacing(const SpacingProblem& problem,
                                       std::size_t points,
                                       MilpGoal goal) {
  return Model(problem, points, goal).solve();
}

}  // namespace sheerlap
