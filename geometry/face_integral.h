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
  Errors errors;
  const auto by_depth = [&](double depth) {
    const auto met = mitre(face, knot, depth);
    if (!met) {
      errors = met.error();
      return 0.0;
    }
    double sum = 0;
    for (const MitreStretch& stretch : mitre_stretches(face, knot, depth, *met)) {
      const auto by_u = [&](double u) {
        const Place place{stretch.span, u};
        return function(place, depth) * face.at(place, depth).area_mm();
      };
      sum += integral(by_u, stretch.from_u, stretch.to_u,
                      std::max(face.variation(stretch.span), 0.01));
    }
    return sum;
  };
  const DepthBand band = space.band({knot, 0});
  const double sum = boost::math::quadrature::gauss<double, 7>::integrate(
      by_depth, band.from_mm, band.to_mm);
  if (!errors.empty()) return tl::unexpected(errors);
  return sum;
}

}  // namespace sheerlap
