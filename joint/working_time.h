#pragma once

#include <cstddef>

#include "geometry/quantity.h"
#include "joint/adhesive_amounts.h"
#include "joint/adhesive_product.h"
#include "joint/check.h"
#include "joint/joint.h"
#include "joint/reasons/working.h"

namespace sheerlap {

/// A working time at another temperature, min: it halves for every 10 degrees C warmer.
///
/// @param temperature, temperature_at  degrees C
/// @source  rule of thumb; agrees with a published polyester paste's 60 and 30 min at
///          15 and 25 degrees C. Good for about 15 degrees either way.
template <class Working>
auto time_to_work(Working& work,
                  Duration time_at,
                  double temperature_at,
                  double temperature) {
  const auto t_at =
      work.given({"t_at", "working time given", "min"}, time_at.in_minutes(),
                 Origin::of_file("adhesive.working_time"));
  const auto T_at =
      work.given({"T_at", "temperature it is given for", "degrees C"}, temperature_at,
                 Origin::of_file("adhesive.working_time_at"));
  const auto T = work.given({"T", "temperature of the shop", "degrees C"}, temperature,
                            Origin::of_file("shop.temperature"));
  return work.figure({"t_work", "working time at the shop's temperature", "min",
                      "rule of thumb: the working time halves for every 10 degrees C "
                      "warmer",
                      "within about 15 degrees C of where it is given"},
                     t_at * exp2((T_at - T) / 10));
}

/// The working time as `time_to_work` has it.
Duration working_time(Duration time_at, double temperature_at, double temperature);

/// From the first mixed adhesive to the last fastener, against the working time.
struct TimePlan {
  Duration dispensing;    ///< what the boat takes, by all guns together
  Duration pack_changes;  ///< each gun starts loaded; guns change side by side
  Duration seating;
  Duration driving;
  Duration total;
  Duration working_time;  ///< at the shop's temperature
};

/// What a boat's time is worked from, min.
template <class Number>
struct TimeParts {
  Number dispensing, pack_changes, seating, driving, total;
};

/// The time from the first adhesive to the last fastener, part by part.
///
/// @param shop  rates and counts above 0
template <class Working>
TimeParts<typename Working::Number> time_parts(Working& work,
                                               const Shop& shop,
                                               const AdhesiveAmounts& amounts,
                                               std::size_t fasteners) {
  const auto V_boat =
      work.given({"V_boat", "adhesive one boat takes", "ml"}, amounts.boat.in_ml(),
                 Origin::of_joint("adhesive.boat_volume"));
  const auto guns =
      work.given({"n_guns", "guns", "1"}, shop.guns, Origin::of_file("shop.guns"));
  const auto Q = work.given({"Q", "rate of each gun", "ml/min"}, shop.gun_rate,
                            Origin::of_file("shop.gun_rate"));
  const auto t_lay =
      work.figure({"t_lay", "laying, all guns together", "min",
                   "derived: volume over rate", "guns that share the work evenly"},
                  V_boat / (guns * Q));
  const auto packs = work.given({"n_packs", "packs of one boat", "1"},
                                static_cast<double>(amounts.packs),
                                Origin::of_joint("adhesive.packs"));
  const auto t_pack = work.given({"t_pack", "one fresh pack and nozzle", "min"},
                                 shop.pack_change.in_minutes(),
                                 Origin::of_file("shop.pack_change_minutes"));
  const auto t_packs =
      work.figure({"t_packs", "changing packs", "min",
                   "derived: packs for each gun, of which it starts with one loaded",
                   "guns change side by side"},
                  (ceil(packs / guns) - 1) * t_pack);
  const auto t_seat =
      work.given({"t_seat", "lowering and seating the deck", "min"},
                 shop.seat.in_minutes(), Origin::of_file("shop.seat_minutes"));
  const auto n = work.given({"n", "fasteners", "1"}, static_cast<double>(fasteners),
                            Origin::of_joint("layout.count"));
  const auto drivers = work.given({"n_drivers", "drivers", "1"}, shop.drivers,
                                  Origin::of_file("shop.drivers"));
  const auto r = work.given({"r", "fasteners a minute, each driver", "1/min"},
                            shop.screw_rate, Origin::of_file("shop.screw_rate"));
  const auto t_drive =
      work.figure({"t_drive", "driving the fasteners", "min",
                   "derived: count over rate", "drivers that share the work evenly"},
                  n / (drivers * r));
  return {t_lay, t_packs, t_seat, t_drive,
          work.figure({"t", "from the first adhesive to the last fastener", "min",
                       "derived: one after the other",
                       "no part begins before the one before it has ended"},
                      t_lay + t_packs + t_seat + t_drive)};
}

/// The time plan of one boat.
///
/// @param adhesive   with its working time
/// @param shop       rates and counts above 0
/// @param fasteners  to drive before the adhesive goes off
TimePlan time_plan(const Adhesive& adhesive,
                   const Shop& shop,
                   const AdhesiveAmounts& amounts,
                   std::size_t fasteners);

/// Whether the plan keeps within the working time: it fails beyond it, and warns where
/// a fifth more time would not do or the shop is more than 15 degrees from where the
/// working time was given.
Checks time_checks(const Adhesive& adhesive, const Shop& shop, const TimePlan& plan);

}  // namespace sheerlap
