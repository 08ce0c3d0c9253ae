#include "joint/sheets/page.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>
#include <span>

#include "joint/sheets/canvas.h"

namespace sheerlap {
namespace {

/// Length and breadth of an arrow's head.
/// @source  ISO 129-1 leaves them to the drawing; a length of about a letter's height
///          and a third as wide: common practice, no source
constexpr double head_length_mm = 2.5;
constexpr double head_width_mm = 0.9;

double radians(double degrees) { return degrees * std::numbers::pi / 180; }

/// Lengths of strokes and gaps, in widths of the line.
/// @source  ISO 128-20, table of line elements: from memory, confirm; shortened, since
///          these lines are short
std::span<const double> dash_pattern(Dash dash) {
  static constexpr double dashed[] = {8, 3};
  static constexpr double dotted[] = {1, 3};
  static constexpr double chain[] = {20, 3, 1, 3};
  static constexpr double double_chain[] = {20, 3, 1, 3, 1, 3};
  switch (dash) {
    case Dash::Solid:
      return {};
    case Dash::Dashed:
      return dashed;
    case Dash::Dotted:
      return dotted;
    case Dash::Chain:
      return chain;
    case Dash::DoubleChain:
      return double_chain;
  }
  assert(false);
  return {};
}

void set_grey(cairo_t* cairo, double grey) {
  cairo_set_source_rgb(cairo, grey, grey, grey);
}

void trace(cairo_t* cairo, const std::vector<Point2>& points) {
  cairo_new_path(cairo);
  for (const Point2& point : points) {
    assert(std::isfinite(point.x()) && std::isfinite(point.y()));
    cairo_line_to(cairo, point.x(), point.y());
  }
}

void stroke(cairo_t* cairo, const Pen& pen) {
  double lengths[6] = {};
  const auto pattern = dash_pattern(pen.dash);
  std::transform(pattern.begin(), pattern.end(), lengths,
                 [&](double part) { return part * pen.width_mm; });
  set_grey(cairo, shade::black);
  cairo_set_dash(cairo, lengths, static_cast<int>(pattern.size()), 0);
  cairo_set_line_width(cairo, pen.width_mm);
  cairo_stroke(cairo);
}

/// The arc as cairo has it: its angles run clockwise, with y down.
void trace_arc(
    cairo_t* cairo, const Point2& centre, double radius_mm, Angle from, Angle to) {
  cairo_new_path(cairo);
  cairo_arc_negative(cairo, centre.x(), centre.y(), radius_mm, -from.in_radians(),
                     -to.in_radians());
}

constexpr Angle whole_turn = Angle::degrees(360);

}  // namespace

void Page::line(const Point2& from, const Point2& to, const Pen& pen) {
  polyline({from, to}, pen);
}

void Page::polyline(const std::vector<Point2>& points, const Pen& pen) {
  trace(canvas_.cairo.get(), points);
  stroke(canvas_.cairo.get(), pen);
}

void Page::polygon(const std::vector<Point2>& points, const Pen& pen) {
  trace(canvas_.cairo.get(), points);
  cairo_close_path(canvas_.cairo.get());
  stroke(canvas_.cairo.get(), pen);
}

void Page::circle(const Point2& centre, double radius_mm, const Pen& pen) {
  trace_arc(canvas_.cairo.get(), centre, radius_mm, Angle(), whole_turn);
  cairo_close_path(canvas_.cairo.get());
  stroke(canvas_.cairo.get(), pen);
}

void Page::arc(
    const Point2& centre, double radius_mm, Angle from, Angle to, const Pen& pen) {
  trace_arc(canvas_.cairo.get(), centre, radius_mm, from, to);
  stroke(canvas_.cairo.get(), pen);
}

void Page::fill(const std::vector<Point2>& points, double grey) {
  trace(canvas_.cairo.get(), points);
  set_grey(canvas_.cairo.get(), grey);
  cairo_fill(canvas_.cairo.get());
}

void Page::disc(const Point2& centre, double radius_mm, double grey) {
  trace_arc(canvas_.cairo.get(), centre, radius_mm, Angle(), whole_turn);
  set_grey(canvas_.cairo.get(), grey);
  cairo_fill(canvas_.cairo.get());
}

void Page::hatch(const std::vector<Point2>& points,
                 const Hatch& hatch,
                 const Pen& pen) {
  assert(hatch.spacing_mm > 0);
  if (points.empty()) return;
  const double turn = radians(hatch.turn_degrees);
  const Vector2 along(std::cos(turn), -std::sin(turn));
  const Vector2 across(-along.y(), along.x());
  const auto [near, far] = std::minmax_element(
      points.begin(), points.end(),
      [&](const Point2& a, const Point2& b) { return across.dot(a) < across.dot(b); });
  const auto [start, end] = std::minmax_element(
      points.begin(), points.end(),
      [&](const Point2& a, const Point2& b) { return along.dot(a) < along.dot(b); });
  cairo_t* cairo = canvas_.cairo.get();
  cairo_save(cairo);
  trace(cairo, points);
  cairo_clip(cairo);
  // on a grid of the whole page, so that neighbouring areas are hatched alike
  for (double step = std::ceil(across.dot(*near) / hatch.spacing_mm);
       step * hatch.spacing_mm < across.dot(*far); ++step) {
    const Vector2 offset = across * (step * hatch.spacing_mm);
    line(offset + along * along.dot(*start), offset + along * along.dot(*end), pen);
  }
  cairo_restore(cairo);
}

void Page::arrow(const Point2& from, const Point2& to, const Pen& pen) {
  const Vector2 direction = to - from;
  const double length = direction.norm();
  if (length == 0) return;
  // the line stops inside the head, or its blunt end would stand out of the tip
  const double run = std::max(length - head_length_mm / 2, 0.0);
  line(from, from + direction * (run / length), pen);
  arrow_head(to, direction);
}

void Page::arrow_head(const Point2& tip, const Vector2& direction) {
  const Vector2 along = direction.normalized();
  const Vector2 across(-along.y(), along.x());
  const Point2 back = tip - along * head_length_mm;
  fill({tip, back + across * (head_width_mm / 2), back - across * (head_width_mm / 2)});
}

void Page::inside(const Box& box, const std::function<void()>& draw) {
  cairo_t* cairo = canvas_.cairo.get();
  cairo_save(cairo);
  cairo_new_path(cairo);
  cairo_rectangle(cairo, box.left, box.top, box.width, box.height);
  cairo_clip(cairo);
  draw();
  cairo_restore(cairo);
}

}  // namespace sheerlap
