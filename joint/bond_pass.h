#pragma once

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>

#include "joint/bond_strength.h"
#include "joint/joint.h"
#include "joint/mechanics/bond_energy.h"
#include "joint/mechanics/lap_shear.h"
#include "joint/mechanics/plastic_lap.h"
#include "joint/mechanics/single_lap.h"
#include "joint/mechanics/wedge_lap.h"
#include "joint/mechanics/wedge_single_lap.h"
#include "joint/mechanics/wedge_single_lap_peel.h"
#include "joint/reasons/working.h"

namespace sheerlap {

/// A bond point worked once: as if both laminates were like one of them.
struct BondPass {
  bool lip = true;  ///< both laminates like the lip, else like the hull
};

/// Whether the gap is the same at both edges of the band.
inline bool is_even(const BondPoint& at) {
  constexpr double alike = 1e-6;
  const double top = at.gap_top.in_mm(), low = at.gap_low.in_mm();
  return std::abs(top - low) <= alike * std::max(top, low);
}

/// What a pass comes to.
template <class Number>
struct BondStresses {
  Number along;   ///< N/mm2
  Number across;  ///< N/mm2
  Number peel;    ///< N/mm2
};

/// What the bond carries in shear by the strain it bears beyond yield, N/mm.
struct YieldedCapacity {
  double along = 0;
  double across = 0;
};

/// What is used of each capacity; none where the joint file does not give it.
struct BondUse {
  double adhesive_shear = 0;
  double adhesive_peel = 0;
  double laminate_shear = 0;
  std::optional<double> laminate_through;
};

/// The laminates of a joint as a pass takes them.
inline const Laminate& laminate_of(const Joint& joint, const BondPass& pass) {
  return pass.lip ? joint.lip : joint.hull;
}

inline EdgeMoment edge_moment(const Joint& joint) {
  return joint.strength.edges_held ? EdgeMoment::Held : EdgeMoment::Turning;
}

/// What a lap of the joint is made of, in the letters of its formulas.
template <class Number>
struct LapParts {
  Number Ga;
  Number eta_top;
  Number eta_low;
  Number hull;  ///< shear modulus times thickness, N/mm
  Number lip;
  Number w;
};

template <class Working>
LapParts<typename Working::Number> lap_parts(Working& work,
                                             const Joint& joint,
                                             const BondPoint& at) {
  const auto laminate = [&](const char* G, const char* t, const std::string& table,
                            const Laminate& of) {
    return work.given({G, "shear modulus of the laminate", "N/mm2"},
                      *of.strength.shear_modulus,
                      Origin::of_file(table + ".shear_modulus")) *
           work.given({t, "thickness of the laminate", "mm"}, of.thickness.in_mm(),
                      Origin::of_file(table + ".thickness"));
  };
  const Origin measured =
      Origin::of_joint("measured between the faces, along the hull face's normal");
  const double top = at.gap_top.in_mm(), low = at.gap_low.in_mm();
  const double even = std::min(top, low);
  return {
      work.given({"Ga", "shear modulus of the adhesive", "N/mm2"},
                 *joint.adhesive->strength.shear_modulus,
                 Origin::of_file("adhesive.shear_modulus")),
      is_even(at)
          ? work.given({"eta", "gap, even across the bond band", "mm"}, even, measured)
          : work.given({"eta_top", "gap at the upper edge of the bond band", "mm"}, top,
                       measured),
      is_even(at)
          ? work.given({"eta", "gap, even across the bond band", "mm"}, even, measured)
          : work.given({"eta_low", "gap at the lower edge of the bond band", "mm"}, low,
                       measured),
      laminate("G_hull", "t_hull", "hull", joint.hull),
      laminate("G_lip", "t_lip", "lip", joint.lip),
      work.given({"w", "width of the bond band", "mm"}, at.width.in_mm(),
                 Origin::of_joint("measured along the hull face"))};
}

/// The lap as shear flow along the joint sees it. The hull carries on below the band
/// and the lip above it.
/// @param at  of an even gap
template <class Working>
ShearLap<typename Working::Number> lap_along(Working& work,
                                             const Joint& joint,
                                             const BondPoint& at) {
  const auto parts = lap_parts(work, joint, at);
  return {parts.Ga, parts.eta_top, parts.hull, parts.lip, parts.w};
}

/// The peak of the shear along the joint at a shear flow q, N/mm2.
template <class Working>
auto shear_peak_along(Working& work,
                      const Joint& joint,
                      const BondPoint& at,
                      const typename Working::Number& q) {
  using Number = typename Working::Number;
  if (is_even(at)) return peak_shear(work, lap_along(work, joint, at), q, shear_along);
  const auto parts = lap_parts(work, joint, at);
  return wedge_peak_shear(work,
                          WedgeLap<Number>{parts.Ga, parts.eta_low, parts.eta_top,
                                           parts.hull, parts.lip, parts.w},
                          q, wedge_along);
}

/// The lap as a pull across it sees it, with the gap of its upper edge, where the lip
/// comes down from the deck.
template <class Working>
SingleLap<typename Working::Number> lap_across(Working& work,
                                               const Joint& joint,
                                               const BondPoint& at,
                                               const BondPass& pass) {
  const Laminate& laminate = laminate_of(joint, pass);
  const std::string table = pass.lip ? "lip" : "hull";
  const auto parts = lap_parts(work, joint, at);
  const auto ratio = laminate.strength.bending_ratio;
  return {parts.Ga,
          work.given({"Ea", "modulus of the adhesive", "N/mm2"},
                     *joint.adhesive->strength.modulus,
                     Origin::of_file("adhesive.modulus")),
          parts.eta_top,
          work.given({"E", "modulus of both laminates", "N/mm2"},
                     *laminate.strength.modulus, Origin::of_file(table + ".modulus")),
          work.given({"t", "thickness of both laminates", "mm"},
                     laminate.thickness.in_mm(), Origin::of_file(table + ".thickness")),
          work.given({"nu", "Poisson's ratio of the laminate", "1"},
                     *laminate.strength.poisson, Origin::of_file(table + ".poisson")),
          work.given({"k_b", "modulus in bending over that in tension", "1"},
                     ratio.value_or(1),
                     ratio ? Origin::of_file(table + ".bending_ratio")
                           : Origin::of_joint("not given: 1, a laminate alike all "
                                              "through")),
          parts.w};
}

/// The peaks across the lap at the limit load.
template <class Working>
BondStresses<typename Working::Number> bond_stresses(Working& work,
                                                     const Joint& joint,
                                                     const BondPoint& at,
                                                     const BondPass& pass) {
  using Number = typename Working::Number;
  const Origin summed = Origin::of_joint("limit load at this place, summed");
  const auto q =
      work.given({"q", "shear flow along the joint", "N/mm"}, at.load.along, summed);
  const auto p =
      work.given({"p", "load across the lap", "N/mm"}, at.load.across, summed);
  const auto off = work.given({"V_off", "load that pulls the lip away", "N/mm"},
                              at.load.off, summed);
  const auto along = shear_peak_along(work, joint, at, q);
  const auto lap = lap_across(work, joint, at, pass);
  const EdgeMoment edge = edge_moment(joint);
  if (is_even(at))
    return {along, single_lap_shear(work, lap, p, edge),
            single_lap_peel(work, lap, p, off, edge)};
  const WedgeSingleLap<Number> wedge{lap, lap_parts(work, joint, at).eta_low};
  return {along, wedge_single_lap_shear(work, wedge, p, edge),
          wedge_single_lap_peel(work, wedge, p, off, edge)};
}

}  // namespace sheerlap
