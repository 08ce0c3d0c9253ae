#include "joint/working_temperature.h"

#include <cassert>
#include <cmath>

namespace sheerlap {

double working_temperature(Duration time_at, double temperature_at, Duration time) {
  assert(time > Duration());
  return temperature_at + 10 * std::log2(time_at / time);
}

}  // namespace sheerlap
