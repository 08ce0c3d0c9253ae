#include "joint/sheets/drawing_profile.h"

#include <algorithm>

#include "joint/sheets/plan_line.h"

namespace sheerlap {
namespace {

constexpr double hole_radius_mm = 0.35;
constexpr double within_mm = 0.01;

/// The points of a side's sheer and, straight below them, of the lip's low edge.
struct SidePoints {
  std::vector<Point3> sheer, low;
};

SidePoints side_points(const Perimeter& perimeter, const PerimeterSide& side) {
  SidePoints points;
  const RuledFace& lip = *perimeter.lip_outer;
  for (const Length girth :
       girths_along(side.sheer, {Length(), side.sheer_length, 0, within_mm})) {
    const Place place = side.sheer.place_at(girth);
    points.sheer.push_back(lip.curve().at(place).point);
    points.low.push_back(lip.at(place, lip.lap_mm(place)).point);
  }
  return points;
}

Point2 seen(const Point3& point) { return {point.x(), point.z()}; }

std::vector<Point2> seen(const std::vector<Point3>& points) {
  std::vector<Point2> result;
  result.reserve(points.size());
  for (const Point3& point : points) result.push_back(seen(point));
  return result;
}

void write_height(DrawnSheet& sheet, const View& view, const Point3& point, bool bow) {
  sheet.labels.write(sheet.page, view.on_sheet(seen(point)) + Vector2(bow ? -2 : 2, 0),
                     "Z " + sheet.style.span(Length::mm(point.z())),
                     {.height_mm = letter_height::least,
                      .across = bow ? Across::Right : Across::Left,
                      .upright = Upright::Middle});
}

}  // namespace

Extent extent_of(const Perimeter& perimeter) {
  Extent extent;
  bool first = true;
  for (const PerimeterSide& side : perimeter.sides) {
    const SidePoints points = side_points(perimeter, side);
    if (first) {
      extent.least = extent.most = points.low.front();
      extent.sheer_least = extent.sheer_most = points.sheer.front();
      first = false;
    }
    for (const Point3& point : points.sheer) {
      if (point.y() > extent.sheer_most.y()) extent.broadest_x = point.x();
      extent.sheer_least = extent.sheer_least.cwiseMin(point);
      extent.sheer_most = extent.sheer_most.cwiseMax(point);
    }
    for (const Point3& point : points.low) {
      extent.least = extent.least.cwiseMin(point);
      extent.most = extent.most.cwiseMax(point);
    }
  }
  extent.least = extent.least.cwiseMin(extent.sheer_least);
  extent.most = extent.most.cwiseMax(extent.sheer_most);
  return extent;
}

void draw_profile(DrawnSheet& sheet, const View& view) {
  const PerimeterSide& port = *sheet.job.perimeter.side(SideName::Port);
  const SidePoints points = side_points(sheet.job.perimeter, port);
  const auto sheer = on_sheet(view, seen(points.sheer));
  const auto low = on_sheet(view, seen(points.low));
  const Pen edge{line_width::medium, Dash::Solid};
  sheet.page.polyline(sheer, edge);
  sheet.page.polyline(low, edge);
  sheet.page.line(sheer.front(), low.front(), edge);
  sheet.page.line(sheer.back(), low.back(), edge);
  std::vector<Point2> drilled;
  for (const Length girth :
       girths_along(port.drill_line, {Length(), port.drill_line_length, 0, within_mm}))
    drilled.push_back(view.on_sheet(
        seen(port.drill_line.line().at(port.drill_line.place_at(girth)).point)));
  sheet.page.polyline(drilled, {line_width::thin, Dash::Chain});
  for (const DrillStation& station : sheet.job.schedule->stations)
    if (station.side == SideName::Port)
      draw_hole(sheet.page, view.on_sheet(seen(station.point)), hole_radius_mm,
                drillable(station));
  write_height(sheet, view, points.sheer.front(), true);
  write_height(sheet, view, points.sheer.back(), false);
}

}  // namespace sheerlap
