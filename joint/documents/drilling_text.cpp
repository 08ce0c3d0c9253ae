#include "joint/documents/drilling_text.h"

#include <fmt/format.h>

#include <vector>

#include "joint/documents/bit_angles.h"
#include "joint/documents/drilling_words.h"
#include "joint/documents/text_table.h"

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

}  // namespace

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
  const std::string none = not_to_drill(*job.schedule, std::nullopt);
  return "\nHow to drill\n" + wrapped(order_of_work(job, style)) +
         (none.empty() ? "" : wrapped(none)) +
         wrapped(fmt::format(
             "Edge low is to the lip's low edge, edge top to the hull's top edge: the "
             "least there may be, with the trim tolerances ({} and {}) taken off. {}",
             trim(job.joint.lip), trim(job.joint.hull), stack_words(job, style))) +
         wrapped(square_words());
}

}  // namespace sheerlap
