#include "joint/sheets/drawing_expanded.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>

#include "joint/sheets/expanded_side.h"
#include "joint/side_ends.h"

namespace sheerlap {
namespace {

/// Beside a side, on paper: for the words at its ends.
constexpr double beside_mm = 8;

double longest_mm(const Job& job) {
  double longest = 0;
  for (const PerimeterSide& side : job.perimeter.sides)
    longest = std::max(longest, side.drill_line_length.in_mm());
  return longest;
}

double deepest_mm(const Job& job) {
  double deepest = 0;
  const RuledFace& lip = *job.perimeter.lip_outer;
  for (std::size_t span = 0; span < lip.curve().spans(); ++span)
    deepest =
        std::max({deepest, lip.offsets(span).from.lap_mm, lip.offsets(span).to.lap_mm});
  return deepest;
}

/// Seen from outboard, the way aft is to the left on starboard, and on the transom the
/// way to port is to the left.
bool girth_runs_left(SideName side) { return side != SideName::Port; }

std::string title_of(const PerimeterSide& side) {
  switch (side.name) {
    case SideName::Starboard:
      return "STARBOARD laid flat, from outboard: bow to the right";
    case SideName::Port:
      return "PORT laid flat, from outboard: bow to the left";
    case SideName::Transom:
      return "TRANSOM laid flat, from aft: starboard to the right";
  }
  assert(false);
  return "";
}

}  // namespace

std::string ExpandedScales::words() const {
  return fmt::format("{}, depth {}", along.words(LengthUnit::Millimetres),
                     depth.words(LengthUnit::Millimetres));
}

ExpandedScales expanded_scales(const Job& job, LengthUnit unit, PageSize size) {
  const double room = view_room(size).width - 2 * beside_mm;
  const double longest = longest_mm(job), deepest = deepest_mm(job);
  return {largest_scale(unit, [&](double factor) { return longest * factor <= room; }),
          largest_scale(unit, [&](double factor) {
            return deepest * factor <= expanded_lap_mm;
          })};
}

void draw_expanded(DrawnSheet& sheet) {
  const Box room = view_room(sheet.page.size());
  const ExpandedScales scales =
      expanded_scales(sheet.job, sheet.style.unit(), sheet.page.size());
  const double along = scales.along.factor(), depth = scales.depth.factor();
  const auto& sides = sheet.job.perimeter.sides;
  const double each = room.height / static_cast<double>(sides.size());
  double top = room.top + std::max(each - expanded_side_mm, 0.0) / 2;
  for (const PerimeterSide& side : sides) {
    draw_view_title(sheet, top + letter_height::heading,
                    fmt::format("{}; girth {}, depth {}", title_of(side),
                                scales.along.words(sheet.style.unit()),
                                scales.depth.words(LengthUnit::Millimetres)));
    const double length = side.drill_line_length.in_mm() * along;
    const double left = room.left + beside_mm;
    const bool mirrored = girth_runs_left(side.name);
    const View view{{mirrored ? left + length : left, top + expanded_sheer_mm},
                    mirrored ? -along : along,
                    depth};
    draw_expanded_side(sheet, side, view);
    top += each;
  }
  const Box notes = draw_bars(sheet);
  sheet.page.paragraph(
      {notes.left, notes.top + 2},
      fmt::format(
          "Girths and spaces, in {}, run on the drill line (chain line) on the "
          "lip's outer face, from each side's start; depth is straight down from "
          "the sheer. A ring is a fixed place, a heavy line a space over its "
          "limit, hatching a keep-out with its clearance or a tight bend. "
          "\"L in N of P\" is a length of N equal spaces.",
          sheet.style.unit_words()),
      notes.width, {.height_mm = letter_height::least});
}

}  // namespace sheerlap
