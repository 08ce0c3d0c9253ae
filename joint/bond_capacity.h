#pragma once

#include <string>

#include "joint/bond_pass.h"
#include "joint/wet_share.h"

namespace sheerlap {

/// What the bond carries in shear flow along the joint before it parts, N/mm.
/// @param at  of an even gap
template <class Working>
auto capacity_along(Working& work, const Joint& joint, const BondPoint& at) {
  using Number = typename Working::Number;
  const auto lap = lap_along(work, joint, at);
  const YieldingBond<Number> bond{
      lap.Ga, lap.eta,
      work.given(
          {"tau_p", "shear strength of the adhesive, at which it yields", "N/mm2"},
          *joint.adhesive->strength.shear_strength,
          Origin::of_file("adhesive.shear_strength")),
      work.given({"g_p", "shear strain beyond yield at failure", "1"},
                 *joint.adhesive->strength.plastic_strain,
                 Origin::of_file("adhesive.plastic_strain"))};
  const Number U = bond_energy(work, bond);
  const auto ends =
      end_capacities(work, lap, ShearLoad<Number>{Number(0), Number(0), Number(0)}, U);
  return energy_capacity(work, lap, ends, bond.tau_p);
}

/// What the bond carries in a pull across it, in shear, N/mm.
template <class Working>
auto capacity_across(Working& work,
                     const Joint& joint,
                     const BondPoint& at,
                     const BondPass& pass) {
  using Number = typename Working::Number;
  const auto lap = lap_across(work, joint, at, pass);
  return shear_capacity(
      work, PlasticLap<Number>{
                lap,
                work.given({"tau_p",
                            "shear strength of the adhesive, at which it "
                            "yields",
                            "N/mm2"},
                           *joint.adhesive->strength.shear_strength,
                           Origin::of_file("adhesive.shear_strength")),
                work.given({"g_p", "shear strain beyond yield at failure", "1"},
                           *joint.adhesive->strength.plastic_strain,
                           Origin::of_file("adhesive.plastic_strain")),
                edge_moment(joint)});
}

/// The factor asked of the bond.
template <class Working>
auto bond_factor(Working& work, const Joint& joint) {
  return work.given({"f", "factor asked of the bond", "1"}, joint.loads->factor_bond,
                    Origin::of_file("loads.factor_bond"));
}

/// Both shears together, N/mm2.
template <class Working>
auto shear_resultant(Working& work,
                     const BondStresses<typename Working::Number>& stresses) {
  return work.figure({"tau", "peak shear stress, along and across together", "N/mm2",
                      "derived: two shears square to each other",
                      "both peaks taken to stand at the same place"},
                     sqrt(power(stresses.along, 2) + power(stresses.across, 2)));
}

/// What is used of the adhesive's shear strength if it may not yield.
template <class Working>
auto elastic_use(Working& work,
                 const Joint& joint,
                 const BondStresses<typename Working::Number>& stresses) {
  return work.figure(
      {"u_shear", "use of the adhesive in shear", "1",
       "derived: stress times factor over strength", "adhesive that may not yield"},
      shear_resultant(work, stresses) * bond_factor(work, joint) /
          work.given({"tau_p", "shear strength of the adhesive", "N/mm2"},
                     *joint.adhesive->strength.shear_strength,
                     Origin::of_file("adhesive.shear_strength")));
}

/// The same if it may: the loads over what is carried, along and across together.
template <class Working>
auto yielded_use(Working& work,
                 const Joint& joint,
                 const BondPoint& at,
                 const YieldedCapacity& capacity) {
  const Origin above = Origin::of_joint("worked out above");
  const Origin summed = Origin::of_joint("limit load at this place, summed");
  const auto q =
      work.given({"q", "shear flow along the joint", "N/mm"}, at.load.along, summed);
  const auto p =
      work.given({"p", "load across the lap", "N/mm"}, at.load.across, summed);
  const auto along = work.given({"q_cap", "shear flow the bond carries", "N/mm"},
                                capacity.along, above);
  const auto across = work.given({"P_cap", "pull the bond carries in shear", "N/mm"},
                                 capacity.across, above);
  return work.figure(
      {"u_shear", "use of the adhesive in shear", "1",
       "derived: load times factor over capacity, squares added",
       "along and across square to each other; adhesive that yields"},
      bond_factor(work, joint) * sqrt(power(q / along, 2) + power(p / across, 2)));
}

/// What is used of the adhesive's strength in peel.
template <class Working>
auto peel_use(Working& work,
              const Joint& joint,
              const BondStresses<typename Working::Number>& stresses) {
  return work.figure({"u_peel", "use of the adhesive in peel", "1",
                      "derived: stress times factor over strength",
                      "the stress grows less than the load, so this is the safe side"},
                     stresses.peel * bond_factor(work, joint) /
                         work.given({"sig_a", "peel strength of the adhesive", "N/mm2"},
                                    *joint.adhesive->strength.peel_strength,
                                    Origin::of_file("adhesive.peel_strength")));
}

/// What is used of the laminate's strength between its plies.
template <class Working>
auto laminate_use(Working& work,
                  const Joint& joint,
                  const BondStresses<typename Working::Number>& stresses,
                  const BondPass& pass) {
  const std::string table = pass.lip ? "lip" : "hull";
  return work.figure(
      {"u_til", "use of the laminate between its plies", "1",
       "derived: stress times factor over strength",
       "the adhesive's peak shear taken to reach the first ply; laminate hot and "
       "wet, adhesive as its strength is given"},
      shear_resultant(work, stresses) * bond_factor(work, joint) /
          (wet_share(work, joint) *
           work.given({"til", "interlaminar shear strength", "N/mm2"},
                      *laminate_of(joint, pass).strength.interlaminar,
                      Origin::of_file(table + ".interlaminar"))));
}

/// What is used of the laminate's strength through its thickness.
/// @param pass  of a laminate that has it
template <class Working>
auto through_use(Working& work,
                 const Joint& joint,
                 const BondStresses<typename Working::Number>& stresses,
                 const BondPass& pass) {
  const std::string table = pass.lip ? "lip" : "hull";
  return work.figure(
      {"u_through", "use of the laminate through its thickness", "1",
       "derived: stress times factor over strength",
       "the adhesive's peak peel taken to reach the first ply; laminate hot and "
       "wet, adhesive as its strength is given"},
      stresses.peel * bond_factor(work, joint) /
          (wet_share(work, joint) *
           work.given({"sig_z", "strength through the thickness", "N/mm2"},
                      *laminate_of(joint, pass).strength.through,
                      Origin::of_file(table + ".through"))));
}

}  // namespace sheerlap
