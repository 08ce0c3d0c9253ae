#pragma once

#include <Eigen/Core>
#include <optional>
#include <vector>

#include "geometry/quantity.h"
#include "geometry/ruled_face.h"
#include "joint/hull_movement.h"
#include "joint/stretch.h"

namespace sheerlap {

/// A point of the hull face at which the gap is looked at, and how it moves.
struct LapPoint {
  SideName side = SideName::Starboard;
  Length girth;  ///< along the sheer
  Place place;
  double depth_mm = 0;
  FacePoint hull;                   ///< as moulded
  HullShift free;                   ///< out of the mould
  std::vector<HullShift> squeezed;  ///< one a spreader, for each mm of squeeze
};

/// Where the lid's position is counted from.
struct LidDatum {
  Point2 pivot;         ///< of the turn, on the lid as drawn
  double reach_mm = 1;  ///< from it to the ends
};

/// The unknowns of a seating, mm: the lid's move aft and to starboard, its turn times
/// `reach_mm`, and the squeeze of each side at each spreader.
using LidUnknowns = Eigen::VectorXd;
inline constexpr Eigen::Index lid_aft = 0, lid_starboard = 1, lid_turn = 2,
                              first_squeeze = 3;

/// A gap (mm), and what each unknown does to it.
struct LidGap {
  double gap_mm = 0;
  Eigen::VectorXd slope;
};

/// The gap at a point from the hull, moved and squeezed, to the lip of a lid that is
/// moved; along the moved hull's outward normal, both faces carried on past their
/// edges.
///
/// @returns   nothing where the lip face turns away from the hull face
/// @accuracy  rounding: the lid is moved as a rigid body, and the slopes are those of
///            the moved faces
std::optional<LidGap> lid_gap(const LapPoint& point,
                              const RuledFace& lip,
                              const LidDatum& datum,
                              const LidUnknowns& unknowns);

}  // namespace sheerlap
