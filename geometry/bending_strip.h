#pragma once

#include <vector>

namespace sheerlap {

/// A place that a strip is held at, and how far it is moved there from its unstrained
/// shape.
struct StripSupport {
  double at_mm = 0;     ///< along the strip
  double moved_mm = 0;  ///< square to it
};

/// How far a strip is moved, its slope and its curvature (mm, -, 1/mm).
struct StripPoint {
  double moved_mm = 0;
  double slope = 0;
  double curvature = 0;
};

/// A uniform strip in bending that is held at supports and bends freely between them
/// and at its ends: of all shapes through the supports the one with the least bending
/// energy. Slopes are small; it is neither stretched nor twisted, and its own weight is
/// left out.
///
/// Between supports it is a cubic, at the outermost supports there is no bending
/// moment, and beyond them it is straight.
///
/// @source  derived: Euler-Bernoulli beam without load between supports, w'''' = 0,
///          with w and w' continuous and w'' = 0 at the outer supports (natural ends)
class BendingStrip {
 public:
  /// @param supports  N >= 2, ascending, no two at one place
  explicit BendingStrip(std::vector<StripSupport> supports);

  StripPoint at(double along_mm) const;
  /// The last support.
  double to_mm() const { return supports_.back().at_mm; }
  /// The bending moment at each support over the bending stiffness (1/mm).
  const std::vector<double>& curvatures() const { return curvatures_; }

 private:
  std::vector<StripSupport> supports_;
  std::vector<double> curvatures_;
};

}  // namespace sheerlap
