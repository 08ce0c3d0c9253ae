#include "joint/sheets/bond_course.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "joint/bond_pass.h"

namespace sheerlap {
namespace {

bool same(const JointLoad& a, const JointLoad& b) {
  return a.along == b.along && a.across == b.across && a.off == b.off;
}

bool over_opening(const PerimeterSide& side, Length from, Length to) {
  return std::any_of(
      side.openings.begin(), side.openings.end(), [&](const OpeningSpan& opening) {
        const Length middle = (opening.sheer_from + opening.sheer_to) / 2;
        return from < middle && middle < to;
      });
}

/// Points in the order of their girth, put together to runs.
class RunMaker {
 public:
  RunMaker(const PerimeterSide& side, const JointLoads& loads)
      : side_(side), loads_(loads) {}

  void add(const BondPoint& point) {
    if (!before_ || over_opening(side_, before_->girth, point.girth)) {
      runs_.push_back({point.mode, {{point.girth, point.utilisation}}});
    } else {
      go_on(point);
    }
    before_ = &point;
  }
  std::vector<CourseRun> release() { return std::move(runs_); }

 private:
  /// The way from one point to the next stands at the level of the one that is loaded
  /// as the way is, up to where the load jumps.
  void go_on(const BondPoint& point) {
    const JointLoad between =
        loads_.at(side_.name, (before_->on_line + point.on_line) / 2);
    std::vector<CourseRun::Point> way;
    if (!same(between, loads_.at(side_.name, before_->on_line)))
      way.push_back({before_->girth, point.utilisation});
    else if (!same(between, loads_.at(side_.name, point.on_line)))
      way.push_back({point.girth, before_->utilisation});
    way.push_back({point.girth, point.utilisation});
    if (runs_.back().mode != point.mode)
      runs_.push_back({point.mode, {runs_.back().points.back()}});
    auto& points = runs_.back().points;
    points.insert(points.end(), way.begin(), way.end());
  }

  const PerimeterSide& side_;
  const JointLoads& loads_;
  const BondPoint* before_ = nullptr;
  std::vector<CourseRun> runs_;
};

Length on_the_sheer(const PerimeterSide& side, Length on_line) {
  return side.sheer.girth_at(side.drill_line.place_at(on_line));
}

/// Adds to a stretch that ends where this starts, or starts a new one.
void carry_on(std::vector<CourseStretch>& stretches, const CourseStretch& more) {
  for (CourseStretch& stretch : stretches)
    if (stretch.what == more.what && !(stretch.to < more.from)) {
      stretch.to = more.to;
      return;
    }
  stretches.push_back(more);
}

std::vector<CourseStretch> partial_loads(const PerimeterSide& side,
                                         const JointLoads& loads) {
  const auto jumps = loads.jumps_on(side.name);
  std::vector<CourseStretch> stretches;
  for (std::size_t i = 1; i < jumps.size(); ++i) {
    const auto shares = loads.shares_at(side.name, (jumps[i - 1] + jumps[i]) / 2);
    for (std::size_t k = loads.all_round().size(); k < shares.size(); ++k)
      carry_on(stretches, {on_the_sheer(side, jumps[i - 1]),
                           on_the_sheer(side, jumps[i]), shares[k].what});
  }
  return stretches;
}

std::vector<CourseStretch> wedge_stretches(const std::vector<const BondPoint*>& points,
                                           const PerimeterSide& side) {
  std::vector<CourseStretch> stretches;
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (is_even(*points[i])) continue;
    const bool goes_on = i > 0 && !is_even(*points[i - 1]) &&
                         !over_opening(side, points[i - 1]->girth, points[i]->girth);
    if (goes_on)
      stretches.back().to = points[i]->girth;
    else
      stretches.push_back({points[i]->girth, points[i]->girth, "wedge"});
  }
  return stretches;
}

BondCourse course(const Job& job, const PerimeterSide& side, const JointLoads& loads) {
  BondCourse made;
  made.side = &side;
  std::vector<const BondPoint*> points;
  for (const BondPoint& point : job.strength->bond.along)
    if (point.side == side.name) points.push_back(&point);
  RunMaker runs(side, loads);
  for (const BondPoint* point : points) runs.add(*point);
  made.runs = runs.release();
  made.loads = partial_loads(side, loads);
  made.wedges = wedge_stretches(points, side);
  for (const OpeningSpan& opening : side.openings)
    made.openings.push_back({opening.sheer_from, opening.sheer_to, opening.what});
  for (const Length jump : loads.jumps_on(side.name))
    made.jumps.push_back(on_the_sheer(side, jump));
  std::erase_if(made.jumps, [&](Length jump) {
    return std::any_of(
        made.openings.begin(), made.openings.end(),
        [&](const auto& one) { return one.from < jump && jump < one.to; });
  });
  return made;
}

}  // namespace

std::vector<BondCourse> bond_courses(const Job& job) {
  // the strength was worked out with the same loads: they cannot be refused here
  const JointLoads loads = *JointLoads::of(job.joint, job.perimeter);
  std::vector<BondCourse> courses;
  for (const PerimeterSide& side : job.perimeter.sides)
    courses.push_back(course(job, side, loads));
  return courses;
}

UseAxis use_axis(const std::vector<double>& uses) {
  constexpr double least_top = 1.2, greatest_top = 4;
  double greatest = 0;
  for (const double use : uses)
    if (std::isfinite(use)) greatest = std::max(greatest, use);
  const double top = std::clamp(1.1 * greatest, least_top, greatest_top);
  const double step = top <= 1.6 ? 0.2 : top <= 2.5 ? 0.5 : 1;
  return {std::ceil(top / step - 1e-9) * step, step};
}

Length girth_step(Length whole, LengthUnit unit) {
  const Length one =
      unit == LengthUnit::Millimetres ? Length::mm(1) : Length::inches(1);
  const double rough = whole / one / 8;
  const double power = std::pow(10, std::floor(std::log10(rough)));
  for (const double factor : {1.0, 2.0, 5.0})
    if (factor * power >= rough) return one * (factor * power);
  return one * (10 * power);
}

std::vector<std::size_t> rows_apart(
    const std::vector<std::pair<double, double>>& extents) {
  std::vector<std::size_t> rows;
  std::vector<double> taken;  // by row, up to where
  for (const auto& [from, to] : extents) {
    std::size_t row = 0;
    while (row < taken.size() && from < taken[row]) ++row;
    if (row == taken.size()) taken.push_back(to);
    taken[row] = to;
    rows.push_back(row);
  }
  return rows;
}

}  // namespace sheerlap
