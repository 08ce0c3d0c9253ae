#include <fmt/format.h>

#include <algorithm>

#include "joint/documents/check_text.h"
#include "joint/documents/wording.h"
#include "joint/sheets/sequence_records.h"

namespace sheerlap {
namespace {

bool starts_with_one(const std::string& id, const std::vector<std::string>& starts) {
  return std::any_of(starts.begin(), starts.end(), [&](const std::string& start) {
    return id.compare(0, start.size(), start) == 0;
  });
}

std::string gap_words(const FitRun& run, const Job& job, const NumberStyle& style) {
  return fmt::format("{}, {} from {} to {}, marks {}: {} at the worst",
                     capitalised(word_of(run.verdict)), side_word(run.side),
                     style.running(run.from), style.running(run.to),
                     marks_in(run.side, run.from, run.to, job),
                     style.size_with_unit(run.worst.gap));
}

}  // namespace

Length on_sheer(const DrillStation& station, const Perimeter& perimeter) {
  const PerimeterSide& side = *perimeter.side(station.side);
  return side.sheer.girth_at(side.drill_line.place_at(station.girth));
}

std::string marks_in(SideName side, Length from, Length to, const Job& job) {
  std::string first, last, before, after;
  for (const DrillStation& station : job.schedule->stations) {
    if (station.side != side) continue;
    const Length girth = on_sheer(station, job.perimeter);
    if (girth < from) before = station.mark;
    if (girth > to && after.empty()) after = station.mark;
    if (girth < from || girth > to) continue;
    if (first.empty()) first = station.mark;
    last = station.mark;
  }
  if (!first.empty()) return first == last ? first : first + " to " + last;
  if (before.empty() && after.empty()) return "no marks";
  if (before.empty()) return "before " + after;
  return after.empty() ? "after " + before : "between " + before + " and " + after;
}

void record_checks(SheetFlow& flow,
                   const Job& job,
                   const NumberStyle& style,
                   const std::vector<std::string>& starts) {
  std::size_t others = 0;
  for (const CheckState state : {CheckState::Fail, CheckState::Warn})
    for (const Check& check : job.checks) {
      if (check.state != state) continue;
      if (starts_with_one(check.id, starts))
        flow.paragraph(
            fmt::format("{}: {}", state == CheckState::Fail ? "STOP" : "LOOK FIRST",
                        check_sentence(check, style)),
            {.height_mm = letter_height::least, .bold = state == CheckState::Fail});
      else
        ++others;
    }
  if (others > 0)
    small_print(flow, fmt::format("{} that {} not of this record {} in summary.txt "
                                  "and joint.html.",
                                  counted(others, "check"), others == 1 ? "is" : "are",
                                  others == 1 ? "stands" : "stand"));
}

void record_gaps(SheetFlow& flow, const Job& job, const NumberStyle& style) {
  if (!job.fit) return;
  const Adhesive& adhesive = *job.joint.adhesive;
  const std::string window =
      fmt::format("the adhesive's window of {} to {}", style.size(adhesive.gap_min),
                  style.size_with_unit(adhesive.gap_max));
  bool outside = false;
  for (const FitRun& run : job.fit->runs) {
    if (run.verdict == FitVerdict::Good) continue;
    if (!outside)
      flow.paragraph(
          "STOP: as set out the gap leaves " + window + " (girths on the sheer):",
          {.height_mm = letter_height::least, .bold = true});
    outside = true;
    small_print(flow, "- " + gap_words(run, job, style));
  }
  if (!outside) small_print(flow, "As set out the gap stays inside " + window + ".");
}

}  // namespace sheerlap
