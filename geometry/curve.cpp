#include "geometry/curve.h"

#include <Eigen/Geometry>
#include <cassert>
#include <cmath>

#include "geometry/quadrature.h"
#include "geometry/spline.h"

namespace sheerlap {
namespace {

/// The second derivatives at both ends of each span.
struct Bends {
  std::vector<Vector3> start, end;
};

/// The points from knuckle to knuckle, each the start of a smooth piece; wraps round.
std::vector<std::size_t> piece_starts(const std::vector<bool>& knuckles, bool closed) {
  std::vector<std::size_t> starts;
  for (std::size_t i = 0; i < knuckles.size(); ++i)
    if (knuckles[i] || (!closed && i == 0)) starts.push_back(i);
  return starts;
}

Bends spline_bends(const std::vector<Point3>& points, const CurveShape& shape) {
  const std::size_t n = points.size();
  const std::size_t spans = shape.closed ? n : n - 1;
  Bends bends{std::vector<Vector3>(spans), std::vector<Vector3>(spans)};
  const auto starts = piece_starts(shape.knuckles, shape.closed);
  if (starts.empty()) {
    const auto second = periodic_spline_second_derivatives(points);
    for (std::size_t i = 0; i < n; ++i) {
      bends.start[i] = second[i];
      bends.end[i] = second[(i + 1) % n];
    }
    return bends;
  }
  for (std::size_t k = 0; k < starts.size(); ++k) {
    std::size_t stop = k + 1 < starts.size() ? starts[k + 1]
                       : shape.closed        ? starts[0] + n
                                             : n - 1;
    std::vector<Point3> piece;
    for (std::size_t i = starts[k]; i <= stop; ++i) piece.push_back(points[i % n]);
    if (piece.size() < 2) continue;
    const auto second = open_spline_second_derivatives(piece);
    for (std::size_t i = 0; i + 1 < piece.size(); ++i) {
      bends.start[(starts[k] + i) % n] = second[i];
      bends.end[(starts[k] + i) % n] = second[i + 1];
    }
  }
  return bends;
}

}  // namespace

Curve::Curve(const std::vector<Point3>& points, const CurveShape& shape)
    : closed_(shape.closed) {
  const std::size_t n = points.size();
  assert(n >= 2 && shape.knuckles.size() == n && !(shape.closed && n < 3));
  const std::size_t span_count = closed_ ? n : n - 1;
  Bends bends;
  if (shape.straight) {
    bends.start.assign(span_count, Vector3::Zero());
    bends.end.assign(span_count, Vector3::Zero());
  } else {
    bends = spline_bends(points, shape);
  }
  spans_.resize(span_count);
  for (std::size_t i = 0; i < span_count; ++i) {
    const Vector3 chord = points[(i + 1) % n] - points[i];
    const double h = chord.norm();
    spans_[i] = {h,
                 {points[i], chord / h - h * (2 * bends.start[i] + bends.end[i]) / 6,
                  bends.start[i] / 2, (bends.end[i] - bends.start[i]) / (6 * h)},
                 0,
                 0};
    measure(i);
  }
  smooth_.assign(n, false);
  const auto turns = plan_turns(points, closed_);
  for (std::size_t i = 0; i < n; ++i)
    smooth_[i] = joins_at(i) && !shape.knuckles[i] &&
                 !(shape.straight && std::abs(turns[i]) > 1e-12);
}

void Curve::measure(std::size_t span) {
  Span& measured = spans_[span];
  const double h = measured.chord_mm;
  const double start = (2 * measured.by_power[2]).norm();
  const double end = at({span, h}).second.norm();
  measured.bend = h * std::fmax(start, end);
  measured.girth_mm = integral(
      [&](double u) {
        return at({span, u}).first.norm();
      },
      0, h, measured.bend);
}

double Curve::girth_share(Place place) const {
  const Span& span = spans_[place.span];
  if (place.u_mm <= 0) return 0;
  if (place.u_mm >= span.chord_mm) return 1;
  if (span.bend == 0) return place.u_mm / span.chord_mm;
  const auto speed = [&](double u) { return at({place.span, u}).first.norm(); };
  const double bend = span.bend < 0.1 ? std::fmin(span.bend, 0.01) : span.bend;
  return integral(speed, 0, place.u_mm, bend) / span.girth_mm;
}

double Curve::u_at_girth_share(std::size_t span, double share) const {
  const Span& whole = spans_[span];
  double low = 0;
  double high = whole.chord_mm;
  double u = share * whole.chord_mm;
  for (int step = 0; step < 60 && high - low > 1e-13 * whole.chord_mm; ++step) {
    const double missing = share - girth_share({span, u});
    (missing > 0 ? low : high) = u;
    const double newton = u + missing * whole.girth_mm / at({span, u}).first.norm();
    if (std::abs(newton - u) <= 1e-13 * whole.chord_mm) break;
    u = newton > low && newton < high ? newton : (low + high) / 2;
  }
  return u;
}

Jet Curve::at(Place place) const {
  const Span& span = spans_[place.span];
  const double u = std::fmin(std::fmax(place.u_mm, 0), span.chord_mm);
  const auto& c = span.by_power;
  Jet jet{c[0] + u * (c[1] + u * (c[2] + u * c[3])),
          c[1] + u * (2 * c[2] + 3 * u * c[3]), 2 * c[2] + 6 * u * c[3]};
  if (u != place.u_mm) {
    jet.point += (place.u_mm - u) * jet.first;
    jet.second.setZero();
  }
  return jet;
}

Place Curve::moved(Place place, double du_mm) const {
  place.u_mm += du_mm;
  while (place.u_mm > spans_[place.span].chord_mm) {
    const std::size_t knot = knot_after(place.span);
    if (!smooth_[knot]) return place;
    place.u_mm -= spans_[place.span].chord_mm;
    place.span = knot;
  }
  while (place.u_mm < 0) {
    if (!smooth_[place.span]) return place;
    place.span = span_before(place.span);
    place.u_mm += spans_[place.span].chord_mm;
  }
  return place;
}

Curve Curve::with_knot(Place place) const {
  Curve result = *this;
  const Span whole = spans_[place.span];
  const double u = place.u_mm;
  assert(u > 0 && u < whole.chord_mm);
  const auto& c = whole.by_power;
  const Jet jet = at(place);
  Span& first = result.spans_[place.span];
  first.chord_mm = u;
  const Span second{
      whole.chord_mm - u, {jet.point, jet.first, jet.second / 2, c[3]}, 0, 0};
  const auto after = static_cast<std::ptrdiff_t>(place.span + 1);
  result.spans_.insert(result.spans_.begin() + after, second);
  result.smooth_.insert(result.smooth_.begin() + after, true);
  result.measure(place.span);
  result.measure(place.span + 1);
  return result;
}

std::vector<double> plan_turns(const std::vector<Point3>& points, bool closed) {
  const std::size_t n = points.size();
  std::vector<double> turns(n, 0.0);
  for (std::size_t i = closed ? 0 : 1; i < (closed ? n : n - 1); ++i) {
    const Vector2 before = (points[i] - points[(i + n - 1) % n]).head<2>();
    const Vector2 after = (points[(i + 1) % n] - points[i]).head<2>();
    const double cross = before.x() * after.y() - before.y() * after.x();
    turns[i] = -std::atan2(cross, before.dot(after));
  }
  return turns;
}

}  // namespace sheerlap
