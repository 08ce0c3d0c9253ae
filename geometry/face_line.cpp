#include "geometry/face_line.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "geometry/mitre.h"
#include "geometry/quadrature.h"

namespace sheerlap {

Result<FaceLine> FaceLine::at_depth(std::shared_ptr<const RuledFace> face,
                                    double depth_mm) {
  FaceLine line;
  line.face_ = std::move(face);
  line.depth_mm_ = depth_mm;
  const Curve& curve = line.face_->curve();
  const std::size_t spans = curve.spans();
  line.begin_u_.assign(spans, 0.0);
  line.end_u_.resize(spans);
  for (std::size_t i = 0; i < spans; ++i) line.end_u_[i] = curve.chord_mm(i);
  Errors errors;
  for (std::size_t knot = 0; knot < curve.knots(); ++knot) {
    if (!curve.joins_at(knot) || curve.smooth_at(knot)) continue;
    const auto met = mitre(*line.face_, knot, depth_mm);
    if (!met) {
      errors.insert(errors.end(), met.error().begin(), met.error().end());
      continue;
    }
    line.end_u_[curve.span_before(knot)] = met->end_u_mm;
    line.begin_u_[knot] = met->start_u_mm;
  }
  if (!errors.empty()) return tl::unexpected(errors);
  line.span_mm_.resize(spans);
  for (std::size_t i = 0; i < spans; ++i)
    line.span_mm_[i] = line.length_mm(i, line.begin_u_[i], line.end_u_[i]);
  return line;
}

double FaceLine::smooth_length_mm(std::size_t span, double from_u, double to_u) const {
  const auto speed = [&](double u) { return at({span, u}).by_u.norm(); };
  return integral(speed, from_u, to_u, face_->variation(span));
}

double FaceLine::length_mm(std::size_t span, double from_u, double to_u) const {
  if (from_u > to_u) return -length_mm(span, to_u, from_u);
  const double chord = face_->curve().chord_mm(span);
  double length = 0;
  const auto add = [&](double low, double high) {
    const double from = std::max(from_u, low);
    const double to = std::min(to_u, high);
    if (to > from) length += smooth_length_mm(span, from, to);
  };
  if (from_u < 0) add(from_u, 0);
  add(0, chord);
  if (to_u > chord) add(chord, to_u);
  return length;
}

double FaceLine::u_at(std::size_t span, double length_mm) const {
  const double begin = begin_u_[span];
  const double end = end_u_[span];
  if (length_mm <= 0) return begin;
  if (length_mm >= span_mm_[span]) return end;
  double u = begin + (end - begin) * length_mm / span_mm_[span];
  double run = this->length_mm(span, begin, u);
  for (int step = 0; step < 50; ++step) {
    const double missing = length_mm - run;
    const double next = std::clamp(u + missing / at({span, u}).by_u.norm(), begin, end);
    if (std::abs(next - u) <= 1e-13 * (end - begin)) return next;
    run += this->length_mm(span, u, next);
    u = next;
  }
  return u;
}

}  // namespace sheerlap
