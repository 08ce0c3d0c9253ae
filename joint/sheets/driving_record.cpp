#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <optional>
#include <set>

#include "joint/documents/check_text.h"
#include "joint/documents/wording.h"
#include "joint/driving_order.h"
#include "joint/mark_ranges.h"
#include "joint/sheets/sequence_records.h"

namespace sheerlap {
namespace {

std::string stage_words(DrivingStage stage) {
  return stage == DrivingStage::Locate ? "Locate" : "Tack";
}

PageTable step_table() {
  PageTable table;
  table.columns = {{{"no."}, Align::Right, 8},
                   {{"starboard"}, Align::Left},
                   {{"done"}, Align::Left, 10},
                   {{"port"}, Align::Left},
                   {{"done"}, Align::Left, 10}};
  for (const std::size_t marks : {1, 3}) {
    table.columns[marks].bold = true;
    table.columns[marks].stretch = 1;
  }
  table.least_row_mm = 5.2;
  return table;
}

/// The length that most are driven with; none if nothing is driven.
std::optional<Length> common_length(const Job& job) {
  std::map<Length, std::size_t> counts;
  for (const DrillStation& station : job.schedule->stations)
    if (drillable(station)) ++counts[*station.length];
  const auto most = std::max_element(
      counts.begin(), counts.end(),
      [](const auto& one, const auto& other) { return one.second < other.second; });
  return most == counts.end() ? std::nullopt : std::optional(most->first);
}

/// A mark, and the length of its fastener if it is not the common one.
std::string with_length(const DrillStation& station,
                        const std::optional<Length>& common,
                        const NumberStyle& style) {
  if (station.length == common) return station.mark;
  return fmt::format("{} ({})", station.mark, style.size(*station.length));
}

/// The two marks of a step, by hand; a step of one leaves the other blank.
std::vector<std::string> hands(const DrivingStep& step,
                               const Job& job,
                               const NumberStyle& style) {
  const auto common = common_length(job);
  const auto& stations = job.schedule->stations;
  const DrillStation& first = stations[step.stations.front()];
  if (step.stations.size() == 2)
    return {with_length(first, common, style),
            with_length(stations[step.stations[1]], common, style)};
  const PerimeterSide* side = job.perimeter.side(first.side);
  const bool to_port =
      first.side == SideName::Port ||
      (first.side == SideName::Transom && first.girth > side->drill_line_length / 2);
  const std::string mark = with_length(first, common, style);
  return to_port ? std::vector<std::string>{"-", mark}
                 : std::vector<std::string>{mark, "-"};
}

/// The steps before the filling, or of it.
PageTable steps_of(const std::vector<DrivingStep>& order,
                   bool filling,
                   const Job& job,
                   const NumberStyle& style) {
  PageTable table = step_table();
  std::string banner;
  for (std::size_t i = 0; i < order.size(); ++i) {
    const DrivingStep& step = order[i];
    if ((step.stage == DrivingStage::Fill) != filling) continue;
    const std::string words =
        filling ? capitalised(step.where)
                : fmt::format("{}: {}", stage_words(step.stage), step.where);
    if (words != banner) table.rows.push_back({{words}, RowLook::Banner});
    banner = words;
    const auto marks = hands(step, job, style);
    table.rows.push_back({{std::to_string(i + 1), marks[0], "", marks[1], ""}});
  }
  return table;
}

void write_lengths(SheetFlow& flow, const Job& job, const NumberStyle& style) {
  const auto& stations = job.schedule->stations;
  std::set<Length> lengths;
  for (const DrillStation& station : stations)
    if (drillable(station)) lengths.insert(*station.length);
  flow.heading("Which fastener goes where");
  for (const Length length : lengths)
    flow.paragraph(style.sentence(fastener_name(job.schedule->fastener, length)) +
                   ": " + mark_ranges(stations, [&](const DrillStation& station) {
                     return drillable(station) && station.length == length;
                   }));
  const std::string not_driven = mark_ranges(
      stations, [](const DrillStation& station) { return !drillable(station); });
  if (!not_driven.empty())
    flow.paragraph(
        "DO NOT DRIVE, for the hole misses the hull or no fastener in stock "
        "serves it: " +
            not_driven,
        {.bold = true});
}

}  // namespace

void write_driving(SheetFlow& flow, const Job& job, const NumberStyle& style) {
  const auto order = driving_order(job.perimeter, *job.schedule);
  flow.paragraph(verdict_line(job.checks), {.bold = true});
  record_checks(flow, job, style, {"schedule.", "layout.", "fastener."});
  flow.paragraph(
      "Drive the two of a line at the same time, a driver on each side. Never one side "
      "complete before the other: the deck walks across. The last turn by hand or on a "
      "low clutch, set on an offcut. Common practice, no source: bow, aft corners, "
      "pairs at every fourth to sixth hole, then the rest.");
  record_row(
      flow, {{"hull no."},
             {"fasteners to drive",
              [&] {
                const auto& all = job.schedule->stations;
                return std::to_string(std::count_if(all.begin(), all.end(), drillable));
              }()},
             {"driven, counted"},
             {"stripped, marks"},
             {"initials"}});
  flow.space(2);
  if (const auto common = common_length(job))
    flow.paragraph("All of " +
                   style.sentence(fastener_name(job.schedule->fastener, *common)) +
                   " but where a mark has another length behind it in brackets, in " +
                   style.unit_name() + ".");
  flow.heading("First: locate and tack");
  table_in_columns(flow, steps_of(order, false, job, style), 3);
  flow.heading("Then: fill in");
  table_in_columns(flow, steps_of(order, true, job, style), 3);
  write_lengths(flow, job, style);
  record_cautions(flow);
}

}  // namespace sheerlap
