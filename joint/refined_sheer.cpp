#include "joint/refined_sheer.h"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace sheerlap {
namespace {

constexpr double same_mm = 1e-3;

bool runs_along(const SidePath& path, std::size_t span, std::size_t spans) {
  const std::size_t index = path.forward
                                ? (span + spans - path.from_knot) % spans
                                : (path.from_knot + 2 * spans - 1 - span) % spans;
  return index < path.span_count;
}

/// The sides after a span is parted in two.
void part_span(std::vector<SheerSide>& sides, std::size_t span, std::size_t spans) {
  for (SheerSide& side : sides) {
    if (runs_along(side.path, span, spans)) ++side.path.span_count;
    if (side.path.from_knot > span) ++side.path.from_knot;
  }
}

RuledOffsets offsets_at(const RuledFace& face, Place place) {
  const double lap = face.lap_mm(place);
  return {face.offset(place, 0).offset, face.offset(place, lap).offset, lap};
}

}  // namespace

RefinedSheer with_knots(SheerCurve sheer, std::vector<Place> places) {
  // from the last on, so that the spans of those to come keep their numbers
  std::sort(places.begin(), places.end(), [](const Place& a, const Place& b) {
    return std::pair(a.span, a.u_mm) > std::pair(b.span, b.u_mm);
  });
  Curve curve = *sheer.curve;
  std::vector<SpanOrigin> origins;
  for (std::size_t span = 0; span < curve.spans(); ++span)
    origins.push_back({span, 0, curve.chord_mm(span)});
  for (const Place& place : places) {
    // by now the span ends at the knot put in last, if that was on it
    if (place.u_mm < same_mm || place.u_mm > curve.chord_mm(place.span) - same_mm)
      continue;
    part_span(sheer.sides, place.span, curve.spans());
    curve = curve.with_knot(place);
    const auto index = static_cast<std::ptrdiff_t>(place.span);
    SpanOrigin& origin = origins[place.span];
    const SpanOrigin after{origin.span, place.u_mm, origin.to_u_mm};
    origin.to_u_mm = place.u_mm;
    origins.insert(origins.begin() + index + 1, after);
    const SheerKnot& before = sheer.knots[place.span];
    sheer.knots.insert(sheer.knots.begin() + index + 1,
                       {before.row, before.mirrored, true, false});
  }
  sheer.curve = std::make_shared<const Curve>(std::move(curve));
  return {std::move(sheer), std::move(origins)};
}

RuledFace on_refined(const RuledFace& face, const RefinedSheer& refined) {
  std::vector<SpanOffsets> offsets;
  for (const SpanOrigin& origin : refined.origins)
    offsets.push_back({offsets_at(face, {origin.span, origin.from_u_mm}),
                       offsets_at(face, {origin.span, origin.to_u_mm})});
  return RuledFace::stepped(refined.sheer.curve, std::move(offsets));
}

}  // namespace sheerlap
