#pragma once

#include <Eigen/Core>
#include <string>
#include <vector>

#include "geometry/quantity.h"

namespace sheerlap {

enum class CurveKind { Spline, Chords };

/// Flange offsets of one row: horizontal distances outboard of the sheer, square to
/// it in plan; negative is inboard.
struct FlangeOffsets {
  Length lap;       ///< depth of the lap, > 0
  Length hull_top;  ///< hull face at depth 0
  Length hull_low;  ///< hull face at depth `lap`
  Length lip_top;   ///< lip's inner face at depth 0
  Length lip_low;   ///< lip's inner face at depth `lap`
};

/// One row of the sheer table.
struct SheerRow {
  Eigen::Vector3d point;  ///< mm; x aft, y to starboard, z up
  FlangeOffsets offsets;
  bool knuckle = false;  ///< flagged as a corner
  std::string station;   ///< label, may be empty
};

struct Sheer {
  std::vector<SheerRow> rows;
  bool half = true;    ///< the starboard half, mirrored; else once round
  bool closed = true;  ///< false: the joint stops at the transom corners
  CurveKind curve = CurveKind::Spline;
  Angle knuckle_angle;
};

}  // namespace sheerlap
