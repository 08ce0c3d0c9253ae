#include "joint/documents/schedule_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace sheerlap {

std::string up_from_edge(const Job& job,
                         std::optional<SideName> side,
                         const NumberStyle& style) {
  std::optional<Length> least, most;
  for (const DrillStation& station : job.schedule->stations) {
    if (side && station.side != *side) continue;
    const Length up = station.edge_low + job.joint.lip.trim;
    least = std::min(least.value_or(up), up);
    most = std::max(most.value_or(up), up);
  }
  if (!least) return "";
  const std::string low = style.span(*least);
  const std::string high = style.span(*most);
  return (low == high ? low : low + " to " + high) + " " + style.unit_name();
}

std::vector<std::string> marking_paragraphs(const Job& job, const NumberStyle& style) {
  std::vector<std::string> paragraphs;
  const std::string up = up_from_edge(job, std::nullopt, style);
  if (!up.empty())
    paragraphs.push_back(fmt::format(
        "Mark the drill line {} up the lip's outer face from its low edge, over the "
        "holes and with the edge trimmed where it is drawn.",
        up));
  paragraphs.push_back(fmt::format(
      "Mark out by \"girth\": the running girth on the drill line, on the "
      "lip's outer face {} below the sheer; starboard and port from the "
      "bow datum aft, the transom from its starboard corner. \"Hull girth\" "
      "runs likewise on the hull's outer face where the bit goes in; \"jig "
      "girth\" on the drill line from the jig's first hole, bent as on the boat: "
      "a flat strip is set out by jigs.txt. These three are rounded to {}.",
      style.size_with_unit(job.joint.fastener.line), style.step_name()));
  paragraphs.push_back(fmt::format(
      "Pitch (girth from the hole before; the first from the side's start; blank "
      "across "
      "an opening), chord (straight from the hole before) and X Y Z are to {} each and "
      "never made from rounded girths: check with them, do not mark out by them. X "
      "aft, Y to starboard, Z up, where the bit enters the lip's outer face. All in "
      "{}.",
      style.span_step(), style.unit_words()));
  paragraphs.push_back(
      "Drill inboard, square to the lip's outer face. Tilt is the bit's angle from "
      "level: below 0 it drops as it goes in. Skew is its angle in plan: on the sides "
      "from square across the boat, above 0 if it leads aft; on the transom from "
      "fore-and-aft, above 0 if it leads to starboard. Both in degrees, the boat "
      "level.");
  return paragraphs;
}

bool across_opening(const DrillStation& station, const PerimeterSide& side) {
  return std::any_of(side.openings.begin(), side.openings.end(),
                     [&](const OpeningSpan& opening) {
                       return opening.from < station.girth &&
                              opening.to > station.girth - station.pitch;
                     });
}

std::string straight_words() {
  return "Dimensions named \"straight\" run through the air inside the lip: use a "
         "trammel, or take them on the loose jig; those across the boat and from end "
         "to "
         "end of a side with the deck off, on the deck moulding alone. A greatest "
         "offset "
         "is of the drill line from the straight line between the jig's first and last "
         "hole, wherever it is greatest.";
}

std::string check_figure(const CheckLine& line, const NumberStyle& style) {
  return line.measured.starts_with("girth") ? style.running(line.value)
                                            : style.span(line.value);
}

std::string check_words(const CheckLine& line, const NumberStyle& style) {
  return style.sentence(fmt::format("{} to {}: {}", line.from, line.to, line.what));
}

std::vector<LengthCount> counts_by_length(const Schedule& schedule,
                                          std::optional<SideName> side) {
  std::map<std::optional<Length>, std::size_t> counts;
  for (const DrillStation& station : schedule.stations)
    if (!side || station.side == *side) ++counts[station.length];
  std::vector<LengthCount> result;
  result.reserve(counts.size());
  for (const auto& [length, holes] : counts) result.push_back({length, holes});
  return result;
}

}  // namespace sheerlap
