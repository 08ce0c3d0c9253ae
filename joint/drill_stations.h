#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/points.h"
#include "geometry/quantity.h"
#include "geometry/result.h"
#include "joint/fasteners.h"
#include "joint/joint.h"
#include "joint/layout.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// The bit goes this much beyond the stack, so that its point comes through.
/// @source  common practice, no source
inline constexpr Length bit_beyond_stack = Length::mm(3);

/// One drill station.
struct DrillStation {
  std::string mark;  ///< S01, P01, T01 ...; S001 where a side has 100 holes or more
  SideName side = SideName::Starboard;
  Length girth;       ///< running, on the drill line (lip's outer face)
  Length hull_girth;  ///< running, on the hull face at the drill line's depth
  Length pitch;       ///< girth from the station before, or from the side's start
  std::optional<Length> chord;  ///< straight from the station before
  Point3 point;                 ///< where the bit enters the lip's outer face, mm
  Vector3 axis;                 ///< unit, the way the bit goes, inboard
  Length edge_low;              ///< to the lip's low edge, its trim tolerance taken off
  Length edge_top;         ///< to the hull's top edge, its trim tolerance taken off
  bool past_hull = false;  ///< the bit goes by a corner or an end of the hull
  Length gap;              ///< square to the hull face where the bit goes in
  Length stack;            ///< lip, gap and hull along the bit
  std::optional<Length> length;  ///< from stock; none if no length serves
  Length lip_hole;
  std::optional<Length> hull_pilot;  ///< none for bolts and rivets: as the lip
  Length countersink;                ///< diameter on the lip's outer face
  Length drill_depth;                ///< for the depth stop, from the lip's outer face
  /// Likewise for the bit that opens the lip after the pilot: into the gap, not the
  /// hull; none where one bit goes through all.
  std::optional<Length> lip_depth;
  std::string jig;       ///< the first one that has the hole
  std::string next_jig;  ///< the second one, which is pinned through it; empty if none
  Length jig_girth;      ///< on the drill line from that jig's first hole
  std::string because;
};

/// Whether the bit goes by the hull, or comes no lower than its trimmed edge may lie.
bool misses_hull(const DrillStation& station);

/// Whether a hole is of use: one that meets the hull and has a fastener that serves.
bool drillable(const DrillStation& station);

/// The stations of a layout: starboard, port, transom; by girth; jigs left empty.
///
/// The bit goes straight, square to the lip's outer face where it enters. Edge
/// distances are straight lines from where the bit enters a face to that face's edge,
/// negative beyond it. The hull's inner face is its outer face moved in by the
/// laminate's thickness, square to it in the vertical section across the sheer.
///
/// `lip_depth` is the lip along the bit and half of the gap behind it, derived: as far
/// from the hull as from a lip not cut through; where the faces interfere, the lip.
///
/// @param layout  of this perimeter
/// @errors  at "fastener.line": a bit that does not go through the lip and the hull
/// @accuracy  1e-9 mm for the faces given
Result<std::vector<DrillStation>> drill_stations(const Joint& joint,
                                                 const Perimeter& perimeter,
                                                 const Layout& layout,
                                                 const FastenerSpec& spec);

/// The stations that holes at any girths of a side would be, without marks, reasons and
/// fasteners.
///
/// @returns  one for each girth; none where the bit does not go through lip and hull
std::vector<std::optional<DrillStation>> stations_at(const Joint& joint,
                                                     const Perimeter& perimeter,
                                                     const PerimeterSide& side,
                                                     const std::vector<Length>& girths);

}  // namespace sheerlap
