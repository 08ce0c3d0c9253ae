#include "joint/sheets/check_bar.h"

#include <fmt/format.h>

#include <string>

namespace sheerlap {
namespace {

constexpr double end_tick_mm = 4;
constexpr double part_tick_mm = 2;
constexpr double words_away_mm = 1.5;
/// The words start this far from the corner, clear of those of the other bar.
constexpr double words_in_mm = 18;
constexpr double words_pitch_mm = line_pitch * letter_height::text;

std::string bar_length(LengthUnit unit) {
  return unit == LengthUnit::Millimetres ? "100 mm" : "4 in";
}

int bar_parts(LengthUnit unit) { return unit == LengthUnit::Millimetres ? 10 : 16; }

/// What the bar must be, and what to do if it is not.
constexpr const char* remedy = "else print at 100 % (no fit to page)";

std::string bar_words(LengthUnit unit) {
  return fmt::format("measure: must be {};", bar_length(unit));
}

/// The bar from `start` along `way`, its ticks to the side of `up`.
void draw_bar(Page& page,
              const Point2& start,
              const Vector2& way,
              const Vector2& up,
              LengthUnit unit) {
  const double length = check_bar_mm(unit);
  const int parts = bar_parts(unit);
  page.line(start, start + way * length, {.width_mm = line_width::medium});
  for (int part = 0; part <= parts; ++part) {
    const Point2 at = start + way * (length * part / parts);
    const bool end = part == 0 || part == parts;
    page.line(at, at + up * (end ? end_tick_mm : part_tick_mm),
              {.width_mm = line_width::thin});
  }
}

}  // namespace

double check_bar_mm(LengthUnit unit) {
  return unit == LengthUnit::Millimetres ? 100 : 4 * 25.4;
}

Box check_bars_room(const Point2& corner, LengthUnit unit) {
  const double length = check_bar_mm(unit);
  return {corner.x(), corner.y() - length, length, length};
}

void draw_check_bars(Page& page, const Point2& corner, LengthUnit unit) {
  draw_check_bar_across(page, corner, unit);
  draw_check_bar_up(page, corner, unit);
}

void draw_check_bar_across(Page& page, const Point2& left_end, LengthUnit unit) {
  draw_bar(page, left_end, {1, 0}, {0, -1}, unit);
  const Point2 words = left_end + Vector2(words_in_mm, -end_tick_mm - words_away_mm);
  page.text(words - Vector2(0, words_pitch_mm), bar_words(unit));
  page.text(words, remedy);
}

void draw_check_bar_up(Page& page, const Point2& lower_end, LengthUnit unit) {
  draw_bar(page, lower_end, {0, -1}, {1, 0}, unit);
  const Point2 words =
      lower_end +
      Vector2(end_tick_mm + words_away_mm + letter_height::text, -words_in_mm);
  page.text(words, bar_words(unit), {.turn_degrees = 90});
  page.text(words + Vector2(words_pitch_mm, 0), remedy, {.turn_degrees = 90});
}

}  // namespace sheerlap
