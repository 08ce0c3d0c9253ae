#include "joint/sheets/strip_notes.h"

#include <fmt/format.h>

#include <cassert>

#include "joint/documents/cautions.h"
#include "joint/sheets/drill_front.h"
#include "joint/sheets/strip_words.h"

namespace sheerlap {
namespace {

std::string numbers_of(const StripTiles& tiles) {
  const std::size_t first = tiles.tiles.front().number;
  const std::size_t last = tiles.tiles.back().number;
  return first == last ? fmt::format("{}", first)
                       : fmt::format("{} to {}", first, last);
}

std::string hole_words(const StripHole& hole, const NumberStyle& style) {
  return fmt::format("{}: {}", hole.mark, style.span(hole.girth));
}

const StripHole& middle_hole(const StripStretch& stretch) {
  return stretch.holes[stretch.holes.size() / 2];
}

std::string joining_words(const std::string& piece) {
  return fmt::format(
      "On a flat table cut each {0} along its dashed line, lay it over the {0} of the "
      "lower number so that both marks of the same name meet, A on A and B on B, and "
      "tape it. The two marks fix shift and turn together. The joined strip may be "
      "curved: that is the shape of the lip laid flat. Trim the upper and the low edge "
      "after joining.",
      piece);
}

std::string edges_words(const std::vector<StripSheets>& sheets,
                        const NumberStyle& style) {
  std::string words =
      "The drill line is true in length. Where the lip cannot be laid flat without "
      "stretching, the edges are not quite: over the stretch the strip's edge at the "
      "sheer and its low edge are longer than the lip's by";
  std::string lead = " ";
  for (const StripSheets& one : sheets) {
    const FlatDistortion& edges = one.stretch.distortion;
    words += fmt::format("{}{} and {} {}", lead, style.gap(Length::mm(edges.top_mm)),
                         style.gap(Length::mm(edges.low_mm)), style.unit_name());
    lead = "; ";
  }
  return words + " (below 0: shorter).";
}

constexpr const char* laying_words =
    "Lay the strip on the lip's outer face, its outside out, the arrow to the bow (on "
    "the transom to starboard), the zero line on the datum and the low edge flush with "
    "the lip's low edge where that is trimmed as drawn. Prove it on three points "
    "before "
    "the first hole: measure the first, a middle and the last hole of the schedule "
    "along the lip with a tape, and look that the end line meets its corner or end. If "
    "it does not, stop and find out why.";

}  // namespace

std::string strip_hand_words(SideName side) {
  switch (side) {
    case SideName::Starboard:
      return "seen from outside, bow to the right";
    case SideName::Port:
      return "seen from outside, bow to the left; this is PORT, no mirror image of "
             "starboard";
    case SideName::Transom:
      return "seen from astern, starboard to the right";
  }
  assert(false);
  return "";
}

std::vector<std::string> strip_length_words(const std::vector<StripSheets>& sheets,
                                            const NumberStyle& style) {
  std::vector<std::string> words;
  for (const StripSheets& one : sheets) {
    const StripStretch& stretch = one.stretch;
    words.push_back(fmt::format(
        "Stretch {} of {} is {} {} long on the drill line, from girth {} to {}; holes "
        "at girth {}, {}, {}.",
        stretch.number, stretch.of, style.span(stretch.line.to() - stretch.line.from()),
        style.unit_name(), style.span(stretch.line.from()),
        style.span(stretch.line.to()), hole_words(stretch.holes.front(), style),
        hole_words(middle_hole(stretch), style),
        hole_words(stretch.holes.back(), style)));
  }
  return words;
}

PageTable strip_lengths(const std::vector<StripSheets>& sheets,
                        const NumberStyle& style,
                        const std::string& piece) {
  PageTable table;
  const auto column = [&](std::vector<std::string> heading, double stretch) {
    PageColumn made;
    made.heading = std::move(heading);
    made.align = Align::Left;
    made.wraps = true;
    made.stretch = stretch;
    table.columns.push_back(made);
  };
  column({"stretch"}, 0.5);
  column({piece + "s"}, 0.6);
  column({"from", "girth"}, 1.4);
  column({"to", "girth"}, 1.4);
  column({"length,", style.unit_name()}, 0.8);
  column({"MEASURED", ""}, 1);
  for (const char* which : {"first hole", "middle hole", "last hole"})
    column({which, "at girth"}, 0.9);
  table.least_row_mm = 7;
  for (const StripSheets& one : sheets) {
    const StripStretch& stretch = one.stretch;
    const StripLine& line = stretch.line;
    table.rows.push_back(
        {{fmt::format("{} of {}", stretch.number, stretch.of), numbers_of(one.tiles),
          style.span(line.from()) + ", " + stretch.start,
          style.span(line.to()) + ", " + stretch.end,
          style.span(line.to() - line.from()), "",
          hole_words(stretch.holes.front(), style),
          hole_words(middle_hole(stretch), style),
          hole_words(stretch.holes.back(), style)}});
  }
  return table;
}

std::vector<Note> strip_notes(SideName side,
                              const std::vector<StripSheets>& sheets,
                              const NumberStyle& style,
                              const std::string& piece) {
  std::vector<Note> notes{
      {"1 Measure",
       fmt::format("Print at 100 %, with no fit to page. Measure both check bars of "
                   "every {} before anything else; if one is not right, do not use it.",
                   piece)},
      {"2 Join", joining_words(piece)},
      {"3 Check by tape",
       fmt::format(
           "Ticks and numbers every {} are girths on the drill line. Lay a tape "
           "along that line of the joined strip and compare the length from end "
           "to end and the girths of the first, the middle and the last hole. "
           "Film is steadier than paper; roll it, do not fold it, and check it "
           "again on the day it is used.",
           style.size_with_unit(tick_step(style.unit())))},
      {"4 Lay on and prove", laying_words},
      {"5 Prick through",
       "Prick through the clear middle of each cross, square to the lip. The circle is "
       "the first bit's hole. A hole crossed out, DO NOT DRILL, gets none: its mark is "
       "there so that it is not missed. Lift the strip, and count the pricks against "
       "the schedule."},
      {"What it is",
       drill_side_words(side) + ": " + strip_hand_words(side) +
           ". The strip lies on the lip itself and is of no thickness; for a plate of "
           "its own thickness use jigs.dxf. " +
           edges_words(sheets, style)}};
  std::string heading = "Cautions";
  for (const std::string& caution : cautions()) {
    notes.push_back({heading, caution});
    heading.clear();
  }
  return notes;
}

}  // namespace sheerlap
