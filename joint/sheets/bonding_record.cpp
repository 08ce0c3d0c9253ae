#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <set>

#include "joint/documents/check_text.h"
#include "joint/documents/wording.h"
#include "joint/sheets/sequence_records.h"
#include "joint/working_time.h"

namespace sheerlap {
namespace {

/// Where a station stands along the sheer.
Length on_sheer(const DrillStation& station, const Perimeter& perimeter) {
  const PerimeterSide& side = *perimeter.side(station.side);
  return side.sheer.girth_at(side.drill_line.place_at(station.girth));
}

/// The marks within a run of beads: "S03 to S09", or those it lies between.
std::string marks_in(const BeadRun& run, const Job& job) {
  std::string first, last, before, after;
  for (const DrillStation& station : job.schedule->stations) {
    if (station.side != run.side) continue;
    const Length girth = on_sheer(station, job.perimeter);
    if (girth < run.from) before = station.mark;
    if (girth > run.to && after.empty()) after = station.mark;
    if (girth < run.from || girth > run.to) continue;
    if (first.empty()) first = station.mark;
    last = station.mark;
  }
  if (!first.empty()) return first == last ? first : first + " to " + last;
  if (before.empty() && after.empty()) return "no marks";
  if (before.empty()) return "before " + after;
  return after.empty() ? "after " + before : "between " + before + " and " + after;
}

PageTable bead_table(const Job& job, const NumberStyle& style) {
  const std::string unit = style.unit_name();
  PageTable table;
  table.columns = {
      {{"from,", unit}}, {{"to,", unit}}, {{"marks"}, Align::Left}, {{"bead,", unit}}};
  table.columns[2].stretch = 1;
  table.columns[3].bold = true;
  table.least_row_mm = 3.6;
  std::optional<SideName> side;
  for (const BeadRun& run : job.adhesive->beads) {
    if (side != run.side)
      table.rows.push_back({{capitalised(side_word(run.side))}, RowLook::Banner});
    side = run.side;
    const std::string beads = run.beads > 1 ? fmt::format("{} x ", run.beads) : "";
    table.rows.push_back({{style.running(run.from), style.running(run.to),
                           marks_in(run, job), beads + style.size(run.size)}});
  }
  return table;
}

std::string minutes(Duration time) { return decimals(time.in_minutes(), 0); }

PageTable clock_table(const TimePlan& time) {
  PageTable table;
  table.columns = {{{"event"}, Align::Left},
                   {{"planned,", "minutes"}},
                   {{"clock"}, Align::Left, 18},
                   {{"initials"}, Align::Left, 14}};
  table.columns[0].stretch = 1;
  table.letter_mm = letter_height::text;
  table.least_row_mm = 7;
  const Duration laid = time.dispensing + time.pack_changes;
  const auto add = [&](const char* event, Duration at) {
    table.rows.push_back({{event, minutes(at), "", ""}});
  };
  add("first bead: out of the nozzle", Duration());
  add("last bead laid", laid);
  add("deck down", laid + time.seating);
  add("last fastener driven", time.total);
  add("working time over, shop as planned", time.working_time);
  return table;
}

/// The working time at temperatures about that of the data sheet, and at the shop's.
PageTable temperature_table(const Job& job) {
  const Adhesive& adhesive = *job.joint.adhesive;
  const TimePlan& time = *job.adhesive->time;
  PageTable table;
  table.columns = {{{"shop,", "degrees C"}},
                   {{"working", "time, min"}},
                   {{"the plan of", minutes(time.total) + " min"}, Align::Left}};
  table.columns[2].stretch = 1;
  table.least_row_mm = 5.5;
  std::set<double> temperatures{job.joint.shop->temperature};
  for (int off = -10; off <= 10; off += 5)
    temperatures.insert(adhesive.working_time_at + off);
  for (const double temperature : temperatures) {
    const Duration has =
        working_time(*adhesive.working_time, adhesive.working_time_at, temperature);
    const std::string fits = time.total > has         ? "STOP"
                             : time.total * 1.2 > has ? "barely"
                                                      : "inside";
    table.rows.push_back(
        {{at_most_decimals(temperature, 1), minutes(has),
          fits + (temperature == job.joint.shop->temperature ? "; planned" : "")}});
  }
  return table;
}

/// Two tables of which the first takes most of the width.
void draw_side_by_side(SheetFlow& flow, const PageTable& one, const PageTable& other) {
  constexpr double apart_mm = 3, share = 0.64;
  const double width = (flow.room().width - apart_mm) * share;
  const PlacedTable left(flow.page(), one, width);
  const PlacedTable right(flow.page(), other, flow.room().width - apart_mm - width);
  const Point2 corner(flow.room().left, flow.room().top);
  const double height =
      std::max(left.draw(flow.page(), corner, 0, one.rows.size()),
               right.draw(flow.page(), corner + Vector2(width + apart_mm, 0), 0,
                          other.rows.size()));
  flow.take(height);
  flow.space(2);
}

void write_clock(SheetFlow& flow, const Job& job) {
  flow.heading("The clock");
  if (!job.adhesive->time) {
    flow.paragraph(
        "No plan: the joint file has no [shop] or no working_time. Write the "
        "working time of the data sheet in before the first bead.");
    record_row(flow, {{"working time, data sheet"},
                      {"first bead"},
                      {"deck down"},
                      {"last fastener"}});
    return;
  }
  draw_side_by_side(flow, clock_table(*job.adhesive->time), temperature_table(job));
  small_print(
      flow, fmt::format("The data sheet's {} minutes at {} degrees C, halved for every "
                        "10 degrees C warmer (rule of thumb). Read the shop's "
                        "temperature before the first bead. STOP: longer than the "
                        "working time. Barely: less than a fifth "
                        "to spare (common practice, no source).",
                        minutes(*job.joint.adhesive->working_time),
                        at_most_decimals(job.joint.adhesive->working_time_at, 1)));
}

}  // namespace

void write_bonding(SheetFlow& flow, const Job& job, const NumberStyle& style) {
  const Adhesive& adhesive = *job.joint.adhesive;
  const AdhesiveAmounts& amounts = job.adhesive->nominal;
  flow.paragraph(verdict_line(job.checks), {.bold = true});
  record_row(flow, {{"adhesive", adhesive.name, 2}, {"hull no."}, {"crew"}});
  record_row(flow, {{"batch, part A"},
                    {"batch, part B"},
                    {"expiry"},
                    {"shop, degrees C"},
                    {"humidity, %"},
                    {"adhesive, degrees C"}});
  record_row(flow, {{"laid in beads", decimals(amounts.bead.in_ml(), 0) + " ml"},
                    {"to come out of the packs",
                     decimals(amounts.boat.in_ml(), 0) + " ml", 1.3},
                    {"packs", std::to_string(amounts.packs), 0.6},
                    {"nozzles", std::to_string(amounts.nozzles), 0.6},
                    {"packs opened", "", 0.8},
                    {"sample bead on card"}});
  flow.space(2);
  flow.paragraph(fmt::format(
      "Abrade, clean and mask first. Purge {} ml at every fresh nozzle. Lay "
      "the bead on the hull's face, high, so that the lip wipes it down and "
      "not off, and carry it round holes and cut-outs without a break "
      "(common practice, no source).",
      at_most_decimals(adhesive.nozzle_purge.in_ml(), 1)));
  write_clock(flow, job);
  flow.heading("Beads");
  small_print(flow,
              fmt::format("{}. Girths on the sheer, the hull's top edge, from the "
                          "bow datum; on the transom from its starboard corner; "
                          "rounded to {}.",
                          adhesive.bead_shape == BeadShape::Triangle
                              ? "Triangles, as high as wide"
                              : "Round, by diameter",
                          style.step_name()));
  table_in_columns(flow, bead_table(job, style), 2);
  record_cautions(flow);
}

}  // namespace sheerlap
