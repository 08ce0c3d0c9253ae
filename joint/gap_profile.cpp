#include "joint/gap_profile.h"

#include <algorithm>
#include <boost/math/tools/minima.hpp>
#include <cmath>

#include "geometry/clearance.h"
#include "geometry/mitre.h"

namespace sheerlap {
namespace {

/// Gaps closer than this are taken for the same, mm.
constexpr double same_mm = 1e-9;

}  // namespace

GapProfile::GapProfile(const Perimeter& perimeter, const PerimeterSide& side)
    : perimeter_(perimeter),
      side_(side),
      cut_at_end_(perimeter.hull->curve().spans(), 0.0),
      cut_at_start_(perimeter.hull->curve().spans(), 0.0) {
  const RuledFace& hull = *perimeter.hull;
  for (const std::size_t knot : perimeter.mitres) {
    const std::size_t before = hull.curve().span_before(knot);
    for (const double depth : {0.0, hull.lap_mm({knot, 0})}) {
      const auto met = mitre(hull, knot, depth);
      if (!met) continue;
      cut_at_end_[before] =
          std::max(cut_at_end_[before], hull.curve().chord_mm(before) - met->end_u_mm);
      cut_at_start_[knot] = std::max(cut_at_start_[knot], met->start_u_mm);
    }
  }
}

Place GapProfile::on_hull(Place place, double depth_mm) const {
  const Curve& curve = perimeter_.hull->curve();
  const double chord = curve.chord_mm(place.span);
  if (place.u_mm > chord - cut_at_end_[place.span]) {
    const auto met = mitre(*perimeter_.hull, curve.knot_after(place.span), depth_mm);
    if (met) place.u_mm = std::min(place.u_mm, met->end_u_mm);
  }
  if (place.u_mm < cut_at_start_[place.span]) {
    const auto met = mitre(*perimeter_.hull, place.span, depth_mm);
    if (met) place.u_mm = std::max(place.u_mm, met->start_u_mm);
  }
  return place;
}

double GapProfile::gap_mm(Place place, double depth_mm) const {
  const auto gap = sheerlap::gap_mm(*perimeter_.hull, *perimeter_.lip,
                                    on_hull(place, depth_mm), depth_mm);
  if (gap) return *gap;
  if (!lost_) lost_ = place;
  return 0;
}

GapAtDepth GapProfile::extreme_between(Place place,
                                       double from_mm,
                                       double to_mm,
                                       bool least) const {
  const double sign = least ? 1 : -1;
  const auto [depth, value] = boost::math::tools::brent_find_minima(
      [&](double at) { return sign * gap_mm(place, at); }, from_mm, to_mm, 40);
  return {sign * value, depth};
}

GapSection GapProfile::section(Place place, std::size_t strand) const {
  const double lap = perimeter_.hull->lap_mm(place);
  GapSection section;
  section.place = place;
  section.girth_mm = side_.sheer.girth_at(place).in_mm();
  section.strand = strand;
  section.top_mm = gap_mm(place, 0);
  section.middle_mm = gap_mm(place, lap / 2);
  section.low_mm = gap_mm(place, lap);
  const bool top_is_least = section.top_mm <= section.low_mm;
  section.least =
      top_is_least ? GapAtDepth{section.top_mm, 0} : GapAtDepth{section.low_mm, lap};
  section.greatest =
      top_is_least ? GapAtDepth{section.low_mm, lap} : GapAtDepth{section.top_mm, 0};
  if (section.middle_mm < section.least.gap_mm - same_mm)
    section.least = extreme_between(place, 0, lap, true);
  if (section.middle_mm > section.greatest.gap_mm + same_mm)
    section.greatest = extreme_between(place, 0, lap, false);
  return section;
}

std::vector<GapSection> GapProfile::sections(double step_mm) const {
  std::vector<GapSection> result;
  const bool forward = side_.sheer.path().forward;
  std::size_t strand = 0;
  for (const SpanPart& part : side_.parts) {
    const double start = forward ? part.from_u : part.to_u;
    const double stop = forward ? part.to_u : part.from_u;
    const auto steps = std::max(1.0, std::ceil(std::abs(stop - start) / step_mm));
    const double begin = side_.sheer.girth_at({part.span, start}).in_mm();
    if (!result.empty() && std::abs(result.back().girth_mm - begin) > 1e-6) ++strand;
    for (double i = 0; i <= steps; ++i) {
      const double u = i == steps ? stop : start + (stop - start) * i / steps;
      const bool smooth_knot =
          i == 0 && !result.empty() && result.back().strand == strand &&
          perimeter_.hull->curve().smooth_at(
              forward ? part.span : perimeter_.hull->curve().knot_after(part.span));
      if (smooth_knot) {
        // the same section, said to lie in this span
        result.push_back(result.back());
        result.back().place = {part.span, u};
        continue;
      }
      result.push_back(section({part.span, u}, strand));
    }
  }
  return result;
}

}  // namespace sheerlap
