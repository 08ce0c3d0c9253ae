#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "joint/strength_inputs.h"

namespace sheerlap {

enum class BeadShape { Triangle, Round };

/// An adhesive as its data sheet, its pack and the shop give it.
struct Adhesive {
  std::string name;
  Length gap_min;
  Length gap_max;
  double squeeze_out = 0;  ///< share of the joint volume
  double waste = 0;        ///< share of what is laid
  BeadShape bead_shape = BeadShape::Triangle;
  std::vector<Length> bead_sizes;  ///< ascending
  Volume pack;
  Volume pack_usable;
  Volume nozzle_purge;
  std::optional<double> pack_price;
  std::optional<double> nozzle_price;
  std::optional<double> density;  ///< g/ml
  std::optional<Duration> working_time;
  double working_time_at = 23;  ///< degrees C
  std::optional<Duration> shelf_life;
  AdhesiveStrength strength = {};
};

}  // namespace sheerlap
