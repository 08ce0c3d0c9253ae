#pragma once

#include "joint/mechanics/lap_shear.h"

namespace sheerlap {

/// An adhesive that yields in shear, by the energy it takes up before it parts.
template <class Number>
struct YieldingBond {
  Number Ga;     ///< shear modulus of the adhesive, N/mm2
  Number eta;    ///< thickness of the bond, mm
  Number tau_p;  ///< shear stress at which it yields, N/mm2
  Number g_p;    ///< shear strain beyond yield at failure, no unit
};

/// The adherends of a double lap; stiffness is modulus times thickness, N/mm.
template <class Number>
struct DoubleLap {
  Number Eiti;  ///< stiffness of the inner adherend
  Number Eoto;  ///< stiffness of each outer one
};

inline constexpr std::string_view bond_energy_source =
    "L. J. Hart-Smith, NASA CR-112235 (1973); from memory, confirm; derived by energy";
inline constexpr std::string_view bond_energy_validity =
    "overlap so long that its middle is unloaded; no peel; at most tau_p*l for each "
    "bond";

/// The energy that the adhesive takes up in shear for each mm2 of bond, U.
template <class Working>
auto bond_energy(Working& work, const YieldingBond<typename Working::Number>& bond) {
  return work.figure({"U", "energy the bond takes up in shear before it parts", "N/mm",
                      bond_energy_source, "adhesive that yields at an even stress"},
                     bond.eta * bond.tau_p * (bond.tau_p / bond.Ga / 2 + bond.g_p));
}

/// What a long double lap carries in shear, P_2lap: the lesser of its two ends.
/// @source  L. J. Hart-Smith, NASA CR-112235 (1973), from memory
template <class Working>
auto double_lap_capacity(Working& work,
                         const DoubleLap<typename Working::Number>& lap,
                         const typename Working::Number& U) {
  const auto P_i =
      work.figure({"P_i", "load that parts the end where the inner adherend is loaded",
                   "N/mm", bond_energy_source, bond_energy_validity},
                  sqrt(2 * U * 2 * lap.Eiti * (1 + lap.Eiti / (2 * lap.Eoto))));
  const auto P_o = work.figure(
      {"P_o", "load that parts the end where the outer adherends are loaded", "N/mm",
       bond_energy_source, bond_energy_validity},
      sqrt(2 * U * 4 * lap.Eoto * (1 + 2 * lap.Eoto / lap.Eiti)));
  return work.figure({"P_2lap", "load a double lap carries in shear", "N/mm",
                      bond_energy_source, bond_energy_validity},
                     min(P_i, P_o));
}

/// What a long overlap carries in shear at each end, with heat.
template <class Number>
struct EndCapacities {
  Number P_1;  ///< at x = -l/2, where adherend 2 ends and 1 carries all, N/mm
  Number P_2;  ///< at x = +l/2, where adherend 1 ends; below 0: heat alone parts it
};

/// The loads that part the two ends of an overlap.
/// @param load  its free thermal strains; the pull is not read
/// @source  derived: the bond parts where the jump of strain between the adherends
///          would set free as much energy as it takes up, (jump)^2/(2 S) = U
template <class Working>
EndCapacities<typename Working::Number> end_capacities(
    Working& work,
    const ShearLap<typename Working::Number>& lap,
    const ShearLoad<typename Working::Number>& load,
    const typename Working::Number& U) {
  constexpr std::string_view source =
      "derived: energy set free by the jump of strain at the end, jump^2/(2*S) = U";
  const auto S = work.figure({"S", "flexibility of both adherends", "mm/N",
                              "derived: adherends stretched together", "any"},
                             1 / lap.E1t1 + 1 / lap.E2t2);
  return {work.figure({"P_1", "load that parts the bond where adherend 2 ends", "N/mm",
                       source, bond_energy_validity},
                      lap.E1t1 * (sqrt(2 * S * U) - (load.e1 - load.e2))),
          work.figure({"P_2", "load that parts the bond where adherend 1 ends", "N/mm",
                       source, bond_energy_validity},
                      lap.E2t2 * (sqrt(2 * S * U) - (load.e2 - load.e1)))};
}

/// What an overlap carries in shear, P_U: the lesser of its ends, and no more than all
/// of it yielding.
template <class Working>
auto energy_capacity(Working& work,
                     const ShearLap<typename Working::Number>& lap,
                     const EndCapacities<typename Working::Number>& ends,
                     const typename Working::Number& tau_p) {
  return work.figure({"P_U", "load the overlap carries in shear", "N/mm",
                      "derived: the lesser of its ends", bond_energy_validity},
                     min(min(ends.P_1, ends.P_2), tau_p * lap.l));
}

}  // namespace sheerlap
