#pragma once

#include <cstddef>
#include <optional>

#include "geometry/ruled_face.h"

namespace sheerlap {

/// The parameters at which two spans of a face's line meet in plan.
struct FaceMeeting {
  double end_u = 0;    ///< in the span before
  double start_u = 0;  ///< in the span after
};

/// Where the face's line at one depth, followed along one span, meets itself in plan
/// followed along a later one; either is carried straight on beyond its end.
///
/// Beside their common knuckle both parts keep their offset as they are carried on, and
/// run on with the offsets of their rows as they are cut back. If the offsets change so
/// fast that the turn of the curve is lost in it, each part ends where it would with
/// the offset it has at the knuckle; between the ends is then a step, of the change of
/// the offset over the length cut back.
///
/// @returns   nothing if they do not meet
/// @accuracy  1e-12 of the spans' length
std::optional<FaceMeeting> face_meeting(const RuledFace& face,
                                        std::size_t before,
                                        std::size_t after,
                                        double depth_mm);

/// The turn of a curve to the right in plan, from the end of one span to the start of
/// another, radians.
double turn_between(const Curve& curve, std::size_t before, std::size_t after);

}  // namespace sheerlap
