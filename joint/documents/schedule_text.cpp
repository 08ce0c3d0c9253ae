#include "joint/documents/schedule_text.h"

#include <fmt/format.h>

#include <optional>

#include "joint/documents/drilling_text.h"
#include "joint/documents/drilling_words.h"
#include "joint/documents/schedule_words.h"
#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"

namespace sheerlap {
namespace {

std::string heading(const Job& job, const NumberStyle& style) {
  std::string text;
  for (const std::string& paragraph : marking_paragraphs(job, style))
    text += wrapped(paragraph);
  return text;
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
                                   const PerimeterSide& side,
                                   const NumberStyle& style) {
  return {station.mark,
          style.running(station.girth),
          across_opening(station, side) ? "" : style.span(station.pitch),
          or_blank(station.chord, style, &NumberStyle::span),
          style.span(Length::mm(station.point.x())),
          style.span(Length::mm(station.point.y())),
          style.span(Length::mm(station.point.z())),
          style.running(station.hull_girth),
          station.jig,
          style.running(station.jig_girth)};
}

std::string side_text(const Job& job, SideName side, const NumberStyle& style) {
  TextTable places = places_table();
  for (const DrillStation& station : job.schedule->stations) {
    if (station.side != side) continue;
    places.rows.push_back(place_row(station, *job.perimeter.side(side), style));
  }
  const std::string name = capitalised(side_word(side));
  return fmt::format("\n{}: where the {} are\n", name,
                     counted(places.rows.size(), "hole")) +
         text_of(places) + fmt::format("\n{}: how each hole is drilled\n", name) +
         drilling_table(job, side, style);
}

std::string datums(const Schedule& schedule, const NumberStyle& style) {
  TextTable table;
  table.columns = {{{"side"}, Align::Left},
                   {{"X"}},
                   {{"Y"}},
                   {{"Z"}},
                   {{"point of the drill line"}, Align::Left}};
  for (const SideDatum& datum : schedule.datums)
    table.rows.push_back({side_word(datum.side),
                          style.span(Length::mm(datum.point.x())),
                          style.span(Length::mm(datum.point.y())),
                          style.span(Length::mm(datum.point.z())), datum.what});
  return "\nWhere each side starts and ends\n" + text_of(table);
}

std::string jigs(const Job& job, const NumberStyle& style) {
  const Schedule& schedule = *job.schedule;
  TextTable table;
  table.columns = {{{"jig"}, Align::Left},
                   {{"side"}, Align::Left},
                   {{"first"}, Align::Left},
                   {{"last"}, Align::Left},
                   {{"holes"}},
                   {{"girth"}},
                   {{"piece"}},
                   {{"from", "start"}},
                   {{"index"}, Align::Left}};
  for (const JigSegment& jig : schedule.jigs) {
    const DrillStation& first = schedule.stations[jig.first];
    const DrillStation& last = schedule.stations[jig.last];
    const Length run = last.girth - first.girth;
    table.rows.push_back(
        {jig.name, side_word(jig.side), first.mark, last.mark,
         fmt::format("{}", jig.last - jig.first + 1), style.running(run),
         style.running(piece_length(run, job.joint.jig)), style.running(first.girth),
         first.next_jig == jig.name ? first.mark : "-"});
  }
  return "\nJigs\n" +
         wrapped(fmt::format(
             "Girth is from first hole to last; piece is the length of the jig, with a "
             "bush's diameter ({}) from the centre of each outer hole to the end "
             "(common practice, no source). \"From start\" is the girth from the "
             "side's start to the first hole. Pin a jig through the hole it shares "
             "with "
             "the one before, its \"index\"; lay one with \"-\" out from the start.",
             style.size_with_unit(job.joint.jig.bush))) +
         text_of(table);
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
      table.rows.push_back({check_figure(line, style), style.sentence(line.measured),
                            check_words(line, style)});
  if (table.rows.empty()) return "";
  return fmt::format(
             "\n{}: dimensions to check the setting-out by, girths rounded to "
             "{}\n",
             capitalised(side_word(side)), style.step_name()) +
         text_of(table);
}

std::string kit(const Job& job, const NumberStyle& style) {
  TextTable table;
  const NumberStyle tools = tool_style(job.schedule->fastener, style);
  table.columns = {{{"length", tools.unit_name()}}, {{"holes"}}};
  for (const LengthCount& count : counts_by_length(*job.schedule, std::nullopt))
    table.rows.push_back({count.length ? tools.size(*count.length) : "none",
                          fmt::format("{}", count.holes)});
  return fmt::format("\n{}s {} by length\n",
                     capitalised(word_of(job.joint.fastener.kind)),
                     job.joint.fastener.size) +
         text_of(table);
}

}  // namespace

std::string schedule_text(const Job& job, const NumberStyle& style) {
  std::string text = heading(job, style) + drilling_notes(job, style);
  for (const PerimeterSide& side : job.perimeter.sides)
    text += side_text(job, side.name, style);
  text += datums(*job.schedule, style) + jigs(job, style);
  if (!job.schedule->check_lines.empty()) text += "\n" + wrapped(straight_words());
  for (const PerimeterSide& side : job.perimeter.sides)
    text += check_lines(*job.schedule, side.name, style);
  return text + kit(job, style);
}

}  // namespace sheerlap
