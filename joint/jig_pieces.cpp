#include "joint/jig_pieces.h"

#include <Eigen/Geometry>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <cstdint>

#include "joint/jig_workings.h"
#include "joint/side_ends.h"

namespace sheerlap {
namespace {

/// A flat plate: two directions in it and the one square to it, outboard.
struct Plate {
  Point3 origin;  ///< the first hole
  Vector3 along;
  Vector3 up;
  Vector3 out;
};

/// Where the drill line goes at a station.
Vector3 way_on(const PerimeterSide& side, const DrillStation& station) {
  const Place place = side.drill_line.place_at(station.girth);
  const Vector3 along = side.drill_line.line().at(place).by_u.normalized();
  return side.drill_line.path().forward ? along : Vector3(-along);
}

Plate plate_of(const PerimeterSide& side,
               const std::vector<DrillStation>& stations,
               const JigSegment& segment) {
  Plate plate;
  plate.origin = stations[segment.first].point;
  const Vector3 chord = stations[segment.last].point - plate.origin;
  plate.along = segment.last > segment.first ? Vector3(chord.normalized())
                                             : way_on(side, stations[segment.first]);
  Vector3 outward = Vector3::Zero();
  for (std::size_t i = segment.first; i <= segment.last; ++i)
    outward -= stations[i].axis;
  plate.out = (outward - outward.dot(plate.along) * plate.along).normalized();
  plate.up = plate.along.cross(plate.out);
  if (plate.up.z() < 0) plate.up = -plate.up;
  return plate;
}

BushLean lean_of(const Plate& plate, const DrillStation& station) {
  const Vector3 bush = -station.axis;
  return {Angle::radians(std::atan2(bush.dot(plate.up), bush.dot(plate.out))),
          Angle::radians(std::atan2(bush.dot(plate.along), bush.dot(plate.out)))};
}

JigHole hole_of(const Plate& plate,
                const std::vector<DrillStation>& stations,
                const JigSegment& segment,
                std::size_t index) {
  const DrillStation& station = stations[index];
  const Vector3 from_first = station.point - plate.origin;
  const double along = from_first.dot(plate.along);
  JigHole hole;
  hole.station = index;
  hole.run = station.girth - stations[segment.first].girth;
  hole.straight = Length::mm(from_first.norm());
  hole.along_chord = Length::mm(along);
  hole.off_chord = Length::mm((from_first - along * plate.along).norm());
  hole.lean = lean_of(plate, station);
  return hole;
}

/// How far the drill line is from the middle of a chord, in the plane square to it
/// there.
Length off_middle(const PerimeterSide& side,
                  const DrillStation& first,
                  const DrillStation& last) {
  const Vector3 chord = last.point - first.point;
  const Point3 middle = first.point + chord / 2;
  const auto beyond = [&](double girth_mm) {
    return (on_drill_line(side, Length::mm(girth_mm)) - middle).dot(chord);
  };
  std::uintmax_t steps = 100;
  const auto [low, high] = boost::math::tools::toms748_solve(
      beyond, first.girth.in_mm(), last.girth.in_mm(),
      boost::math::tools::eps_tolerance<double>(50), steps);
  const Point3 there = on_drill_line(side, Length::mm((low + high) / 2));
  return Length::mm((there - middle).norm());
}

}  // namespace

std::vector<JigPiece> jig_pieces(const Perimeter& perimeter,
                                 const std::vector<DrillStation>& stations,
                                 const std::vector<JigSegment>& segments,
                                 Length lip_trim) {
  std::vector<JigPiece> pieces;
  for (const JigSegment& segment : segments) {
    const PerimeterSide& side = *perimeter.side(segment.side);
    const Plate plate = plate_of(side, stations, segment);
    JigPiece piece{segment, {}, {}, {}};
    for (std::size_t i = segment.first; i <= segment.last; ++i) {
      piece.holes.push_back(hole_of(plate, stations, segment, i));
      PlainWorking work;
      piece.holes.back().above_edge =
          Length::mm(above_low_edge(work, stations[i].edge_low, lip_trim));
    }
    piece.chord = piece.holes.back().straight;
    if (segment.last > segment.first)
      piece.middle_off_chord =
          off_middle(side, stations[segment.first], stations[segment.last]);
    pieces.push_back(std::move(piece));
  }
  return pieces;
}

}  // namespace sheerlap
