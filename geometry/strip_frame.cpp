#include "geometry/strip_frame.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace sheerlap {
namespace {

/// The spacing of the points a derivative is taken from.
constexpr double stencil_mm = 1;

/// The weights of five evenly spaced values for the derivative at `at` spacings from
/// the first: those of the polynomial through them.
std::array<double, 5> derivative_weights(double at) {
  std::array<double, 5> weights{};
  for (int i = 0; i < 5; ++i)
    for (int left_out = 0; left_out < 5; ++left_out) {
      if (left_out == i) continue;
      double term = 1.0 / (i - left_out);
      for (int j = 0; j < 5; ++j)
        if (j != i && j != left_out) term *= (at - j) / (i - j);
      weights[static_cast<std::size_t>(i)] += term;
    }
  return weights;
}

/// Evenly spaced parameters on one smooth stretch of a span.
struct Stencil {
  double first = 0;
  double spacing = 0;
  double last = 0;

  /// The outermost are on the stretch, whatever rounding does.
  double at(std::size_t i) const {
    return i == 4 ? last : first + static_cast<double>(i) * spacing;
  }
};

/// The stencil about a parameter. It is as wide as the face is smooth, not as a part
/// that is asked for: cuts of the line may stand as close together as rounding.
Stencil stencil_at(double chord, double u, double middle_u) {
  if (middle_u < 0) {
    const double last = std::min(u + 2 * stencil_mm, last_before_span);
    return {last - 4 * stencil_mm, stencil_mm, last};
  }
  if (middle_u > chord) {
    const double first = std::max(u - 2 * stencil_mm, first_after_span(chord));
    return {first, stencil_mm, first + 4 * stencil_mm};
  }
  const double spacing = std::min(stencil_mm, chord / 4);
  const double first = std::clamp(u - 2 * spacing, 0.0, chord - 4 * spacing);
  return {first, spacing, std::min(first + 4 * spacing, chord)};
}

}  // namespace

double first_after_span(double chord_mm) {
  return std::nextafter(chord_mm, std::numeric_limits<double>::infinity());
}

StripFrame strip_frame(const FaceLine& line, Place place) {
  const FacePoint face = line.at(place);
  StripFrame frame;
  frame.speed = face.by_u.norm();
  frame.along = face.by_u / frame.speed;
  frame.out = face.normal;
  frame.up = frame.along.cross(frame.out);
  frame.lean = std::atan2(face.by_depth.dot(frame.up), face.by_depth.dot(frame.along));
  const double ruling = face.by_depth.norm();
  frame.lap = line.face().lap_mm(place);
  frame.to_top = line.depth_mm() * ruling;
  frame.to_low = (frame.lap - line.depth_mm()) * ruling;
  return frame;
}

FrameRates frame_rates(const FaceLine& line, Place place, double middle_u) {
  const StripFrame here = strip_frame(line, place);
  const Stencil stencil =
      stencil_at(line.face().curve().chord_mm(place.span), place.u_mm, middle_u);
  const auto weights =
      derivative_weights((place.u_mm - stencil.first) / stencil.spacing);
  Vector3 along_by_u = Vector3::Zero();
  FrameRates rates;
  for (std::size_t i = 0; i < weights.size(); ++i) {
    const StripFrame frame = strip_frame(line, {place.span, stencil.at(i)});
    const double weight = weights[i] / stencil.spacing;
    along_by_u += weight * frame.along;
    rates.lean += weight * frame.lean;
    rates.to_top += weight * frame.to_top;
    rates.to_low += weight * frame.to_low;
    rates.lap += weight * frame.lap;
  }
  rates.turn = along_by_u.dot(here.up);
  rates.bend = -along_by_u.dot(here.out);
  return rates;
}

}  // namespace sheerlap
