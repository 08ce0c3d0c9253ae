#pragma once

#include <algorithm>

#include "geometry/enclosed_volume.h"
#include "geometry/quadrature.h"

namespace sheerlap {

/// The integral over a part of a face of a function of place and depth, by area, in
/// the band of depths of `space`; mitres at the ends of the span left out.
///
/// @param function  double(Place, double depth_mm)
/// @returns  the function's unit times mm2
template <class Function>
double face_integral(const RuledFace& face, const SpanPart& part,
                     const EnclosedSpace& space, const Function& function) {
  const auto by_u = [&](double u) {
    const Place place{part.span, u};
    const DepthBand band = space.band(place);
    const auto by_depth = [&](double depth) {
      return function(place, depth) * face.at(place, depth).area_mm();
    };
    return boost::math::quadrature::gauss<double, 3>::integrate(by_depth, band.from_mm,
                                                                band.to_mm);
  };
  const double bend = std::min(face.curve().bend(part.span), 0.019);
  return integral(by_u, part.from_u, part.to_u, bend);
}

}  // namespace sheerlap
