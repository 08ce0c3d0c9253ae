#include "joint/sheets/drawing_arrangement.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "joint/sheets/dimension.h"
#include "joint/sheets/drawing_plan.h"
#include "joint/sheets/drawing_profile.h"

namespace sheerlap {
namespace {

// around the boat's own extent, on paper
constexpr double beside_mm = 18;
constexpr double title_mm = 7;
constexpr double plan_over_mm = title_mm + plan_room_mm;
constexpr double plan_under_mm = plan_room_mm + 8;
constexpr double profile_over_mm = title_mm + 8;
constexpr double profile_under_mm = 8;

/// Where both views lie on the sheet.
struct Views {
  View plan;
  View profile;
  double plan_title_y = 0;
  double profile_title_y = 0;
};

double height_mm(const Extent& extent, double factor) {
  return (extent.beam_mm() + extent.height_mm()) * factor + plan_over_mm +
         plan_under_mm + profile_over_mm + profile_under_mm;
}

Views views_of(const Extent& extent, double factor, const Box& room, bool plan_below) {
  const double spare = (room.height - height_mm(extent, factor)) / 3;
  const double left = room.left + (room.width - extent.length_mm() * factor) / 2;
  const double x = left - extent.least.x() * factor;
  const double plan_mm = extent.beam_mm() * factor + plan_over_mm + plan_under_mm;
  const double profile_mm =
      extent.height_mm() * factor + profile_over_mm + profile_under_mm;
  const double first = room.top + spare;
  const double plan_top = plan_below ? first + profile_mm + spare : first;
  const double profile_top = plan_below ? first : first + plan_mm + spare;
  Views views;
  views.plan = {
      {x, plan_top + plan_over_mm + extent.most.y() * factor}, factor, factor};
  views.profile = {
      {x, profile_top + profile_over_mm + extent.most.z() * factor}, factor, factor};
  views.plan_title_y = plan_top + letter_height::heading;
  views.profile_title_y = profile_top + letter_height::heading;
  return views;
}

/// Keeps words off a dimension's lines.
void keep_off(LabelSpace& labels, const Point2& from, const Point2& to) {
  constexpr double half_mm = 0.3;
  labels.take(Box{std::min(from.x(), to.x()), std::min(from.y(), to.y()),
                  std::abs(to.x() - from.x()), std::abs(to.y() - from.y())}
                  .inset(-half_mm));
}

void draw_overall(DrawnSheet& sheet, const Extent& extent, const View& plan) {
  const auto words = [&](double mm) {
    return sheet.style.span(Length::mm(mm)) + " over the sheer";
  };
  const Point3 &low = extent.sheer_least, &high = extent.sheer_most;
  const Point2 lowest = plan.on_sheet({0, extent.least.y()});
  const double line_y = lowest.y() + plan_under_mm - 4;
  const Point2 bow(plan.on_sheet({low.x(), 0}));
  const Point2 stern(plan.on_sheet({high.x(), 0}).x(), lowest.y());
  draw_level_dimension(sheet.page, {bow, stern, words(high.x() - low.x())}, line_y);
  keep_off(sheet.labels, bow, {bow.x(), line_y});
  keep_off(sheet.labels, stern, {stern.x(), line_y});
  const Point2 port = plan.on_sheet({extent.broadest_x, low.y()});
  const Point2 starboard = plan.on_sheet({extent.broadest_x, high.y()});
  draw_upright_dimension(sheet.page, {port, starboard, words(high.y() - low.y())},
                         port.x());
  keep_off(sheet.labels, port - Vector2(2.5, 0), starboard);
}

/// One line of the key: what is drawn, then its meaning.
void draw_key_line(DrawnSheet& sheet,
                   const Point2& at,
                   const Pen& pen,
                   const std::string& words) {
  constexpr double length_mm = 10;
  sheet.page.line(at, at + Vector2(length_mm, 0), pen);
  sheet.page.text(at + Vector2(length_mm + 1.5, 0), words,
                  {.height_mm = letter_height::least, .upright = Upright::Middle});
}

void draw_key(DrawnSheet& sheet, const Box& box) {
  constexpr double row_mm = 4;
  const double middle = box.left + box.width / 2;
  Point2 at(box.left, box.top + row_mm);
  const Vector2 down(0, row_mm);
  draw_key_line(sheet, at, {line_width::medium, Dash::Solid},
                "sheer: hull's trimmed top edge");
  draw_key_line(sheet, at + down, {line_width::thin, Dash::Chain},
                "drill line, lip's outer face");
  const Box hatched{at.x(), at.y() + 2 * row_mm - 1.2, 10, 2.4};
  sheet.page.hatch(hatched.corners(), {.spacing_mm = 0.8});
  draw_key_line(sheet, at + 2 * down, {line_width::thin, Dash::Solid},
                "no holes: keep-out, tight bend");
  draw_hole(sheet.page, at + 3 * down + Vector2(2, 0), 0.5, true);
  draw_hole(sheet.page, at + 3 * down + Vector2(8, 0), 0.5, false);
  sheet.page.text(at + 3 * down + Vector2(11.5, 0), "hole; hole NOT to be drilled",
                  {.height_mm = letter_height::least, .upright = Upright::Middle});
  at.x() = middle;
  for (const auto& [verdict, words] :
       {std::pair(FitVerdict::Tight, "T tight: gap under its window"),
        std::pair(FitVerdict::Wide, "W wide: gap over its window"),
        std::pair(FitVerdict::Interference, "I lip and hull interfere")}) {
    draw_key_line(sheet, at, fit_pen(verdict), words);
    at += down;
  }
  sheet.page.text(at, "(with the worst gap of the stretch)",
                  {.height_mm = letter_height::least, .upright = Upright::Middle});
}

}  // namespace

DrawingScale arrangement_scale(const Job& job, LengthUnit unit, PageSize size) {
  const Extent extent = extent_of(job.perimeter);
  const Box room = view_room(size);
  return largest_scale(unit, [&](double factor) {
    return extent.length_mm() * factor + 2 * beside_mm <= room.width &&
           height_mm(extent, factor) <= room.height;
  });
}

void draw_arrangement(DrawnSheet& sheet, Projection projection) {
  const PageSize size = sheet.page.size();
  const Extent extent = extent_of(sheet.job.perimeter);
  const LengthUnit unit = sheet.style.unit();
  const DrawingScale scale = arrangement_scale(sheet.job, unit, size);
  const Views views = views_of(extent, scale.factor(), view_room(size),
                               projection == Projection::FirstAngle);
  const std::string scaled = ", " + scale.words(unit);
  draw_view_title(sheet, views.profile_title_y, "PROFILE from port" + scaled);
  draw_view_title(sheet, views.plan_title_y, "PLAN from above" + scaled);
  draw_profile(sheet, views.profile);
  draw_plan_axes(sheet, views.plan);
  draw_overall(sheet, extent, views.plan);
  draw_plan(sheet, views.plan);
  draw_key(sheet, draw_bars(sheet));
}

}  // namespace sheerlap
