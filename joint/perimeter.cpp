#include "joint/perimeter.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "geometry/fairness.h"
#include "geometry/mitre.h"
#include "joint/face_folds.h"
#include "joint/perimeter_on.h"
#include "joint/row_errors.h"
#include "joint/sheer_curve.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// A false hollow smaller than this is lost in the setting-out (common practice, no
/// source).
constexpr double fair_within_mm = 0.5;

/// Whether a span is the port image of one to starboard, of which all is said already.
bool is_port_image(const SheerCurve& sheer, std::size_t span) {
  return sheer.knots[span].mirrored ||
         sheer.knots[sheer.curve->knot_after(span)].mirrored;
}

Result<std::shared_ptr<const FaceLine>> line_at(
    const std::shared_ptr<const RuledFace>& face, double depth_mm) {
  auto line = FaceLine::at_depth(face, depth_mm);
  if (!line) return tl::unexpected(line.error());
  return std::make_shared<const FaceLine>(std::move(*line));
}

/// The parts of a side's sheer outside its openings.
std::vector<SpanPart> joint_parts(const PerimeterSide& side, const Curve& curve) {
  std::vector<SpanPart> parts;
  const auto add = [&](Length from, Length to) {
    for (std::size_t k = 0; k < side.sheer.path().span_count; ++k) {
      const Length low = std::max(from, side.sheer.girth_at_span(k));
      const Length high = std::min(to, side.sheer.girth_at_span(k + 1));
      if (!(low < high)) continue;
      const std::size_t span = side.sheer.path().span(k, curve.spans());
      const auto u_at = [&](Length girth) {
        if (girth == side.sheer.girth_at_span(k))
          return side.sheer.path().forward ? 0.0 : curve.chord_mm(span);
        if (girth == side.sheer.girth_at_span(k + 1))
          return side.sheer.path().forward ? curve.chord_mm(span) : 0.0;
        return side.sheer.place_at(girth).u_mm;
      };
      const auto [from_u, to_u] = std::minmax({u_at(low), u_at(high)});
      parts.push_back({span, from_u, to_u});
    }
  };
  Length from;
  for (const OpeningSpan& opening : side.openings) {
    add(from, opening.sheer_from);
    from = opening.sheer_to;
  }
  add(from, side.sheer_length);
  return parts;
}

Result<std::vector<OpeningSpan>> openings_on(const Joint& joint,
                                             const PerimeterSide& side) {
  std::vector<OpeningSpan> openings;
  Errors errors;
  for (std::size_t i = 0; i < joint.openings.size(); ++i) {
    const Opening& opening = joint.openings[i];
    if (!stands_on(opening.stretch.side, side.name)) continue;
    const auto girths = stretch_on(side, opening.stretch, fmt::format("opening[{}]", i),
                                   "opening " + opening.what);
    if (!girths) {
      errors.insert(errors.end(), girths.error().begin(), girths.error().end());
      continue;
    }
    const auto [from, to] = *girths;
    const auto on_sheer = [&](Length girth) {
      Place place = side.drill_line.place_at(girth);
      place.u_mm = std::clamp(place.u_mm, 0.0,
                              side.sheer.line().face().curve().chord_mm(place.span));
      return side.sheer.girth_at(place);
    };
    openings.push_back({opening.what, from, to, on_sheer(from), on_sheer(to)});
  }
  std::sort(openings.begin(), openings.end(),
            [](const auto& a, const auto& b) { return a.from < b.from; });
  for (std::size_t i = 1; i < openings.size(); ++i)
    if (openings[i].from < openings[i - 1].to)
      errors.push_back(
          {ErrorKind::InvalidInput, "opening",
           fmt::format("the openings {} and {} overlap on {}: make them "
                       "one",
                       openings[i - 1].what, openings[i].what, side_word(side.name))});
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  return openings;
}

void add_corners(PerimeterSide& side, const std::vector<SheerKnot>& knots) {
  const SidePath& path = side.sheer.path();
  const std::size_t n = side.sheer.line().face().curve().spans();
  for (std::size_t k = 1; k < path.span_count; ++k) {
    const std::size_t knot =
        path.forward ? (path.from_knot + k) % n : (path.from_knot + n - k) % n;
    if (knots[knot].corner)
      side.corners.push_back(
          {side.drill_line.girth_at_span(k), side.sheer.girth_at_span(k)});
  }
}

/// The knuckles with joint on both sides of them.
std::vector<std::size_t> joint_mitres(const Perimeter& perimeter) {
  const Curve& curve = perimeter.hull->curve();
  std::vector<bool> starts(curve.knots(), false);
  std::vector<bool> ends(curve.knots(), false);
  for (const PerimeterSide& side : perimeter.sides)
    for (const SpanPart& part : side.parts) {
      if (part.from_u == 0) starts[part.span] = true;
      if (part.to_u == curve.chord_mm(part.span))
        ends[curve.knot_after(part.span)] = true;
    }
  std::vector<std::size_t> mitres;
  for (std::size_t knot = 0; knot < curve.knots(); ++knot)
    if (starts[knot] && ends[knot] && !curve.smooth_at(knot)) mitres.push_back(knot);
  return mitres;
}

/// The corners at which one of the faces does not meet at its top or its low edge.
Errors mitre_faults(const Perimeter& perimeter) {
  Errors errors;
  for (const std::size_t knot : perimeter.mitres)
    for (const auto* face : {&perimeter.hull, &perimeter.lip, &perimeter.lip_outer})
      for (const double depth : {0.0, (*face)->lap_mm({knot, 0})}) {
        const auto met = mitre(**face, knot, depth);
        if (!met) errors.insert(errors.end(), met.error().begin(), met.error().end());
      }
  return errors;
}

/// Openings that leave no joint at all.
Errors nothing_left(const Perimeter& perimeter) {
  for (const PerimeterSide& side : perimeter.sides)
    if (!side.parts.empty()) return {};
  return {{ErrorKind::InvalidInput, "opening",
           "the openings leave no joint: a stretch of a side outside them"}};
}

Checks fairness_checks(const Joint& joint, const SheerCurve& sheer) {
  Checks checks;
  if (joint.sheer.curve == CurveKind::Chords) return checks;
  for (const Unfair& unfair : unfair_spans(*sheer.curve, fair_within_mm)) {
    if (is_port_image(sheer, unfair.span)) continue;
    const SheerKnot& from = sheer.knots[unfair.span];
    const std::size_t end = sheer.curve->knot_after(unfair.span);
    const SheerKnot& to =
        sheer.knots[sheer.knots[end].added ? sheer.curve->knot_after(end) : end];
    const Point3 place = sheer.curve->at({unfair.span, 0}).point;
    checks.push_back(
        {"sheer.fair",
         fmt::format("the curve through the points has a false hollow or bump of about "
                     "{} in {} between rows {} and {} (from X {} Y {}): "
                     "give rows between them, or flag a knuckle",
                     worded(Length::mm(unfair.height_mm)),
                     unfair.in_profile ? "profile" : "plan", from.row + 1, to.row + 1,
                     worded(Length::mm(place.x())), worded(Length::mm(place.y()))),
         unfair.height_mm, fair_within_mm, "mm", CheckState::Warn,
         "common practice, no source"});
  }
  return checks;
}

Result<PerimeterSide> side_of(const Joint& joint,
                              const SheerSide& given,
                              const Perimeter& lines,
                              const std::vector<std::shared_ptr<const FaceLine>>& on) {
  PerimeterSide side;
  side.name = given.name;
  side.start = given.start;
  side.end = given.end;
  side.sheer = SideLine(on[0], given.path);
  side.drill_line = SideLine(on[1], given.path);
  side.hull_line = SideLine(on[2], given.path);
  side.sheer_length = side.sheer.length();
  side.drill_line_length = side.drill_line.length();
  auto openings = openings_on(joint, side);
  if (!openings) return tl::unexpected(openings.error());
  side.openings = std::move(*openings);
  add_corners(side, lines.knots);
  side.parts = joint_parts(side, lines.hull->curve());
  return side;
}

}  // namespace

const PerimeterSide* Perimeter::side(SideName name) const {
  const auto found = std::find_if(sides.begin(), sides.end(),
                                  [&](const auto& side) { return side.name == name; });
  return found == sides.end() ? nullptr : &*found;
}

Result<Perimeter> perimeter_on(const Joint& joint,
                               const SheerCurve& sheer,
                               const JointFaces& faces) {
  Errors errors = face_folds(*faces.hull, sheer, "the hull face");
  for (const auto& [face, name] :
       {std::pair(faces.lip, "the lip face"), std::pair(faces.lip_outer, "the lip")})
    if (errors.empty()) errors = face_folds(*face, sheer, name);
  if (!errors.empty()) return tl::unexpected(at_rows(errors, sheer.knots));

  Perimeter result;
  result.hull = faces.hull;
  result.lip = faces.lip;
  result.lip_outer = faces.lip_outer;
  result.knots = sheer.knots;
  std::vector<std::shared_ptr<const FaceLine>> lines;
  const double depth = joint.fastener.line.in_mm();
  for (const auto& [face, at] :
       {std::pair(faces.sheer, 0.0), std::pair(faces.lip_outer, depth),
        std::pair(faces.hull, depth)}) {
    const auto line = line_at(face, at);
    if (!line) return tl::unexpected(corner_errors(line.error(), sheer.knots));
    lines.push_back(*line);
  }
  for (const SheerSide& given : sheer.sides) {
    auto side = side_of(joint, given, result, lines);
    if (!side) {
      errors.insert(errors.end(), side.error().begin(), side.error().end());
      continue;
    }
    result.sides.push_back(std::move(*side));
  }
  PlainWorking work;
  result.sheer_length =
      Length::mm(joint_length(work, result.sides, &PerimeterSide::sheer_length));
  result.drill_line_length =
      Length::mm(joint_length(work, result.sides, &PerimeterSide::drill_line_length));
  for (std::size_t i = 0; i < joint.openings.size(); ++i)
    if (joint.openings[i].stretch.side == SideChoice::Transom &&
        result.side(SideName::Transom) == nullptr && errors.empty())
      errors.push_back(
          {ErrorKind::InvalidInput, fmt::format("opening[{}].side", i),
           "this joint has no transom side: name starboard, port or both"});
  if (errors.empty()) errors = nothing_left(result);
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  result.mitres = joint_mitres(result);
  errors = mitre_faults(result);
  if (!errors.empty()) return tl::unexpected(corner_errors(errors, sheer.knots));
  return result;
}

Result<Perimeter> perimeter(const Joint& joint) {
  const auto sheer = sheer_curve(joint.sheer);
  if (!sheer) return tl::unexpected(sheer.error());
  auto result = perimeter_on(joint, *sheer, joint_faces(joint, *sheer));
  if (result) result->checks = fairness_checks(joint, *sheer);
  return result;
}

std::vector<bool> corner_knots(const Perimeter& perimeter) {
  std::vector<bool> corners;
  for (const SheerKnot& knot : perimeter.knots) corners.push_back(knot.corner);
  return corners;
}

}  // namespace sheerlap
