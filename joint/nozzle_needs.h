#pragma once

#include <string>
#include <vector>

#include "joint/adhesive_order.h"
#include "joint/reasons/working.h"
#include "joint/whole_packs.h"

namespace sheerlap {

/// A run of boats and the guns it is laid with.
struct AdhesiveRun {
  const Adhesive& adhesive;
  const AdhesiveAmounts& amounts;  ///< of one boat
  std::size_t boats = 1;
  std::size_t guns = 1;
};

/// The nozzles of a run; see `adhesive_order`.
template <class Number>
struct NozzleNeed {
  Number boat_by_boat;  ///< one a pack, each boat by itself
  Number all;
  Number for_part_packs;
};

template <class Working>
NozzleNeed<typename Working::Number> nozzles_needed(Working& work,
                                                    const AdhesiveRun& run) {
  const auto n_boats =
      work.given({"n_boats", "boats", "1"}, static_cast<double>(run.boats),
                 Origin::of_file("order.boats"));
  const auto n_guns = work.given({"n_guns", "guns", "1"}, static_cast<double>(run.guns),
                                 Origin::of_file("shop.guns"));
  const auto n_1 = work.given({"n_1", "nozzles of one boat", "1"},
                              static_cast<double>(run.amounts.nozzles),
                              Origin::of_joint("adhesive.nozzles"));
  const auto V_bead =
      work.given({"V_bead", "laid in one boat", "ml"}, run.amounts.bead.in_ml(),
                 Origin::of_joint("adhesive.bead_volume"));
  const auto w = work.given({"w", "waste, as a share of what is laid", "1"},
                            run.adhesive.waste, Origin::of_file("adhesive.waste"));
  const auto V_usable = work.given({"V_usable", "what comes out of a pack", "ml"},
                                   run.adhesive.pack_usable.in_ml(),
                                   Origin::of_file("adhesive.pack_usable"));
  const auto V_purge = work.given({"V_purge", "lost at each fresh nozzle", "ml"},
                                  run.adhesive.nozzle_purge.in_ml(),
                                  Origin::of_file("adhesive.nozzle_purge"));
  const auto n_part =
      work.figure({"n_part", "part packs that are begun again", "1",
                   "derived: from one boat to the next at most one for each gun",
                   "each boat starts with fresh nozzles"},
                  n_guns * (n_boats - 1));
  const auto n_fresh = work.figure(
      {"n_fresh", "fresh packs", "1",
       "derived: what is laid and what part packs lose, over what a pack lays",
       "whole packs; an excess under 1e-9 is rounding"},
      rounded_up((n_boats * V_bead * (1 + w) + n_part * V_purge) /
                 (V_usable - V_purge)));
  const auto n_own = work.figure({"n_own", "one a pack, each boat by itself", "1",
                                  "derived: nozzles of one boat, times the boats",
                                  "no pack goes on to the next boat"},
                                 n_boats * n_1);
  const auto n_nozzles = work.figure(
      {"n_nozzles", "nozzles for the run", "1",
       "derived: fresh packs and part packs, never below the boats one by one",
       "enough however the guns share the work, one going on where another is empty"},
      max(n_fresh + n_part, n_own));
  return {n_own, n_nozzles,
          work.figure({"n_more", "nozzles for part packs", "1",
                       "derived: those above one a pack", "as for all of them"},
                      n_nozzles - n_own)};
}

}  // namespace sheerlap
