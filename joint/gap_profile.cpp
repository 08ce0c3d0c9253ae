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
      cut_at_end_(perimeter.hull->curve().spans()),
      cut_at_start_(perimeter.hull->curve().spans()) {
  const RuledFace& hull = *perimeter.hull;
  std::vector<std::pair<std::size_t, Mitre>> wide;  // these go over the cuts of others
  for (const std::size_t knot : perimeter.mitres)
    for (const double depth : {0.0, hull.lap_mm({knot, 0})}) {
      const auto met = mitre(hull, knot, depth);
      if (!met) continue;
      if (met->start.span == knot && met->end.span == hull.curve().span_before(knot))
        add_cuts(knot, *met);
      else
        wide.emplace_back(knot, *met);
    }
  for (const auto& [knot, met] : wide) add_cuts(knot, met);
}

void GapProfile::add_cuts(std::size_t knot, const Mitre& met) {
  const Curve& curve = perimeter_.hull->curve();
  const auto furthest = [&](std::optional<Cut>& cut, double u, bool at_end) {
    if (cut && cut->knot == knot)
      u = at_end ? std::min(u, cut->u_mm) : std::max(u, cut->u_mm);
    cut = Cut{knot, u};
  };
  std::size_t span = curve.span_before(knot);
  for (; span != met.end.span; span = curve.span_before(span))
    furthest(cut_at_end_[span], 0, true);
  if (met.end.u_mm < curve.chord_mm(span))
    furthest(cut_at_end_[span], met.end.u_mm, true);
  for (span = knot; span != met.start.span; span = curve.knot_after(span))
    furthest(cut_at_start_[span], curve.chord_mm(span), false);
  if (met.start.u_mm > 0) furthest(cut_at_start_[span], met.start.u_mm, false);
}

Place GapProfile::hull_place(Place place, double depth_mm) const {
  const RuledFace& hull = *perimeter_.hull;
  const std::size_t spans = hull.curve().spans();
  const auto& at_end = cut_at_end_[place.span];
  if (at_end && place.u_mm >= at_end->u_mm) {
    const auto to_corner = [&](std::size_t span) {
      return (at_end->knot + spans - 1 - span) % spans;
    };
    const auto met = mitre(hull, at_end->knot, depth_mm);
    if (met && (to_corner(place.span) < to_corner(met->end.span) ||
                (place.span == met->end.span && place.u_mm > met->end.u_mm)))
      return met->end;
  }
  const auto& at_start = cut_at_start_[place.span];
  if (at_start && place.u_mm <= at_start->u_mm) {
    const auto from_corner = [&](std::size_t span) {
      return (span + spans - at_start->knot) % spans;
    };
    const auto met = mitre(hull, at_start->knot, depth_mm);
    if (met && (from_corner(place.span) < from_corner(met->start.span) ||
                (place.span == met->start.span && place.u_mm < met->start.u_mm)))
      return met->start;
  }
  return place;
}

double GapProfile::gap_mm(Place place, double depth_mm) const {
  const auto gap = sheerlap::gap_mm(*perimeter_.hull, *perimeter_.lip,
                                    hull_place(place, depth_mm), depth_mm);
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
