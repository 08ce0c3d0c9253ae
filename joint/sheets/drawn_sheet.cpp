#include "joint/sheets/drawn_sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>

#include "joint/sheets/check_bar.h"
#include "joint/sheets/sheet_frame.h"
#include "joint/sheets/short_text.h"

namespace sheerlap {
namespace {

/// Free of views on the left, for the check bar that goes up.
constexpr double check_strip_mm = 15;
/// Of the bars from the frame.
constexpr double bars_in_mm = 2;
constexpr Lettering foot_lettering{.height_mm = letter_height::least};

/// The line at the foot of the views.
Box foot_of(PageSize size) {
  constexpr double line_mm = 3.4;
  const Box room = view_room(size);
  return {room.left, room.bottom() - line_mm, room.width, line_mm};
}

/// As many of the words as go on a line, and how many more there are.
std::string left_out_words(Page& page,
                           const std::vector<std::string>& words,
                           double width_mm) {
  std::string text;
  for (std::size_t shown = words.size(); shown > 0; --shown) {
    text = "Left out for want of room: ";
    for (std::size_t k = 0; k < shown; ++k) text += (k == 0 ? "" : ", ") + words[k];
    if (shown < words.size()) text += fmt::format(" and {} more", words.size() - shown);
    text += "; see the drilling schedule.";
    if (page.width_of(text, foot_lettering) <= width_mm) break;
  }
  return text;
}

}  // namespace

Box view_room(PageSize size) {
  const Box body = sheet_area(size).body;
  return {body.left + check_strip_mm, body.top, body.width - check_strip_mm,
          body.height};
}

Box draw_bars(DrawnSheet& sheet) {
  const Box beside = sheet_area(sheet.page.size()).beside;
  const Point2 corner(beside.left + bars_in_mm, beside.bottom() - bars_in_mm);
  draw_check_bars(sheet.page, corner, sheet.style.unit());
  const double left = corner.x() + check_bar_mm(sheet.style.unit()) + 2 * bars_in_mm;
  return {left, beside.top, beside.right() - left - bars_in_mm, beside.height};
}

void draw_view_title(DrawnSheet& sheet, double baseline_y, const std::string& words) {
  sheet.labels.write(sheet.page, {view_room(sheet.page.size()).left, baseline_y}, words,
                     {.height_mm = letter_height::heading, .bold = true});
}

void keep_foot_free(DrawnSheet& sheet) {
  sheet.labels.take(foot_of(sheet.page.size()));
}

void write_left_out(DrawnSheet& sheet) {
  if (sheet.left_out.empty()) return;
  const Box foot = foot_of(sheet.page.size());
  Lettering lettering = foot_lettering;
  lettering.across = Across::Right;
  sheet.page.fitted({foot.right() - 1, foot.bottom() - 1},
                    left_out_words(sheet.page, sheet.left_out, foot.width - 2),
                    foot.width - 2, lettering);
}

Pen fit_pen(FitVerdict verdict) {
  switch (verdict) {
    case FitVerdict::Good:
      return {line_width::thin, Dash::Solid};
    case FitVerdict::Tight:
      return {line_width::thick, Dash::Dashed};
    case FitVerdict::Wide:
      return {line_width::thick, Dash::Dotted};
    case FitVerdict::Interference:
      return {line_width::heavy, Dash::Solid};
  }
  assert(false);
  return {};
}

std::string fit_letter(FitVerdict verdict) {
  switch (verdict) {
    case FitVerdict::Good:
      return "G";
    case FitVerdict::Tight:
      return "T";
    case FitVerdict::Wide:
      return "W";
    case FitVerdict::Interference:
      return "I";
  }
  assert(false);
  return "";
}

void draw_hole(Page& page, const Point2& at, double radius_mm, bool drilled) {
  if (drilled) {
    page.disc(at, radius_mm);
    return;
  }
  const double arm = 1.6 * radius_mm;
  const Pen pen{line_width::medium, Dash::Solid};
  page.circle(at, radius_mm, {.width_mm = line_width::thin});
  page.line(at + Vector2(-arm, -arm), at + Vector2(arm, arm), pen);
  page.line(at + Vector2(-arm, arm), at + Vector2(arm, -arm), pen);
}

SideObstacles named_on(const Job& job, const PerimeterSide& side) {
  // the layout was made of the same ground: it cannot fail here
  return layout_ground(job.joint, job.perimeter, side)->named;
}

std::string short_name(const std::string& name) {
  constexpr std::size_t longest = 30;
  return short_text(name, longest);
}

std::string keep_out_name(const DrawnSheet& sheet, const Obstacle& obstacle) {
  if (!obstacle.bend) return short_name(obstacle.what);
  return fmt::format("{}, radius under {}", obstacle.what,
                     sheet.style.size_with_unit(sheet.job.joint.layout.radius_min));
}

Length within_side(Length girth, const PerimeterSide& side) {
  return std::clamp(girth, Length(), side.drill_line_length);
}

std::vector<Point2> on_sheet(const View& view, const std::vector<Point2>& points) {
  std::vector<Point2> result;
  result.reserve(points.size());
  for (const Point2& point : points) result.push_back(view.on_sheet(point));
  return result;
}

}  // namespace sheerlap
