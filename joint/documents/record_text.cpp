#include "joint/documents/record_text.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"
#include "joint/records/boat_merge.h"

namespace sheerlap {
namespace {

std::string gap_or_blank(const std::optional<Length>& gap, const NumberStyle& style) {
  return gap ? style.gap(*gap) : "";
}

std::string window_sentence(const BoatRecord& boat, const NumberStyle& style) {
  return fmt::format("the adhesive's gap window, {} to {}", style.size(boat.gap_min),
                     style.size_with_unit(boat.gap_max));
}

std::string figures_sentence(const BoatRecord& boat, const NumberStyle& style) {
  std::vector<std::string> parts;
  if (boat.mean_gap) {
    const std::string state = boat.readings.empty()
                                  ? "no reading of it is kept"
                                  : state_word(latest_state(boat.readings));
    parts.push_back(fmt::format("mean gap {} {} ({})", style.gap(*boat.mean_gap),
                                style.unit_name(), state));
  }
  if (boat.litres)
    parts.push_back(at_most_decimals(*boat.litres, 3) + " litres of adhesive");
  if (boat.holes)
    parts.push_back(counted(static_cast<std::size_t>(*boat.holes), "hole"));
  parts.push_back(boat.leaks.empty() ? "no leak entered"
                                     : counted(boat.leaks.size(), "leak"));
  return wrapped(capitalised(fmt::format("{}.", fmt::join(parts, ", "))));
}

std::string outside_sentence(const BoatRecord& boat, const NumberStyle& style) {
  const std::size_t outside = gaps_outside(boat);
  if (boat.readings.empty()) return "No gap was read.\n";
  if (outside == 0)
    return wrapped("Every gap read is in " + window_sentence(boat, style) + ".");
  return wrapped(
      fmt::format("STOP: {} outside {}.",
                  outside == 1 ? "1 gap is" : fmt::format("{} gaps are", outside),
                  window_sentence(boat, style)));
}

std::string leak_table(const BoatRecord& boat, const NumberStyle& style) {
  TextTable table{{{{"leak at", "girth"}, Align::Left},
                   {{"nearest", "mark"}, Align::Left},
                   {{"its", "girth"}},
                   {{"gap", ""}},
                   {{"beads", ""}},
                   {{"pitch", ""}}},
                  {}};
  for (const Leak& leak : boat.leaks)
    for (const LeakMark& mark : leak.marks) {
      const bool first = &mark == &leak.marks.front();
      table.rows.push_back(
          {first ? side_word(leak.side) + " " + style.running(leak.girth) : "",
           mark.mark, style.running(mark.girth), style.gap(mark.gap),
           mark.bead ? fmt::format("{} x {}", mark.beads, style.size(*mark.bead))
                     : "none",
           style.span(mark.pitch)});
    }
  return fmt::format("\nLeaks, in {}, girth on the drill line (lip's outer face)\n",
                     style.unit_words()) +
         text_of(table) +
         wrapped(
             "Gap: this boat's, at the drill line's depth. Beads: as planned. "
             "Pitch: from the mark before. Water runs far inside before it shows: "
             "look here first, then forward and up.");
}

}  // namespace

std::string added_text(const AddedBoat& added, const NumberStyle& style) {
  const BoatRecord& boat = added.boat;
  std::string text = wrapped(
      fmt::format("{}: hull {} {}, {} and {} added.", boat.title, boat.hull,
                  added.is_new ? "is new" : "has more",
                  counted(added.readings, "reading"), counted(added.leaks, "leak")));
  text += figures_sentence(boat, style);
  if (boat.readings.empty()) return text;
  if (!added.one_edge.empty())
    text += wrapped(fmt::format(
        "Read at one edge only, whose difference from the drawn gap is taken "
        "for both: {}.",
        style.sentence(fmt::format("{}", fmt::join(added.one_edge, ", ")))));
  for (const HeldStretch& held : added.held)
    text += wrapped(fmt::format(
        "Not read: {} from girth {} to {} {}; the difference at girth {} is held.",
        side_word(held.side), style.running(held.from), style.running(held.to),
        style.unit_name(), style.running(held.reading)));
  for (const SideName side : added.unread)
    text += fmt::format("Not read: {}; the gap there is taken as drawn.\n",
                        side_word(side));
  return text + outside_sentence(boat, style);
}

std::string boat_list_text(const BoatList& list, const NumberStyle& style) {
  if (list.boats.empty()) return "The record holds no boat yet.\n";
  TextTable table{{{{"hull", ""}},
                   {{"readings", ""}},
                   {{"outside", "window"}},
                   {{"mean gap", style.unit_name()}},
                   {{"adhesive", "litres"}},
                   {{"holes", ""}},
                   {{"leaks", ""}}},
                  {}};
  for (const BoatLine& boat : list.boats)
    table.rows.push_back(
        {fmt::format("{}", boat.hull), fmt::format("{}", boat.readings),
         fmt::format("{}", boat.outside), gap_or_blank(boat.mean_gap, style),
         boat.litres ? at_most_decimals(*boat.litres, 3) : "",
         boat.holes ? fmt::format("{}", *boat.holes) : "",
         fmt::format("{}", boat.leaks)});
  return wrapped(fmt::format("{}: {} built", list.title,
                             counted(list.boats.size(), "boat"))) +
         "\n" + text_of(table);
}

std::string boat_text(const BoatRecord& boat, const NumberStyle& style) {
  std::string text = wrapped(fmt::format("{}: hull {}", boat.title, boat.hull)) +
                     outside_sentence(boat, style) + figures_sentence(boat, style);
  if (!boat.readings.empty()) {
    TextTable table{{{{"side"}, Align::Left},
                     {{"place"}, Align::Left},
                     {{"girth"}},
                     {{"state"}, Align::Left},
                     {{"top"}},
                     {{"low"}},
                     {{""}, Align::Left}},
                    {}};
    for (const GapReading& reading : boat.readings) {
      std::string words = window_word(boat, reading.top);
      const std::string low = window_word(boat, reading.low);
      if (words != low && !low.empty()) words += (words.empty() ? "" : ", ") + low;
      if (!reading.note.empty()) words += (words.empty() ? "" : "; ") + reading.note;
      const std::string name = reading.kind == PlaceKind::Girth
                                   ? "girth"
                                   : kind_word(reading.kind) + " " + reading.name;
      table.rows.push_back({side_word(reading.side), name, style.running(reading.girth),
                            state_word(reading.state), gap_or_blank(reading.top, style),
                            gap_or_blank(reading.low, style), words});
    }
    text += fmt::format(
                "\nGaps in {}, at the hull's top edge and the lap's low edge;\n"
                "girth on the drill line (lip's outer face), from the side's start\n",
                style.unit_words()) +
            text_of(table);
  }
  if (!boat.leaks.empty()) text += leak_table(boat, style);
  return text;
}

}  // namespace sheerlap
