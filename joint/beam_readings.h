#pragma once

#include <optional>
#include <vector>

#include "joint/hull_movement.h"
#include "joint/seating_inputs.h"
#include "joint/sheer.h"

namespace sheerlap {

/// How far each side stands from where it was in the mould.
struct BeamMoved {
  Length x;
  Length free;  ///< outward; negative is inward
  std::optional<Length> held;
};

/// The hull's shapes by its beam readings.
struct BeamShapes {
  std::vector<BeamMoved> readings;
  HullMovement free;  ///< from the moulded shape to the free one
  /// From the free shape to the held one, if there are held readings.
  std::optional<HullMovement> held;
};

/// What the beam readings say of the hull's shape.
///
/// A beam does not tell one side from the other: each is taken to have moved by half.
/// Free, the hull is bent as a strip from its moulded shape through the readings; held,
/// as a strip whose unstrained shape is the free one.
///
/// @errors  at "beam_reading[N]...": a place that is not on both sides, two readings of
///          one place
Result<BeamShapes> beam_shapes(const std::vector<BeamReading>& readings,
                               const Sheer& sheer,
                               const Perimeter& perimeter);

}  // namespace sheerlap
