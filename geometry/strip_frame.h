#pragma once

#include <limits>

#include "geometry/face_line.h"
#include "geometry/points.h"

namespace sheerlap {

/// A face at a place of a line on it, in the frame of the line.
struct StripFrame {
  double speed = 0;   ///< of the line by the parameter
  Vector3 along;      ///< unit, along the line
  Vector3 out;        ///< unit, square to the face
  Vector3 up;         ///< unit, in the face, square to the line
  double lean = 0;    ///< angle from `along` to the ruling going down, in the face
  double to_top = 0;  ///< length of the ruling from the line to depth 0, mm
  double to_low = 0;  ///< and to the depth of the lap
  double lap = 0;     ///< depth, mm
};

StripFrame strip_frame(const FaceLine& line, Place place);

/// The outermost parameters at which a span is carried on beyond its ends: at 0 and at
/// its chord it has the frame it has within.
inline constexpr double last_before_span = -std::numeric_limits<double>::denorm_min();
double first_after_span(double chord_mm);

/// How a frame changes with the parameter.
struct FrameRates {
  double turn = 0;  ///< of the line within the face, to the up side
  double bend = 0;  ///< of the face along the line, radians, above 0 if it is convex
  double lean = 0;
  double to_top = 0;
  double to_low = 0;
  double lap = 0;
};

/// The rates within a stretch of a span on which the face is smooth: its own, or where
/// it is carried on beyond one of its ends. At an end of the stretch they are those of
/// the stretch's own side.
///
/// @param middle_u  a parameter within the stretch, to tell which it is
/// @accuracy  of the polynomial through five frames 1 mm apart, or a quarter of the
///            span's chord if that is less
FrameRates frame_rates(const FaceLine& line, Place place, double middle_u);

}  // namespace sheerlap
