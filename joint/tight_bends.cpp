#include "joint/tight_bends.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sheerlap {
namespace {

constexpr int samples = 16;

/// No head sits and no jig lies between two bends that are closer.
constexpr double joined_within_mm = 1;

/// How much tighter than the least radius the line bends at a place: positive where it
/// is too tight.
double tightness(const FaceLine& line, Place place, double radius_mm) {
  const RuledFace& face = line.face();
  const PlanFrame frame = plan_frame(face.curve().at(place));
  const double onward =
      frame.speed + face.offset(place, line.depth_mm()).offset * frame.turn;
  return radius_mm * std::abs(frame.turn) - onward;
}

/// Whether no point of a span can be too tight.
bool surely_open(const FaceLine& line, std::size_t span, double radius_mm) {
  const RuledFace& face = line.face();
  const Curve& curve = face.curve();
  if (curve.bend(span) == 0) return true;
  const double chord = curve.chord_mm(span);
  const double offset = std::min(face.offset({span, 0}, line.depth_mm()).offset,
                                 face.offset({span, chord}, line.depth_mm()).offset);
  // within a span the speed stays near 1; half of the bound leaves room for that
  return chord / (2 * curve.bend(span)) - std::abs(offset) > radius_mm;
}

/// The parameter at which the tightness passes 0 between two of different sign.
double limit_between(const FaceLine& line, Place from, double to_u, double radius_mm) {
  const bool tight = tightness(line, from, radius_mm) > 0;
  double low = from.u_mm;
  double high = to_u;
  for (int step = 0; step < 60; ++step) {
    const double middle = (low + high) / 2;
    ((tightness(line, {from.span, middle}, radius_mm) > 0) == tight ? low : high) =
        middle;
  }
  return (low + high) / 2;
}

/// The radius of the arc that turns as much as the kink before the k-th span of a line
/// over half of both chords; endless where there is no kink, or a corner.
double kink_radius_mm(const SideLine& line,
                      const std::vector<bool>& corners,
                      std::size_t k) {
  constexpr double endless = std::numeric_limits<double>::infinity();
  const Curve& curve = line.line().face().curve();
  const std::size_t one = line.path().span(k - 1, curve.spans());
  const std::size_t other = line.path().span(k, curve.spans());
  const std::size_t knot = line.path().forward ? other : one;
  if (curve.smooth_at(knot) || corners[knot]) return endless;
  const std::size_t before = curve.span_before(knot);
  const Vector2 along = plan_frame(curve.at({before, curve.chord_mm(before)})).along;
  const Vector2 onward = plan_frame(curve.at({knot, 0})).along;
  const double turn = std::acos(std::clamp(along.dot(onward), -1.0, 1.0));
  if (turn == 0) return endless;
  const Length chords = line.girth_at_span(k + 1) - line.girth_at_span(k - 1);
  return chords.in_mm() / 2 / turn;
}

}  // namespace

std::vector<std::pair<Length, Length>> tight_bends(const SideLine& line,
                                                   const std::vector<bool>& corners,
                                                   Length radius_min) {
  const double radius_mm = radius_min.in_mm();
  const Curve& curve = line.line().face().curve();
  std::vector<std::pair<Length, Length>> bends;
  const auto add = [&](Length from, Length to) {
    if (!bends.empty() && (from - bends.back().second).in_mm() < joined_within_mm)
      bends.back().second = to;
    else
      bends.emplace_back(from, to);
  };
  for (std::size_t k = 0; k < line.path().span_count; ++k) {
    const std::size_t span = line.path().span(k, curve.spans());
    if (k > 0 && kink_radius_mm(line, corners, k) < radius_mm) {
      const auto middle = [&](std::size_t of) {
        return (line.girth_at_span(of) + line.girth_at_span(of + 1)) / 2;
      };
      add(middle(k - 1), middle(k));
    }
    if (surely_open(line.line(), span, radius_mm)) continue;
    const auto u_at = [&](int sample) {
      const double share = static_cast<double>(sample) / samples;
      return curve.chord_mm(span) * (line.path().forward ? share : 1 - share);
    };
    for (int i = 0; i < samples; ++i) {
      const Place a{span, u_at(i)};
      const Place b{span, u_at(i + 1)};
      const bool tight_a = tightness(line.line(), a, radius_mm) > 0;
      const bool tight_b = tightness(line.line(), b, radius_mm) > 0;
      if (!tight_a && !tight_b) continue;
      const double limit =
          tight_a == tight_b ? 0 : limit_between(line.line(), a, b.u_mm, radius_mm);
      add(line.girth_at({span, tight_a ? a.u_mm : limit}),
          line.girth_at({span, tight_b ? b.u_mm : limit}));
    }
  }
  return bends;
}

}  // namespace sheerlap
