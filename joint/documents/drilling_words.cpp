#include "joint/documents/drilling_words.h"

#include <fmt/format.h>

#include "joint/mark_ranges.h"

namespace sheerlap {
namespace {

std::string bits_in_order(const Job& job, const NumberStyle& style) {
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

std::string order_of_work(const Job& job, const NumberStyle& style) {
  return bits_in_order(job, style) +
         fmt::format(
             "Depths are from the lip's outer face: the jig plate and the length "
             "of the bush come on top. Drill depth is the stack and {}, so that "
             "the point comes through (common practice, no source): look at what "
             "is behind the hull.",
             style.size_with_unit(bit_beyond_stack));
}

std::string not_to_drill(const Schedule& schedule, std::optional<SideName> side) {
  const std::string marks =
      mark_ranges(schedule.stations, [&](const DrillStation& station) {
        return !drillable(station) && (!side || station.side == *side);
      });
  if (marks.empty()) return "";
  return fmt::format(
      "DO NOT DRILL {} (\"no\"): no fastener in stock serves there, or the bit misses "
      "the hull; see the checks.",
      marks);
}

std::string stack_words(const Job& job, const NumberStyle& style) {
  return "The stack is lip, gap and hull along the bit; a length of \"-\" means that "
         "none in stock serves. " +
         sunk_note(job, style);
}

std::string square_words() {
  return "A square held on the lip's face is right: tilt and skew only check it.";
}

}  // namespace sheerlap
