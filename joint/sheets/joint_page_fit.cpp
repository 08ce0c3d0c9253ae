#include "joint/sheets/joint_page_fit.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "joint/documents/wording.h"
#include "joint/sheets/plan_line.h"

namespace sheerlap {
namespace {

/// A stretch of the fit, kept off the corners by as much as its line is moved inboard,
/// so that the lines of two sides meet where they are square to each other.
FitRun off_corners(FitRun run, const PerimeterSide& side, Length inboard) {
  std::vector<Length> corners;
  if (side.start == SideEnd::Corner) corners.push_back(Length());
  if (side.end == SideEnd::Corner) corners.push_back(side.sheer_length);
  for (const InnerCorner& corner : side.corners) corners.push_back(corner.sheer_girth);
  for (const Length corner : corners) {
    if (run.from >= corner - inboard && run.from < corner + inboard)
      run.from = corner + inboard;
    if (run.to <= corner + inboard && run.to > corner - inboard)
      run.to = corner - inboard;
  }
  return run;
}

/// The runs of a side's fit, parted at its inner corners.
std::vector<FitRun> parted_runs(const PlanDrawing& plan, const PerimeterSide& side) {
  std::vector<FitRun> parted;
  for (FitRun run :
       drawn_runs(*plan.job.fit, side.name, Length::mm(plan.letter_mm / 4))) {
    for (const InnerCorner& corner : side.corners) {
      if (!(corner.sheer_girth > run.from && corner.sheer_girth < run.to)) continue;
      parted.push_back(run);
      parted.back().to = run.from = corner.sheer_girth;
    }
    parted.push_back(run);
  }
  return parted;
}

}  // namespace

char verdict_letter(FitVerdict verdict) {
  switch (verdict) {
    case FitVerdict::Good:
      return 'G';
    case FitVerdict::Tight:
      return 'T';
    case FitVerdict::Wide:
      return 'W';
    case FitVerdict::Interference:
      break;
  }
  return 'X';
}

std::vector<FitRun> drawn_runs(const Fit& fit, SideName side, Length shortest) {
  std::vector<FitRun> runs;
  for (const FitRun& run : fit.runs) {
    if (run.side != side) continue;
    const bool joins =
        !runs.empty() && std::abs((runs.back().to - run.from).in_mm()) < 1e-3 &&
        (run.to - run.from < shortest || runs.back().to - runs.back().from < shortest ||
         runs.back().verdict == run.verdict);
    if (!joins) {
      runs.push_back(run);
      continue;
    }
    runs.back().to = run.to;
    // the verdicts are in the order of their weight
    runs.back().verdict = std::max(runs.back().verdict, run.verdict);
  }
  return runs;
}

std::string fit_stretches(PlanDrawing& plan, const PerimeterSide& side) {
  if (!plan.job.fit) return "";
  std::string svg;
  const double inboard_mm = -1.7 * plan.letter_mm;
  for (const FitRun& whole : parted_runs(plan, side)) {
    const FitRun run = off_corners(whole, side, Length::mm(-inboard_mm));
    if (!(run.to > run.from)) continue;
    auto points = plan_line(side.sheer, {run.from, run.to, inboard_mm, plan.within_mm});
    std::erase_if(points, [&](const Point2& point) { return !on_hand(side, point); });
    plan.names.block(points, plan.letter_mm);
    svg += fmt::format("<path class=\"fit {}\" d=\"{}\"/>\n", word_of(run.verdict),
                       path_data(drawn_points(points), 1));
    const PlanPoint at = plan_point(side.sheer, (run.from + run.to) / 2);
    const Point2 letter_at =
        at.point + (inboard_mm - 0.9 * plan.letter_mm) * at.outboard;
    plan.names.block({letter_at, letter_at}, plan.letter_mm);
    const Point2 place = drawn_point(letter_at);
    svg += fmt::format(
        "<text class=\"verdict\" x=\"{}\" y=\"{}\">{}</text>\n", coordinate(place.x()),
        coordinate(place.y() + 0.35 * plan.letter_mm), verdict_letter(run.verdict));
  }
  return svg;
}

}  // namespace sheerlap
