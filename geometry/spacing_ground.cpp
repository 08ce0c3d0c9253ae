#include "geometry/spacing_ground.h"

#include <algorithm>
#include <bit>

namespace sheerlap {
namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

/// Places closer than this part of the scale are one.
constexpr double same_place = 1e-9;
/// An end distance needs room for rounding, not a tolerance.
constexpr double end_rounding = 4e-12;
/// The weight of a squared end distance: it only decides between placings whose spaces
/// are alike, as no space is worth so little.
constexpr double end_weight = 1e-9;

SpaceLimits tightest(const SpaceLimits& one, const SpaceLimits& other) {
  return {std::max(one.least_mm, other.least_mm),
          std::min(one.greatest_mm, other.greatest_mm)};
}

/// The values in order, none twice.
std::vector<double> ordered(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  values.erase(std::unique(values.begin(), values.end()), values.end());
  return values;
}

}  // namespace

SpacingGround::SpacingGround(const SpacingProblem& problem,
                             const SpacingGiveWay& give_way)
    : problem_(problem) {
  measure_limits();
  cut_into_parts();
  cut_into_cells(give_way);
  mark_fixed(give_way);
}

void SpacingGround::measure_limits() {
  const double length = problem_.to_mm - problem_.from_mm;
  extremes_ = problem_.limits;
  double loosest = problem_.limits.greatest_mm;
  for (const SpaceZone& zone : problem_.zones) {
    extremes_ = tightest(extremes_, zone.limits);
    loosest = std::max(loosest, zone.limits.greatest_mm);
  }
  scale_mm_ =
      length > 0 ? std::min(extremes_.greatest_mm, length) : extremes_.greatest_mm;
  largest_space_mm_ =
      std::min(loosest, 2 * length) + 2 * slack_mm({0, loosest, 1, 1}, 2e-9);
}

void SpacingGround::cut_into_parts() {
  part_edges_ = {problem_.from_mm, problem_.to_mm};
  for (const SpaceZone& zone : problem_.zones)
    for (const double edge : {zone.from_mm, zone.to_mm})
      if (edge > problem_.from_mm && edge < problem_.to_mm) part_edges_.push_back(edge);
  part_edges_ = ordered(part_edges_);

  part_limits_.resize(1);
  for (std::size_t part = 0; part + 1 < part_edges_.size(); ++part) {
    SpaceLimits own{0, infinity};
    bool in_zone = false;
    for (const SpaceZone& zone : problem_.zones) {
      if (zone.from_mm > part_edges_[part] || zone.to_mm < part_edges_[part + 1])
        continue;
      own = tightest(own, zone.limits);
      in_zone = true;
    }
    part_limits_[0].push_back(in_zone ? own : problem_.limits);
  }
  for (std::size_t width = 2; width < part_edges_.size(); width *= 2) {
    const std::vector<SpaceLimits>& half = part_limits_.back();
    std::vector<SpaceLimits> whole;
    for (std::size_t part = 0; part + width < part_edges_.size(); ++part)
      whole.push_back(tightest(half[part], half[part + width / 2]));
    part_limits_.push_back(std::move(whole));
  }
}

SpaceLimits SpacingGround::limits(int first_part, int last_part) const {
  const auto count = static_cast<std::size_t>(last_part - first_part) + 1;
  const auto level = static_cast<std::size_t>(std::bit_width(count) - 1);
  const auto first = static_cast<std::size_t>(first_part);
  const std::vector<SpaceLimits>& run = part_limits_[level];
  return tightest(run[first], run[first + count - (std::size_t{1} << level)]);
}

/// The allowed ground: what no forbidden interval covers, its ends included.
std::vector<Forbidden> SpacingGround::windows() const {
  std::vector<Forbidden> forbidden = problem_.forbidden;
  std::erase_if(forbidden, [&](const Forbidden& gap) {
    return gap.from_mm >= gap.to_mm || gap.to_mm <= problem_.from_mm ||
           gap.from_mm >= problem_.to_mm;
  });
  std::sort(forbidden.begin(), forbidden.end(), [](const auto& one, const auto& other) {
    return one.from_mm < other.from_mm;
  });
  std::vector<Forbidden> result;
  double from = problem_.from_mm;
  for (const Forbidden& gap : forbidden) {
    if (gap.from_mm >= from) result.push_back({from, gap.from_mm});
    from = std::max(from, gap.to_mm);
  }
  if (from <= problem_.to_mm) result.push_back({from, problem_.to_mm});
  return result;
}

void SpacingGround::add_cell(double from_mm, double to_mm, bool fixed) {
  const double hair = same_place * scale_mm_;
  const auto part_of = [&](auto edge) {
    return static_cast<int>(edge - part_edges_.begin()) - 1;
  };
  SpacingCell cell{from_mm, to_mm, 0, 0, fixed};
  const double middle = (from_mm + to_mm) / 2;
  const double reach = from_mm == to_mm ? hair : 0;
  cell.right_part =
      part_of(std::upper_bound(part_edges_.begin(), part_edges_.end(), middle + reach));
  cell.left_part =
      part_of(std::lower_bound(part_edges_.begin(), part_edges_.end(), middle - reach));
  cells_.push_back(cell);
}

void SpacingGround::add_window(const Forbidden& window,
                               const std::vector<double>& fixed) {
  std::vector<double> cuts{window.from_mm, window.to_mm};
  const auto inside = [&](double at) {
    return at >= window.from_mm && at <= window.to_mm;
  };
  std::copy_if(fixed.begin(), fixed.end(), std::back_inserter(cuts), inside);
  for (const double edge : part_edges_) {
    if (!inside(edge)) continue;
    cuts.push_back(edge);
    const bool divides = edge > problem_.from_mm && edge < problem_.to_mm;
    if (divides && window.from_mm < window.to_mm) add_cell(edge, edge, false);
  }
  cuts = ordered(cuts);
  if (cuts.size() == 1) add_cell(cuts[0], cuts[0], false);
  for (std::size_t cut = 0; cut + 1 < cuts.size(); ++cut)
    add_cell(cuts[cut], cuts[cut + 1], false);
}

void SpacingGround::cut_into_cells(const SpacingGiveWay& give_way) {
  std::vector<double> fixed = problem_.fixed_mm;
  fixed.insert(fixed.end(), give_way.points_mm.begin(), give_way.points_mm.end());
  fixed = ordered(fixed);
  const auto same = [&](double one, double other) {
    return other - one <= same_place * scale_mm_;
  };
  fixed.erase(std::unique(fixed.begin(), fixed.end(), same), fixed.end());

  for (const double at : fixed) add_cell(at, at, true);
  for (const Forbidden& window : windows()) add_window(window, fixed);
  std::sort(cells_.begin(), cells_.end(), [](const auto& one, const auto& other) {
    if (one.from_mm != other.from_mm) return one.from_mm < other.from_mm;
    if (one.to_mm != other.to_mm) return one.to_mm < other.to_mm;
    return one.fixed > other.fixed;
  });
  const int parts = static_cast<int>(part_edges_.size()) - 1;
  const SpacingCell start{problem_.from_mm, problem_.from_mm, 0, -1, true};
  cells_.insert(cells_.begin(), start);
  cells_.push_back({problem_.to_mm, problem_.to_mm, parts, parts - 1, true});
}

void SpacingGround::mark_fixed(const SpacingGiveWay& give_way) {
  next_fixed_.assign(cells_.size(), end());
  for (std::size_t cell = end(); cell-- > 0;)
    next_fixed_[cell] = cells_[cell + 1].fixed ? cell + 1 : next_fixed_[cell + 1];

  given_up_.assign(cells_.size(), false);
  given_up_[start()] = give_way.at_start;
  for (std::size_t cell = 1; cell < end(); ++cell)
    given_up_[cell] = cells_[cell].fixed &&
                      std::find(give_way.after_mm.begin(), give_way.after_mm.end(),
                                cells_[cell].from_mm) != give_way.after_mm.end();
}

SpacingStep SpacingGround::asked(std::size_t from, std::size_t to) const {
  const bool at_end = from == start() || to == end();
  const StretchEnd& stretch_end = from == start() ? problem_.start : problem_.end;
  if (at_end && !stretch_end.mirrored)
    return {stretch_end.least_mm, stretch_end.greatest_mm, end_weight, 0,
            4 * (problem_.to_mm - problem_.from_mm)};
  const int first = cells_[from].right_part;
  const int last = cells_[to].left_part;
  if (first > last) {  // no ground between: only a fixed place may be on a mirrored end
    const bool on_end = at_end && cells_[from].fixed && cells_[to].fixed;
    if (on_end) return {0, same_place * scale_mm_};
    return {infinity, infinity, 1, 1};
  }
  const SpaceLimits both = limits(first, last);
  if (at_end) return {both.least_mm / 2, both.greatest_mm / 2, 2, 2};
  return {both.least_mm, both.greatest_mm, 1, 1};
}

double SpacingGround::slack_mm(const SpacingStep& asked, double slack) const {
  const double length = problem_.to_mm - problem_.from_mm;
  if (slack == 0) return 0;
  if (asked.spaces > 0) return slack * std::min(asked.greatest_mm, length);
  return (0.01 * slack + end_rounding) * scale_mm_;
}

SpacingStep SpacingGround::step(std::size_t from,
                                std::size_t to,
                                const SpacingAllowance& allowance) const {
  const bool both_fixed = cells_[from].fixed && next_fixed_[from] == to;
  const double apart = cells_[to].from_mm - cells_[from].to_mm;
  const double hair = same_place * scale_mm_;
  if (both_fixed && given_up_[from]) return {apart - hair, apart + hair};
  SpacingStep step = asked(from, to);
  const double slack = slack_mm(step, allowance.slack);
  step.least_mm -= slack;
  step.greatest_mm += slack;
  if (both_fixed && apart < step.least_mm) {  // below the least limit, whatever is done
    step.least_mm = apart - hair;
    step.weight = step.spaces = 0;
  }
  if (step.spaces > 0)
    step.greatest_mm = std::min(step.greatest_mm, allowance.largest_mm / step.spaces);
  return step;
}

}  // namespace sheerlap
