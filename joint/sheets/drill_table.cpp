#include "joint/sheets/drill_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <vector>

#include "joint/documents/bit_angles.h"
#include "joint/documents/drilling_words.h"
#include "joint/documents/schedule_words.h"
#include "joint/documents/wording.h"
#include "joint/sheets/short_text.h"
#include "joint/side_ends.h"

namespace sheerlap {
namespace {

/// Room to write a figure and a name in.
constexpr double actual_mm = 19;
constexpr double initials_mm = 14;
constexpr double row_mm = 6.5;
/// Of text that has a name of the joint file in it, in characters: a row must go on a
/// sheet.
constexpr std::size_t longest_text = 160;

/// A row that stands where something starts on the drill line.
struct Event {
  Length girth;
  PageRow row;
};

PageColumn number(std::vector<std::string> heading) { return {std::move(heading)}; }

PageColumn main_number(std::vector<std::string> heading) {
  PageColumn column = number(std::move(heading));
  column.bold = true;
  column.letter_mm = letter_height::text;
  return column;
}

PageColumn blank(std::vector<std::string> heading, double width_mm) {
  PageColumn column = number(std::move(heading));
  column.align = Align::Left;
  column.least_width_mm = width_mm;
  column.stretch = 1;
  return column;
}

std::vector<PageColumn> columns(const FastenerSpec& spec, const NumberStyle& style) {
  PageColumn mark = main_number({"mark"});
  mark.align = Align::Left;
  PageColumn jig_girth = number({"jig", "girth"});
  jig_girth.bold = true;
  PageColumn why = number({"why there"});
  why.align = Align::Left;
  why.wraps = true;
  why.stretch = 1;
  return {mark,
          main_number({"girth"}),
          number({"pitch"}),
          number({"chord"}),
          number({"X"}),
          number({"Y"}),
          number({"Z"}),
          number({"hull", "girth"}),
          jig_girth,
          number({"up", "from", "edge"}),
          number({"tilt"}),
          number({"skew"}),
          number({"gap"}),
          number({"stack"}),
          number({"length", tool_style(spec, style).unit_name()}),
          number({"drill", "depth"}),
          number({"lip", "depth"}),
          why,
          blank({"ACTUAL", "girth"}, actual_mm),
          blank({"INITIALS"}, initials_mm)};
}

std::string or_dash(const std::optional<Length>& length,
                    const NumberStyle& style,
                    std::string (NumberStyle::*write)(Length) const) {
  return length ? (style.*write)(*length) : "-";
}

std::string lip_depth(const DrillStation& station, const NumberStyle& style) {
  return drillable(station) ? or_dash(station.lip_depth, style, &NumberStyle::gap)
                            : "no";
}

PageRow hole_row(const Job& job,
                 const DrillStation& station,
                 const NumberStyle& style) {
  const BitAngles angles = bit_angles(station.side, station.axis);
  const NumberStyle tools = tool_style(job.schedule->fastener, style);
  const bool across = across_opening(station, *job.perimeter.side(station.side));
  const bool drill = drillable(station);
  return {{station.mark,
           style.running(station.girth),
           across ? "" : style.span(station.pitch),
           or_dash(station.chord, style, &NumberStyle::span),
           style.span(Length::mm(station.point.x())),
           style.span(Length::mm(station.point.y())),
           style.span(Length::mm(station.point.z())),
           style.running(station.hull_girth),
           style.running(station.jig_girth),
           style.span(station.edge_low + job.joint.lip.trim),
           decimals(angles.tilt.in_degrees(), 1),
           decimals(angles.skew.in_degrees(), 1),
           style.gap(station.gap),
           style.gap(station.stack),
           or_dash(station.length, tools, &NumberStyle::size),
           drill ? style.span(station.drill_depth) : "no",
           lip_depth(station, style),
           short_text(style.sentence(short_reason(station.because)), longest_text),
           "",
           ""},
          drill ? RowLook::Plain : RowLook::Barred};
}

PageRow stop_row(const DrillStation& station, const NumberStyle& style) {
  const std::string why =
      misses_hull(station)
          ? "the bit misses the hull"
          : fmt::format("no fastener in stock serves its stack of {} {}",
                        style.gap(station.stack), style.unit_name());
  return {{fmt::format("{}: DO NOT DRILL: {}", station.mark, why)}, RowLook::Warning};
}

PageRow jig_row(const Job& job, const JigSegment& jig, const NumberStyle& style) {
  const auto& stations = job.schedule->stations;
  const DrillStation& first = stations[jig.first];
  const Length run = stations[jig.last].girth - first.girth;
  const std::string start =
      first.jig == jig.name ? fmt::format("lay it out from the {}: girth {} to {}",
                                          start_word(*job.perimeter.side(jig.side)),
                                          style.running(first.girth), first.mark)
                            : fmt::format("index: pin it through {}, which {} drilled",
                                          first.mark, first.jig);
  return {
      {fmt::format("JIG {}: {} to {}, {}; girth {} from first hole to last, piece {}; "
                   "{}",
                   jig.name, first.mark, stations[jig.last].mark,
                   counted(jig.last - jig.first + 1, "hole"), style.running(run),
                   style.running(piece_length(run, job.joint.jig)), start)},
      RowLook::Banner};
}

std::string girth_range(Length from, Length to, const NumberStyle& style) {
  return fmt::format("girth {} to {}", style.running(from), style.running(to));
}

PageRow bridge_row(const Bridge& bridge, const NumberStyle& style) {
  return {
      {fmt::format("SPACE OF {} {}, over its limit of {}, at {}: bridges {}. Put no "
                   "hole in it.",
                   style.span(bridge.pitch), style.unit_name(),
                   style.size_with_unit(bridge.limit),
                   girth_range(bridge.from, bridge.to, style),
                   short_text(style.sentence(bridge.what), longest_text))},
      RowLook::Warning};
}

/// Bridges, openings and corners of a side, by girth.
std::vector<Event> events(const Job& job, SideName name, const NumberStyle& style) {
  std::vector<Event> found;
  for (const LayoutSide& side : job.layout->sides)
    if (side.name == name)
      for (const Bridge& bridge : side.bridged)
        found.push_back({bridge.from, bridge_row(bridge, style)});
  const PerimeterSide& side = *job.perimeter.side(name);
  for (const OpeningSpan& opening : side.openings)
    found.push_back({opening.from,
                     {{fmt::format("NO JOINT at {}: {}",
                                   girth_range(opening.from, opening.to, style),
                                   short_text(opening.what, longest_text))},
                      RowLook::Banner}});
  for (const InnerCorner& corner : side.corners)
    found.push_back({corner.girth,
                     {{fmt::format("CORNER at girth {}", style.running(corner.girth))},
                      RowLook::Banner}});
  std::stable_sort(found.begin(), found.end(),
                   [](const Event& a, const Event& b) { return a.girth < b.girth; });
  return found;
}

/// Fills a table from one end of the side to the other.
class DrillRows {
 public:
  DrillRows(const Job& job, SideName side, const NumberStyle& style)
      : job_(job), style_(style), events_(events(job, side, style)) {}

  void add_jig(const JigSegment& jig) {
    const auto& stations = job_.schedule->stations;
    const bool indexed = stations[jig.first].jig != jig.name;
    // an index hole stands with the jig that drilled it
    const std::size_t first = jig.first + (indexed ? 1 : 0);
    if (!indexed) add_events_before(stations[first].girth);
    rows_.push_back(jig_row(job_, jig, style_));
    for (std::size_t at = first; at <= jig.last; ++at) {
      add_events_before(stations[at].girth);
      if (!drillable(stations[at])) rows_.push_back(stop_row(stations[at], style_));
      rows_.push_back(hole_row(job_, stations[at], style_));
    }
  }

  std::vector<PageRow> finished() {
    for (; next_ < events_.size(); ++next_) rows_.push_back(events_[next_].row);
    return std::move(rows_);
  }

 private:
  void add_events_before(Length girth) {
    for (; next_ < events_.size() && events_[next_].girth < girth; ++next_)
      rows_.push_back(events_[next_].row);
  }

  const Job& job_;
  const NumberStyle& style_;
  std::vector<Event> events_;
  std::size_t next_ = 0;
  std::vector<PageRow> rows_;
};

}  // namespace

std::string short_reason(const std::string& because) {
  const bool equal = because.starts_with("equal space ");
  if (!equal || because.starts_with("equal space 1 of ")) return because;
  return because.substr(0, because.find(" between "));
}

PageTable drill_table(const Job& job, SideName side, const NumberStyle& style) {
  assert(job.layout && job.schedule);
  DrillRows rows(job, side, style);
  for (const JigSegment& jig : job.schedule->jigs)
    if (jig.side == side) rows.add_jig(jig);
  PageTable table;
  table.columns = columns(job.schedule->fastener, style);
  table.rows = rows.finished();
  table.least_row_mm = row_mm;
  return table;
}

}  // namespace sheerlap
