#include "joint/sheets/strip_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "joint/sheets/drill_front.h"

namespace sheerlap {
namespace {

constexpr double tick_mm = 3;
/// A tick at the drill line keeps clear of a hole's cross.
constexpr Length clear_of_hole = Length::mm(8);
/// And all of it of the line across the strip's end.
constexpr Length clear_of_end = Length::mm(2);

StripEdge ticked_edge(const StripView& view) {
  return view.marks_above() ? StripEdge::Low : StripEdge::Sheer;
}

/// From the drill line to the ticked edge, on the page; unit.
Vector2 to_ticks(const StripView& view, Length girth) {
  return (view.marks_above() ? -1.0 : 1.0) * view.up(girth);
}

Lettering small(const StripView& view, Length girth) {
  return {.height_mm = letter_height::least,
          .across = Across::Centre,
          .upright = Upright::Middle,
          .turn_degrees = view.turn_degrees(girth),
          .clears_ground = true};
}

void draw_tick(const StripView& view, Length girth) {
  const StripEdge edge = ticked_edge(view);
  const Point2 outer = view.at(edge, girth);
  const Point2 line = view.at(StripEdge::DrillLine, girth);
  const Vector2 inward = (line - outer).normalized();
  view.page.line(outer, outer + tick_mm * inward);
  const auto near = [&](const StripHole& hole) {
    return std::abs((hole.girth - girth).in_mm()) < clear_of_hole.in_mm();
  };
  if (std::none_of(view.stretch.holes.begin(), view.stretch.holes.end(), near))
    view.page.line(line - tick_mm / 2 * inward, line + tick_mm / 2 * inward);
  const double number =
      view.style.unit() == LengthUnit::Millimetres ? girth.in_mm() : girth.in_inches();
  view.page.text(outer + (tick_mm + 1.4) * inward, fmt::format("{:.0f}", number),
                 small(view, girth));
}

std::string band_words(const StripView& view, const StripBand& band) {
  if (band.kind == StripBand::Kind::KeepOut)
    return "keep out: " + band.what +
           (band.clear > Length()
                ? fmt::format(" (with {} clear)", view.style.size_with_unit(band.clear))
                : "");
  return fmt::format("space {} {}, limit {}: {}", view.style.span(band.space),
                     view.style.unit_name(), view.style.span(band.limit), band.what);
}

struct Space {
  Length from;
  Length to;
  Length width() const { return to - from; }
};

/// The longest part of a piece without a hole.
Space widest_space(const StripView& view, Length from, Length to) {
  Space widest;
  Length start = from;
  const auto try_to = [&](Length end) {
    if (end - start > widest.width()) widest = {start, end};
    start = std::max(start, end);
  };
  for (const StripHole& hole : view.stretch.holes)
    if (hole.girth > from && hole.girth < to) try_to(hole.girth);
  try_to(to);
  return widest;
}

void draw_arrow_words(const StripView& view, Length girth, double above_line_mm) {
  constexpr double arrow_mm = 14, head_mm = 4.5;
  const Vector2 up = view.up(girth);
  const Vector2 right(-up.y(), up.x());
  const Vector2 start = view.stretch.line.runs_left() ? right : Vector2(-right);
  const Point2 at = view.at(StripEdge::DrillLine, girth) + above_line_mm * up;
  const std::string words =
      view.stretch.side == SideName::Transom ? "TO STARBOARD" : "TO BOW";
  const Lettering lettering{.height_mm = letter_height::text,
                            .bold = true,
                            .across = Across::Centre,
                            .upright = Upright::Middle,
                            .turn_degrees = view.turn_degrees(girth),
                            .clears_ground = true};
  const double half = view.page.width_of(words, lettering) / 2 + 1;
  view.page.text(at - arrow_mm / 2 * start, words, lettering);
  const Point2 tip = at + (half + arrow_mm / 2) * start;
  const Point2 back = tip - head_mm * start;
  view.page.line(at + (half - arrow_mm / 2) * start, back,
                 {.width_mm = line_width::heavy});
  view.page.fill({tip, back + 0.4 * head_mm * up, back - 0.4 * head_mm * up});
}

void draw_edge_words(const StripView& view, Length girth) {
  const Vector2 up = view.up(girth);
  Lettering lettering = small(view, girth);
  lettering.height_mm = letter_height::text;
  view.page.text(view.at(StripEdge::Sheer, girth) + 4 * up, "THIS EDGE UP: sheer",
                 lettering);
  view.page.text(view.at(StripEdge::Low, girth) - 4 * up,
                 "this edge flush with the lip's low edge", lettering);
}

/// Which hand, which way and which boat, where there is room between holes.
void draw_hand(const StripView& view, const Space& space) {
  constexpr Length least = Length::mm(56), crosses = Length::mm(20);
  if (space.width() < least) return;
  const Length there = (space.from + space.to) / 2;
  const double side = view.marks_above() ? 1 : -1;
  const Vector2 above = side * view.up(there);
  const Point2 line = view.at(StripEdge::DrillLine, there);
  Lettering lettering = small(view, there);
  view.page.fitted(line - 4.5 * above, view.title, (space.width() - crosses).in_mm(),
                   lettering);
  lettering.height_mm = letter_height::heading;
  lettering.bold = true;
  view.page.text(line + 12 * above, drill_side_words(view.stretch.side), lettering);
  draw_arrow_words(view, there, side * 6.5);
}

}  // namespace

std::string girth_words(Length girth, const NumberStyle& style) {
  return style.running(girth) + " " + style.unit_name();
}

Length tick_step(LengthUnit unit) {
  return unit == LengthUnit::Millimetres ? Length::mm(100) : Length::inches(4);
}

void draw_girth_ticks(const StripView& view) {
  const Length step = tick_step(view.style.unit());
  const Length from = view.tile.from, to = view.tile.to;
  for (double count = std::ceil(from / step); step * count <= to; ++count) {
    const Length girth = step * count;
    const bool at_an_end = girth - view.stretch.line.from() < clear_of_end ||
                           view.stretch.line.to() - girth < clear_of_end;
    if (!at_an_end) draw_tick(view, girth);
  }
}

void draw_band_names(const StripView& view) {
  constexpr double keepout_mm = 8.5, bridge_mm = 12;
  constexpr Length enough = Length::mm(60), narrowest = Length::mm(40);
  const auto& holes = view.stretch.holes;
  const bool marks_there =
      std::any_of(holes.begin(), holes.end(),
                  [](const StripHole& hole) { return hole.room < close_holes; });
  const Length marks = Length::mm(marks_there ? 18 : 4);
  for (const StripBand& band : view.stretch.bands) {
    const Length from = std::max(band.from, view.tile.from);
    const Length to = std::min(band.to, view.tile.to);
    // the rest of the band, and its name, is on a neighbour
    if (to - from < std::min(enough, (band.to - band.from) / 2)) continue;
    const Length width = std::max(to - from - marks, narrowest);
    const Length least = view.tile.from + width / 2;
    const Length middle =
        std::clamp((from + to) / 2, least, std::max(least, view.tile.to - width / 2));
    const double away = band.kind == StripBand::Kind::KeepOut ? keepout_mm : bridge_mm;
    view.page.fitted(
        view.at(StripEdge::DrillLine, middle) + away * to_ticks(view, middle),
        band_words(view, band), width.in_mm(), small(view, middle));
  }
}

void draw_strip_words(const StripView& view) {
  constexpr Length every = Length::mm(450);
  const Length all = view.tile.to - view.tile.from;
  const double parts = std::ceil(all / every);
  for (double part = 0; part < parts; ++part) {
    const Length from = view.tile.from + all * (part / parts);
    const Length to = view.tile.from + all * ((part + 1) / parts);
    draw_edge_words(view, (from + to) / 2);
    draw_hand(view, widest_space(view, from, to));
  }
}

}  // namespace sheerlap
