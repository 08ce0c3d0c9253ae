#pragma once

#include <cstddef>
#include <optional>

#include "geometry/quantity.h"
#include "joint/adhesive_product.h"
#include "joint/reasons/working.h"
#include "joint/whole_packs.h"

namespace sheerlap {

/// What the adhesive of one boat comes to.
struct AdhesiveAmounts {
  Volume joint;                   ///< between the faces over the bond band
  Volume bead;                    ///< laid
  Volume boat;                    ///< with waste and with what each fresh nozzle takes
  std::size_t packs = 0;          ///< opened for this boat alone
  std::size_t nozzles = 0;        ///< one a pack
  std::optional<double> mass_kg;  ///< of `boat`; none without a density
};

/// What a boat's adhesive is worked from.
template <class Number>
struct BoatAdhesive {
  Number packs;  ///< n_packs; as many nozzles
  Number boat;   ///< V_boat, ml
};

/// Packs and volume of one boat.
///
/// A pack gives what comes out of it less the purge of its nozzle.
///
/// @param bead      laid
/// @param adhesive  its purge less than what comes out of a pack
template <class Working>
BoatAdhesive<typename Working::Number> boat_adhesive(Working& work,
                                                     Volume bead,
                                                     const Adhesive& adhesive) {
  const auto V_bead =
      work.given({"V_bead", "adhesive laid as beads", "ml"}, bead.in_ml(),
                 Origin::of_joint("sections of the beads times their lengths"));
  const auto w = work.given({"w", "waste, as a share of what is laid", "1"},
                            adhesive.waste, Origin::of_file("adhesive.waste"));
  const auto V_laid = work.figure(
      {"V_laid", "laid and wasted", "ml", "derived: a share of what is laid on top",
       "waste grows with what is laid"},
      V_bead * (1 + w));
  const auto V_usable =
      work.given({"V_usable", "what comes out of a pack", "ml"},
                 adhesive.pack_usable.in_ml(), Origin::of_file("adhesive.pack_usable"));
  const auto V_purge = work.given({"V_purge", "lost at each fresh nozzle", "ml"},
                                  adhesive.nozzle_purge.in_ml(),
                                  Origin::of_file("adhesive.nozzle_purge"));
  const auto V_pack = work.figure(
      {"V_pack", "what a pack lays", "ml", "derived: each pack purges its own nozzle",
       "a fresh nozzle with every pack"},
      V_usable - V_purge);
  const auto n_packs = work.figure(
      {"n_packs", "packs opened for one boat, with as many nozzles", "1",
       "derived: whole packs, at least one; an excess under 1e-9 is rounding",
       "one boat by itself: what is left in the last pack is not used"},
      max(1, rounded_up(V_laid / V_pack)));
  return {n_packs, work.figure({"V_boat", "adhesive one boat takes out of the packs",
                                "ml", "derived: laid, wasted and purged",
                                "what stays in the last pack is not in it"},
                               V_laid + n_packs * V_purge)};
}

/// The mass of a volume, kg.
/// @param density  g/ml
template <class Working>
auto adhesive_mass(Working& work,
                   const typename Working::Number& V_boat,
                   double density) {
  const auto rho = work.given({"rho", "density", "g/ml"}, density,
                              Origin::of_file("adhesive.density"));
  return work.figure({"m", "mass of it", "kg", "derived: volume times density",
                      "density of the mixed adhesive"},
                     V_boat * rho / 1000);
}

/// The amounts of one boat from what its joint holds and what is laid in it.
/// @param adhesive  its purge less than what comes out of a pack
AdhesiveAmounts amounts_of(Volume joint, Volume bead, const Adhesive& adhesive);

}  // namespace sheerlap
