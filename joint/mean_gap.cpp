#include "joint/mean_gap.h"

#include <fmt/format.h>

#include "geometry/clearance.h"
#include "geometry/face_integral.h"

namespace sheerlap {
namespace {

double unity(Place, double) { return 1.0; }

}  // namespace

EnclosedSpace bond_space(const Joint& joint, const Perimeter& perimeter) {
  return {*perimeter.hull,
          *perimeter.lip,
          {joint.bond.from.value_or(Length()).in_mm(),
           joint.bond.to.value_or(Length::mm(1e9)).in_mm()}};
}

MeanParts side_mean_parts(const Joint& joint,
                          const Perimeter& perimeter,
                          const PerimeterSide& side,
                          const GapProfile& profile) {
  const EnclosedSpace space = bond_space(joint, perimeter);
  MeanParts sum;
  const auto gap = [&](Place place, double depth) {
    return profile.gap_mm(place, depth);
  };
  for (const SpanPart& part : side.parts)
    sum.add({face_integral(*perimeter.hull, part, space, gap),
             face_integral(*perimeter.hull, part, space, unity)});
  return sum;
}

Result<MeanParts> mitre_mean_parts(const Joint& joint, const Perimeter& perimeter) {
  const EnclosedSpace space = bond_space(joint, perimeter);
  MeanParts sum;
  Errors lost;
  std::size_t at = 0;
  const auto gap = [&](Place place, double depth) {
    const auto found = sheerlap::gap_mm(*perimeter.hull, *perimeter.lip, place, depth);
    if (!found)
      lost = {
          {ErrorKind::InvalidInput, fmt::format("knot[{}]", at),
           "no gap can be measured at this corner: the lip face turns away from the "
           "hull face: the two faces must run side by side"}};
    return found.value_or(0);
  };
  for (const std::size_t knot : perimeter.mitres) {
    at = knot;
    const auto more = mitre_integral(*perimeter.hull, knot, space, gap);
    const auto area = mitre_integral(*perimeter.hull, knot, space, unity);
    if (!more || !area) return tl::unexpected((more ? area : more).error());
    if (!lost.empty()) return tl::unexpected(lost);
    sum.add({*more, *area});
  }
  return sum;
}

}  // namespace sheerlap
