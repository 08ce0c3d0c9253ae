#include "joint/boat_outcome.h"

#include <algorithm>
#include <cmath>

namespace sheerlap {
namespace {

using Eigen::Index;

constexpr double longest_stretch_mm = 500;
/// A gap outside the window by no more than this is rounding, mm.
constexpr double keeps_mm = 1e-9;

/// Gaps come stretch by stretch, so a stretch is said once.
void add_once(std::vector<std::size_t>& stretches, std::size_t stretch) {
  if (stretches.empty() || stretches.back() != stretch) stretches.push_back(stretch);
}

}  // namespace

StretchPlan stretch_plan(const BoatModel& model, const Perimeter& perimeter) {
  StretchPlan plan;
  for (const PerimeterSide& side : perimeter.sides) {
    const double length = side.sheer_length.in_mm();
    const double count = std::ceil(length / longest_stretch_mm);
    const std::size_t first = plan.stretches.size();
    for (double i = 0; i < count; ++i)
      plan.stretches.push_back({side.name, Length::mm(length * i / count),
                                Length::mm(length * (i + 1) / count)});
    for (const BoatStation& station : model.points.stations) {
      if (station.side != side.name) continue;
      const double share = std::floor(station.girth.in_mm() / length * count);
      const auto at = static_cast<std::size_t>(std::clamp(share, 0.0, count - 1));
      plan.stretch_of_gap.insert(plan.stretch_of_gap.end(), 2, first + at);
    }
  }
  return plan;
}

void BoatJudge::add_holds(BoatOutcome& outcome) const {
  outcome.holds.clear();
  for (const WindowContact& contact : boat_.contacts) {
    const std::size_t stretch = ground_.plan.stretch_of_gap[contact.value];
    const auto found =
        std::find_if(outcome.holds.begin(), outcome.holds.end(),
                     [&](const StretchHold& hold) { return hold.stretch == stretch; });
    if (found == outcome.holds.end())
      outcome.holds.push_back({stretch, contact.price});
    else
      found->share += contact.price;
  }
}

/// Where the gaps, the lid in its best place, are outside the window.
void BoatJudge::add_misfits(BoatOutcome& outcome) const {
  const double least = ground_.adhesive.gap_min.in_mm() - keeps_mm;
  const double greatest = ground_.adhesive.gap_max.in_mm() + keeps_mm;
  for (Index i = 0; i < gaps_.size(); ++i) {
    const std::size_t stretch =
        ground_.plan.stretch_of_gap[static_cast<std::size_t>(i)];
    if (gaps_[i] < least) add_once(outcome.tight, stretch);
    if (gaps_[i] > greatest) add_once(outcome.wide, stretch);
  }
}

void BoatJudge::count_lengths(const LaneBoats& boats,
                              Index at,
                              BoatOutcome& outcome) const {
  const LengthSteps& steps = *ground_.lengths;
  outcome.lengths.assign(steps.lengths().size() + 1, 0);
  for (Index hole = 0; hole < boats.hole_gaps.cols(); ++hole) {
    const double moved = ground_.model.unknowns.holes.row(hole).dot(boat_.joined);
    const double gap = boats.hole_gaps(at, hole) + moved;
    // faces that interfere touch and do not overlap
    const double stack = boats.hole_ways(at, hole) + moved + std::max(0.0, -gap);
    ++outcome.lengths[steps.serving(stack)];
  }
}

void BoatJudge::judge(const LaneBoats& boats, Index at, BoatOutcome& outcome) {
  const UnknownColumns& unknowns = ground_.model.unknowns;
  gaps_ = boats.gaps.row(at).matrix().transpose();
  seating_.seat(gaps_, boat_);
  outcome.margin_mm = boat_.margin_mm;
  outcome.need = boat_.need;
  outcome.squeeze_mm = boat_.squeeze_mm;
  outcome.afresh = boat_.afresh;
  outcome.volume_ml = boats.volume_ml[at] + unknowns.volume_ml.dot(boat_.joined);
  add_holds(outcome);
  outcome.tight.clear();
  outcome.wide.clear();
  if (boat_.margin_mm < -keeps_mm) {
    gaps_.noalias() += unknowns.gaps * boat_.joined;
    add_misfits(outcome);
  }
  if (ground_.lengths) count_lengths(boats, at, outcome);
}

}  // namespace sheerlap
