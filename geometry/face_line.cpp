#include "geometry/face_line.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

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
  std::vector<std::pair<std::size_t, Mitre>> wide;  // mitres that pass over knots
  for (std::size_t knot = 0; knot < curve.knots(); ++knot) {
    if (!curve.joins_at(knot) || curve.smooth_at(knot)) continue;
    const auto met = mitre(*line.face_, knot, depth_mm);
    if (!met) {
      errors.insert(errors.end(), met.error().begin(), met.error().end());
      continue;
    }
    const std::size_t before = curve.span_before(knot);
    if (met->end.span != before || met->start.span != knot) {
      wide.emplace_back(knot, *met);
      continue;
    }
    line.end_u_[before] = met->end.u_mm;
    line.begin_u_[knot] = met->start.u_mm;
  }
  for (const auto& [knot, met] : wide) line.cut_back(knot, met);
  if (errors.empty()) errors = line.overlaps();
  if (!errors.empty()) return tl::unexpected(errors);
  line.span_mm_.resize(spans);
  for (std::size_t i = 0; i < spans; ++i)
    line.span_mm_[i] = line.length_mm(i, line.begin_u_[i], line.end_u_[i]);
  return line;
}

void FaceLine::cut_back(std::size_t knot, const Mitre& mitre) {
  const Curve& curve = face_->curve();
  std::size_t span = curve.span_before(knot);
  for (; span != mitre.end.span; span = curve.span_before(span))
    begin_u_[span] = end_u_[span] = curve.chord_mm(span);
  end_u_[span] = mitre.end.u_mm;
  for (span = knot; span != mitre.start.span; span = curve.knot_after(span))
    begin_u_[span] = end_u_[span] = 0;
  begin_u_[span] = mitre.start.u_mm;
}

Errors FaceLine::overlaps() const {
  Errors errors;
  for (std::size_t span = 0; span < begin_u_.size(); ++span)
    if (begin_u_[span] > end_u_[span] + 1e-6)
      errors.push_back(
          {ErrorKind::InvalidInput, fmt::format("knot[{}]", span),
           fmt::format("the corners at both ends of a chord of {:.1f} mm leave nothing "
                       "of the face between them: a smaller offset, or a longer chord",
                       face_->curve().chord_mm(span))});
  return errors;
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
