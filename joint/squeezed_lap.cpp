#include "joint/squeezed_lap.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace sheerlap {

Result<SqueezedLap> SqueezedLap::with(const std::vector<Spreader>& spreaders,
                                      const Perimeter& perimeter,
                                      const HullMovement& free) {
  SqueezedLap points(perimeter, free);
  for (std::size_t j = 0; j < spreaders.size(); ++j) {
    std::vector<HullPush> pushes;
    for (std::size_t k = 0; k < spreaders.size(); ++k)
      pushes.push_back({spreaders[k].x, Length::mm(k == j ? -1 : 0),
                        fmt::format("spreader[{}].x", k)});
    auto movement = HullMovement::through(perimeter, pushes);
    if (!movement) return tl::unexpected(std::move(movement.error()));
    points.influences_.push_back(std::move(*movement));
  }
  return points;
}

LapPoint SqueezedLap::at(const PerimeterSide& side,
                         const GapProfile& profile,
                         Place place,
                         double depth_mm) const {
  LapPoint point;
  point.side = side.name;
  point.girth = side.sheer.girth_at(place);
  point.place = profile.hull_place(place, depth_mm);
  point.depth_mm = depth_mm;
  point.hull = perimeter_->hull->at(point.place, depth_mm);
  // a mitre measures the hull elsewhere
  const bool here = point.place.span == place.span && point.place.u_mm == place.u_mm;
  const Length moved = here ? point.girth : side.sheer.girth_at(point.place);
  point.free = free_->at(side, point.place, moved);
  for (const HullMovement& influence : influences_)
    point.squeezed.push_back(influence.at(side, point.place, moved));
  return point;
}

LidDatum lid_datum(const Perimeter& perimeter) {
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

}  // namespace sheerlap
