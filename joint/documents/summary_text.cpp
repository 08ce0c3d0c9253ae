#include "joint/documents/summary_text.h"

#include <fmt/format.h>

#include <algorithm>

#include "joint/documents/perimeter_text.h"
#include "joint/documents/seating_words.h"
#include "joint/documents/strength_text.h"
#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"
#include "joint/fit_reach.h"

namespace sheerlap {
namespace {

std::string gap_words(const GapAt& at, const Reach& reach, const NumberStyle& style) {
  return fmt::format("{} {} {}, {} deep", style.gap(at.gap), style.unit_name(),
                     style.sentence(reach_words(reach, at.girth)),
                     style.size_with_unit(at.depth));
}

std::string fit_words(const Fit& fit, const NumberStyle& style) {
  const auto bad =
      std::count_if(fit.runs.begin(), fit.runs.end(),
                    [](const FitRun& run) { return run.verdict != FitVerdict::Good; });
  const std::string where =
      bad == 0 ? "inside the window all the way round"
               : fmt::format("outside the window on {}",
                             bad == 1 ? "1 stretch" : fmt::format("{} stretches", bad));
  std::string text = fmt::format("gap {}; least {}; greatest {}; mean {} {}", where,
                                 gap_words(fit.least, fit.least_reach, style),
                                 gap_words(fit.greatest, fit.greatest_reach, style),
                                 style.gap(fit.mean), style.unit_name());
  if (fit.entry.worst < Length())
    text += fmt::format("; the lid does not go straight down: {} {} in the way {}",
                        style.gap(-fit.entry.worst), style.unit_name(),
                        fit.entry_reach.all_round
                            ? "all round"
                            : "on " + sides_words(fit.entry_reach.sides));
  return text;
}

std::string layout_words(const Job& job, const NumberStyle& style) {
  std::string text =
      fmt::format("{} for {} {}s", counted(job.layout->count, "hole"),
                  job.joint.fastener.size, word_of(job.joint.fastener.kind));
  std::size_t bridged = 0;
  for (const LayoutSide& side : job.layout->sides) {
    text += fmt::format("{} {} {}", &side == &job.layout->sides.front() ? ":" : ",",
                        side_word(side.name), side.girths.size());
    bridged += side.bridged.size();
  }
  text += fmt::format("; pitch {} to {} {}", style.span(job.layout->smallest_pitch),
                      style.span(job.layout->largest_pitch), style.unit_name());
  if (bridged > 0) text += fmt::format("; {} bridged", counted(bridged, "space"));
  return text;
}

/// " (11.20 to 13.90 l)"; empty if the one or the other could not be had.
std::string range_words(const AdhesivePlan& plan) {
  if (!plan.least || !plan.most) return "";
  return fmt::format(" ({} to {} l)", decimals(plan.least->boat.in_litres(), 2),
                     decimals(plan.most->boat.in_litres(), 2));
}

std::string adhesive_words(const AdhesivePlan& plan) {
  std::string text = fmt::format(
      "one boat: {} l in the joint, {} l with beads, waste and nozzles{}, {}",
      decimals(plan.nominal.joint.in_litres(), 2),
      decimals(plan.nominal.boat.in_litres(), 2), range_words(plan),
      counted(plan.nominal.packs, "pack"));
  if (plan.time)
    text += fmt::format("; {} min from first bead to last fastener, of {} min",
                        decimals(plan.time->total.in_minutes(), 0),
                        decimals(plan.time->working_time.in_minutes(), 0));
  return text;
}

/// The item with its noun, the first of its words, in the plural.
std::string plural_item(std::string item) {
  for (const std::string noun :
       {"tapping screw", "blind rivet", "bolt", "nut", "washer", "mixer nozzle"})
    if (item.starts_with(noun)) return item.insert(noun.size(), "s");
  return item;
}

/// "754 packs of paste", "840 mixer nozzles", "128 boxes of 100 bolts M6 x 30".
std::string bought_words(const OrderLine& line, const NumberStyle& style) {
  const std::string item = style.sentence(line.item);
  if (line.unit != "pieces")
    return fmt::format("{} of {}", counted(line.packs, "pack"), item);
  const std::string count = fmt::format("{}", line.packs);
  if (line.pack_size == 1)
    return count + " " + (line.packs == 1 ? item : plural_item(item));
  return fmt::format("{} {} of {} {}", count, line.packs == 1 ? "box" : "boxes",
                     at_most_decimals(line.pack_size, 0), plural_item(item));
}

std::string order_words(const Order& order, const NumberStyle& style) {
  std::string text = fmt::format("{}, to buy:", counted(order.boats, "boat"));
  for (const OrderLine& line : order.lines)
    text += (&line == &order.lines.front() ? " " : ", ") + bought_words(line, style);
  if (order.total) text += fmt::format("; {} in all", decimals(*order.total, 2));
  return text;
}

}  // namespace

std::string summary_text(const Job& job, const NumberStyle& style) {
  TextTable table;
  table.columns = {{{"part"}, Align::Left}, {{"in short"}, Align::Left}};
  if (job.fit) table.rows.push_back({"fit", fit_words(*job.fit, style)});
  if (job.going_on) table.rows.push_back({"seating", seating_in_short(job, style)});
  if (job.layout) table.rows.push_back({"layout", layout_words(job, style)});
  if (job.schedule)
    table.rows.push_back(
        {"schedule",
         fmt::format("{} on {}", counted(job.schedule->stations.size(), "hole"),
                     counted(job.schedule->jigs.size(), "jig"))});
  if (job.strength) table.rows.push_back({"strength", strength_summary(job, style)});
  if (job.adhesive) table.rows.push_back({"adhesive", adhesive_words(*job.adhesive)});
  if (job.order) table.rows.push_back({"order", order_words(*job.order, style)});
  return perimeter_text(job, style) + "\n" + text_of(table);
}

}  // namespace sheerlap
