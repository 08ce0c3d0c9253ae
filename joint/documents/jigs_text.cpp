#include "joint/documents/jigs_text.h"

#include <fmt/format.h>

#include <Eigen/Geometry>
#include <cmath>
#include <vector>

#include "joint/documents/drilling_words.h"
#include "joint/documents/setting_out_text.h"
#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"
#include "joint/flat_pattern.h"
#include "joint/jig_bushes.h"
#include "joint/mark_ranges.h"

namespace sheerlap {
namespace {

std::string flat_words(const Job& job, const NumberStyle& style) {
  const JigRules& rules = job.joint.jig;
  const std::string what =
      rules.plate > Length()
          ? fmt::format(
                "a strip {} thick as it is set out before it is bent onto the lip; "
                "half "
                "of its thickness times its bend longer than the girth. Holes go "
                "square "
                "through it, so both of its faces have them at the same place.",
                style.size_with_unit(rules.plate))
          : std::string(
                "a strip of no thickness laid flat; give jig.plate for one that "
                "has any.");
  return "\"Flat on\" and \"flat off\" are along and square to the straight line from "
         "the first hole to the last, off above 0 towards the upper edge, of " +
         what;
}

std::string heading(const Job& job, const NumberStyle& style) {
  return wrapped(fmt::format(
             "All from the jig's first hole, in {}. \"Girth\" is along the drill line "
             "on the lip's outer face, bent as on the boat. {}",
             style.unit_words(), flat_words(job, style))) +
         wrapped(
             "\"Straight\" is through the air, the jig bent, for a trammel; \"on "
             "chord\" "
             "and \"off chord\" are along and square to the straight line from the "
             "first "
             "hole to the last. \"Up\" is from the lip's low edge, on which the jig "
             "sits, "
             "as drawn.") +
         wrapped(fmt::format(
             "That edge may be trimmed {} higher or lower: check it against a batten "
             "before the jig sits on it, and mend or shim it where it is off.",
             style.size_with_unit(job.joint.lip.trim))) +
         wrapped(
             "A bush stands square in a strip that is bent to the lip. In a flat, "
             "rigid "
             "plate over the chord, square to the mean of the bits, it leans by the "
             "angles given, in degrees: \"lean up\" above 0 if its outer end leans to "
             "the plate's upper edge, \"lean on\" if away from the first hole.") +
         wrapped(
             "Where two bores are listed, each seat takes one bush after the other, "
             "first the pilot's, then, lip alone, the wider one; the length of a bush "
             "comes on top of the depths of the drilling schedule.");
}

TextTable hole_table() {
  return {{{{"mark"}, Align::Left},
           {{"girth"}},
           {{"flat", "on"}},
           {{"flat", "off"}},
           {{"straight"}},
           {{"on", "chord"}},
           {{"off", "chord"}},
           {{"up from", "edge"}},
           {{"lean", "up"}},
           {{"lean", "on"}}},
          {}};
}

std::string holes_text(const Job& job,
                       const JigPiece& piece,
                       const FlatPattern& pattern,
                       const NumberStyle& style) {
  TextTable table = hole_table();
  for (std::size_t i = 0; i < piece.holes.size(); ++i) {
    const JigHole& hole = piece.holes[i];
    const Point2& flat = pattern.holes[i].at;
    table.rows.push_back(
        {job.schedule->stations[hole.station].mark, style.span(hole.run),
         style.span(Length::mm(std::abs(flat.x()))), style.span(Length::mm(flat.y())),
         style.span(hole.straight), style.span(hole.along_chord),
         style.span(hole.off_chord), style.span(hole.above_edge),
         decimals(hole.lean.up.in_degrees(), 1),
         decimals(hole.lean.along.in_degrees(), 1)});
  }
  return text_of(table);
}

/// The holes of a jig that have no bush, in words; empty if there are none.
std::string barred_words(const Job& job, const JigPiece& piece) {
  const JigSegment& jig = piece.segment;
  const auto& all = job.schedule->stations;
  const std::vector<DrillStation> holes(
      all.begin() + static_cast<std::ptrdiff_t>(jig.first),
      all.begin() + static_cast<std::ptrdiff_t>(jig.last) + 1);
  const std::string marks = mark_ranges(
      holes, [](const DrillStation& station) { return !drillable(station); });
  return marks.empty() ? ""
                       : wrapped(fmt::format("DO NOT DRILL {}: no bush there; see the "
                                             "checks.",
                                             marks));
}

/// Where a corner of the blank lies from the first hole, on and off the flat line; the
/// way to the last hole is positive.
std::string corner_words(const FlatPattern& pattern,
                         const Point2& corner,
                         const NumberStyle& style) {
  const double on = pattern.runs_left() ? -corner.x() : corner.x();
  return style.span(Length::mm(on)) + ", " + style.span(Length::mm(corner.y()));
}

std::string blank_words(const FlatPattern& pattern, const NumberStyle& style) {
  Eigen::AlignedBox2d box;
  for (const auto* edge : {&pattern.top, &pattern.low})
    for (const Point2& point : *edge) box.extend(point);
  return fmt::format(
      "Flat blank {} x {} {}; its corners, on and off the flat line: first end {} and "
      "{}, last end {} and {}; the edges between them are in jigs.dxf and jigs.svg.",
      style.span(Length::mm(box.sizes().x())), style.span(Length::mm(box.sizes().y())),
      style.unit_name(), corner_words(pattern, pattern.top.front(), style),
      corner_words(pattern, pattern.low.front(), style),
      corner_words(pattern, pattern.top.back(), style),
      corner_words(pattern, pattern.low.back(), style));
}

std::string bush_words(const Job& job,
                       const JigPiece& piece,
                       const NumberStyle& style) {
  const NumberStyle tools = tool_style(job.schedule->fastener, style);
  std::string text;
  for (const JigBush& bush :
       jig_bushes(piece, job.schedule->stations, job.schedule->fastener, job.joint.jig))
    text += fmt::format(
        "{}{} for the {}, bore {}, outside {}", text.empty() ? "" : "; ", bush.count,
        bush.what, tools.size_with_unit(bush.bore), style.size_with_unit(bush.outer));
  return text;
}

/// "0.02 mm longer", "0.02 mm shorter" or "as long", to the step of gaps.
std::string compared(double longer_mm, const NumberStyle& style) {
  const std::string size = style.gap(Length::mm(std::abs(longer_mm)));
  if (size == style.gap(Length())) return "as long";
  return fmt::format("{} {} {}", size, style.unit_name(),
                     longer_mm > 0 ? "longer" : "shorter");
}

/// What bending does to a plate; empty for a strip of no thickness.
std::string bending_words(const Job& job, const FlatPattern& pattern) {
  if (!(job.joint.jig.plate > Length())) return "";
  if (pattern.too_thick)
    return wrapped(
        "TOO THICK: the plate cannot be bent into a hollow of the lip here; make the "
        "jig of thinner stuff.");
  return wrapped(fmt::format(
      "Bent onto the lip, the plate's faces are stretched and pressed by up to {} %: "
      "prove on a strip of it that it bends so far.",
      decimals(100 * pattern.fibre_strain, 2)));
}

std::string distortion_words(const FlatPattern& pattern, const NumberStyle& style) {
  const FlatDistortion& left = pattern.distortion;
  constexpr double least_percent = 0.001;
  const double percent = 100 * left.worst_strain;
  return fmt::format(
      "Flat against the boat: top edge {}, low edge {}; stretched or pressed by {} at "
      "the most.",
      compared(left.top_mm, style), compared(left.low_mm, style),
      percent < least_percent ? fmt::format("less than {} %", least_percent)
                              : decimals(percent, 3) + " %");
}

std::string piece_text(const Job& job,
                       const JigPiece& piece,
                       const NumberStyle& style) {
  const auto& stations = job.schedule->stations;
  const JigSegment& jig = piece.segment;
  const DrillStation& first = stations[jig.first];
  const Length run = stations[jig.last].girth - first.girth;
  const FlatPattern pattern = flat_pattern(
      job.perimeter, stations,
      jig_stretch(job.perimeter, stations, jig.first, jig.last, job.joint.jig),
      job.joint.jig);
  const std::string start =
      first.next_jig == jig.name
          ? fmt::format("pinned through {}, which it shares with {}", first.mark,
                        first.jig)
          : fmt::format("first hole {} {} from the side's start",
                        style.span(first.girth), style.unit_name());
  std::string text = wrapped(
      fmt::format("{}, {}: {}, {}. {} long along the drill line, bent; {} from outer "
                  "hole to outer hole straight, and over the middle of that line the "
                  "drill line is {} off it.",
                  jig.name, side_word(jig.side), counted(piece.holes.size(), "hole"),
                  start, style.span(piece_length(run, job.joint.jig)),
                  style.span(piece.chord), style.span(piece.middle_off_chord)));
  text += holes_text(job, piece, pattern, style);
  text += barred_words(job, piece);
  if (const std::string bushes = bush_words(job, piece, style); !bushes.empty())
    text += wrapped("Bushes: " + bushes + ".");
  return text + wrapped(blank_words(pattern, style)) +
         wrapped(distortion_words(pattern, style)) + bending_words(job, pattern);
}

}  // namespace

std::string jigs_text(const Job& job, const NumberStyle& style) {
  std::string text = heading(job, style);
  for (const JigPiece& piece : job.schedule->jig_pieces)
    text += "\n" + piece_text(job, piece, style);
  return text + "\n" + setting_out_text(job, style);
}

}  // namespace sheerlap
