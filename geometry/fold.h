#pragma once

#include <cstddef>
#include <vector>

#include "geometry/ruled_face.h"

namespace sheerlap {

/// Where a face folds on itself: it is offset to the inside of a bend of its curve by
/// more than the bend's radius.
struct Fold {
  std::size_t span = 0;
  double offset_mm = 0;  ///< of the face where it folds most
  double radius_mm = 0;  ///< of the curve there, in plan
};

/// The spans in which a face folds, at depth 0 or at the foot of its lap.
///
/// @accuracy  17 places a span are looked at, and where the face is compressed to less
///            than a half the least in between
std::vector<Fold> folds(const RuledFace& face);

}  // namespace sheerlap
