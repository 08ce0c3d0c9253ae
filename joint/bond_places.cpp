#include "joint/bond_places.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "joint/bond_heat.h"
#include "joint/gap_profile.h"

namespace sheerlap {
namespace {

/// The bond band of a place as depths.
struct Band {
  double from_mm;
  double to_mm;
};

Band band_at(const Joint& joint, const Perimeter& perimeter, Place place) {
  const double lap = perimeter.hull->lap_mm(place);
  return {joint.bond.from ? joint.bond.from->in_mm() : 0,
          joint.bond.to ? joint.bond.to->in_mm() : lap};
}

/// A place of the sheer with its gaps and its load.
BondPoint point_at(const Joint& joint,
                   const Perimeter& perimeter,
                   const PerimeterSide& side,
                   const GapProfile& profile,
                   const JointLoads& loads,
                   Place place) {
  const Band band = band_at(joint, perimeter, place);
  BondPoint point;
  point.side = side.name;
  point.girth = side.sheer.girth_at(place);
  point.on_line =
      std::clamp(side.drill_line.girth_at(place), Length(), side.drill_line_length);
  point.gap_top = Length::mm(profile.gap_mm(place, band.from_mm));
  point.gap_low = Length::mm(profile.gap_mm(place, band.to_mm));
  point.width = Length::mm((perimeter.hull->at(place, band.to_mm).point -
                            perimeter.hull->at(place, band.from_mm).point)
                               .norm());
  point.load = loads.at(side.name, point.on_line);
  point.load.along += heat_flow(joint, loads, point);
  return point;
}

/// The places of a side that are looked at.
std::vector<Place> places_of(const PerimeterSide& side,
                             const GapProfile& profile,
                             const JointLoads& loads,
                             Length step) {
  std::vector<Place> places;
  for (const GapSection& section : profile.sections(step.in_mm()))
    places.push_back(section.place);
  const auto in_opening = [&](Length girth) {
    return std::any_of(side.openings.begin(), side.openings.end(),
                       [&](const OpeningSpan& opening) {
                         return opening.from < girth && girth < opening.to;
                       });
  };
  for (const Length girth : loads.jumps_on(side.name))
    if (!in_opening(girth)) places.push_back(side.drill_line.place_at(girth));
  return places;
}

}  // namespace

Result<std::vector<BondPoint>> bond_places(const Joint& joint,
                                           const Perimeter& perimeter,
                                           const PerimeterSide& side,
                                           const JointLoads& loads,
                                           Length step) {
  const GapProfile profile(perimeter, side);
  std::vector<BondPoint> points;
  for (const Place place : places_of(side, profile, loads, step))
    points.push_back(point_at(joint, perimeter, side, profile, loads, place));
  if (const auto lost = profile.lost())
    return invalid_input(
        "sheer",
        fmt::format("no gap can be measured on {} near girth {:.1f} mm: see `fit`",
                    side_word(side.name), side.sheer.girth_at(*lost).in_mm()));
  std::stable_sort(points.begin(), points.end(),
                   [](const auto& a, const auto& b) { return a.girth < b.girth; });
  // a smooth knot is met from both sides, alike but for rounding
  const auto close = [](Length a, Length b) {
    return std::abs((a - b).in_mm()) < 1e-9;
  };
  const auto same = [&](const BondPoint& a, const BondPoint& b) {
    return close(a.girth, b.girth) && close(a.gap_top, b.gap_top) &&
           close(a.gap_low, b.gap_low);
  };
  points.erase(std::unique(points.begin(), points.end(), same), points.end());
  return points;
}

std::optional<BondPoint> bond_place(const Joint& joint,
                                    const Perimeter& perimeter,
                                    const PerimeterSide& side,
                                    const JointLoads& loads,
                                    Length on_line) {
  const GapProfile profile(perimeter, side);
  const BondPoint point = point_at(joint, perimeter, side, profile, loads,
                                   side.drill_line.place_at(on_line));
  if (profile.lost()) return std::nullopt;
  return point;
}

}  // namespace sheerlap
