#include "joint/seating_task.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <utility>

#include "joint/gap_profile.h"

namespace sheerlap {
namespace {

constexpr double step_mm = 10;

/// The hull's movement for a mm of squeeze at each spreader, the others held.
Result<std::vector<HullMovement>> influences(const std::vector<Spreader>& spreaders,
                                             const Perimeter& perimeter) {
  std::vector<HullMovement> result;
  for (std::size_t j = 0; j < spreaders.size(); ++j) {
    std::vector<HullPush> pushes;
    for (std::size_t k = 0; k < spreaders.size(); ++k)
      pushes.push_back({spreaders[k].x, Length::mm(k == j ? -1 : 0),
                        fmt::format("spreader[{}].x", k)});
    auto movement = HullMovement::through(perimeter, pushes);
    if (!movement) return tl::unexpected(std::move(movement.error()));
    result.push_back(std::move(*movement));
  }
  return result;
}

/// The points of one side, at both edges of the lap.
void add_points(const Perimeter& perimeter,
                const PerimeterSide& side,
                const HullMovement& free,
                const std::vector<HullMovement>& influences,
                std::vector<LapPoint>& points) {
  const GapProfile profile(perimeter, side);
  for (const GapSection& section : profile.sections(step_mm)) {
    const double lap = perimeter.hull->lap_mm(section.place);
    for (const double depth : {0.0, lap}) {
      LapPoint point;
      point.side = side.name;
      point.girth = Length::mm(section.girth_mm);
      point.place = profile.hull_place(section.place, depth);
      point.depth_mm = depth;
      point.hull = perimeter.hull->at(point.place, depth);
      point.free = free.at(side, point.place);
      for (const HullMovement& influence : influences)
        point.squeezed.push_back(influence.at(side, point.place));
      points.push_back(std::move(point));
    }
  }
}

LidDatum datum_of(const Perimeter& perimeter) {
  const Curve& curve = perimeter.hull->curve();
  double least = 1e300;
  double most = -1e300;
  for (std::size_t span = 0; span < curve.spans(); ++span)
    for (const double u : {0.0, curve.chord_mm(span)}) {
      least = std::min(least, curve.at({span, u}).point.x());
      most = std::max(most, curve.at({span, u}).point.x());
    }
  return {{(least + most) / 2, 0}, (most - least) / 2};
}

}  // namespace

Result<SeatingTask> seating_task(const Joint& joint,
                                 const SeatingInputs& inputs,
                                 const Perimeter& perimeter,
                                 const HullMovement& free) {
  assert(joint.adhesive);
  const auto pulls = influences(inputs.spreaders, perimeter);
  if (!pulls) return tl::unexpected(pulls.error());
  SeatingTask task;
  for (const PerimeterSide& side : perimeter.sides)
    add_points(perimeter, side, free, *pulls, task.points);
  task.lip = perimeter.lip.get();
  task.datum = datum_of(perimeter);
  task.gap_min_mm = joint.adhesive->gap_min.in_mm();
  task.gap_max_mm = joint.adhesive->gap_max.in_mm();
  for (const Spreader& spreader : inputs.spreaders)
    task.squeeze_most_mm.push_back(spreader.most.in_mm());
  return task;
}

}  // namespace sheerlap
