#include "joint/seating_task.h"

#include <cassert>

#include "joint/gap_profile.h"
#include "joint/lap_points.h"

namespace sheerlap {
namespace {

constexpr double step_mm = 10;

/// The points of one side, at both edges of the lap.
void add_points(const Perimeter& perimeter,
                const PerimeterSide& side,
                const LapPoints& lap_points,
                std::vector<LapPoint>& points) {
  const GapProfile profile(perimeter, side);
  for (const GapSection& section : profile.sections(step_mm)) {
    const double lap = perimeter.hull->lap_mm(section.place);
    for (const double depth : {0.0, lap})
      points.push_back(lap_points.at(side, profile, section.place, depth));
  }
}

}  // namespace

Result<SeatingTask> seating_task(const Joint& joint,
                                 const SeatingInputs& inputs,
                                 const Perimeter& perimeter,
                                 const HullMovement& free) {
  assert(joint.adhesive);
  const auto lap_points = LapPoints::with(inputs.spreaders, perimeter, free);
  if (!lap_points) return tl::unexpected(lap_points.error());
  SeatingTask task;
  for (const PerimeterSide& side : perimeter.sides)
    add_points(perimeter, side, *lap_points, task.points);
  task.lip = perimeter.lip.get();
  task.datum = lid_datum(perimeter);
  task.gap_min_mm = joint.adhesive->gap_min.in_mm();
  task.gap_max_mm = joint.adhesive->gap_max.in_mm();
  for (const Spreader& spreader : inputs.spreaders)
    task.squeeze_most_mm.push_back(spreader.most.in_mm());
  return task;
}

}  // namespace sheerlap
