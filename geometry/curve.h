#pragma once

#include <array>
#include <cstddef>
#include <vector>

#include "geometry/points.h"

namespace sheerlap {

/// A place on a curve: a span (counted from 0) and the parameter within it. The
/// parameter runs from 0 to the chord from knot to knot; values beyond carry the span
/// straight on along its end tangent.
struct Place {
  std::size_t span = 0;
  double u_mm = 0;
};

/// Position and the first two derivatives by the parameter (mm, -, 1/mm).
struct Jet {
  Point3 point;
  Vector3 first;
  Vector3 second;
};

/// How the points are to be joined.
struct CurveShape {
  bool closed = false;    ///< the last point joins the first, which is not repeated
  bool straight = false;  ///< chords in place of a spline
  std::vector<bool> knuckles;  ///< one a point: the curve may turn sharply there
};

/// A curve in space through given points.
///
/// Smooth: between knuckles a cubic spline on chord-length parameters, twice
/// continuously differentiable; at a knuckle or a free end the outer two spans are one
/// cubic (the not-a-knot condition), and a closed curve without knuckles is periodic.
/// Straight: the polyline itself.
///
/// @source  C. de Boor, A Practical Guide to Splines, ch. IV (not-a-knot); the
///          equations are derived from continuity of the first derivative
class Curve {
 public:
  /// @param points  N >= 2, each apart from the next in plan
  Curve(const std::vector<Point3>& points, const CurveShape& shape);

  std::size_t spans() const { return spans_.size(); }
  std::size_t knots() const { return spans_.size() + (closed_ ? 0 : 1); }
  bool closed() const { return closed_; }

  /// The parameter at the end of a span (mm).
  double chord_mm(std::size_t span) const { return spans_[span].chord_mm; }
  Jet at(Place place) const;
  /// An upper bound of the turn within a span, radians; 0 if it is straight.
  double bend(std::size_t span) const { return spans_[span].bend; }
  /// The arc length of a span (mm), within 1e-12 of itself.
  double girth_mm(std::size_t span) const { return spans_[span].girth_mm; }
  /// The share of its span's arc length at a place; clamped to 0 and 1 beyond it.
  double girth_share(Place place) const;
  /// The parameter of a span at which that share, 0 to 1, of its arc length is run.
  /// @accuracy  1e-12 of the chord
  double u_at_girth_share(std::size_t span, double share) const;
  /// The place `du_mm` further on; a knuckle or a free end is not passed but carried
  /// straight on.
  Place moved(Place place, double du_mm) const;

  /// Whether the two spans that meet at a knot are one smooth line there.
  bool smooth_at(std::size_t knot) const { return smooth_[knot]; }
  /// The span that ends at `knot`; only where there is one.
  std::size_t span_before(std::size_t knot) const {
    return knot == 0 ? spans_.size() - 1 : knot - 1;
  }
  std::size_t knot_after(std::size_t span) const {
    return span + 1 == spans_.size() && closed_ ? 0 : span + 1;
  }
  /// Whether spans meet at `knot`: every knot but the two ends of an open curve.
  bool joins_at(std::size_t knot) const {
    return closed_ || (knot > 0 && knot < spans_.size());
  }

  /// The same curve with one knot more, on the span at the parameter given.
  Curve with_knot(Place place) const;

 private:
  void measure(std::size_t span);

  struct Span {
    double chord_mm = 0;
    std::array<Vector3, 4> by_power;  ///< coefficients of u^0 .. u^3
    double bend = 0;
    double girth_mm = 0;
  };
  bool closed_ = false;
  std::vector<Span> spans_;
  std::vector<bool> smooth_;  ///< one a knot
};

/// The turn of the plan at each point of a polyline, from the chord before to the
/// chord after, radians, positive to the right (clockwise seen from above); 0 at the
/// ends of an open polyline.
std::vector<double> plan_turns(const std::vector<Point3>& points, bool closed);

}  // namespace sheerlap
