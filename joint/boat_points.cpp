#include "joint/boat_points.h"

#include <fmt/format.h>

#include <cmath>
#include <optional>
#include <utility>

#include "geometry/clearance.h"
#include "joint/sheer_places.h"

namespace sheerlap {
namespace {

constexpr double step_mm = 50;
/// Points closer than this are one.
constexpr double apart_mm = 1e-6;
/// How far down the gap is looked at again for its slope.
constexpr double slope_step_mm = 0.01;

/// What the points of one side are made from.
struct SideGround {
  const Perimeter& perimeter;
  const PerimeterSide& side;
  const SqueezedLap& squeezed_lap;
  const LidDatum& datum;
  GapProfile profile;
};

Result<BoatPoint> boat_point(const SideGround& ground, Place place, double depth_mm) {
  BoatPoint point;
  point.lap = ground.squeezed_lap.at(ground.side, ground.profile, place, depth_mm);
  const RuledFace& lip = *ground.perimeter.lip;
  const FacePoint& hull = point.lap.hull;
  const auto hit = face_hit(lip, hull.point, hull.normal, point.lap.place, depth_mm);
  const LidUnknowns rest = LidUnknowns::Zero(
      first_squeeze + static_cast<Eigen::Index>(point.lap.squeezed.size()));
  const auto gap = lid_gap(point.lap, lip, ground.datum, rest);
  if (!hit || !gap)
    return invalid_input(
        fmt::format("sheer.row[{}]", ground.perimeter.knots[place.span].row),
        "no gap can be measured here: the lip face turns away from the hull face");
  point.lip = lip.at(hit->place, hit->depth_mm);
  point.gap_mm = gap->gap_mm;
  point.slope = gap->slope;
  return point;
}

/// Whether a section is the one before it again, said to lie in the next span.
bool again(const BoatStation& before, const BoatStation& station) {
  const auto same = [](const FacePoint& a, const FacePoint& b) {
    return (a.point - b.point).norm() < apart_mm && (a.normal - b.normal).norm() < 1e-9;
  };
  return same(before.top.lap.hull, station.top.lap.hull) &&
         same(before.low.lap.hull, station.low.lap.hull);
}

Result<BoatStation> station_at(const SideGround& ground, const GapSection& section) {
  BoatStation station;
  station.side = ground.side.name;
  station.girth = Length::mm(section.girth_mm);
  station.ring_mm = along_ring_mm(ground.perimeter, station.side, station.girth);
  station.lap_mm = ground.perimeter.hull->lap_mm(section.place);
  auto top = boat_point(ground, section.place, 0);
  if (!top) return tl::unexpected(std::move(top.error()));
  auto low = boat_point(ground, section.place, station.lap_mm);
  if (!low) return tl::unexpected(std::move(low.error()));
  station.top = std::move(*top);
  station.low = std::move(*low);
  station.by_depth = (ground.profile.gap_mm(section.place, slope_step_mm) -
                      ground.profile.gap_mm(section.place, -slope_step_mm)) /
                     (2 * slope_step_mm);
  return station;
}

Errors add_stations(const SideGround& ground, std::vector<BoatStation>& stations) {
  std::optional<std::size_t> strand;
  for (const GapSection& section : ground.profile.sections(step_mm)) {
    auto station = station_at(ground, section);
    if (!station) return station.error();
    if (strand == section.strand) {
      BoatStation& before = stations.back();
      if (again(before, *station)) continue;
      const double half = (station->girth - before.girth).in_mm() / 2;
      before.run_mm += half;
      station->run_mm += half;
    }
    strand = section.strand;
    stations.push_back(std::move(*station));
  }
  return {};
}

Errors add_holes(const SideGround& ground,
                 const std::vector<DrillStation>& holes,
                 std::vector<BoatPoint>& points) {
  for (const DrillStation& hole : holes) {
    if (hole.side != ground.side.name) continue;
    const Place place = ground.side.drill_line.place_at(hole.girth);
    auto point = boat_point(ground, place, ground.side.drill_line.line().depth_mm());
    if (!point) return point.error();
    points.push_back(std::move(*point));
  }
  return {};
}

}  // namespace

SheerRing sheer_ring(const Perimeter& perimeter) {
  SheerRing ring;
  for (const PerimeterSide& side : perimeter.sides)
    ring.length_mm += side.sheer_length.in_mm();
  ring.closed = perimeter.hull->curve().closed();
  return ring;
}

double along_ring_mm(const Perimeter& perimeter, SideName side, Length girth) {
  const SheerRing ring = sheer_ring(perimeter);
  if (!ring.closed) {
    const double bow = perimeter.side(SideName::Port)->sheer_length.in_mm();
    return side == SideName::Port ? bow - girth.in_mm() : bow + girth.in_mm();
  }
  switch (side) {
    case SideName::Starboard:
      return girth.in_mm();
    case SideName::Port:
      return ring.length_mm - girth.in_mm();
    case SideName::Transom:
      break;
  }
  return (perimeter.side(SideName::Starboard)->sheer_length + girth).in_mm();
}

Result<BoatPoint> boat_point_at(const Joint& joint,
                                const Perimeter& perimeter,
                                SideName side,
                                Length girth) {
  const HullMovement as_moulded;
  const auto squeezed_lap =
      SqueezedLap::with(joint.seating.spreaders, perimeter, as_moulded);
  if (!squeezed_lap) return tl::unexpected(squeezed_lap.error());
  const PerimeterSide& on = *perimeter.side(side);
  const LidDatum datum = lid_datum(perimeter);
  const SideGround ground{perimeter, on, *squeezed_lap, datum,
                          GapProfile(perimeter, on)};
  const Place place = place_on_sheer(on, girth);
  return boat_point(ground, place, perimeter.hull->lap_mm(place) / 2);
}

Result<BoatPoints> boat_points(const Joint& joint,
                               const Perimeter& perimeter,
                               const std::vector<DrillStation>& holes) {
  const HullMovement as_moulded;
  const auto squeezed_lap =
      SqueezedLap::with(joint.seating.spreaders, perimeter, as_moulded);
  if (!squeezed_lap) return tl::unexpected(squeezed_lap.error());
  BoatPoints points;
  points.datum = lid_datum(perimeter);
  for (const PerimeterSide& side : perimeter.sides) {
    const SideGround ground{perimeter, side, *squeezed_lap, points.datum,
                            GapProfile(perimeter, side)};
    Errors errors = add_stations(ground, points.stations);
    if (errors.empty()) errors = add_holes(ground, holes, points.holes);
    if (!errors.empty()) return tl::unexpected(std::move(errors));
  }
  return points;
}

}  // namespace sheerlap
