#include "joint/documents/drilling_text.h"

#include <fmt/format.h>

#include <vector>

#include "joint/documents/bit_angles.h"
#include "joint/documents/text_table.h"
#include "joint/mark_ranges.h"

namespace sheerlap {
namespace {

TextTable empty_table(const Schedule& schedule, const NumberStyle& tools) {
  const bool pan = schedule.fastener.head == HeadKind::Pan;
  return {{{{"mark"}, Align::Left},
           {{"tilt"}},
           {{"skew"}},
           {{"edge", "low,", "least,", "trim", "off"}},
           {{"edge", "top,", "least,", "trim", "off"}},
           {{"gap"}},
           {{"stack"}},
           {{"length", tools.unit_name()}},
           {pan ? std::vector<std::string>{"chamfer"}
                : std::vector<std::string>{"counter", "sink"}},
           {{"drill", "depth"}},
           {{"lip", "depth"}}},
          {}};
}

std::vector<std::string> drilling_row(const DrillStation& station,
                                      const NumberStyle& style,
                                      const NumberStyle& tools) {
  const BitAngles angles = bit_angles(station.side, station.axis);
  const bool drill = drillable(station);
  return {station.mark,
          decimals(angles.tilt.in_degrees(), 1),
          decimals(angles.skew.in_degrees(), 1),
          style.span(station.edge_low),
          style.span(station.edge_top),
          style.gap(station.gap),
          style.gap(station.stack),
          station.length ? tools.size(*station.length) : "-",
          style.size(station.countersink),
          drill ? style.span(station.drill_depth) : "no",
          !drill              ? "no"
          : station.lip_depth ? style.gap(*station.lip_depth)
                              : "-"};
}

std::string order_of_work(const Job& job, const NumberStyle& style) {
  const FastenerSpec& spec = job.schedule->fastener;
  const NumberStyle tools = tool_style(spec, style);
  const std::string lip_bit = tools.size_with_unit(spec.lip_hole);
  if (!spec.hull_pilot)
    return fmt::format(
        "Drill lip and hull in one go with the {} bit, its stop set to \"drill "
        "depth\"; there is no lip depth. ",
        lip_bit);
  return fmt::format(
      "First drill through lip and hull with the {} pilot bit, its stop set to \"drill "
      "depth\". Then open the lip only, with the {} bit, its stop set to \"lip "
      "depth\": the lip along the bit and half of the gap behind it (derived), never "
      "into the hull. ",
      tools.size_with_unit(*spec.hull_pilot), lip_bit);
}

std::string stop_notes(const Job& job, const NumberStyle& style) {
  const std::string marks =
      mark_ranges(job.schedule->stations,
                  [](const DrillStation& station) { return !drillable(station); });
  std::string text = wrapped(
      order_of_work(job, style) +
      fmt::format("Depths are from the lip's outer face: the jig plate and the length "
                  "of the bush come on top. Drill depth is the stack and {}, so that "
                  "the point comes through (common practice, no source): look at what "
                  "is behind the hull.",
                  style.size_with_unit(bit_beyond_stack)));
  if (!marks.empty())
    text +=
        wrapped(fmt::format("DO NOT DRILL {} (\"no\"): no fastener in stock serves "
                            "there, or the bit misses the hull; see the checks.",
                            marks));
  return text;
}

std::string sunk_note(const Job& job, const NumberStyle& style) {
  const FastenerSpec& spec = job.schedule->fastener;
  const std::string depth = style.size_with_unit(spec.countersink_depth);
  if (spec.head == HeadKind::Pan)
    return fmt::format(
        "Chamfer is the width of a relief in the lip's gelcoat, {} deep (common "
        "practice, no source).",
        depth);
  return fmt::format("Countersink is its width on the lip, {} deep.", depth);
}

}  // namespace

NumberStyle tool_style(const FastenerSpec& spec, const NumberStyle& style) {
  if (spec.size.find_first_of("#/") != std::string::npos) return style;
  return {LengthUnit::Millimetres, Length::mm(1)};
}

std::string drilling_table(const Job& job, SideName side, const NumberStyle& style) {
  const NumberStyle tools = tool_style(job.schedule->fastener, style);
  TextTable table = empty_table(*job.schedule, tools);
  for (const DrillStation& station : job.schedule->stations)
    if (station.side == side) table.rows.push_back(drilling_row(station, style, tools));
  return text_of(table);
}

std::string drilling_notes(const Job& job, const NumberStyle& style) {
  const auto trim = [&](const Laminate& laminate) {
    return style.size_with_unit(laminate.trim);
  };
  return "\nHow to drill\n" + stop_notes(job, style) +
         wrapped(fmt::format(
             "Edge low is to the lip's low edge, edge top to the hull's top edge: the "
             "least there may be, with the trim tolerances ({} and {}) taken off. The "
             "stack is lip, gap and hull along the bit; a length of \"-\" means that "
             "none in stock serves. {}",
             trim(job.joint.lip), trim(job.joint.hull), sunk_note(job, style))) +
         wrapped(
             "A square held on the lip's face is right: tilt and skew only check "
             "it.");
}

}  // namespace sheerlap
