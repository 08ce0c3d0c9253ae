#pragma once

#include <Eigen/Core>
#include <cstddef>
#include <vector>

#include "geometry/result.h"
#include "joint/boat_points.h"
#include "joint/drill_stations.h"
#include "joint/joint.h"
#include "joint/perimeter.h"
#include "joint/tolerance_inputs.h"

namespace sheerlap {

/// What a unit of an error of a part as a whole does.
struct WholeColumn {
  std::size_t error = 0;  ///< of the inputs
  Eigen::VectorXd gaps;   ///< mm, P
  double volume_ml = 0;
  Eigen::VectorXd holes;  ///< mm, of each hole's gap and of its way through
};

/// What a mm of an error along the joint does, station by station.
struct AlongColumn {
  std::size_t error = 0;
  Eigen::MatrixXd basis;      ///< terms x stations: of a field with variance 1
  Eigen::VectorXd top, low;   ///< mm of the gap at each edge
  Eigen::VectorXd volume_ml;  ///< one a station
  double hole_gap = 0;        ///< mm of the gap at a hole
  double hole_way = 0;        ///< mm of the way through
};

/// The stations before and after a hole, and its share of the way from one to the
/// other.
struct HolePlace {
  Eigen::Index before = 0;
  Eigen::Index after = 0;
  double share = 0;
};

/// What each unknown of the seating does.
struct UnknownColumns {
  Eigen::MatrixXd gaps;       ///< P x unknowns
  Eigen::VectorXd volume_ml;  ///< unknowns
  Eigen::MatrixXd holes;      ///< holes x unknowns
};

/// What a mm of gap at each edge of each station adds to the volume (ml).
struct EdgeAreas {
  Eigen::VectorXd top, low;
};

/// A boat with errors, straight in each of them about the boat as drawn.
///
/// Shrinkage, opening and twist act on every point as `WholeError` has them. The hull's
/// face outward takes its amount off the gap; a thicker lip grows inward from its
/// moulded outer face and takes its amount off, square to the lip; the hull's trimmed
/// edge up moves the top edge's point as far up the faces, carried on: that the lid may
/// ride on a high edge is left out.
///
/// The volume grows by the gap's change times the hull face's area over the bond band,
/// straight between the edges; where the band starts at the hull's top edge, a higher
/// edge adds the gap there. A hole's way from the lip's outer face to the hull's inner
/// one grows with the gap, not with the lip's thickness.
///
/// @accuracy  first order in the errors. The volume leaves out that the lip's face is
///            larger than the hull's, a gap over the bend's radius of the change, and
///            the corners' mitres; where faces interfere it counts the gap as negative
struct BoatModel {
  std::vector<ProcessError> errors;
  BoatPoints points;
  Eigen::VectorXd gaps;  ///< as drawn, P: at each station the top edge, the low one
  EdgeAreas areas;
  double volume_ml = 0;
  Eigen::VectorXd hole_gaps, hole_ways;  ///< mm
  std::vector<HolePlace> hole_places;
  std::vector<WholeColumn> whole;
  std::vector<AlongColumn> along;
  UnknownColumns unknowns;
};

/// The volume's change (ml) for the gaps' changes, P.
double volume_of(const EdgeAreas& areas, const Eigen::VectorXd& gaps);

/// @param holes      of the joint's schedule; none if it has none
/// @param volume_ml  of the joint as drawn
/// @errors  as `boat_points`; at "error[N]": as `WholeError`
Result<BoatModel> boat_model(const Joint& joint,
                             const Perimeter& perimeter,
                             const std::vector<DrillStation>& holes,
                             double volume_ml);

}  // namespace sheerlap
