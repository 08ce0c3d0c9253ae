#pragma once

#include <cmath>

#include "joint/adhesive_amounts.h"
#include "joint/adhesive_product.h"
#include "joint/joint.h"
#include "joint/reasons/working.h"

namespace sheerlap {

/// The whole packs that a number of packs fills; a shortfall of less than 1e-9 of it,
/// which is rounding, fills the last one too. In a working it reads "floor(...)".
inline double rounded_down(double packs) { return std::floor(packs * (1 + 1e-9)); }
inline Term rounded_down(const Term& packs) {
  return applied("floor", rounded_down(packs.value()), packs, nullptr);
}

/// The boats that are built within an adhesive's shelf life.
template <class Working>
auto boats_on_the_shelf(Working& work, double boats_a_month, Duration shelf_life) {
  const auto m = work.given({"m", "boats a month", "1/month"}, boats_a_month,
                            Origin::of_file("order.boats_a_month"));
  const auto t = work.given({"t_shelf", "shelf life", "days"}, shelf_life.in_days(),
                            Origin::of_file("adhesive.shelf_life"));
  return work.figure({"n_shelf", "boats built within the shelf life", "1",
                      "derived: months of 365.25/12 days",
                      "a delivery as fresh as made, boats built evenly"},
                     m * t / (365.25 / 12));
}

/// What a delivery that is used up before it expires comes to.
template <class Number>
struct ShelfNeed {
  Number boats, packs, deliveries;
};

/// @param adhesive, rules  with shelf life and building rate
/// @param packs            for the whole run
template <class Working>
ShelfNeed<typename Working::Number> shelf_deliveries(Working& work,
                                                     const Adhesive& adhesive,
                                                     const AdhesiveAmounts& amounts,
                                                     const OrderRules& rules,
                                                     std::size_t packs) {
  const auto boats =
      boats_on_the_shelf(work, *rules.boats_a_month, *adhesive.shelf_life);
  const auto n_all =
      work.given({"n_all", "packs for the run", "1"}, static_cast<double>(packs),
                 Origin::of_joint("the order's packs"));
  if (static_cast<double>(rules.boats) <= value_of(boats)) {
    const FigureWords most{"n_most", "most packs in a delivery", "1",
                           "derived: the run is built within the shelf life",
                           "all at once"};
    const FigureWords times{"n_times", "deliveries", "1",
                            "derived: the run is built within the shelf life",
                            "all at once"};
    return {boats, work.figure(most, n_all),
            work.figure(times, typename Working::Number(1))};
  }
  const auto V_boat =
      work.given({"V_boat", "adhesive one boat takes", "ml"}, amounts.boat.in_ml(),
                 Origin::of_joint("adhesive.boat_volume"));
  const auto V_usable =
      work.given({"V_usable", "what comes out of a pack", "ml"},
                 adhesive.pack_usable.in_ml(), Origin::of_file("adhesive.pack_usable"));
  const auto n_most = work.figure(
      {"n_most", "most packs in a delivery", "1",
       "derived: what those boats take, in whole packs, at least one",
       "a shortfall under 1e-9 is rounding"},
      min(max(1, n_all), max(1, rounded_down(boats * (V_boat / V_usable)))));
  return {boats, n_most,
          work.figure({"n_times", "deliveries", "1", "derived: packs over a delivery's",
                       "the last may be smaller"},
                      ceil(n_all / n_most))};
}

}  // namespace sheerlap
