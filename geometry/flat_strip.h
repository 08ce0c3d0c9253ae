#pragma once

#include <cstddef>
#include <vector>

#include "geometry/face_line.h"
#include "geometry/points.h"

namespace sheerlap {

/// A part of a line within one span, run the way the curve does.
struct LinePart {
  std::size_t span = 0;
  double from_u = 0;
  double to_u = 0;  ///< not less than `from_u`
};

/// One ruling of a strip of a face, laid flat. In the plane x runs along the line, y up
/// the face: the strip as it is seen from behind the face.
struct FlatRuling {
  std::size_t part = 0;  ///< of the parts asked for
  double u_mm = 0;
  double run_mm = 0;      ///< of the line on the face, from the start
  double bent_mm = 0;     ///< what the sheet's thickness adds to it: see `flat_strip`
  Point2 line;            ///< where the ruling meets the line, mm
  Vector2 along;          ///< unit, the way the line goes
  Point2 top;             ///< the ruling's end at depth 0, mm
  Point2 low;             ///< its end at the depth of the lap, mm
  double top_strain = 0;  ///< how much longer the flat edge is there: flat / true - 1
  double low_strain = 0;
};

/// How much longer the two edges of a flat strip are than those of the face.
struct FlatDistortion {
  double top_mm = 0;  ///< of the whole edge; negative if the flat one is shorter
  double low_mm = 0;
  double worst_strain = 0;  ///< the greatest in size, of either edge
};

/// A strip of a face laid flat.
struct FlatStrip {
  std::vector<FlatRuling> rulings;  ///< from start to end, each part's ends among them
  /// The sharpest the face is bent along the line, apart from folds, 1/mm: where it is
  /// convex, and where it is hollow; 0 or more.
  double sharpest_convex = 0;
  double sharpest_hollow = 0;
  FlatDistortion distortion;  ///< of a sheet without thickness
};

/// The strip of a face on both sides of a line on it, laid into the plane.
///
/// Lengths along the line, its bend within the face and, at each place, the length of
/// the face's ruling and its angle with the line are kept; where the line has a knuckle
/// the strip is folded on the mitre. For a face that can be laid flat that is the true
/// pattern; for any other what is left is told as the strain of its edges.
///
/// A sheet that lies on the face with its inner side is bent about its middle: lengths
/// along the line are those half its thickness further out, so `bent_mm` is half of the
/// thickness times the angle through which the sheet is bent along the line. The twist
/// of the sheet about the line is left out of account: it turns a ruling by half the
/// thickness times the twist for each mm of length.
///
/// @param parts         one after another along the line, joined end to start
/// @param thickness_mm  of the sheet; 0 or more
/// @accuracy  1e-8 of the length; the line's points to 1e-7 mm a metre
/// @source    derived: the line's geodesic curvature and the rulings' angles are
///            unchanged when a face is laid flat (E. Kreyszig, Differential Geometry,
///            from memory, confirm)
FlatStrip flat_strip(const FaceLine& line,
                     const std::vector<LinePart>& parts,
                     double thickness_mm);

}  // namespace sheerlap
