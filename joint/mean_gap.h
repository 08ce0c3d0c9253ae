#pragma once

#include "geometry/result.h"
#include "joint/gap_profile.h"
#include "joint/joint.h"
#include "joint/perimeter.h"
#include "joint/reasons/working.h"

namespace sheerlap {

/// How the area to be bonded is found.
inline constexpr FoundWords bond_area_words{
    {"A_bond", "area of the hull face over the bond band", "mm2",
     "derived: integral over the hull face and the mitres at its corners",
     "openings left out"},
    "the integral of the hull face's area, span by span, by Gauss quadrature",
    "about 1e-12 of itself for the faces given"};

/// What a mean gap by area is made of: the mean is the first over the second. The area
/// is that of the hull face over the bond band.
struct MeanParts {
  double gap_mm3 = 0;  ///< gap times area
  double area_mm2 = 0;

  void add(const MeanParts& more) {
    gap_mm3 += more.gap_mm3;
    area_mm2 += more.area_mm2;
  }
};

/// The mean gap, mm.
/// @param parts  of the whole joint
template <class Working>
auto mean_gap(Working& work, const MeanParts& parts) {
  const auto I_g =
      work.found({{"I_g", "gap times area over the bond band", "mm3",
                   "derived: integral over the hull face and the mitres at its corners",
                   "openings left out; outside the band nothing counts"},
                  "the integral of the gap over the hull face, span by span, by Gauss "
                  "quadrature",
                  "about 1e-12 of itself for the faces given"},
                 parts.gap_mm3);
  const auto A_bond = work.found(bond_area_words, parts.area_mm2);
  return work.figure({"g_mean", "mean gap over the bond band", "mm",
                      "derived: the mean by area of the hull face",
                      "negative gaps are counted as such"},
                     I_g / A_bond);
}

/// The parts along one side, mitres left out.
MeanParts side_mean_parts(const Joint& joint,
                          const Perimeter& perimeter,
                          const PerimeterSide& side,
                          const GapProfile& profile);

/// What the mitres add.
/// @errors  see `mitre`
Result<MeanParts> mitre_mean_parts(const Joint& joint, const Perimeter& perimeter);

/// The space between hull and lip over the joint's bond band.
/// The perimeter is referred to, not copied.
EnclosedSpace bond_space(const Joint& joint, const Perimeter& perimeter);

}  // namespace sheerlap
