#include "geometry/enclosed_volume.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "geometry/mitre.h"
#include "geometry/quadrature.h"

namespace sheerlap {
namespace {

/// An offset that runs linearly with depth.
struct Line {
  double at_0 = 0;
  double slope = 0;

  double at(double depth) const { return at_0 + slope * depth; }
};

Line offset_line(const RuledFace& face, Place place) {
  const OffsetJet jet = face.offset(place, 0);
  return {jet.offset, jet.by_depth};
}

/// The part of a band in which `difference` is positive.
DepthBand positive_part(const Line& difference, DepthBand band) {
  const bool above = difference.at(band.from_mm) > 0;
  const bool below = difference.at(band.to_mm) > 0;
  if (above && below) return band;
  if (!above && !below) return {band.from_mm, band.from_mm};
  const double crossing = -difference.at_0 / difference.slope;
  return above ? DepthBand{band.from_mm, crossing} : DepthBand{crossing, band.to_mm};
}

/// How far the outer face stands outside the inner one at a knot.
struct Apart {
  double top, low, lap;
};

Apart apart(const RuledOffsets& inner, const RuledOffsets& outer) {
  return {outer.top_mm - inner.top_mm, outer.low_mm - inner.low_mm, inner.lap_mm};
}

/// The real roots of a x^2 + b x + c.
std::vector<double> roots(double a, double b, double c) {
  const double square = b * b - 4 * a * c;
  if (!(square >= 0)) return {};
  const double q = -(b + std::copysign(std::sqrt(square), b)) / 2;
  return {q / a, c / q};
}

}  // namespace

DepthBand EnclosedSpace::band(Place place) const {
  const double lap = inner_.lap_mm(place);
  return {std::min(band_.from_mm, lap), std::min(band_.to_mm, lap)};
}

double EnclosedSpace::volume_by_u(Place place) const {
  const PlanFrame frame = plan_frame(inner_.curve().at(place));
  const Line inside = offset_line(inner_, place);
  const Line outside = offset_line(outer_, place);
  const DepthBand open = positive_part(
      {outside.at_0 - inside.at_0, outside.slope - inside.slope}, band(place));
  const auto strip = [&](double depth) {
    const double a = inside.at(depth);
    const double b = outside.at(depth);
    return (b - a) * frame.speed + (b * b - a * a) / 2 * frame.turn;
  };
  // a quadratic in depth: Simpson's rule is exact
  const double middle = (open.from_mm + open.to_mm) / 2;
  return (open.to_mm - open.from_mm) / 6 *
         (strip(open.from_mm) + 4 * strip(middle) + strip(open.to_mm));
}

double EnclosedSpace::section_mm2(Place place) const {
  return volume_by_u(place) / inner_.curve().at(place).first.norm();
}

std::vector<double> EnclosedSpace::cuts(const SpanPart& part) const {
  const Curve& curve = inner_.curve();
  const SpanOffsets& inside = inner_.offsets(part.span);
  const SpanOffsets& outside = outer_.offsets(part.span);
  const Apart from = apart(inside.from, outside.from);
  const Apart to = apart(inside.to, outside.to);
  std::vector<double> cuts{part.from_u, part.to_u};
  const auto add = [&](double share) {
    if (!(share > 0 && share < 1)) return;
    const double u = curve.u_at_girth_share(part.span, share);
    if (u > part.from_u && u < part.to_u) cuts.push_back(u);
  };
  const double lap_step = to.lap - from.lap;
  add(-from.low / (to.low - from.low));
  for (const double edge : {band_.from_mm, band_.to_mm}) {
    add((edge - from.lap) / lap_step);
    // lap times the opening at this depth, a quadratic in the share
    const double spread = from.low - from.top;
    const double top_step = to.top - from.top;
    const double spread_step = to.low - to.top - spread;
    for (const double share :
         roots(top_step * lap_step,
               top_step * from.lap + from.top * lap_step + spread_step * edge,
               from.top * from.lap + spread * edge))
      add(share);
  }
  std::sort(cuts.begin(), cuts.end());
  return cuts;
}

double EnclosedSpace::volume_mm3(const SpanPart& part) const {
  const auto opens_at = [&](double u, bool low) {
    const Place place{part.span, u};
    const DepthBand here = band(place);
    const double depth = low ? here.to_mm : here.from_mm;
    return outer_.offset(place, depth).offset > inner_.offset(place, depth).offset;
  };
  const auto rate = [&](double u) { return volume_by_u({part.span, u}); };
  const double smooth =
      std::max(inner_.variation(part.span), outer_.variation(part.span));
  const std::vector<double> ends = cuts(part);
  double volume = 0;
  for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
    const double middle = (ends[i] + ends[i + 1]) / 2;
    const bool partly_open = opens_at(middle, false) != opens_at(middle, true);
    volume += integral(rate, ends[i], ends[i + 1], partly_open ? 1 : smooth);
  }
  return volume;
}

Result<double> EnclosedSpace::mitre_volume_mm3(std::size_t knot) const {
  const Place place{knot, 0};
  const Line inside = offset_line(inner_, place);
  const Line outside = offset_line(outer_, place);
  const DepthBand open = positive_part(
      {outside.at_0 - inside.at_0, outside.slope - inside.slope}, band(place));
  Errors errors;
  const auto strip = [&](double depth) {
    const auto small = mitre_area_mm2(inner_, knot, depth);
    const auto large = mitre_area_mm2(outer_, knot, depth);
    if (small && large) return *large - *small;
    errors = small ? large.error() : small.error();
    return 0.0;
  };
  const double volume = boost::math::quadrature::gauss<double, 7>::integrate(
      strip, open.from_mm, open.to_mm);
  if (!errors.empty()) return tl::unexpected(errors);
  return volume;
}

}  // namespace sheerlap
