#pragma once

#include <string_view>

#include "geometry/result.h"
#include "geometry/ruled_face.h"
#include "joint/sheer_curve.h"

namespace sheerlap {

/// Where a face is offset to the inside of a bend beyond the bend's radius: an error at
/// "knot[N]" for each span of the sheer. What the mirrored half of a boat only repeats
/// is left out. After 20 of them the rest are counted.
///
/// @param face  hung on the curve of `sheer`
/// @param name  of the face, in a message: "the lip face"
Errors face_folds(const RuledFace& face,
                  const SheerCurve& sheer,
                  std::string_view name);

}  // namespace sheerlap
