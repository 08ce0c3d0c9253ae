#include "joint/seating_task.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "joint/gap_profile.h"
#include "joint/squeezed_lap.h"

namespace sheerlap {
namespace {

constexpr double step_mm = 10;

/// The points of one side, at both edges of the lap: at every knot in both its spans,
/// as the faces may bend there, and between knots no further apart than the step.
void add_points(const Perimeter& perimeter,
                const PerimeterSide& side,
                const SqueezedLap& lap,
                std::vector<LapPoint>& points) {
  const GapProfile profile(perimeter, side);
  const bool forward = side.sheer.path().forward;
  for (const SpanPart& part : side.parts) {
    const double start = forward ? part.from_u : part.to_u;
    const double stop = forward ? part.to_u : part.from_u;
    const double steps = std::max(1.0, std::ceil(std::abs(stop - start) / step_mm));
    for (double i = 0; i <= steps; ++i) {
      const Place place{part.span,
                        i == steps ? stop : start + (stop - start) * i / steps};
      for (const double depth : {0.0, perimeter.hull->lap_mm(place)})
        points.push_back(lap.at(side, profile, place, depth));
    }
  }
}

}  // namespace

Result<SeatingTask> seating_task(const Joint& joint,
                                 const SeatingInputs& inputs,
                                 const Perimeter& perimeter,
                                 const HullMovement& free) {
  assert(joint.adhesive);
  const auto squeezed_lap = SqueezedLap::with(inputs.spreaders, perimeter, free);
  if (!squeezed_lap) return tl::unexpected(squeezed_lap.error());
  SeatingTask task;
  for (const PerimeterSide& side : perimeter.sides)
    add_points(perimeter, side, *squeezed_lap, task.points);
  task.lip = perimeter.lip.get();
  task.datum = lid_datum(perimeter);
  task.gap_min_mm = joint.adhesive->gap_min.in_mm();
  task.gap_max_mm = joint.adhesive->gap_max.in_mm();
  for (const Spreader& spreader : inputs.spreaders)
    task.squeeze_most_mm.push_back(spreader.most.in_mm());
  return task;
}

}  // namespace sheerlap
