#include "joint/seated_joint.h"

#include <fmt/format.h>

#include <map>
#include <utility>

#include "joint/adhesive.h"
#include "joint/boat_perimeter.h"
#include "joint/schedule.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// How close to nothing still passes.
constexpr double keeps_mm = 1e-9;

}  // namespace

VerdictLengths verdict_lengths(const Fit& fit) {
  VerdictLengths lengths;
  for (const FitRun& run : fit.runs) {
    const Length run_length = run.to - run.from;
    switch (run.verdict) {
      case FitVerdict::Good:
        lengths.good = lengths.good + run_length;
        break;
      case FitVerdict::Tight:
        lengths.tight = lengths.tight + run_length;
        break;
      case FitVerdict::Wide:
        lengths.wide = lengths.wide + run_length;
        break;
      case FitVerdict::Interference:
        lengths.interference = lengths.interference + run_length;
        break;
    }
  }
  return lengths;
}

std::vector<FastenersOfLength> fasteners_by_length(const Schedule& schedule) {
  std::map<Length, std::size_t> counts;
  std::size_t without = 0;
  for (const DrillStation& station : schedule.stations)
    station.length ? ++counts[*station.length] : ++without;
  std::vector<FastenersOfLength> all;
  for (const auto& [length, count] : counts) all.push_back({length, count});
  if (without > 0) all.push_back({std::nullopt, without});
  return all;
}

Result<JointFollows> joint_follows(const Joint& joint,
                                   const Perimeter& perimeter,
                                   const Fit& fit,
                                   const Layout& holes) {
  const auto adhesive = adhesive_plan(joint, perimeter, holes.count);
  if (!adhesive) return tl::unexpected(adhesive.error());
  const auto drilled = schedule(joint, perimeter, holes);
  if (!drilled) return tl::unexpected(drilled.error());
  return JointFollows{verdict_lengths(fit), adhesive->nominal,
                      fasteners_by_length(*drilled), std::nullopt};
}

Result<JointFollows> seated_follows(const Joint& joint,
                                    const Perimeter& drawn,
                                    const Layout& holes,
                                    const std::vector<SideCorrections>& corrections) {
  const auto on = boat_perimeter(joint, drawn, corrections);
  if (!on) return tl::unexpected(on.error());
  const auto seated = fit(joint, *on);
  if (!seated) return tl::unexpected(seated.error());
  auto follows = joint_follows(joint, *on, *seated, holes);
  if (follows)
    follows->entry = joint.turned_entry ? turned_entry(*on, *joint.turned_entry)
                                        : straight_entry(*on);
  return follows;
}

Check seated_entry_check(const Joint& joint, const EntryPath& entry) {
  const EntryClearance& at = entry.face;
  const bool clear = at.worst.in_mm() >= -keeps_mm;
  return {"fit.entry_seated",
          fmt::format("clearance of the lip past the hull's top edge, {} to its best "
                      "place on the hull as it then stands, least on {} at girth {} "
                      "along the sheer{}",
                      joint.turned_entry ? "turned down" : "straight down",
                      side_word(at.side), worded(at.girth),
                      clear ? ""
                            : ": squeeze the hull further until the lid is past, "
                              "where its limits allow it, or do not lower it"),
          at.worst.in_mm(),
          0,
          "mm",
          clear ? CheckState::Pass : CheckState::Fail,
          "geometry of the two faces"};
}

}  // namespace sheerlap
