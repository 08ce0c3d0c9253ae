#include "joint/boat_perimeter.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "geometry/clearance.h"
#include "joint/joint_faces.h"
#include "joint/perimeter_on.h"
#include "joint/refined_sheer.h"
#include "joint/sheer_places.h"

namespace sheerlap {
namespace {

constexpr double settled_mm = 1e-9;
constexpr int most_rounds = 100;

/// A span of a side, in the side's direction.
struct SideSpan {
  std::size_t span = 0;
  double from_mm = 0, to_mm = 0;  ///< girth on the sheer
};

/// How far the hull's offsets are changed at one place of a side.
struct HullChange {
  double girth_mm = 0;                    ///< on the sheer
  double gap_top_mm = 0, gap_low_mm = 0;  ///< what the gap is to be
  double top_mm = 0, low_mm = 0;          ///< outward
};

struct SideChange {
  std::vector<SideSpan> spans;
  bool forward = true;
  std::vector<HullChange> changes;
};

std::vector<SideSpan> spans_of(const Curve& curve, const SidePath& path) {
  std::vector<SideSpan> spans;
  double run_mm = 0;
  for (std::size_t k = 0; k < path.span_count; ++k) {
    const std::size_t span = path.span(k, curve.spans());
    const double from_mm = run_mm;
    run_mm += curve.girth_mm(span);
    spans.push_back({span, from_mm, run_mm});
  }
  return spans;
}

/// The change at a girth: straight between two places, beyond them as there.
RuledOffsets change_at(const std::vector<HullChange>& changes, double girth_mm) {
  if (changes.empty()) return {};
  const auto after =
      std::upper_bound(changes.begin(), changes.end(), girth_mm,
                       [](double at, const HullChange& c) { return at < c.girth_mm; });
  if (after == changes.begin()) return {after->top_mm, after->low_mm, 0};
  const HullChange& from = *(after - 1);
  if (after == changes.end()) return {from.top_mm, from.low_mm, 0};
  const double share = (girth_mm - from.girth_mm) / (after->girth_mm - from.girth_mm);
  return {from.top_mm + share * (after->top_mm - from.top_mm),
          from.low_mm + share * (after->low_mm - from.low_mm), 0};
}

void add(RuledOffsets& offsets, const RuledOffsets& change) {
  offsets.top_mm += change.top_mm;
  offsets.low_mm += change.low_mm;
}

RuledFace changed_hull(const RuledFace& hull, const std::vector<SideChange>& sides) {
  std::vector<SpanOffsets> offsets;
  for (std::size_t span = 0; span < hull.curve().spans(); ++span)
    offsets.push_back(hull.offsets(span));
  for (const SideChange& side : sides)
    for (const SideSpan& span : side.spans) {
      SpanOffsets& of = offsets[span.span];
      const auto start = change_at(side.changes, span.from_mm);
      const auto end = change_at(side.changes, span.to_mm);
      add(of.from, side.forward ? start : end);
      add(of.to, side.forward ? end : start);
    }
  return RuledFace::stepped(hull.shared_curve(), std::move(offsets));
}

/// The gap at a girth between two spans of a side: the mean of what both have there.
std::optional<double> gap_between_spans(const RuledFace& hull,
                                        const RuledFace& lip,
                                        const SideChange& side,
                                        double girth_mm,
                                        bool low) {
  constexpr double near_mm = 0.01;
  double sum = 0;
  int count = 0;
  for (const SideSpan& span : side.spans)
    for (const bool at_start : {true, false}) {
      if (std::abs((at_start ? span.from_mm : span.to_mm) - girth_mm) > near_mm)
        continue;
      const Place place{
          span.span, at_start == side.forward ? 0.0 : hull.curve().chord_mm(span.span)};
      const auto gap = gap_mm(hull, lip, place, low ? hull.lap_mm(place) : 0);
      if (!gap) return std::nullopt;
      sum += *gap;
      ++count;
    }
  if (count == 0) return std::nullopt;
  return sum / count;
}

/// Moves the hull's offsets until the gaps are what they are to be.
/// @returns  whether they settle
bool settle(const JointFaces& faces, std::vector<SideChange>& sides) {
  for (int round = 0; round < most_rounds; ++round) {
    const RuledFace hull = changed_hull(*faces.hull, sides);
    double worst = 0;
    for (SideChange& side : sides)
      for (HullChange& change : side.changes) {
        const auto top =
            gap_between_spans(hull, *faces.lip, side, change.girth_mm, false);
        const auto low =
            gap_between_spans(hull, *faces.lip, side, change.girth_mm, true);
        if (!top || !low) return false;
        // hull out by a little takes as much off the gap where the faces stand upright
        change.top_mm += *top - change.gap_top_mm;
        change.low_mm += *low - change.gap_low_mm;
        worst = std::max({worst, std::abs(*top - change.gap_top_mm),
                          std::abs(*low - change.gap_low_mm)});
      }
    if (worst < settled_mm) return true;
  }
  return false;
}

/// The sheer that a perimeter has.
SheerCurve sheer_of(const Perimeter& perimeter) {
  std::vector<SheerSide> sides;
  for (const PerimeterSide& side : perimeter.sides)
    sides.push_back({side.name, side.sheer.path(), side.start, side.end});
  return {perimeter.hull->shared_curve(), perimeter.knots, std::move(sides)};
}

std::vector<Place> places_of(const Perimeter& nominal,
                             const std::vector<SideCorrections>& corrections) {
  std::vector<Place> places;
  for (const SideCorrections& side : corrections)
    for (const GapCorrection& at : side.at)
      places.push_back(place_on_sheer(*nominal.side(side.side), at.girth));
  return places;
}

/// The girth at the end of a span that is nearest.
double girth_between_spans(const std::vector<SideSpan>& spans, double girth_mm) {
  double nearest = 0;
  for (const SideSpan& span : spans)
    if (std::abs(span.to_mm - girth_mm) < std::abs(nearest - girth_mm))
      nearest = span.to_mm;
  return nearest;
}

/// What is to be changed on a side, before anything is.
/// @returns  nothing where there is no gap as drawn
std::optional<SideChange> side_change(const PerimeterSide& nominal,
                                      const SidePath& path,
                                      const JointFaces& faces,
                                      const std::vector<GapCorrection>& corrections) {
  SideChange side{spans_of(faces.hull->curve(), path), path.forward, {}};
  for (const GapCorrection& at : corrections) {
    const double near_mm =
        nominal.sheer.girth_at(place_on_sheer(nominal, at.girth)).in_mm();
    HullChange change;
    change.girth_mm = girth_between_spans(side.spans, near_mm);
    const auto top =
        gap_between_spans(*faces.hull, *faces.lip, side, change.girth_mm, false);
    const auto low =
        gap_between_spans(*faces.hull, *faces.lip, side, change.girth_mm, true);
    if (!top || !low) return std::nullopt;
    change.gap_top_mm = *top + at.top.in_mm();
    change.gap_low_mm = *low + at.low.in_mm();
    if (!side.changes.empty() && side.changes.back().girth_mm == change.girth_mm)
      continue;  // two places within 0.001 mm
    side.changes.push_back(change);
  }
  return side;
}

tl::unexpected<Errors> no_gap() {
  return invalid_input("readings",
                       "no hull face can be found that has these gaps: the faces would "
                       "turn away from each other; look for a gap that was misread");
}

}  // namespace

Result<Perimeter> boat_perimeter(const Joint& joint,
                                 const Perimeter& base,
                                 const std::vector<SideCorrections>& corrections) {
  const RefinedSheer refined = with_knots(sheer_of(base), places_of(base, corrections));
  const SheerCurve& sheer = refined.sheer;
  JointFaces faces = joint_faces(joint, sheer);
  faces.hull = std::make_shared<const RuledFace>(on_refined(*base.hull, refined));
  std::vector<SideChange> sides;
  for (const SideCorrections& side : corrections) {
    const auto path =
        std::find_if(sheer.sides.begin(), sheer.sides.end(),
                     [&](const SheerSide& given) { return given.name == side.side; });
    auto change = side_change(*base.side(side.side), path->path, faces, side.at);
    if (!change) return no_gap();
    sides.push_back(std::move(*change));
  }
  if (!settle(faces, sides)) return no_gap();
  faces.hull = std::make_shared<const RuledFace>(changed_hull(*faces.hull, sides));
  auto result = perimeter_on(joint, sheer, faces);
  if (result) result->checks = base.checks;
  return result;
}

}  // namespace sheerlap
