#include "joint/sheets/strip_drawing.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "joint/sheets/strip_words.h"

namespace sheerlap {
namespace {

/// The words "DO NOT DRILL" are written smaller between holes closer than this.
constexpr Length bar_width = Length::mm(32);
constexpr double mark_from_mm = 7.5;
constexpr double girth_letter_mm = 2.2;
constexpr double mark_letter_mm = 3;

std::vector<Point2> on_page(const StripView& view, const std::vector<Point2>& flat) {
  std::vector<Point2> points;
  for (const Point2& point : flat) points.push_back(view.on_page(point));
  return points;
}

std::vector<Point2> edge(const StripView& view,
                         StripEdge edge,
                         Length from,
                         Length to) {
  return on_page(view, view.stretch.line.between(edge, from, to));
}

/// The part of a band that the tile shows; of no length if none.
std::pair<Length, Length> shown(const StripView& view, const StripBand& band) {
  return {std::max(band.from, view.tile.from), std::min(band.to, view.tile.to)};
}

void draw_band(const StripView& view, const StripBand& band) {
  const auto [from, to] = shown(view, band);
  if (!(to > from)) return;
  std::vector<Point2> outline = edge(view, StripEdge::Sheer, from, to);
  const std::vector<Point2> low = edge(view, StripEdge::Low, from, to);
  outline.insert(outline.end(), low.rbegin(), low.rend());
  view.page.hatch(outline, band_hatch(band.kind), {.width_mm = 0.13});
  if (band.kind != StripBand::Kind::KeepOut) return;
  for (const Length girth : {band.from, band.to})
    if (girth >= view.tile.from && girth <= view.tile.to)
      view.page.line(view.at(StripEdge::Sheer, girth), view.at(StripEdge::Low, girth));
}

void draw_lines(const StripView& view) {
  const Length from = view.tile.from, to = view.tile.to;
  for (const StripEdge line : {StripEdge::Sheer, StripEdge::Low})
    view.page.polyline(edge(view, line, from, to), {.width_mm = line_width::thick});
  view.page.polyline(edge(view, StripEdge::DrillLine, from, to),
                     {.width_mm = line_width::thin, .dash = Dash::Chain});
}

/// The middle of what the window shows of a line down across the strip.
Point2 shown_middle(const StripView& view, const Point2& top, const Point2& low) {
  const double from = std::max(top.y(), view.window.top);
  const double to = std::min(low.y(), view.window.bottom());
  return top + ((from + to) / 2 - top.y()) / (low.y() - top.y()) * (low - top);
}

/// A line across the strip at one of its ends, beyond its edges, with words along it.
void draw_end(const StripView& view, Length girth, const std::string& words) {
  constexpr double beyond_mm = 5;
  const Point2 top = view.at(StripEdge::Sheer, girth);
  const Point2 low = view.at(StripEdge::Low, girth);
  const Vector2 down = (low - top).normalized();
  view.page.line(top - beyond_mm * down, low + beyond_mm * down,
                 {.width_mm = line_width::heavy});
  const bool start = girth == view.stretch.line.from();
  const bool on_right = start == view.stretch.line.runs_left();
  const double away = on_right ? 2.5 : -2.5;
  view.page.text(shown_middle(view, top, low) + Vector2(away, 0), words,
                 {.height_mm = letter_height::text,
                  .bold = true,
                  .across = Across::Centre,
                  .upright = on_right ? Upright::Top : Upright::Baseline,
                  .turn_degrees = 90});
}

void draw_ends(const StripView& view) {
  const StripLine& line = view.stretch.line;
  if (view.tile.from == line.from()) draw_end(view, line.from(), view.stretch.start);
  if (view.tile.to == line.to()) draw_end(view, line.to(), view.stretch.end);
}

/// The mark and the girth of a hole, one above the other; and where no hole is to be
/// drilled, that: across the line, or beyond the mark if its neighbours' words are
/// there.
void draw_hole_words(const StripView& view, const StripHole& hole, bool above) {
  const Point2 at = view.on_page(hole.at);
  const Vector2 up = view.up(hole.girth);
  // `away` is from the line to the nearest edge of the words
  const auto write = [&](double away, const std::string& words, double height,
                         bool bold) {
    const double baseline = above ? away : -away - height;
    view.page.text(at + baseline * up, words,
                   {.height_mm = height,
                    .bold = bold,
                    .across = Across::Centre,
                    .turn_degrees = view.turn_degrees(hole.girth),
                    .clears_ground = true});
  };
  constexpr double apart_mm = 1;
  constexpr double girth_at = mark_from_mm;
  constexpr double mark_at = girth_at + girth_letter_mm + apart_mm;
  // above the line the girth is below the mark, and below it likewise
  write(above ? girth_at : girth_at + mark_letter_mm + apart_mm,
        girth_words(hole.girth, view.style), girth_letter_mm, false);
  write(above ? mark_at : girth_at, hole.mark, mark_letter_mm, true);
  if (hole.drillable) return;
  write(mark_at + mark_letter_mm + apart_mm, "DO NOT DRILL",
        hole.room < bar_width ? letter_height::least : letter_height::text, true);
}

void draw_holes(const StripView& view) {
  bool other_side = false;
  std::size_t index = 0;
  for (const StripHole& hole : view.stretch.holes) {
    other_side = hole.room < close_holes && !other_side;
    const auto& here = view.tile.holes;
    if (!std::binary_search(here.begin(), here.end(), index++)) continue;
    draw_strip_hole(view.page, view.on_page(hole.at), hole,
                    view.turn_degrees(hole.girth));
    draw_hole_words(view, hole, view.marks_above() != other_side);
  }
}

void draw_seam(const StripView& view, const TileSeam& seam) {
  const Point2 a = view.on_page(seam.a), b = view.on_page(seam.b);
  const bool cut_here = seam.over == view.tile.number;
  view.page.line(a, b, {.dash = cut_here ? Dash::Dashed : Dash::Dotted});
  draw_register_mark(view.page, a);
  draw_register_mark(view.page, b);
  constexpr double beside_mm = strip_room::mark_radius_mm + 1;
  const double middle = view.window.centre().x();
  const auto write = [&](Point2 at, const std::string& words) {
    const bool left = at.x() > middle;  // words stand towards the tile's middle
    view.page.text(at + Vector2(left ? -beside_mm : beside_mm, 0), words,
                   {.across = left ? Across::Right : Across::Left,
                    .upright = Upright::Middle,
                    .clears_ground = true});
  };
  write(a, seam.name('A'));
  write(b, seam.name('B') + (cut_here ? ": cut this tile here"
                                      : fmt::format(": tile {} goes over", seam.over)));
}

}  // namespace

Vector2 StripView::up(Length girth) const {
  const Vector2 along = tile.pose.turned(stretch.line.along(girth));
  const Vector2 right = stretch.line.runs_left() ? Vector2(-along) : along;
  return {right.y(), -right.x()};
}

double StripView::turn_degrees(Length girth) const {
  const Vector2 above = up(girth);
  return Angle::radians(std::atan2(-above.x(), -above.y())).in_degrees();
}

bool StripView::marks_above() const {
  const Length middle = (stretch.line.from() + stretch.line.to()) / 2;
  const Point2 line = stretch.line.at(StripEdge::DrillLine, middle);
  return (stretch.line.at(StripEdge::Sheer, middle) - line).norm() >=
         (line - stretch.line.at(StripEdge::Low, middle)).norm();
}

void draw_strip(const StripView& view) {
  view.page.inside(view.window, [&] {
    for (const StripBand& band : view.stretch.bands) draw_band(view, band);
    draw_lines(view);
    draw_girth_ticks(view);
    draw_band_names(view);
    draw_strip_words(view);
    draw_holes(view);
    draw_ends(view);
    for (const TileSeam& seam : view.tile.seams) draw_seam(view, seam);
  });
}

}  // namespace sheerlap
