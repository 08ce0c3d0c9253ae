#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <set>

#include "joint/documents/check_text.h"
#include "joint/documents/wording.h"
#include "joint/order.h"
#include "joint/sheets/sequence_records.h"
#include "joint/working_temperature.h"
#include "joint/working_time.h"

namespace sheerlap {
namespace {

PageTable bead_table(const Job& job, const NumberStyle& style) {
  const std::string unit = style.unit_name();
  PageTable table;
  table.columns = {{{"from,", unit}},
                   {{"to,", unit}},
                   {{"marks"}, Align::Left},
                   {{"bead,", unit}},
                   {{"laid,", "ml"}}};
  table.columns[2].stretch = 1;
  table.columns[3].bold = true;
  table.least_row_mm = 3.6;
  std::optional<SideName> side;
  for (const BeadRun& run : job.adhesive->beads) {
    if (side != run.side)
      table.rows.push_back({{capitalised(side_word(run.side))}, RowLook::Banner});
    side = run.side;
    const std::string beads = run.beads > 1 ? fmt::format("{} x ", run.beads) : "";
    table.rows.push_back(
        {{style.running(run.from), style.running(run.to),
          marks_in(run.side, run.from, run.to, job), beads + style.size(run.size),
          decimals(bead_volume({run}).in_ml(), 0)}});
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

/// The shop's temperature at which the plan takes all of the working time.
std::string runs_out(const Job& job) {
  const Adhesive& adhesive = *job.joint.adhesive;
  const double at = working_temperature(
      *adhesive.working_time, adhesive.working_time_at, job.adhesive->time->total);
  return fmt::format(
      "The plan's {} min are all of the working time at {} degrees C: "
      "any warmer, and it runs out before the last fastener.",
      minutes(job.adhesive->time->total), decimals(at, 1));
}

/// What the times rest on.
std::string rates(const Shop& shop) {
  return fmt::format(
      "The times rest on {}, {} ml/min each, {} min a fresh pack, {} min to lower and "
      "seat the deck, and {}, {} fasteners a minute each. Each gun starts with a full "
      "pack; part packs take up to one change a gun more.",
      counted(static_cast<std::size_t>(shop.guns), "gun"),
      at_most_decimals(shop.gun_rate, 1),
      at_most_decimals(shop.pack_change.in_minutes(), 1),
      at_most_decimals(shop.seat.in_minutes(), 1),
      counted(static_cast<std::size_t>(shop.drivers), "driver"),
      at_most_decimals(shop.screw_rate, 1));
}

/// When each gun starts and stops; more than four write on a sheet of their own.
void write_guns(SheetFlow& flow, const Job& job) {
  const std::size_t guns = std::min<std::size_t>(guns_of(job.joint), 4);
  std::vector<RecordField> fields;
  for (std::size_t gun = 1; gun <= guns; ++gun)
    for (const char* what : {"start", "stop"})
      fields.push_back({fmt::format("gun {}: {}", gun, what)});
  record_row(flow, fields);
  record_row(flow, {{"clamped or held from"},
                    {"held until"},
                    {"cure time, data sheet"},
                    {"not moved before"}});
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
  flow.paragraph(runs_out(job), {.bold = true});
  small_print(flow, rates(*job.joint.shop));
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
  flow.paragraph(
      "CAUTION: adhesive and green laminate give off vapour that burns and harms. "
      "Ventilate; keep every flame, spark and hot tool away; respirator, gloves and "
      "eye "
      "protection as the safety data sheet asks.",
      {.bold = true});
  flow.paragraph(verdict_line(job.checks), {.bold = true});
  record_checks(flow, job, style, {"fit.", "adhesive."});
  record_gaps(flow, job, style);
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
      "Abrade, clean and mask first. Purge {} ml at every fresh nozzle; a part pack of "
      "the last "
      "boat takes a fresh nozzle too. Lay "
      "the bead on the hull's face, high, so that the lip wipes it down and "
      "not off, and carry it round holes and cut-outs without a break "
      "(common practice, no source).",
      at_most_decimals(adhesive.nozzle_purge.in_ml(), 1)));
  write_clock(flow, job);
  write_guns(flow, job);
  flow.heading("Beads");
  small_print(
      flow, fmt::format("{}. Girths run on the sheer, the hull's top edge, not on the "
                        "drill line: from the bow datum, on the transom from its "
                        "starboard corner; rounded to {}. The marks are the holes of "
                        "the drill line below the run: find the place by them. ml "
                        "without waste and purge.",
                        adhesive.bead_shape == BeadShape::Triangle
                            ? "Triangles, as high as wide"
                            : "Round, by diameter",
                        style.step_name()));
  table_in_columns(flow, bead_table(job, style), 2);
  record_cautions(flow);
}

}  // namespace sheerlap
