#include "joint/fit_reach.h"

#include <fmt/format.h>

#include <cassert>
#include <cmath>

#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// How close to a limit still keeps it, mm.
constexpr double keeps_mm = 1e-9;

/// How far apart along two sides a worst place is the same one, mirrored.
constexpr double same_girth_mm = 1;

bool alike(Length a, Length b, double within_mm) {
  return std::abs((a - b).in_mm()) <= within_mm;
}

bool one_gap(const Fit& fit) {
  return alike(fit.least.gap, fit.greatest.gap, alike_mm);
}

std::string gap_place(const Fit& fit, const GapAt& at, const Reach& reach) {
  const std::string place = reach_words(reach, at.girth);
  if (one_gap(fit)) return place + ", at every depth";
  return fmt::format("{}, {} down", place, worded(at.depth));
}

}  // namespace

Reach reach_of(const std::vector<SideWorst>& sides, std::size_t named) {
  assert(named < sides.size());
  const SideWorst& first = sides[named];
  const auto even = [](const SideWorst& side) {
    return side.spread.in_mm() <= alike_mm;
  };
  Reach reach;
  reach.all_along = even(first);
  for (const SideWorst& side : sides)
    if (alike(side.worst, first.worst, alike_mm) && even(side) == even(first) &&
        (even(first) || alike(side.girth, first.girth, same_girth_mm)))
      reach.sides.push_back(side.side);
  reach.all_round = reach.all_along && reach.sides.size() == sides.size();
  return reach;
}

std::string reach_words(const Reach& reach, Length girth) {
  if (reach.all_round) return "all round";
  const std::string sides = sides_words(reach.sides);
  if (reach.all_along) return "all along " + sides;
  return fmt::format("on {} at girth {} along the sheer", sides, worded(girth));
}

Checks fit_checks(const Fit& fit, const Adhesive& adhesive, bool other_way) {
  const std::string source = "the adhesive's data sheet, as the joint file gives it";
  const double least = fit.least.gap.in_mm();
  const double greatest = fit.greatest.gap.in_mm();
  const auto state = [](bool kept) {
    return kept ? CheckState::Pass : CheckState::Fail;
  };
  const Entry& entry = fit.entry;
  const bool passes = entry.worst.in_mm() >= -keeps_mm;
  const std::string at_least = gap_place(fit, fit.least, fit.least_reach);
  return {
      {"fit.entry",
       fmt::format(
           "clearance of the lip's low edge past the hull's top edge, the "
           "lid coming straight down, least {}{}",
           reach_words(fit.entry_reach, entry.girth),
           passes ? "" : ": the hull must be squeezed or the lip sprung to pass"),
       entry.worst.in_mm(), 0, "mm",
       other_way && !passes ? CheckState::Warn : state(passes),
       "geometry of the two faces"},
      {"fit.interference",
       fmt::format("gap between hull and lip{}, least {}",
                   least < -keeps_mm ? ", which run into each other" : "", at_least),
       least, 0, "mm", state(least >= -keeps_mm), "geometry of the two faces"},
      {"fit.gap_min", "least gap, " + at_least, least, adhesive.gap_min.in_mm(), "mm",
       state(least >= adhesive.gap_min.in_mm() - keeps_mm), source},
      {"fit.gap_max",
       "greatest gap, " + gap_place(fit, fit.greatest, fit.greatest_reach), greatest,
       adhesive.gap_max.in_mm(), "mm",
       state(greatest <= adhesive.gap_max.in_mm() + keeps_mm), source}};
}

}  // namespace sheerlap
