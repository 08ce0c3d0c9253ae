#include "joint/documents/schedule_text.h"

#include <fmt/format.h>

#include <map>
#include <optional>

#include "joint/documents/bit_angles.h"
#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"

namespace sheerlap {
namespace {

std::string heading(const Job& job, const NumberStyle& style) {
  const std::string depth = style.size_with_unit(job.joint.fastener.line);
  return wrapped(fmt::format(
             "Mark out by \"girth\": the running girth on the drill line, on the lip's "
             "outer face {} below the sheer; starboard and port from the bow datum "
             "aft, the transom from its starboard corner. \"Hull girth\" runs likewise "
             "on the hull's outer face where the bit goes in; \"jig girth\" on the "
             "drill line from the jig's first hole. These three are rounded to {}.",
             depth, style.step_name())) +
         wrapped(
             fmt::format("Pitch (girth from the hole before; the first from the side's "
                         "start), chord (straight from the hole before) and X Y Z are "
                         "to {} each and never made from rounded girths: check with "
                         "them, do not mark out by them. X aft, Y to starboard, Z up, "
                         "where the bit enters the lip's outer face. All in {}.",
                         style.span_step(), style.unit_words())) +
         wrapped(
             "Drill inboard, square to the lip's outer face. Tilt is the bit's angle "
             "from level: below 0 it drops as it goes in. Skew is its angle in plan: "
             "on the sides from square across the boat, above 0 if it leads aft; on "
             "the transom from fore-and-aft, above 0 if it leads to starboard. Both in "
             "degrees, the boat level.");
}

std::string or_blank(const std::optional<Length>& length,
                     const NumberStyle& style,
                     std::string (NumberStyle::*write)(Length) const) {
  return length ? (style.*write)(*length) : "-";
}

TextTable places_table() {
  return {{{{"mark"}, Align::Left},
           {{"girth"}},
           {{"pitch"}},
           {{"chord"}},
           {{"X"}},
           {{"Y"}},
           {{"Z"}},
           {{"hull", "girth"}},
           {{"jig"}, Align::Left},
           {{"jig", "girth"}}},
          {}};
}

std::vector<std::string> place_row(const DrillStation& station,
                                   const NumberStyle& style) {
  return {station.mark,
          style.running(station.girth),
          style.span(station.pitch),
          or_blank(station.chord, style, &NumberStyle::span),
          style.span(Length::mm(station.point.x())),
          style.span(Length::mm(station.point.y())),
          style.span(Length::mm(station.point.z())),
          style.running(station.hull_girth),
          station.jig,
          style.running(station.jig_girth)};
}

TextTable drilling_table() {
  return {{{{"mark"}, Align::Left},
           {{"tilt"}},
           {{"skew"}},
           {{"edge", "low"}},
           {{"edge", "top"}},
           {{"gap"}},
           {{"stack"}},
           {{"length"}},
           {{"lip", "hole"}},
           {{"hull", "pilot"}},
           {{"sink"}},
           {{"drill", "depth"}}},
          {}};
}

std::vector<std::string> drilling_row(const DrillStation& station,
                                      const NumberStyle& style) {
  const BitAngles angles = bit_angles(station.side, station.axis);
  return {station.mark,
          decimals(angles.tilt.in_degrees(), 1),
          decimals(angles.skew.in_degrees(), 1),
          style.span(station.edge_low),
          style.span(station.edge_top),
          style.gap(station.gap),
          style.gap(station.stack),
          or_blank(station.length, style, &NumberStyle::size),
          style.size(station.lip_hole),
          or_blank(station.hull_pilot, style, &NumberStyle::size),
          style.size(station.countersink),
          style.size(station.drill_depth)};
}

std::string side_text(const Job& job, SideName side, const NumberStyle& style) {
  TextTable places = places_table();
  TextTable drilling = drilling_table();
  for (const DrillStation& station : job.schedule->stations) {
    if (station.side != side) continue;
    places.rows.push_back(place_row(station, style));
    drilling.rows.push_back(drilling_row(station, style));
  }
  const std::string name = capitalised(side_word(side));
  return fmt::format("\n{}: where the {} are\n", name,
                     counted(places.rows.size(), "hole")) +
         text_of(places) + fmt::format("\n{}: how each hole is drilled\n", name) +
         text_of(drilling);
}

std::string drilling_notes(const Job& job, const NumberStyle& style) {
  const auto trim = [&](const Laminate& laminate) {
    return style.size_with_unit(laminate.trim);
  };
  return wrapped(fmt::format(
      "Edge low is to the lip's low edge, edge top to the hull's top edge, their trim "
      "tolerances ({} and {}) taken off. The stack is lip, gap and hull along the bit; "
      "a length of \"-\" means that none in stock serves. A pilot of \"-\" means that "
      "the hull is drilled as the lip. Sink is the countersink's width on the lip. "
      "Drill depth is for the depth stop.",
      trim(job.joint.lip), trim(job.joint.hull)));
}

std::string jigs(const Schedule& schedule, const NumberStyle& style) {
  TextTable table;
  table.columns = {{{"jig"}, Align::Left},
                   {{"side"}, Align::Left},
                   {{"first"}, Align::Left},
                   {{"last"}, Align::Left},
                   {{"holes"}},
                   {{"girth"}}};
  for (const JigSegment& jig : schedule.jigs) {
    const DrillStation& first = schedule.stations[jig.first];
    const DrillStation& last = schedule.stations[jig.last];
    table.rows.push_back({jig.name, side_word(jig.side), first.mark, last.mark,
                          fmt::format("{}", jig.last - jig.first + 1),
                          style.running(last.girth - first.girth)});
  }
  return "\nJigs, girth from first hole to last\n" + text_of(table);
}

/// The check lines of one side; empty if it has none.
std::string check_lines(const Schedule& schedule,
                        SideName side,
                        const NumberStyle& style) {
  TextTable table;
  table.columns = {{{style.unit_name()}},
                   {{"measured"}, Align::Left},
                   {{"from, to and what of"}, Align::Left}};
  for (const CheckLine& line : schedule.check_lines)
    if (line.side == side)
      table.rows.push_back(
          {line.measured.starts_with("girth") ? style.running(line.value)
                                              : style.span(line.value),
           style.sentence(line.measured),
           style.sentence(fmt::format("{} to {}: {}", line.from, line.to, line.what))});
  if (table.rows.empty()) return "";
  return fmt::format(
             "\n{}: dimensions to check the setting-out by, girths rounded to "
             "{}\n",
             capitalised(side_word(side)), style.step_name()) +
         text_of(table);
}

std::string kit(const Job& job, const NumberStyle& style) {
  std::map<std::optional<Length>, std::size_t> counts;
  for (const DrillStation& station : job.schedule->stations) ++counts[station.length];
  TextTable table;
  table.columns = {{{"length"}}, {{"holes"}}};
  for (const auto& [length, count] : counts)
    table.rows.push_back(
        {length ? style.size(*length) : "none", fmt::format("{}", count)});
  return fmt::format("\n{}s {} by length\n",
                     capitalised(word_of(job.joint.fastener.kind)),
                     job.joint.fastener.size) +
         text_of(table);
}

}  // namespace

std::string schedule_text(const Job& job, const NumberStyle& style) {
  std::string text = heading(job, style);
  for (const PerimeterSide& side : job.perimeter.sides)
    text += side_text(job, side.name, style);
  text += drilling_notes(job, style) + jigs(*job.schedule, style);
  for (const PerimeterSide& side : job.perimeter.sides)
    text += check_lines(*job.schedule, side.name, style);
  return text + kit(job, style);
}

}  // namespace sheerlap
