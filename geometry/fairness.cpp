#include "geometry/fairness.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/ruled_face.h"

namespace sheerlap {
namespace {

constexpr int samples = 16;  // a cubic's bend has at most three changes of sign

/// The direction of a curve at a place: in plan, or in profile.
double direction(const Jet& jet, bool in_profile) {
  const double plan = jet.first.head<2>().norm();
  return in_profile ? std::atan2(jet.first.z(), plan)
                    : -std::atan2(jet.first.y(), jet.first.x());
}

double wrapped(double angle) { return std::remainder(angle, 2 * std::numbers::pi); }

/// How far the direction turns to the right and to the left within a span.
struct Turns {
  double right = 0, left = 0;
};

Turns turns_within(const Curve& curve, std::size_t span, bool in_profile) {
  Turns turns;
  double last = direction(curve.at({span, 0}), in_profile);
  for (int i = 1; i <= samples; ++i) {
    const double u = curve.chord_mm(span) * i / samples;
    const double next = direction(curve.at({span, u}), in_profile);
    const double step = wrapped(next - last);
    (step > 0 ? turns.right : turns.left) += std::abs(step);
    last = next;
  }
  return turns;
}

/// The turn of the polyline at a knot; 0 at a knuckle and at a free end.
double knot_turn(const Curve& curve, std::size_t knot, bool in_profile) {
  if (!curve.joins_at(knot) || !curve.smooth_at(knot)) return 0;
  const auto chord = [&](std::size_t span) {
    Jet jet = curve.at({span, curve.chord_mm(span)});
    jet.first = jet.point - curve.at({span, 0}).point;
    return direction(jet, in_profile);
  };
  return wrapped(chord(knot) - chord(curve.span_before(knot)));
}

}  // namespace

std::vector<Unfair> unfair_spans(const Curve& curve, double tolerance_mm) {
  std::vector<Unfair> unfair;
  for (std::size_t span = 0; span < curve.spans(); ++span) {
    const double chord = curve.chord_mm(span);
    if (curve.bend(span) * chord / 8 <= tolerance_mm) continue;
    for (const bool in_profile : {false, true}) {
      // a turn too slight to matter here is none: points in line turn by rounding
      const auto turn = [&](std::size_t knot) {
        const double by_points = knot_turn(curve, knot, in_profile);
        return std::abs(by_points) * chord / 8 > tolerance_mm / 2 ? by_points : 0;
      };
      const double start = turn(span);
      const double end = turn(curve.knot_after(span));
      const Turns turns = turns_within(curve, span, in_profile);
      double wrong = 0;
      if (start >= 0 && end >= 0) wrong = turns.left;
      if (start <= 0 && end <= 0) wrong = std::max(wrong, turns.right);
      if (wrong * chord / 8 > tolerance_mm)
        unfair.push_back({span, in_profile, wrong * chord / 8});
    }
  }
  return unfair;
}

}  // namespace sheerlap
