#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "joint/sheets/plan_line.h"
#include "joint/sheets/sequence_records.h"

namespace sheerlap {
namespace {

constexpr double label_height = letter_height::least;
/// From one label to the next where they stand side by side.
constexpr double label_pitch_mm = 1.4 * label_height;
/// What a mark and its label take outboard of the line, at one level.
constexpr double label_room_mm = 8;
constexpr double hole_radius_mm = 0.6;

/// A stretch of a side's drill line in plan.
std::vector<Point2> drill_line(const PerimeterSide& side, Length from, Length to) {
  return plan_line(side.drill_line, {.from = from, .to = to, .within_mm = 1});
}

/// The boat from above as it lies on the sheet: bow up, starboard to the right.
class Plan {
 public:
  Plan(const Perimeter& perimeter, const Box& box) {
    double least_x = std::numeric_limits<double>::infinity(), most_x = -least_x;
    double least_y = least_x, most_y = -least_x;
    for (const PerimeterSide& side : perimeter.sides)
      for (const Point2& point : drill_line(side, Length(), side.drill_line_length)) {
        least_x = std::min(least_x, point.x());
        most_x = std::max(most_x, point.x());
        least_y = std::min(least_y, point.y());
        most_y = std::max(most_y, point.y());
      }
    scale_ = std::min(box.width / (most_y - least_y), box.height / (most_x - least_x));
    origin_ = {box.centre().x() - scale_ * (least_y + most_y) / 2,
               box.top - scale_ * least_x};
    depth_ = scale_ * (most_x - least_x);
  }

  double scale() const { return scale_; }
  double depth_mm() const { return depth_; }
  Point2 on_sheet(const Point2& plan) const {
    return origin_ + scale_ * Vector2(plan.y(), plan.x());
  }

 private:
  double scale_ = 1;
  double depth_ = 0;
  Point2 origin_ = Point2::Zero();
};

void draw_stretch(Page& page,
                  const Plan& plan,
                  const PerimeterSide& side,
                  std::pair<Length, Length> girths,
                  const Pen& pen) {
  if (girths.second <= girths.first) return;
  std::vector<Point2> points;
  for (const Point2& point : drill_line(side, girths.first, girths.second))
    points.push_back(plan.on_sheet(point));
  page.polyline(points, pen);
}

void draw_side(Page& page, const Plan& plan, const PerimeterSide& side) {
  Length from;
  for (const OpeningSpan& opening : side.openings) {
    draw_stretch(page, plan, side, {from, opening.from},
                 {.width_mm = line_width::thick});
    draw_stretch(page, plan, side, {opening.from, opening.to}, {.dash = Dash::Dotted});
    from = opening.to;
  }
  draw_stretch(page, plan, side, {from, side.drill_line_length},
               {.width_mm = line_width::thick});
}

/// How many rows of labels it takes so that neighbours do not touch.
std::size_t label_levels(const Schedule& schedule, double scale) {
  double closest = std::numeric_limits<double>::infinity();
  for (std::size_t i = 1; i < schedule.stations.size(); ++i) {
    const Vector3 apart = schedule.stations[i].point - schedule.stations[i - 1].point;
    closest = std::min(closest, std::hypot(apart.x(), apart.y()) * scale);
  }
  return static_cast<std::size_t>(
      std::clamp(std::ceil(label_pitch_mm / closest), 1.0, 3.0));
}

/// A hole and its mark, the mark outboard of it along the line square to the lip.
void draw_mark(Page& page,
               const Plan& plan,
               const DrillStation& station,
               std::size_t level) {
  const Point2 at = plan.on_sheet({station.point.x(), station.point.y()});
  const Vector2 outboard = -Vector2(station.axis.y(), station.axis.x()).normalized();
  page.circle(at, hole_radius_mm, {.width_mm = line_width::thin});
  const double clear = 1.6 + static_cast<double>(level) * label_room_mm;
  if (level > 0)
    page.line(at + outboard * hole_radius_mm, at + outboard * (clear - 0.4),
              {.width_mm = line_width::thin});
  const bool to_the_left = outboard.x() < 0;
  const Vector2 reads = to_the_left ? Vector2(-outboard) : outboard;
  page.text(
      at + outboard * clear, station.mark,
      {.height_mm = label_height,
       .across = to_the_left ? Across::Right : Across::Left,
       .upright = Upright::Middle,
       .turn_degrees = std::atan2(-reads.y(), reads.x()) * 180 / std::numbers::pi});
}

void draw_plan(Page& page, const Box& box, const Job& job) {
  const Schedule& schedule = *job.schedule;
  const auto plan_in = [&](std::size_t levels) {
    return Plan(job.perimeter,
                box.inset(2 + static_cast<double>(levels) * label_room_mm));
  };
  const std::size_t levels = label_levels(schedule, plan_in(1).scale());
  const Plan plan = plan_in(levels);
  for (const PerimeterSide& side : job.perimeter.sides) draw_side(page, plan, side);
  for (std::size_t i = 0; i < schedule.stations.size(); ++i)
    draw_mark(page, plan, schedule.stations[i], i % levels);
  const double middle = box.top + 10 + plan.depth_mm() / 2;
  const double centre = box.centre().x();
  const Lettering words{.height_mm = letter_height::text, .across = Across::Centre};
  page.text({centre, middle - 12}, "bow", words);
  page.arrow({centre, middle - 16}, {centre, middle - 26});
  page.text({centre, middle}, "PORT | STARBOARD", words);
  page.text({centre, middle + 6}, "from above, not to scale",
            {.height_mm = letter_height::least, .across = Across::Centre});
}

PageTable leak_table(double height_mm) {
  PageTable table;
  table.columns = {{{"leak at", "mark"}, Align::Left, 14},
                   {{"seen", "inside at"}, Align::Left, 14},
                   {{"re-", "sealed"}, Align::Left, 12},
                   {{"tested", "again"}, Align::Left, 12}};
  for (PageColumn& column : table.columns) column.stretch = 1;
  table.least_row_mm = 8;
  const auto rows = static_cast<std::size_t>(std::max(3.0, (height_mm - 12) / 8));
  for (std::size_t i = 0; i < rows; ++i) table.rows.push_back({{"", "", "", ""}});
  return table;
}

}  // namespace

void write_leak_map(SheetFlow& flow, const Job& job) {
  constexpr double table_mm = 58;
  record_row(flow, {{"hull no."}, {"date"}, {"hose, minutes a zone"}, {"tested by"}});
  flow.space(2);
  flow.paragraph(
      "Hose or spray ring along the joint, from the lowest part up, 10 to 15 minutes "
      "on "
      "each zone, somebody dry inside with a lamp (common practice, no source). Water "
      "travels far before it shows: find where it comes in from. Circle the nearest "
      "mark, and write it down.");
  flow.paragraph(
      "CAUTION: no compressed air into a boat. Where the procedure asks for air and "
      "soap, a few mm of water gauge and never over 25 mm (1 in) (common practice, no "
      "source), read on a water gauge, a relief opening clear: 25 mm is 245 N on each "
      "square metre of deck, 1 psi would be 6.9 kN on each (derived: 9.81 N for each "
      "mm; 1 psi = 6895 Pa).",
      {.bold = true});
  flow.space(2);
  const Box room = flow.room();
  const Box left{room.left, room.top, room.width - table_mm - 3, room.height - 2};
  draw_plan(flow.page(), left, job);
  const PageTable table = leak_table(room.height - 4);
  const PlacedTable placed(flow.page(), table, table_mm);
  const std::size_t rows = placed.rows_in(room.height - 4, 0);
  placed.draw(flow.page(), {left.right() + 3, room.top}, 0,
              std::min(rows, table.rows.size()));
  flow.take(room.height);
}

}  // namespace sheerlap
