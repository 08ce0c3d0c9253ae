#include "joint/sheets/dimension.h"

#include <cmath>
#include <numbers>

namespace sheerlap {
namespace {

constexpr double gap_mm = 0.8;     ///< from a point to the line that leads from it
constexpr double beyond_mm = 1.5;  ///< of that line beyond the dimension's
constexpr double tail_mm = 5;      ///< of an arrow that stands outside
constexpr double heads_mm = 6.5;   ///< room for both heads between the points
constexpr double above_mm = 0.8;   ///< the words over their line

/// The angle a line is read at: from below, or from the right if it is near upright.
double reading_degrees(const Vector2& along) {
  double degrees = std::atan2(-along.y(), along.x()) * 180 / std::numbers::pi;
  while (degrees > 120) degrees -= 180;
  while (degrees <= -60) degrees += 180;
  return degrees;
}

void lead(Page& page, const Point2& point, const Point2& to_line) {
  const Vector2 way = to_line - point;
  const double length = way.norm();
  if (length < gap_mm) return;
  page.line(point + way * (gap_mm / length), to_line + way * (beyond_mm / length));
}

void draw_heads(Page& page,
                const Point2& start,
                const Point2& end,
                const Vector2& along,
                bool inside) {
  if (inside) {
    page.line(start, end);
    page.arrow_head(start, -along);
    page.arrow_head(end, along);
    return;
  }
  page.line(start, end);
  page.arrow(start - along * tail_mm, start);
  page.arrow(end + along * tail_mm, end);
}

/// Draws a dimension whose line goes through `on_line` the way of `along`, a unit.
void draw(Page& page,
          const Dimension& dimension,
          const Vector2& along,
          const Point2& on_line) {
  const auto onto = [&](const Point2& point) -> Point2 {
    return on_line + along * along.dot(point - on_line);
  };
  const Point2 start = onto(dimension.from), end = onto(dimension.to);
  lead(page, dimension.from, start);
  lead(page, dimension.to, end);
  const double run = (end - start).norm();
  const Vector2 way = run > 0 ? Vector2((end - start) / run) : along;
  const double degrees = reading_degrees(along);
  Lettering lettering{
      .height_mm = dimension.height_mm, .turn_degrees = degrees, .clears_ground = true};
  const double width = page.width_of(dimension.words, lettering);
  draw_heads(page, start, end, way, run >= heads_mm);
  const double turn = degrees * std::numbers::pi / 180;
  const Vector2 reading(std::cos(turn), -std::sin(turn));
  const Vector2 over(-std::sin(turn), -std::cos(turn));
  if (width <= run) {
    lettering.across = Across::Centre;
    page.text((start + end) / 2 + over * above_mm, dimension.words, lettering);
    return;
  }
  // outside, from where the arrow's tail ends; the tail is drawn if the heads are
  // inside
  lettering.across = reading.dot(way) > 0 ? Across::Left : Across::Right;
  const double out = run >= heads_mm ? beyond_mm : tail_mm / 2;
  page.text(end + way * out + over * above_mm, dimension.words, lettering);
}

}  // namespace

void draw_level_dimension(Page& page, const Dimension& dimension, double line_y) {
  draw(page, dimension, {1, 0}, {dimension.from.x(), line_y});
}

void draw_upright_dimension(Page& page, const Dimension& dimension, double line_x) {
  draw(page, dimension, {0, 1}, {line_x, dimension.from.y()});
}

void draw_aligned_dimension(Page& page, const Dimension& dimension, double away_mm) {
  const Vector2 along = (dimension.to - dimension.from).normalized();
  const Vector2 left(along.y(), -along.x());
  draw(page, dimension, along, dimension.from + left * away_mm);
}

}  // namespace sheerlap
