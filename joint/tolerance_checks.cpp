#include "joint/tolerance_checks.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "joint/worded_length.h"

namespace sheerlap {
namespace {

Check drawn_boat(const Joint& joint, const Tolerance& tolerance) {
  const bool fits = tolerance.nominal_margin_mm >= 0;
  return {"tolerance.as_drawn",
          fmt::format("Margin of the boat as drawn, its lid in the best place, inside "
                      "the gap window of {}",
                      worded_range(joint.adhesive->gap_min, joint.adhesive->gap_max)),
          tolerance.nominal_margin_mm,
          0,
          "mm",
          fits ? CheckState::Pass : CheckState::Fail,
          "the adhesive's data sheet, as the joint file gives it"};
}

Check all_boats(const Tolerance& tolerance) {
  const bool all = tolerance.boats >= tolerance.asked;
  return {"tolerance.boats",
          all ? "Boats made up" : "Boats made up before the run was stopped",
          static_cast<double>(tolerance.boats),
          static_cast<double>(tolerance.asked),
          "",
          all ? CheckState::Pass : CheckState::Fail,
          "the boats asked for"};
}

Check going_on(const Tolerance& tolerance, const WantedShare& wanted) {
  constexpr double rounding = 1e-9;
  const double share = 100 * tolerance.shares.on.value;
  const CheckState below = wanted.given ? CheckState::Fail : CheckState::Warn;
  return {"tolerance.go_on",
          "Of 100 boats those that go on",
          share,
          wanted.of_100,
          "",
          share >= wanted.of_100 - rounding ? CheckState::Pass : below,
          wanted.given ? "the joint file's tolerance.wanted"
                       : "common practice, no source; tolerance.wanted is not given"};
}

Check packs(const ToleranceRun& run) {
  const bool enough = run.at_p90.packs <= run.nominal.packs;
  return {"tolerance.packs",
          "Packs that 90 runs in a hundred need no more than, against those for boats "
          "as drawn",
          static_cast<double>(run.at_p90.packs),
          static_cast<double>(run.nominal.packs),
          "",
          enough ? CheckState::Pass : CheckState::Warn,
          "the order of the joint as drawn"};
}

Check unserved(const LengthMix& mix) {
  return {"tolerance.no_length",
          "Holes of a boat, on the mean, that no length in stock serves",
          mix.in_a_boat.value,
          0,
          "",
          mix.in_a_boat.value > 0 ? CheckState::Warn : CheckState::Pass,
          "the joint file's fastener.lengths"};
}

}  // namespace

Checks tolerance_checks(const Joint& joint,
                        const Tolerance& tolerance,
                        const WantedShare& wanted) {
  Checks checks{all_boats(tolerance), drawn_boat(joint, tolerance),
                going_on(tolerance, wanted)};
  if (tolerance.run) checks.push_back(packs(*tolerance.run));
  for (const LengthMix& mix : tolerance.lengths)
    if (!mix.length) checks.push_back(unserved(mix));
  return checks;
}

Check correlation_check(const FieldEstimate& face, Length given) {
  const double length_mm = given.in_mm();
  const Estimate& told = face.correlation_mm;
  return {"tolerance.correlation",
          fmt::format("Correlation of the hull's face as the joint file gives it, "
                      "against the nearest that the record's readings allow ({})",
                      face.correlation_open ? "the joint file's is put in"
                                            : "the record's likeliest is put in"),
          length_mm,
          std::clamp(length_mm, told.low, told.high),
          "mm",
          length_mm >= told.low && length_mm <= told.high ? CheckState::Pass
                                                          : CheckState::Warn,
          "the record's readings"};
}

}  // namespace sheerlap
