#pragma once

#include <cstddef>

#include "geometry/quantity.h"
#include "joint/adhesive_amounts.h"
#include "joint/adhesive_product.h"
#include "joint/check.h"
#include "joint/joint.h"

namespace sheerlap {

/// A working time at another temperature: it halves for every 10 degrees C warmer.
///
/// @param temperature, temperature_at  degrees C
/// @source  rule of thumb; agrees with a published polyester paste's 60 and 30 min at
///          15 and 25 degrees C. Good for about 15 degrees either way.
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
