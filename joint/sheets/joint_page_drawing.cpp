#include "joint/sheets/joint_page_drawing.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "joint/documents/text_table.h"
#include "joint/sheets/html_text.h"

namespace sheerlap {
namespace {

/// Where a name stands off its place, in heights of the lettering.
struct NameShift {
  double outboard;
  double along;
};

/// Clear of the fit's line and its letters.
constexpr double nearest_inboard = -3.3;

/// The places to try for a name, the best first.
std::vector<NameShift> name_shifts(NamePlace where) {
  std::vector<NameShift> shifts;
  for (const double outboard : {nearest_inboard, -4.6, -5.9})
    for (const double along : {0.0, 1.2, -1.2}) shifts.push_back({outboard, along});
  for (const double outboard : {nearest_inboard, -4.6, -5.9})
    for (const double along : {2.4, -2.4, 3.6, -3.6})
      shifts.push_back({outboard, along});
  if (where == NamePlace::InboardOrBeyondTheMarks)
    for (const double along : {0.0, 1.2, -1.2, 2.4, -2.4, 3.6, -3.6})
      shifts.push_back({3.6, along});
  return shifts;
}

/// A level name as drawn, and the line it stands on (model, mm).
struct LevelName {
  Point2 at;  ///< its point nearest to the place it names
  Point2 from;
  Point2 to;
  std::string svg;
};

/// A name beside a place: beyond it, or centred where its line runs fore and aft.
LevelName level_name(const PlanDrawing& plan,
                     const PlanPoint& at,
                     double outboard_mm,
                     const std::string& text) {
  const double run_mm = 0.5 * plan.letter_mm * static_cast<double>(width_of(text));
  const double way = std::copysign(1, outboard_mm) * at.outboard.x();
  // outboard stand the marks, which it is to keep off
  const double centred = outboard_mm > 0 ? 0.1 : 0.5;
  const double start = way > centred ? 0 : way < -centred ? -1 : -0.5;
  LevelName name;
  name.at = at.point + outboard_mm * at.outboard;
  name.from = name.at + Vector2(start * run_mm, 0);
  name.to = name.from + Vector2(run_mm, 0);
  const Point2 place = drawn_point(name.at);
  name.svg = fmt::format(
      "<text class=\"name\" x=\"{}\" y=\"{}\" text-anchor=\"{}\">{}</text>\n",
      coordinate(place.x()), coordinate(place.y() + 0.35 * plan.letter_mm),
      start == 0      ? "start"
      : start == -0.5 ? "middle"
                      : "end",
      html_text(text));
  return name;
}

/// A thin line from a place of the drill line to its name.
std::string leader(const PlanDrawing& plan, const PlanPoint& at, const Point2& name) {
  const Vector2 way = (name - at.point).normalized();
  const Point2 from = drawn_point(at.point + plan.letter_mm * way);
  const Point2 to = drawn_point(name - 0.7 * plan.letter_mm * way);
  return fmt::format("<path class=\"leader\" d=\"M{} {}L{} {}\"/>\n",
                     coordinate(from.x()), coordinate(from.y()), coordinate(to.x()),
                     coordinate(to.y()));
}

}  // namespace

PlanDrawing plan_drawing(const Job& job, const NumberStyle& style) {
  PlanDrawing plan{job, style, {}, {}, 0, 0, {}};
  for (const PerimeterSide& side : job.perimeter.sides)
    for (const Point2& point :
         plan_line(side.drill_line, {Length(), side.drill_line_length, 0, 1}))
      plan.box.extend(drawn_point(point));
  const double extent = std::max(plan.box.sizes().x(), 2 * plan.box.sizes().y());
  plan.letter_mm = extent / 90;
  plan.within_mm = extent / 20000;
  return plan;
}

std::string coordinate(double value) { return at_most_decimals(value, 3); }

std::vector<Point2> drawn_points(const std::vector<Point2>& points) {
  std::vector<Point2> result;
  for (const Point2& point : points) result.push_back(drawn_point(point));
  return result;
}

std::string plan_path(const PlanDrawing& plan,
                      const SideLine& along,
                      const PlanStretch& stretch,
                      const std::string& kind) {
  const PlanStretch true_stretch{stretch.from, stretch.to, stretch.outboard_mm,
                                 plan.within_mm};
  return fmt::format("<path class=\"{}\" d=\"{}\"/>\n", kind,
                     path_data(drawn_points(plan_line(along, true_stretch)), 1));
}

std::string plan_band(const PlanDrawing& plan,
                      const PerimeterSide& side,
                      Length from,
                      Length to,
                      const std::string& kind) {
  const double half_mm = 0.8 * plan.letter_mm;
  auto outline = plan_line(side.drill_line, {from, to, half_mm, plan.within_mm});
  const auto back = plan_line(side.drill_line, {from, to, -half_mm, plan.within_mm});
  outline.insert(outline.end(), back.rbegin(), back.rend());
  return fmt::format("<path class=\"{}\" d=\"{}Z\"/>", kind,
                     path_data(drawn_points(outline), 1));
}

std::string lettering(const PlanDrawing& plan,
                      const PlanPoint& at,
                      double outboard_mm,
                      const std::string& text,
                      const std::string& kind) {
  const Point2 place = drawn_point(at.point + outboard_mm * at.outboard);
  const Vector2 way = drawn_point(std::copysign(1, outboard_mm) * at.outboard);
  double angle = std::atan2(way.y(), way.x()) * 180 / std::numbers::pi;
  const bool turned = angle <= -135 || angle > 45;
  if (turned) angle += angle > 0 ? -180 : 180;
  return fmt::format(
      "<text class=\"{}\" transform=\"translate({} {}) rotate({})\" dy=\"{}\"{}>{}"
      "</text>",
      kind, coordinate(place.x()), coordinate(place.y()), at_most_decimals(angle, 1),
      at_most_decimals(0.35 * plan.letter_mm, 1), turned ? " text-anchor=\"end\"" : "",
      html_text(text));
}

std::vector<Obstacle> joined_keepouts(const Job& job,
                                      const PerimeterSide& side,
                                      Length apart) {
  // the layout was made of the same ground: it cannot fail here
  auto obstacles = layout_ground(job.joint, job.perimeter, side)->named.obstacles;
  std::stable_sort(
      obstacles.begin(), obstacles.end(),
      [](const Obstacle& a, const Obstacle& b) { return a.from < b.from; });
  std::vector<Obstacle> joined;
  for (const Obstacle& obstacle : obstacles) {
    const bool joins = !joined.empty() && joined.back().what == obstacle.what &&
                       joined.back().clear == obstacle.clear &&
                       obstacle.from - joined.back().to < apart;
    if (joins)
      joined.back().to = std::max(joined.back().to, obstacle.to);
    else
      joined.push_back(obstacle);
  }
  return joined;
}

bool on_hand(const PerimeterSide& side, const Point2& point) {
  if (side.name == SideName::Transom) return true;
  return side.name == SideName::Starboard ? point.y() >= 0 : point.y() <= 0;
}

std::string keepout_name(const Job& job,
                         const Obstacle& obstacle,
                         const NumberStyle& style) {
  if (!obstacle.bend) return obstacle.what;
  return fmt::format("{} (radius under {})", obstacle.what,
                     style.size_with_unit(job.joint.layout.radius_min));
}

std::string plan_name(PlanDrawing& plan,
                      const PerimeterSide& side,
                      Length middle,
                      const std::string& text,
                      NamePlace where) {
  for (const NameShift& shift : name_shifts(where)) {
    const Length girth = middle + Length::mm(shift.along * plan.letter_mm);
    if (girth < Length() || girth > side.drill_line_length) continue;
    const LevelName name = level_name(plan, plan_point(side.drill_line, girth),
                                      shift.outboard * plan.letter_mm, text);
    if (!on_hand(side, name.from) ||
        !plan.names.take(name.from, name.to, plan.letter_mm))
      continue;
    plan.names_box.extend(drawn_point(name.from));
    plan.names_box.extend(drawn_point(name.to));
    if (shift.along == 0 && shift.outboard >= nearest_inboard) return name.svg;
    return leader(plan, plan_point(side.drill_line, middle), name.at) + name.svg;
  }
  return "";
}

}  // namespace sheerlap
