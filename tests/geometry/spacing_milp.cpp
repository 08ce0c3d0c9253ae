#include "tests/geometry/spacing_milp.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "tests/geometry/linear_programme.h"
#include "tests/geometry/spacing_rules.h"

namespace sheerlap {
namespace {

using Sum = LinearSum;

/// One end of a space: where it is, and its answers to "is it at or after this edge".
struct Side {
  Sum at;
  std::vector<Sum> after;  ///< by edge; as the right or the left end of a space
};

/// No length in the problem is longer.
double longest_mm(const SpacingProblem& problem) {
  double longest = 2 * (problem.to_mm - problem.from_mm) + problem.limits.least_mm;
  const auto reach = [&](double from_mm, double to_mm) {
    longest += std::abs(from_mm - problem.from_mm) + std::abs(to_mm - problem.from_mm);
  };
  for (const SpaceZone& zone : problem.zones) {
    longest += zone.limits.greatest_mm;
    reach(zone.from_mm, zone.to_mm);
  }
  for (const Forbidden& gap : problem.forbidden) reach(gap.from_mm, gap.to_mm);
  return longest + problem.start.least_mm + problem.end.least_mm;
}

class Model {
 public:
  Model(const SpacingProblem& problem, std::size_t points, MilpGoal goal)
      : problem_(problem),
        scale_(problem.limits.greatest_mm),
        goal_(goal),
        count_(points) {
    big_ = longest_mm(problem) / scale_;
    for (const SpaceZone& zone : problem.zones) {
      edges_.push_back(zone.from_mm);
      edges_.push_back(zone.to_mm);
    }
    merge_zones();
    largest_ = programme_.number(goal == MilpGoal::SmallestLargest ? 1 : 0, big_);
    for (std::size_t point = 0; point < points; ++point) add_point(point);
    require_fixed();
    for (std::size_t link = 0; link <= points; ++link) add_link(link);
  }

  std::optional<MilpAnswer> solve() {
    const auto values = programme_.solve();
    if (!values) return std::nullopt;
    MilpAnswer answer{values->front() * scale_, {}};
    for (const int point : points_)
      answer.points_mm.push_back(problem_.from_mm +
                                 (*values)[static_cast<std::size_t>(point)] * scale_);
    return answer;
  }

 private:
  double scaled(double at_mm) const { return (at_mm - problem_.from_mm) / scale_; }
  void require(const Sum& sum) { programme_.require(sum); }
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
  void add_limits(const Sum& space,
                  const SpaceLimits& limits,
                  const Sum& unless,
                  const Sum& close,
                  const Sum& excess);
  double least_of_all() const;
  void add_space(std::size_t link, double factor, const Sum& close, int excess);

  const SpacingProblem& problem_;
  double scale_;
  double big_ = 0;
  LinearProgramme programme_;
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
    const int after = programme_.yes_or_no();
    const Sum no = constant_sum(1).add(-1, after);
    require(variable_sum(points_[point]), constant_sum(scaled(edges_[edge])),
            variable_sum(after));
    require(constant_sum(scaled(edges_[edge])), variable_sum(points_[point]), no);
    if (point > 0) require(variable_sum(before[point - 1][edge]).add(-1, after));
    result.push_back(after);
  }
  return result;
}

void Model::add_point(std::size_t point) {
  const double length = scaled(problem_.to_mm);
  points_.push_back(programme_.number(0, length));
  right_after_.push_back(answers(point, right_after_));
  left_after_.push_back(answers(point, left_after_));
  after_forbidden_.emplace_back();
  for (std::size_t index = 0; index < problem_.forbidden.size(); ++index) {
    const Forbidden& gap = problem_.forbidden[index];
    const int after = programme_.yes_or_no();
    after_forbidden_.back().push_back(after);
    if (!(gap.from_mm < gap.to_mm)) continue;
    require(variable_sum(points_[point]), constant_sum(scaled(gap.from_mm)),
            variable_sum(after));
    require(constant_sum(scaled(gap.to_mm)), variable_sum(points_[point]),
            constant_sum(1).add(-1, after));
    if (point > 0)
      require(variable_sum(after_forbidden_[point - 1][index]).add(-1, after));
  }
  fixed_.emplace_back();
  for (const double at : problem_.fixed_mm) {
    const int here = programme_.yes_or_no();
    fixed_.back().push_back(here);
    require(variable_sum(points_[point]), constant_sum(scaled(at)),
            constant_sum(1).add(-1, here));
    require(constant_sum(scaled(at)), variable_sum(points_[point]),
            constant_sum(1).add(-1, here));
  }
}

void Model::require_fixed() {
  for (std::size_t place = 0; place < problem_.fixed_mm.size(); ++place) {
    Sum missing = constant_sum(1);
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
    result.at = constant_sum(scaled(at));
    for (std::size_t edge = 0; edge < edges_.size(); ++edge)
      result.after.push_back(
          constant_sum(right ? at > edges_[edge] : at >= edges_[edge]));
    return result;
  }
  result.at = variable_sum(points_[stop - 1]);
  for (const int after : right ? right_after_[stop - 1] : left_after_[stop - 1])
    result.after.push_back(variable_sum(after));
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
    const int both = programme_.yes_or_no();
    if (!at_start) require(variable_sum(both).add(-1, here(link - 1, space.from_mm)));
    if (!at_end) require(variable_sum(both).add(-1, here(link, space.to_mm)));
    result.add(1, both);
  }
  return result;
}

void Model::add_limits(const Sum& space,
                       const SpaceLimits& limits,
                       const Sum& unless,
                       const Sum& close,
                       const Sum& excess) {
  require(Sum(space).add(-1, excess), constant_sum(limits.greatest_mm / scale_),
          unless);
  require(constant_sum(limits.least_mm / scale_), space, Sum(unless).add(1, close));
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
        constant_sum(1).add(-1, right.after[2 * zone]).add(1, left.after[2 * zone + 1]);
    add_limits(space, problem_.zones[zone].limits, outside, close, over);
  }
  Sum inside;
  for (const auto& [from, to] : covered_) {
    const int within = programme_.yes_or_no();
    require(variable_sum(within).add(-1, left.after[from]));
    require(variable_sum(within).add(1, right.after[to]).add(-1, constant_sum(1)));
    inside.add(1, within);
  }
  add_limits(space, problem_.limits, inside, close, over);
  require(constant_sum(least_of_all()), space,
          close);  // on an edge it overlaps no zone
  require(space, variable_sum(largest_), close);
}

void Model::add_link(std::size_t link) {
  const bool at_start = link == 0;
  const bool at_end = link == count_;
  const double most = goal_ == MilpGoal::LeastExcess ? big_ : 0;
  const int excess = programme_.number(goal_ == MilpGoal::LeastExcess ? 1 : 0, most);
  const Sum close = too_close(link);
  if (!at_start && !at_end) return add_space(link, 1, close, excess);
  const StretchEnd& end = at_start ? problem_.start : problem_.end;
  const double on_end = at_start ? problem_.from_mm : problem_.to_mm;
  const auto& fixed = problem_.fixed_mm;
  if (!end.mirrored) {
    const Sum distance =
        Sum().add(1, side(link + 1, true).at).add(-1, side(link, false).at);
    add_limits(distance, {end.least_mm, end.greatest_mm}, {}, close,
               variable_sum(excess));
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
