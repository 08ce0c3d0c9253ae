#pragma once

#include <algorithm>

#include "geometry/enclosed_volume.h"
#include "geometry/mitre.h"
#include "geometry/quadrature.h"

namespace sheerlap {

/// The integral over a part of a face of a function of place and depth, by area, in
/// the band of depths of `space`; mitres at the ends of the span left out.
///
/// @param function  double(Place, double depth_mm)
/// @returns  the function's unit times mm2
/// @accuracy  about 1e-12 relative for functions as smooth as the face
template <class Function>
double face_integral(const RuledFace& face,
                     const SpanPart& part,
                     const EnclosedSpace& space,
                     const Function& function) {
  const auto by_u = [&](double u) {
    const Place place{part.span, u};
    const DepthBand band = space.band(place);
    const auto by_depth = [&](double depth) {
      return function(place, depth) * face.at(place, depth).area_mm();
    };
    return boost::math::quadrature::gauss<double, 7>::integrate(by_depth, band.from_mm,
                                                                band.to_mm);
  };
  const double variation = std::max(face.variation(part.span), 0.01);
  const auto ends = space.cuts(part);
  double sum = 0;
  for (std::size_t i = 0; i + 1 < ends.size(); ++i)
    sum += integral(by_u, ends[i], ends[i + 1], variation);
  return sum;
}

/// The same over what the mitre at a knuckle adds to the face; negative where it cuts
/// the face back.
///
/// @errors  InvalidInput at "knot[N]": see `mitre`
template <class Function>
Result<double> mitre_integral(const RuledFace& face,
                              std::size_t knot,
                              const EnclosedSpace& space,
                              const Function& function) {
  const std::size_t before = face.curve().span_before(knot);
  const double chord = face.curve().chord_mm(before);
  Errors errors;
  const auto by_depth = [&](double depth) {
    const auto met = mitre(face, knot, depth);
    if (!met) {
      errors = met.error();
      return 0.0;
    }
    const auto along = [&](std::size_t span, double from_u, double to_u) {
      const auto by_u = [&](double u) {
        return function(Place{span, u}, depth) *
               face.at(Place{span, u}, depth).area_mm();
      };
      return integral(by_u, from_u, to_u, std::max(face.variation(span), 0.01));
    };
    return along(before, chord, met->end_u_mm) + along(knot, met->start_u_mm, 0);
  };
  const DepthBand band = space.band({knot, 0});
  const double sum = boost::math::quadrature::gauss<double, 7>::integrate(
      by_depth, band.from_mm, band.to_mm);
  if (!errors.empty()) return tl::unexpected(errors);
  return sum;
}

}  // namespace sheerlap
