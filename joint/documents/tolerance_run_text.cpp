#include "joint/documents/tolerance_run_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "joint/documents/text_table.h"
#include "joint/documents/tolerance_words.h"
#include "joint/documents/wording.h"

namespace sheerlap {
namespace {

/// Of an answer's variance, what an error brings in all, below which it is left out.
constexpr double least_share = 0.005;
/// A spread below this is rounding.
constexpr double alike_mm = 1e-3;

std::string litres(double ml) { return decimals(ml / 1000, 3); }

std::vector<std::string> litres_row(const char* name,
                                    const char* below,
                                    const Estimate& of) {
  return {name, below, litres(of.value),
          fmt::format("{} to {}", litres(of.low), litres(of.high))};
}

std::string volumes(const ToleranceAdhesive& of) {
  TextTable table;
  table.columns = {{{"litres for one boat"}, Align::Left},
                   {{"boats that", "stay below"}, Align::Left},
                   {{"value"}},
                   {{"range"}, Align::Left}};
  const auto add = [&](const char* name, const Deciles& deciles) {
    table.rows.push_back(litres_row(name, "10 of 100", deciles.p10));
    table.rows.push_back(litres_row("", "50 of 100", deciles.p50));
    table.rows.push_back(litres_row("", "90 of 100", deciles.p90));
  };
  table.rows.push_back(litres_row("in the joint", "mean", of.mean));
  table.rows.push_back(litres_row("", "deviation", of.deviation));
  add("", of.joint);
  add("with beads, waste and nozzles", of.boat);
  return text_of(table);
}

std::vector<std::string> buy_row(const char* name, const RunBuy& of) {
  return {name, decimals(of.laid.in_litres(), 1), fmt::format("{}", of.packs),
          fmt::format("{}", of.nozzles)};
}

std::string run_text(const ToleranceRun& of) {
  TextTable table;
  table.columns = {{{fmt::format("for {}", counted(of.boats, "boat"))}, Align::Left},
                   {{"laid,", "litres"}},
                   {{"", "packs"}},
                   {{"", "nozzles"}}};
  table.rows = {buy_row("every boat as drawn", of.nominal),
                buy_row("to buy: what 90 runs in 100 stay below", of.at_p90),
                buy_row("not this: every boat at its own 90 in 100", of.at_every_p90)};
  const auto total = [](double ml) { return decimals(ml / 1000, 1); };
  return "\n" + text_of(table) +
         wrapped(fmt::format(
             "The run lays {} litres on the mean ({} to {}), and 90 runs in 100 stay "
             "below {} ({} to {}). Boats that take much and boats that take little "
             "meet "
             "in one run, so that its 90 in 100 is not the sum of theirs.",
             total(of.laid_mean.value), total(of.laid_mean.low),
             total(of.laid_mean.high), total(of.laid_p90.value), total(of.laid_p90.low),
             total(of.laid_p90.high)));
}

/// The rows of one answer, what brings most first.
void add_answer(TextTable& table,
                const char* answer,
                const ToleranceJob& job,
                std::vector<VarianceShare> shares) {
  const SampleStyle sample(job.tolerance.drives.boats);
  std::stable_sort(shares.begin(), shares.end(),
                   [](const VarianceShare& a, const VarianceShare& b) {
                     return a.total.value > b.total.value;
                   });
  if (shares.empty()) table.rows.push_back({answer, "does not vary", "", "", "", ""});
  const char* name = answer;
  for (const VarianceShare& share : shares) {
    if (share.total.value < least_share && name != answer) continue;
    const ProcessError& error = job.job.joint.tolerance->errors[share.error];
    table.rows.push_back(
        {name, fmt::format("{} {}", share.error + 1, word_of(error.kind)),
         sample.share(share.first.value), sample.share_range(share.first),
         sample.share(share.total.value), sample.share_range(share.total)});
    name = "";
  }
}

/// What the record says of the hull's face, and how surely.
std::string record_text(const RecordedFace& of, const NumberStyle& style) {
  const FieldEstimate& face = of.face;
  const auto range = [&](const Estimate& estimate) {
    const auto text = [&](double mm) { return style.gap(Length::mm(mm)); };
    return fmt::format("{} ({} to {})", text(estimate.value), text(estimate.low),
                       text(estimate.high));
  };
  std::string text = fmt::format(
      "The hull's face is that of {} built, by {}, {}, in {}. What every boat has is "
      "each place's mean over the boats, straight along the girth from place to place "
      "and held beyond the last, top and low edge apart: outward from {} least to {} "
      "greatest, {} taken all along. About each place's mean the spread is {}, each "
      "reading by itself {}.",
      counted(face.samples, "boat"), counted(face.readings, "place"),
      state_word(of.pattern.state), style.unit_words(), style.gap(of.reach.least),
      style.gap(of.reach.greatest), range(face.mean), range(face.spread),
      style.gap(Length::mm(face.noise)));
  text +=
      fmt::format(" It is likeliest alike over {} {} ({} to {}).",
                  style.span(Length::mm(face.correlation_mm.value)), style.unit_name(),
                  style.span(Length::mm(face.correlation_mm.low)),
                  style.span(Length::mm(face.correlation_mm.high)));
  if (face.spread.value + face.noise < alike_mm)
    text += " The boats are all alike, and any length would do.";
  else if (face.correlation_open)
    text +=
        " The readings do not tell that well, for an end of its range is as far as was "
        "looked: the joint file's is put in, and spread and readings by themselves "
        "together.";
  return wrapped(text +
                 " A lip that is thicker and a hull that is fuller look alike in a "
                 "gap: all of it is put on the hull's face.");
}

}  // namespace

std::string tolerance_adhesive_text(const ToleranceJob& job, const NumberStyle&) {
  const Tolerance& of = job.tolerance;
  return volumes(of.adhesive) +
         (of.run ? run_text(*of.run)
                 : wrapped("There is no [order]: what a run of boats takes is not "
                           "worked out."));
}

std::string tolerance_drives_text(const ToleranceJob& job, const NumberStyle&) {
  TextTable table;
  table.columns = {{{"answer"}, Align::Left}, {{"error"}, Align::Left},
                   {{"by", "itself"}},        {{"", "range"}, Align::Left},
                   {{"in", "all"}},           {{"", "range"}, Align::Left}};
  const VarianceShares& drives = job.tolerance.drives;
  add_answer(table, "adhesive", job, drives.volume);
  add_answer(table, "margin", job, drives.margin);
  if (job.tolerance.squeeze_mm) add_answer(table, "squeeze", job, drives.squeeze);
  return text_of(table) +
         wrapped(fmt::format(
             "Of 100 parts of the answer's variance (standard deviation squared), what "
             "the error brings by itself, and what it brings with all it does with "
             "others; from {}, made up again with one error changed over at a time. "
             "Errors that bring less than {} of 100 are left out.",
             counted(drives.boats, "boat"), at_most_decimals(100 * least_share, 1)));
}

std::string tolerance_errors_text(const ToleranceJob& job, const NumberStyle& style) {
  TextTable table;
  table.columns = {
      {{""}},       {{"error"}, Align::Left}, {{"law"}, Align::Left}, {{"mean"}},
      {{"spread"}}, {{"alike", "over"}}};
  const auto& errors = job.job.joint.tolerance->errors;
  for (std::size_t i = 0; i < errors.size(); ++i) {
    const ProcessError& error = errors[i];
    table.rows.push_back(
        {fmt::format("{}", i + 1), word_of(error.kind), word_of(error.law),
         error.from_record ? "by place" : error_amount(error.kind, error.mean, style),
         error_amount(error.kind, error.spread, style),
         error.correlation > Length() ? style.size_with_unit(error.correlation)
                                      : "the boat"});
  }
  return text_of(table) + (job.record ? record_text(*job.record, style) : "") +
         wrapped(
             "Spread is the standard deviation of a normal law, half the width of a "
             "uniform one. Shrinkage is of length and beam alike, more is smaller; "
             "opening is each side outward amidships, twist from end to end, trim the "
             "hull's edge up, face the hull's face outward. What varies along the "
             "girth "
             "is alike over its correlation length l: exp(-d^2 / (2 l^2)) is left of "
             "it "
             "at a distance d.");
}

std::string tolerance_limits_text(const ToleranceJob& job) {
  std::string text;
  const auto line = [&](const std::string& words) {
    text += wrapped("- " + words, text_width, 2);
  };
  line(
      "Errors have nothing to do with one another, nor boats with boats: a mould that "
      "goes off half-way through the run is not in it.");
  line(
      "Readings of the hull's beam that the joint file may have are not in it: hulls "
      "are as wide as the drawing and the errors have them.");
  line(
      "Each lid is put in its best place; a crew that centres it by eye finds a worse "
      "one. The margin is that of the best place, its squeeze as far as the limits let "
      "it; the squeeze told, adhesive and fasteners are those of the boat squeezed no "
      "more than it needs. The best seating that `fit` gives may squeeze more, and "
      "take more adhesive.");
  line(
      "Boats that do not go on are in the adhesive and the fasteners of the run too, "
      "in "
      "their best place.");
  line(
      "Spare fasteners, prices, boxes and shelf life are in `order`, for boats as "
      "drawn.");
  line(
      "The lid is rigid; the hull bends between the spreaders as a strip, is "
      "squeezed no more than the boat needs, and no further than ten times a limit.");
  line(
      "The gap goes straight with each error, by its slope in the boat as drawn; a "
      "boat far from it is less well told.");
  line(
      "Left out are the lid's way down, a lid that rides on a high edge of the hull or "
      "on stiff adhesive, and what is ground off or built up to make a boat fit.");
  line(
      "Where a joint holds more than the drawn one, so much more is laid, and the "
      "squeeze-out with it; what bead sizes round up stays as drawn.");
  line(
      "Holes stay where the drawing has them; the fastener at each is as long as the "
      "boat's gap there asks.");
  if (job.tolerance.solved_afresh > 0)
    line(fmt::format("{} seated afresh, because the quick way was not proved right.",
                     counted(job.tolerance.solved_afresh, "boat") +
                         (job.tolerance.solved_afresh == 1 ? " was" : " were")));
  return text;
}

}  // namespace sheerlap
