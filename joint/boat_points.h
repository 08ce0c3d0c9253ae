#pragma once

#include <vector>

#include "joint/drill_stations.h"
#include "joint/joint.h"
#include "joint/squeezed_lap.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// A point of the hull face and the point of the lip across from it, the boat as drawn.
struct BoatPoint {
  LapPoint lap;
  FacePoint lip;
  double gap_mm = 0;
  LidUnknowns slope;  ///< of the gap
  /// The cosine between the faces' normals.
  double facing() const { return lip.normal.dot(lap.hull.normal); }
};

/// Where the gap is looked at, at both edges of the lap.
struct BoatStation {
  SideName side = SideName::Starboard;
  Length girth;         ///< along the sheer
  double ring_mm = 0;   ///< along the sheer all round
  double lap_mm = 0;    ///< depth of the lap
  double run_mm = 0;    ///< girth that it stands for: half way to its neighbours
  double by_depth = 0;  ///< what the gap at the top edge gains for each mm of depth
  BoatPoint top, low;
};

/// The points of a boat as drawn: stations at every row and no further apart than 50 mm
/// of the sheer's parameter, starboard, port, transom; by girth.
struct BoatPoints {
  std::vector<BoatStation> stations;
  std::vector<BoatPoint> holes;  ///< one a drill station, at the drill line's depth
  LidDatum datum;
};

/// The sheer all round as a line: once round from the bow where it is closed, else from
/// the port end over the bow to the starboard end.
struct SheerRing {
  double length_mm = 0;
  bool closed = true;
};
SheerRing sheer_ring(const Perimeter& perimeter);
/// How far along it a place of a side is (mm).
double along_ring_mm(const Perimeter& perimeter, SideName side, Length girth);

/// The point at a girth of a side's drill line, halfway down the lap.
/// @errors  as `boat_points`
Result<BoatPoint> boat_point_at(const Joint& joint,
                                const Perimeter& perimeter,
                                SideName side,
                                Length girth);

/// @param holes  of the joint's schedule
/// @errors  at "spreader[N].x": as `SqueezedLap`; at "sheer.row[N]": a place at which no
///          gap can be measured
Result<BoatPoints> boat_points(const Joint& joint,
                               const Perimeter& perimeter,
                               const std::vector<DrillStation>& holes);

}  // namespace sheerlap
