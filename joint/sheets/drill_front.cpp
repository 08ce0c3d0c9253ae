#include "joint/sheets/drill_front.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <functional>
#include <optional>
#include <vector>

#include "joint/documents/cautions.h"
#include "joint/documents/check_text.h"
#include "joint/documents/drilling_words.h"
#include "joint/documents/schedule_words.h"
#include "joint/documents/wording.h"
#include "joint/mark_ranges.h"
#include "joint/sheets/drill_hand.h"
#include "joint/sheets/note_columns.h"
#include "joint/sheets/page_table.h"
#include "joint/sheets/short_text.h"
#include "joint/side_ends.h"

namespace sheerlap {
namespace {

constexpr double facts_share = 0.5;
constexpr double between_mm = 6;
constexpr double facts_letter_mm = 2;
/// Of a check, in characters: a note is not split.
constexpr std::size_t longest_check = 500;

using Stations = std::vector<const DrillStation*>;

Stations stations_of(const Job& job, SideName side) {
  Stations stations;
  for (const DrillStation& station : job.schedule->stations)
    if (station.side == side) stations.push_back(&station);
  return stations;
}

std::string datum_words(const Job& job, SideName name, const NumberStyle& style) {
  const PerimeterSide& side = *job.perimeter.side(name);
  const Point3 point = on_drill_line(side, Length());
  const auto ordinate = [&](double value) { return style.span(Length::mm(value)); };
  return fmt::format(
      "girth 0 at the {}, X {} Y {} Z {}; the tape runs {} along the drill line to the "
      "{}, girth {}",
      start_word(side), ordinate(point.x()), ordinate(point.y()), ordinate(point.z()),
      name == SideName::Transom ? "to port" : "aft", end_word(side),
      style.running(side.drill_line_length));
}

std::string line_words(const Job& job, SideName side, const NumberStyle& style) {
  const std::string up = up_from_edge(job, side, style);
  return fmt::format(
      "{} below the sheer{}", style.size_with_unit(job.joint.fastener.line),
      up.empty() ? ""
                 : ", " + up +
                       " up the lip's outer face from its low edge where "
                       "that is trimmed as drawn");
}

std::string rounding_words(const NumberStyle& style) {
  return fmt::format(
      "{}; girths rounded to {}, pitch, chord, X Y Z and drill depth to {}, gap, stack "
      "and lip depth to {}",
      style.unit_words(), style.step_name(), style.span_step(), style.gap_step());
}

std::string bit_words(const Job& job, const NumberStyle& style) {
  const FastenerSpec& spec = job.schedule->fastener;
  const NumberStyle tools = tool_style(spec, style);
  const std::string lip = tools.size_with_unit(spec.lip_hole);
  const std::string sunk = fmt::format(
      "{} {} wide, {} deep", spec.head == HeadKind::Pan ? "chamfer" : "countersink",
      style.size_with_unit(spec.countersink),
      style.size_with_unit(spec.countersink_depth));
  if (!spec.hull_pilot) return fmt::format("{} through lip and hull; {}", lip, sunk);
  return fmt::format("pilot {} through lip and hull; {} through the lip only; {}",
                     tools.size_with_unit(*spec.hull_pilot), lip, sunk);
}

/// "15.7 to 21.6": the depths of the holes that are drilled; empty if none has one.
std::string depth_range(
    const Stations& stations,
    const std::function<std::optional<Length>(const DrillStation&)>& depth,
    const std::function<std::string(Length)>& write) {
  std::optional<Length> least, most;
  for (const DrillStation* station : stations) {
    const std::optional<Length> found = depth(*station);
    if (!found || !drillable(*station)) continue;
    least = std::min(least.value_or(*found), *found);
    most = std::max(most.value_or(*found), *found);
  }
  if (!least) return "";
  const std::string low = write(*least), high = write(*most);
  return low == high ? low : low + " to " + high;
}

std::string stop_words(const Stations& stations, const NumberStyle& style) {
  const std::string drill = depth_range(
      stations, [](const DrillStation& station) { return station.drill_depth; },
      [&](Length depth) { return style.span(depth); });
  const std::string lip = depth_range(
      stations, [](const DrillStation& station) { return station.lip_depth; },
      [&](Length depth) { return style.gap(depth); });
  if (drill.empty()) return "no hole is to be drilled";
  return fmt::format(
      "drill depth {} {}{}, from the lip's outer face; set each hole's own", drill,
      style.unit_name(),
      lip.empty() ? "" : fmt::format(", lip depth {} {}", lip, style.unit_name()));
}

std::string hole_words(const Job& job, SideName side) {
  const std::size_t holes = stations_of(job, side).size();
  const auto jigs = static_cast<std::size_t>(
      std::count_if(job.schedule->jigs.begin(), job.schedule->jigs.end(),
                    [&](const JigSegment& jig) { return jig.side == side; }));
  const std::string barred =
      mark_ranges(job.schedule->stations, [&](const DrillStation& station) {
        return station.side == side && !drillable(station);
      });
  return fmt::format("{} on {}{}", counted(holes, "hole"), counted(jigs, "jig"),
                     barred.empty() ? "" : "; DO NOT DRILL " + barred);
}

std::string kit_words(const Job& job, SideName side, const NumberStyle& style) {
  const NumberStyle tools = tool_style(job.schedule->fastener, style);
  std::string words = fastener_name(job.schedule->fastener);
  std::string lengths;
  for (const LengthCount& count : counts_by_length(*job.schedule, side))
    lengths += fmt::format("{}{} {}", lengths.empty() ? ": " : ", ", count.holes,
                           count.length ? "of " + tools.size_with_unit(*count.length)
                                        : "without one that serves");
  return words + lengths;
}

std::string flagged_words(const Job& job, SideName name) {
  std::size_t bridged = 0;
  for (const LayoutSide& side : job.layout->sides)
    if (side.name == name) bridged += side.bridged.size();
  if (bridged == 0) return "none: every space keeps its limit";
  return fmt::format("{} over the limit, white on black in the table",
                     counted(bridged, "space"));
}

PageTable facts(const Job& job, SideName side, const NumberStyle& style) {
  PageTable table;
  table.letter_mm = facts_letter_mm;
  PageColumn what, value;
  what.align = value.align = Align::Left;
  what.bold = true;
  value.wraps = true;
  value.stretch = 1;
  table.columns = {what, value};
  table.rows = {{{"surface", "the lip's outer face: the tape lies on it"}},
                {{"drill line", line_words(job, side, style)}},
                {{"datum", datum_words(job, side, style)}},
                {{"lengths in", rounding_words(style)}},
                {{"bits", bit_words(job, style)}},
                {{"depth stops", stop_words(stations_of(job, side), style)}},
                {{"holes", hole_words(job, side)}},
                {{"fasteners", kit_words(job, side, style)}},
                {{"flagged spaces", flagged_words(job, side)}}};
  return table;
}

/// Whether a check is of what a driller has to do with.
bool is_of_drilling(const Check& check) {
  return !check.id.starts_with("adhesive.") && !check.id.starts_with("order.");
}

/// What the verdict counts and these sheets do not show; empty if nothing is left out.
std::string left_out_words(const Checks& checks) {
  const auto left_out = [&](CheckState state) {
    return std::count_if(checks.begin(), checks.end(), [&](const Check& check) {
      return check.state == state && !is_of_drilling(check);
    });
  };
  const auto failed = left_out(CheckState::Fail);
  const auto warned = left_out(CheckState::Warn);
  if (failed + warned == 0) return "";
  const std::string fail = failed == 0 ? "" : fmt::format("{} that fail", failed);
  const std::string warn = warned == 0 ? "" : fmt::format("{} that warn", warned);
  return fmt::format(
      "Left out here, though the verdict counts them: of adhesive and order, {}{}{}. "
      "joint.html lists all.",
      fail, fail.empty() || warn.empty() ? "" : " and ", warn);
}

std::vector<Note> notes(const Job& job, SideName side, const NumberStyle& style) {
  std::vector<Note> result;
  const auto add = [&](const std::string& heading, const std::string& words) {
    if (!words.empty()) result.push_back({heading, words});
  };
  std::string heading = "Cautions";
  for (const std::string& caution : cautions()) {
    add(heading, caution);
    heading.clear();
  }
  heading = "How to mark out";
  for (const std::string& paragraph : marking_paragraphs(job, style)) {
    add(heading, paragraph);
    heading.clear();
  }
  add("How to drill", order_of_work(job, style));
  add("", not_to_drill(*job.schedule, side));
  add("", stack_words(job, style) +
              " \"Up from edge\" is from the lip's low edge, trimmed as drawn, to the "
              "hole's centre.");
  add("", square_words());
  heading = "Checks of fit, layout and schedule that fail or warn";
  for (const CheckState state : {CheckState::Fail, CheckState::Warn})
    for (const Check& check : job.checks) {
      if (check.state != state || !is_of_drilling(check)) continue;
      add(heading, (state == CheckState::Fail ? "FAIL: " : "WARN: ") +
                       short_text(check_sentence(check, style), longest_check));
      heading.clear();
    }
  add(heading.empty() ? "" : "Checks", left_out_words(job.checks));
  return result;
}

/// The name of the side, large, and what it is not.
void draw_hand(SheetFlow& flow, const Job& job, SideName side) {
  flow.paragraph(drill_side_words(side) + ": drilling schedule",
                 {.height_mm = letter_height::title, .bold = true});
  flow.paragraph(hand_words(*job.schedule, side), {.bold = true});
}

double draw_verdict(Page& page, const Box& column, const Job& job) {
  const std::string words = verdict_line(job.checks);
  const Lettering lettering{.bold = true};
  const double width = column.width - 4;
  const double height = page.paragraph_height(words, width, lettering) + 3;
  page.box({column.left, column.top, column.width, height},
           {.width_mm = line_width::heavy});
  page.paragraph({column.left + 2, column.top + 2.2}, words, width, lettering);
  return height;
}

/// Fields to fill in before drilling; returns their height.
double draw_fields(Page& page, const Box& column) {
  constexpr double field_mm = 11;
  const double width = column.width / 3;
  const char* const names[] = {"hull number", "jigs, their numbers",
                               "first hole, date"};
  for (int field = 0; field < 3; ++field)
    draw_field(page, {column.left + field * width, column.top, width, field_mm},
               names[field]);
  return field_mm;
}

}  // namespace

std::string drill_side_words(SideName side) {
  switch (side) {
    case SideName::Starboard:
      return "STARBOARD";
    case SideName::Port:
      return "PORT";
    case SideName::Transom:
      return "TRANSOM";
  }
  assert(false);
  return "";
}

void draw_drill_front(SheetFlow& flow,
                      const Job& job,
                      SideName side,
                      const NumberStyle& style) {
  draw_hand(flow, job, side);
  const Box room = flow.room();
  Box left{room.left, room.top, room.width * facts_share - between_mm / 2, room.height};
  Box right{left.right() + between_mm, room.top,
            room.right() - left.right() - between_mm, room.height};
  const auto down = [&](double height) {
    left.top += height + between_mm / 2;
    left.height -= height + between_mm / 2;
  };
  const PageTable table = facts(job, side, style);
  const PlacedTable placed(flow.page(), table, left.width);
  down(draw_verdict(flow.page(), left, job));
  down(placed.draw(flow.page(), {left.left, left.top}, 0, table.rows.size()));
  down(draw_fields(flow.page(), left));
  write_notes(flow, {right, left}, notes(job, side, style));
}

}  // namespace sheerlap
