#pragma once

#include "geometry/quantity.h"

namespace sheerlap {

/// The temperature, degrees C, at which a working time has come down to `time`.
///
/// @param time_at         the working time at `temperature_at`, degrees C
/// @param time            above 0
/// @source  derived: `working_time` solved for the temperature
double working_temperature(Duration time_at, double temperature_at, Duration time);

}  // namespace sheerlap
