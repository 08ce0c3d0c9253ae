#include "joint/documents/boat_text.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <map>
#include <optional>
#include <utility>
#include <vector>

#include "joint/documents/boat_words.h"
#include "joint/documents/drilling_words.h"
#include "joint/documents/schedule_words.h"
#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"
#include "joint/mark_ranges.h"

namespace sheerlap {
namespace {

std::string readings_words(const Boat& boat) {
  const auto of_state = static_cast<std::size_t>(
      std::count_if(boat.readings.begin(), boat.readings.end(),
                    [&](const auto& one) { return one.state == boat.state; }));
  const std::size_t others = boat.readings.size() - of_state;
  return fmt::format("{}, {}", counted(of_state, "reading"), state_word(boat.state)) +
         (others == 0 ? "" : fmt::format("; {} of another state left out", others));
}

std::string not_read_words(const Boat& boat, const NumberStyle& style) {
  std::vector<std::string> held;
  for (const HeldStretch& stretch : boat.held)
    held.push_back(fmt::format("{} {} to {}", side_word(stretch.side),
                               style.running(stretch.from), style.running(stretch.to)));
  std::string words;
  if (!held.empty())
    words += fmt::format(
        " NOT READ, the nearest difference is held there: {}, girths on the drill "
        "line.",
        fmt::join(held, ", "));
  if (!boat.unread.empty())
    words += fmt::format(" NOT READ, taken as drawn: {}.", sides_words(boat.unread));
  return words;
}

std::string heading(const Boat& boat, const NumberStyle& style) {
  return "This boat\n" +
         wrapped(fmt::format(
             "Its gap is the drawn one and the difference read ({}), straight along "
             "the drill line between readings, top and low edge apart. The hull face "
             "stands where that puts it; lip, holes and jigs are the drawing's.{}",
             readings_words(boat), not_read_words(boat, style)));
}

/// What the drawing has and what the boat has, a figure a row.
class Comparison {
 public:
  Comparison() {
    table_.columns = {{{""}, Align::Left},
                      {{"unit"}, Align::Left},
                      {{"drawn"}},
                      {{"this", "boat"}},
                      {{"more"}}};
  }
  void add_gap(const char* name, Length drawn, Length boat, const NumberStyle& style) {
    add(name, style.unit_name(), style.gap(drawn), style.gap(boat),
        style.gap(boat - drawn));
  }
  void add_volume(const char* name, Volume drawn, Volume boat) {
    add(name, "ml", decimals(drawn.in_ml(), 0), decimals(boat.in_ml(), 0),
        decimals(boat.in_ml() - drawn.in_ml(), 0));
  }
  void add_count(const std::string& name, std::size_t drawn, std::size_t boat) {
    const auto more = static_cast<double>(boat) - static_cast<double>(drawn);
    add(name, "", fmt::format("{}", drawn), fmt::format("{}", boat), decimals(more, 0));
  }
  std::string text() const { return text_of(table_); }

 private:
  void add(const std::string& name,
           const std::string& unit,
           const std::string& drawn,
           const std::string& boat,
           const std::string& more) {
    table_.rows.push_back({name, unit, drawn, boat, more});
  }
  TextTable table_;
};

void add_lengths(Comparison& rows,
                 const Schedule& drawn,
                 const Schedule& boat,
                 const NumberStyle& style) {
  const NumberStyle tools = tool_style(drawn.fastener, style);
  std::map<std::optional<Length>, std::pair<std::size_t, std::size_t>> counts;
  for (const LengthCount& one : counts_by_length(drawn, std::nullopt))
    counts[one.length].first = one.holes;
  for (const LengthCount& one : counts_by_length(boat, std::nullopt))
    counts[one.length].second = one.holes;
  for (const auto& [length, holes] : counts)
    rows.add_count(length ? fmt::format("{}s {} x {}", word_of(drawn.fastener.kind),
                                        drawn.fastener.size, tools.size(*length))
                          : "holes with no fastener in stock",
                   holes.first, holes.second);
}

std::string comparison(const Job& job, const NumberStyle& style) {
  const DrawnParts& drawn = job.boat->drawn;
  Comparison rows;
  if (job.fit && drawn.fit) {
    rows.add_gap("least gap", drawn.fit->least.gap, job.fit->least.gap, style);
    rows.add_gap("greatest gap", drawn.fit->greatest.gap, job.fit->greatest.gap, style);
    rows.add_gap("mean gap", drawn.fit->mean, job.fit->mean, style);
  }
  if (job.adhesive && drawn.adhesive) {
    const AdhesiveAmounts& was = drawn.adhesive->nominal;
    const AdhesiveAmounts& is = job.adhesive->nominal;
    rows.add_volume("in the joint", was.joint, is.joint);
    rows.add_volume("laid as beads", was.bead, is.bead);
    rows.add_volume("with waste and nozzles", was.boat, is.boat);
    rows.add_count("packs", was.packs, is.packs);
  }
  if (job.schedule && drawn.schedule)
    add_lengths(rows, *drawn.schedule, *job.schedule, style);
  return rows.text();
}

std::string limits_words(const Boat& boat, const NumberStyle& style) {
  const GapLimits& limits = boat.limits;
  const std::string step =
      limits.step ? fmt::format(", neighbouring readings no more than {} apart",
                                style.size_with_unit(*limits.step))
                  : ", no limit from one reading to the next ([readings] step)";
  return fmt::format("a gap of {} to {}{}", style.size(limits.gap_min),
                     style.size_with_unit(limits.gap_max), step);
}

std::string acceptance(const Boat& boat, const NumberStyle& style) {
  const bool gaps = !boat.held.empty() || !boat.unread.empty();
  std::string text = wrapped(
      fmt::format("Accepted by: {}, as the joint file has it, and a fastener in stock "
                  "for every hole.",
                  limits_words(boat, style)));
  if (boat.out.empty())
    return text + wrapped(gaps ? "ACCEPT as far as it was read: nothing is out, and "
                                 "where it was not read there is no saying."
                               : "ACCEPT: nothing is out where it was read, nor "
                                 "between.");
  text += fmt::format("NOT ACCEPTED: {}; lengths in {}, girths on the drill line.\n",
                      counted(boat.out.size(), "non-conformance"), style.unit_words());
  for (const NonConformance& out : boat.out) {
    const std::size_t indent = name_of(out).size() + 1;
    text += wrapped(fmt::format("{} {}", name_of(out), out_words(out, style)),
                    text_width, indent);
    text += std::string(indent, ' ') +
            wrapped("open: " + disposition_words(out, boat.state, style),
                    text_width - indent, indent);
  }
  return text;
}

std::string or_blank(Length length, const NumberStyle& style) {
  return length > Length() ? style.gap(length) : "";
}

/// The places that are out, with what each edge lacks of the least gap or has over the
/// greatest.
TextTable places_out(const Boat& boat,
                     const std::string& lacks,
                     const std::string& over,
                     const NumberStyle& style) {
  TextTable table;
  table.columns = {{{"hole or", "reading"}, Align::Left},
                   {{"side"}, Align::Left},
                   {{"girth"}},
                   {{"gap", "top"}},
                   {{"gap", "low"}},
                   {{lacks, "top"}},
                   {{lacks, "low"}},
                   {{over, "top"}},
                   {{over, "low"}},
                   {{""}, Align::Left}};
  for (const PlaceGap& place : boat.places) {
    const bool any = place.top.grind > Length() || place.low.grind > Length() ||
                     place.top.build_up > Length() || place.low.build_up > Length();
    if (!any) continue;
    const bool by_girth = place.place.starts_with("girth ");
    table.rows.push_back(
        {by_girth ? "reading" : place.place, side_word(place.side),
         style.running(place.girth), style.gap(place.top.gap), style.gap(place.low.gap),
         or_blank(place.top.grind, style), or_blank(place.low.grind, style),
         or_blank(place.top.build_up, style), or_blank(place.low.build_up, style),
         place.known == Known::Read ? "" : word_of(place.known)});
  }
  return table;
}

constexpr const char* by_place =
    "by hole and reading, at the hull's top edge and at the lap's low edge";

/// Where a boat that is glued is out.
std::string where_out(const Boat& boat, const NumberStyle& style) {
  const TextTable table = places_out(boat, "below", "over", style);
  const std::string title = fmt::format("Where it is out, {}", by_place);
  if (table.rows.empty()) return wrapped(title + ": nowhere.");
  return wrapped(fmt::format("{}, in {}: how far the gap is below the least or over "
                             "the greatest; the others are inside. The joint is glued: "
                             "this is no list of work.",
                             title, style.unit_words())) +
         text_of(table);
}

/// What to grind and to shim, once a better seating has not mended it.
std::string work(const Boat& boat, const NumberStyle& style) {
  if (boat.state == ReadingState::After) return where_out(boat, style);
  const TextTable table = places_out(boat, "grind", "shim", style);
  const std::string title = fmt::format(
      "To grind, shim or build up AFTER the lid is seated in its best place and read "
      "again, {}",
      by_place);
  if (table.rows.empty()) return wrapped(title + ": nothing.");
  return wrapped(fmt::format("{}, in {}, by the gap as it is now; nothing at the "
                             "others. What is ground comes off the laminate: ask "
                             "whether it can spare it.",
                             title, style.unit_words())) +
         text_of(table);
}

std::string fastener_changes(const Boat& boat, const NumberStyle& style) {
  const Schedule& drawn = *boat.drawn.schedule;
  const NumberStyle tools = tool_style(drawn.fastener, style);
  std::map<std::string, FastenerAt> by_mark;
  std::map<std::pair<std::optional<Length>, std::optional<Length>>, bool> changes;
  for (const PlaceGap& place : boat.places) {
    if (!place.fastener || place.fastener->length == place.fastener->drawn) continue;
    by_mark[place.place] = *place.fastener;
    changes[{place.fastener->drawn, place.fastener->length}] = true;
  }
  const auto size = [&](const std::optional<Length>& length) {
    return length ? tools.size_with_unit(*length) : std::string("none in stock");
  };
  std::string text;
  for (const auto& [change, there] : changes) {
    const std::string marks =
        mark_ranges(drawn.stations, [&](const DrillStation& station) {
          const auto found = by_mark.find(station.mark);
          return found != by_mark.end() && found->second.drawn == change.first &&
                 found->second.length == change.second;
        });
    text += wrapped(fmt::format("{}: {} in place of {}", marks, size(change.second),
                                size(change.first)),
                    text_width, 2);
  }
  if (text.empty()) return "Fasteners: every hole takes the length drawn.\n";
  return fmt::format("Holes that take another length than drawn, {}s {}\n{}",
                     word_of(drawn.fastener.kind), drawn.fastener.size, text);
}

std::string bead_changes_text(const Boat& boat, const NumberStyle& style) {
  if (boat.beads.empty()) return "Beads: as drawn all the way.\n";
  // shorter ones are only where a run of beads ends a little earlier or later
  constexpr Length told = Length::mm(50);
  TextTable table;
  table.columns = {
      {{"side"}, Align::Left}, {{"from"}}, {{"to"}}, {{"drawn"}}, {{"this", "boat"}}};
  const auto bead = [&](std::size_t count, Length size) {
    return (count == 1 ? "" : fmt::format("{} x ", count)) + style.size(size);
  };
  Length changed;
  for (const BeadChange& change : boat.beads) {
    changed = changed + (change.to - change.from);
    if (change.to - change.from < told) continue;
    table.rows.push_back(
        {side_word(change.side), style.running(change.from), style.running(change.to),
         bead(change.drawn_beads, change.drawn_size), bead(change.beads, change.size)});
  }
  const std::string title = wrapped(fmt::format(
      "Beads that change, in {}, by girth along the sheer: {} in all; stretches "
      "shorter than {} are left out here, the beads to lay stand further down.",
      style.unit_words(), style.running(changed), style.size_with_unit(told)));
  return title + (table.rows.empty() ? "" : text_of(table));
}

}  // namespace

std::string boat_text(const Job& job, const NumberStyle& style) {
  const Boat& boat = *job.boat;
  std::string text = heading(boat, style) + "\n" + comparison(job, style) + "\n" +
                     acceptance(boat, style);
  if (job.fit) text += "\n" + work(boat, style);
  if (job.fit || job.schedule) text += "\n" + fastener_changes(boat, style);
  if (job.adhesive) text += "\n" + bead_changes_text(boat, style);
  return text;
}

}  // namespace sheerlap
