#pragma once

#include <string>
#include <vector>

#include "joint/nozzle_needs.h"
#include "joint/reasons/working.h"
#include "joint/whole_packs.h"

namespace sheerlap {

/// What the adhesive of a run of boats is worked from; ml but for the counts.
template <class Number>
struct AdhesiveNeed {
  Number joint, squeeze_out, rounding, waste, purge, part_packs;
  Number need;
  Number packs;
  Number pack_rounding, residue;
};

/// The volumes and packs of a run; see `adhesive_order`.
template <class Working>
AdhesiveNeed<typename Working::Number> adhesive_needed(Working& work,
                                                       const AdhesiveRun& run,
                                                       double own_nozzles,
                                                       double more_nozzles) {
  constexpr std::string_view all =
      "the run together: what one boat leaves in a pack "
      "goes into the next";
  const auto n = work.given({"n_boats", "boats", "1"}, static_cast<double>(run.boats),
                            Origin::of_file("order.boats"));
  const auto V_1 =
      work.given({"V_1", "volume of one joint", "ml"}, run.amounts.joint.in_ml(),
                 Origin::of_joint("adhesive.joint_volume"));
  const auto V_bead_1 =
      work.given({"V_bead_1", "laid in one boat", "ml"}, run.amounts.bead.in_ml(),
                 Origin::of_joint("adhesive.bead_volume"));
  const auto s =
      work.given({"s", "share meant to squeeze out", "1"}, run.adhesive.squeeze_out,
                 Origin::of_file("adhesive.squeeze_out"));
  const auto w = work.given({"w", "waste, as a share of what is laid", "1"},
                            run.adhesive.waste, Origin::of_file("adhesive.waste"));
  const auto V_purge = work.given({"V_purge", "lost at each fresh nozzle", "ml"},
                                  run.adhesive.nozzle_purge.in_ml(),
                                  Origin::of_file("adhesive.nozzle_purge"));
  const Origin nozzles = Origin::of_joint("the order's nozzles");
  const auto n_own =
      work.given({"n_own", "nozzles, one a pack", "1"}, own_nozzles, nozzles);
  const auto n_more =
      work.given({"n_more", "nozzles for part packs", "1"}, more_nozzles, nozzles);
  const auto V_joint = work.figure(
      {"V_joint", "volume of the joints", "ml", "derived: one joint, times boats", all},
      n * V_1);
  const auto V_out = work.figure(
      {"V_out", "squeezed out", "ml", "derived: a share of the joints", all},
      V_joint * s);
  const auto V_bead = work.figure(
      {"V_bead", "laid", "ml", "derived: one boat, times boats", all}, n * V_bead_1);
  const auto V_round = work.figure(
      {"V_round", "what bead sizes add", "ml", "derived: the rest of what is laid",
       "the corners' own volume is in the joint and not in the beads"},
      V_bead - V_joint - V_out);
  const auto V_waste = work.figure(
      {"V_waste", "wasted", "ml", "derived: a share of what is laid", all}, V_bead * w);
  const auto V_own = work.figure(
      {"V_own", "purged, one nozzle a pack", "ml", "derived: nozzles times purge", all},
      n_own * V_purge);
  const auto V_more = work.figure({"V_more", "purged when part packs are begun", "ml",
                                   "derived: nozzles times purge", all},
                                  n_more * V_purge);
  const auto V_need = work.figure(
      {"V_need", "to come out of the packs", "ml", "derived: all of it", all},
      V_joint + V_out + V_round + V_waste + V_own + V_more);
  const auto V_usable = work.given({"V_usable", "what comes out of a pack", "ml"},
                                   run.adhesive.pack_usable.in_ml(),
                                   Origin::of_file("adhesive.pack_usable"));
  const auto V_in =
      work.given({"V_in", "what is in a pack", "ml"}, run.adhesive.pack.in_ml(),
                 Origin::of_file("adhesive.pack"));
  const auto n_packs = work.figure(
      {"n_packs", "packs", "1", "derived: whole packs, rounded up once for the run",
       "an excess under 1e-9 is rounding"},
      rounded_up(V_need / V_usable));
  return {V_joint,
          V_out,
          V_round,
          V_waste,
          V_own,
          V_more,
          V_need,
          n_packs,
          work.figure({"V_over", "what whole packs add", "ml",
                       "derived: packs less the need", all},
                      n_packs * V_usable - V_need),
          work.figure({"V_residue", "what does not come out of the packs", "ml",
                       "derived: packs times what stays in one", all},
                      n_packs * (V_in - V_usable))};
}

}  // namespace sheerlap
