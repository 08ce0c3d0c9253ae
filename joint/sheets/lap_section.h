#pragma once

#include <optional>

#include "geometry/points.h"
#include "geometry/quantity.h"
#include "joint/job.h"
#include "joint/sheets/section_places.h"

namespace sheerlap {

/// A straight edge of a section, by its distances outboard of the sheer at depth 0 and
/// at the lap's depth (mm).
struct SectionEdge {
  double top_mm = 0;
  double low_mm = 0;
};

/// The joint cut through upright and square to the sheer in plan. Points are mm
/// outboard of the sheer and up from it (down is below 0).
struct LapSection {
  double lap_mm = 0;
  SectionEdge hull_inner, hull, lip, lip_outer;
  double bond_from_mm = 0;  ///< depths of the band that is filled
  double bond_to_mm = 0;
  Point2 entry;  ///< where a bit goes into the lip on the drill line
  Vector2 bit;   ///< its way, unit, as it is seen in the section
  Point2 at_lip, at_hull, at_inner;  ///< where it passes the other faces
  /// The gap asked for: from the hull's face to the lip's.
  std::optional<std::pair<Point2, Point2>> gap;

  /// The point of an edge at a depth; the edge is carried on beyond the lap.
  Point2 on(const SectionEdge& edge, double depth_mm) const;
};

LapSection lap_section(const Job& job, const SectionPlace& place);

}  // namespace sheerlap
