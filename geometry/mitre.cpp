#include "geometry/mitre.h"

#include <fmt/format.h>

#include <cmath>
#include <numbers>
#include <optional>

#include "geometry/face_meeting.h"
#include "geometry/quadrature.h"

namespace sheerlap {
namespace {

double cross(const Vector2& a, const Vector2& b) {
  return a.x() * b.y() - a.y() * b.x();
}

/// How far a knot's own mitre cuts into the span before it and the span after it, if
/// it keeps to the nearer half of both; nothing if it does not.
std::optional<FaceMeeting> small_mitre(const RuledFace& face,
                                       std::size_t knot,
                                       double depth_mm) {
  const Curve& curve = face.curve();
  const std::size_t before = curve.span_before(knot);
  const double chord = curve.chord_mm(before);
  if (curve.smooth_at(knot)) return FaceMeeting{chord, 0};
  const auto met = face_meeting(face, before, knot, depth_mm);
  if (!met || met->end_u < chord / 2 || met->start_u > curve.chord_mm(knot) / 2)
    return std::nullopt;
  return met;
}

/// A corner being mitred: the spans that are to meet, at first its neighbours.
class Mitring {
 public:
  Mitring(const RuledFace& face, std::size_t knot, double depth_mm)
      : face_(face),
        knot_(knot),
        depth_mm_(depth_mm),
        before_(face.curve().span_before(knot)),
        after_(knot) {}

  /// Nothing if the parts do not meet.
  std::optional<Mitre> solve() {
    const Curve& curve = face_.curve();
    int returns = 0;
    while (returns < most_returns) {
      const auto met = face_meeting(face_, before_, after_, depth_mm_);
      if (!met) return std::nullopt;
      const Fit end = fit_before(met->end_u);
      const Fit start = fit_after(met->start_u);
      if (end == Fit::Never || start == Fit::Never) return std::nullopt;
      if (end == Fit::Here && start == Fit::Here)
        return Mitre{{before_, met->end_u}, {after_, met->start_u}};
      if (end == Fit::Further) before_ = curve.span_before(before_);
      if (end == Fit::Nearer) before_ = curve.knot_after(before_);
      if (start == Fit::Further) after_ = curve.knot_after(after_);
      if (start == Fit::Nearer) after_ = curve.span_before(after_);
      if (before_ == after_) return std::nullopt;  // once round
      returns += (end == Fit::Nearer) + (start == Fit::Nearer);
    }
    return std::nullopt;
  }

 private:
  /// In which span the meeting is to be looked for, seen from the knuckle.
  enum class Fit { Here, Nearer, Further, Never };

  /// So often the search may turn back before it is taken for hopeless.
  static constexpr int most_returns = 50;
  /// A meeting upon a knot may lie on either side of it by this, mm.
  static constexpr double upon_knot_mm = 1e-6;

  Fit fit_before(double end_u) const {
    const Curve& curve = face_.curve();
    const double chord = curve.chord_mm(before_);
    const std::size_t next = curve.knot_after(before_);
    if (next != knot_) {
      const auto passed = small_mitre(face_, next, depth_mm_);
      if (!passed) return Fit::Never;
      if (end_u > passed->end_u + upon_knot_mm) return Fit::Nearer;
    }
    if (end_u >= chord / 2) return Fit::Here;
    if (!curve.joins_at(before_)) return end_u > 0 ? Fit::Here : Fit::Never;
    const auto first = small_mitre(face_, before_, depth_mm_);
    if (!first) return Fit::Never;
    return end_u > first->start_u ? Fit::Here : Fit::Further;
  }

  Fit fit_after(double start_u) const {
    const Curve& curve = face_.curve();
    const double chord = curve.chord_mm(after_);
    if (after_ != knot_) {
      const auto passed = small_mitre(face_, after_, depth_mm_);
      if (!passed) return Fit::Never;
      if (start_u < passed->start_u - upon_knot_mm) return Fit::Nearer;
    }
    if (start_u <= chord / 2) return Fit::Here;
    const std::size_t next = curve.knot_after(after_);
    if (!curve.joins_at(next)) return start_u < chord ? Fit::Here : Fit::Never;
    const auto last = small_mitre(face_, next, depth_mm_);
    if (!last) return Fit::Never;
    return start_u < last->end_u ? Fit::Here : Fit::Further;
  }

  const RuledFace& face_;
  std::size_t knot_;
  double depth_mm_;
  std::size_t before_;
  std::size_t after_;
};

/// Twice the area swept about `centre` along a stretch of a face's line.
double swept_twice(const RuledFace& face,
                   double depth_mm,
                   const Point2& centre,
                   const MitreStretch& stretch) {
  const auto rate = [&](double u) {
    const FacePoint point = face.at({stretch.span, u}, depth_mm);
    return cross(point.point.head<2>() - centre, point.by_u.head<2>());
  };
  return integral(rate, stretch.from_u, stretch.to_u, face.variation(stretch.span));
}

}  // namespace

Result<Mitre> mitre(const RuledFace& face, std::size_t knot, double depth_mm) {
  const auto solved = Mitring(face, knot, depth_mm).solve();
  if (solved) return *solved;
  const Curve& curve = face.curve();
  const double turn = turn_between(curve, curve.span_before(knot), knot);
  return invalid_input(
      fmt::format("knot[{}]", knot),
      fmt::format("the faces on both sides of this corner do not meet, {:.1f} mm off "
                  "a turn of {:.0f} degrees: a smaller offset, or longer chords from "
                  "the rows beside it",
                  face.offset({knot, 0}, depth_mm).offset,
                  turn * 180 / std::numbers::pi));
}

std::vector<MitreStretch> mitre_stretches(const RuledFace& face,
                                          std::size_t knot,
                                          double depth_mm,
                                          const Mitre& mitre) {
  const Curve& curve = face.curve();
  // the knots passed over have small mitres, or the mitre would not be
  const auto passed = [&](std::size_t at) { return *small_mitre(face, at, depth_mm); };
  std::vector<MitreStretch> stretches;
  std::size_t span = curve.span_before(knot);
  double from = curve.chord_mm(span);
  while (span != mitre.end.span) {
    const FaceMeeting cut = passed(span);
    stretches.push_back({span, from, cut.start_u});
    span = curve.span_before(span);
    from = cut.end_u;
  }
  stretches.push_back({span, from, mitre.end.u_mm});
  span = mitre.start.span;
  from = mitre.start.u_mm;
  while (span != knot) {
    const FaceMeeting cut = passed(span);
    stretches.push_back({span, from, cut.start_u});
    span = curve.span_before(span);
    from = cut.end_u;
  }
  stretches.push_back({span, from, 0});
  return stretches;
}

Result<double> mitre_area_mm2(const RuledFace& face,
                              std::size_t knot,
                              double depth_mm) {
  const auto met = mitre(face, knot, depth_mm);
  if (!met) return tl::unexpected(met.error());
  const Point2 centre = face.curve().at({knot, 0}).point.head<2>();
  double twice = 0;
  for (const MitreStretch& stretch : mitre_stretches(face, knot, depth_mm, *met))
    twice += swept_twice(face, depth_mm, centre, stretch);
  const Point2 end = face.at(met->end, depth_mm).point.head<2>() - centre;
  const Point2 start = face.at(met->start, depth_mm).point.head<2>() - centre;
  return -(twice + cross(end, start)) / 2;
}

}  // namespace sheerlap
