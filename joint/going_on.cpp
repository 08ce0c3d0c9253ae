#include "joint/going_on.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "joint/beam_checks.h"
#include "joint/entry_squeeze.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// How close to nothing still passes.
constexpr double keeps_mm = 1e-9;

/// What is to be done about a clash.
std::string remedy(const std::optional<EntrySqueeze>& squeeze, const EntryPath& path) {
  if (squeeze)
    return fmt::format(
        ": each side is to be squeezed in by {} to pass, and spreader "
        "{}, the nearest, allows {}",
        worded(squeeze->needed), squeeze->spreader + 1, worded(squeeze->most));
  if (path.squeeze)
    return fmt::format(": each side would have to be squeezed in by {} to pass",
                       worded(*path.squeeze));
  return ": no squeeze of the sides lets it pass";
}

Check turned_check(const EntryPath& path,
                   const TurnedEntry& entry,
                   const std::vector<Spreader>& spreaders,
                   const Perimeter& perimeter) {
  const bool clear = path.face.worst.in_mm() >= -keeps_mm;
  const auto squeeze = entry_squeeze(path, spreaders, perimeter);
  const CheckState clash =
      squeeze && squeeze->lets_pass() ? CheckState::Warn : CheckState::Fail;
  return {"fit.entry_turned",
          fmt::format("clearance of the lip past the hull's top edge, {} first and the "
                      "lid turned down from {:g} degrees, least on {} at girth {} "
                      "along the sheer, {:.2f} degrees from its seat{}",
                      entry.first == FirstEnd::Bow ? "bow" : "stern",
                      entry.angle.in_degrees(), side_word(path.face.side),
                      worded(path.face.girth), path.face.angle.in_degrees(),
                      clear ? "" : remedy(squeeze, path)),
          path.face.worst.in_mm(),
          0,
          "mm",
          clear ? CheckState::Pass : clash,
          "geometry of the two faces"};
}

/// Whether each spreader can bring the hull to its moulded shape.
Checks spreader_checks(const Seating& seating) {
  Checks checks;
  if (seating.readings.empty()) return checks;
  const bool fits = seating.fits();
  for (std::size_t j = 0; j < seating.squeezes.size(); ++j) {
    const Squeeze& squeeze = seating.squeezes[j];
    const double needed = std::abs(squeeze.to_mould.in_mm());
    const bool within = needed <= squeeze.most.in_mm() + keeps_mm;
    const CheckState beyond = fits ? CheckState::Warn : CheckState::Fail;
    checks.push_back(
        {"fit.spreader",
         fmt::format("{} of each side at spreader {}, x = {}, that brings the hull to "
                     "its moulded shape{}",
                     squeeze.to_mould < Length() ? "spread" : "squeeze", j + 1,
                     worded(squeeze.at),
                     within ? ""
                     : fits ? "; the best seating does with less"
                            : ": it may not be forced so far, and no seating fits"),
         needed, squeeze.most.in_mm(), "mm", within ? CheckState::Pass : beyond,
         "the joint file: spreader.most"});
  }
  return checks;
}

/// Whether the lid as drawn fits the hull as its spreaders or straps hold it today.
Check held_check(const HullShapeFit& held, const Adhesive& adhesive) {
  const Length under = held.least.gap - adhesive.gap_min;
  const Length over = adhesive.gap_max - held.greatest.gap;
  const GapAt& worst = under < over ? held.least : held.greatest;
  const Length margin = std::min(under, over);
  return {
      "fit.held",
      fmt::format("worst gap inside the gap window, the lid as drawn on the hull as "
                  "it was held: {} on {} at girth {} along the sheer, {} down",
                  worded(worst.gap), side_word(worst.side), worded(worst.girth),
                  worded(worst.depth)),
      margin.in_mm(),
      0,
      "mm",
      margin.in_mm() >= -keeps_mm ? CheckState::Pass : CheckState::Warn,
      "the adhesive's data sheet, as the joint file gives it"};
}

}  // namespace

Result<GoingOn> going_on(const Joint& joint, const Perimeter& perimeter) {
  auto found = seating(joint, joint.seating, perimeter);
  if (!found) return tl::unexpected(std::move(found.error()));
  GoingOn result{
      straight_entry(perimeter), std::nullopt, std::move(*found), std::nullopt, {}};
  if (joint.turned_entry) {
    result.turned = turned_entry(perimeter, *joint.turned_entry);
    result.checks.push_back(turned_check(*result.turned, *joint.turned_entry,
                                         joint.seating.spreaders, perimeter));
  }
  const Checks& seated = result.seating.checks;
  result.checks.insert(result.checks.end(), seated.begin(), seated.end());
  if (result.seating.held)
    result.checks.push_back(held_check(*result.seating.held, *joint.adhesive));
  for (Check& check : spreader_checks(result.seating))
    result.checks.push_back(std::move(check));
  for (Check& check : beam_checks(joint.seating, result.seating, perimeter))
    result.checks.push_back(std::move(check));
  return result;
}

}  // namespace sheerlap
