#pragma once

#include <cstddef>
#include <vector>

#include "geometry/curve.h"

namespace sheerlap {

/// A span in which a curve bends against its points: a false hollow or bump.
struct Unfair {
  std::size_t span = 0;
  bool in_profile = false;  ///< seen from the side, not in plan
  double height_mm = 0;     ///< how far about it leaves a fair line there
};

/// The spans in which a smooth curve bends the other way than the points at their ends
/// do, by more than `tolerance_mm`: where it leaves the points by more than a fair
/// line would.
///
/// In plan the bend is the turn to the right; in profile it is the change of height
/// against the plan length. The height of the hollow is its turn times an eighth of
/// the span's chord, the rise of a shallow arc.
///
/// @source  derived: an arc of turn a over a chord c rises by c tan(a/4)/2, c a/8 for
///          small a; a fair line through points that turn one way has no other turn
std::vector<Unfair> unfair_spans(const Curve& curve, double tolerance_mm);

}  // namespace sheerlap
