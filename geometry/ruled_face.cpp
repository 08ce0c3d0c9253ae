#include "geometry/ruled_face.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

namespace sheerlap {
namespace {

double between(double from, double to, double share) {
  return from + share * (to - from);
}

std::vector<SpanOffsets> by_span(const Curve& curve,
                                 const std::vector<RuledOffsets>& offsets) {
  assert(offsets.size() == curve.knots());
  std::vector<SpanOffsets> spans;
  for (std::size_t span = 0; span < curve.spans(); ++span)
    spans.push_back({offsets[span], offsets[curve.knot_after(span)]});
  return spans;
}

}  // namespace

double FacePoint::area_mm() const { return by_u.cross(by_depth).norm(); }

RuledFace::RuledFace(std::shared_ptr<const Curve> curve,
                     const std::vector<RuledOffsets>& offsets,
                     double thickness_mm)
    : curve_(std::move(curve)),
      offsets_(by_span(*curve_, offsets)),
      thickness_mm_(thickness_mm) {}

RuledFace RuledFace::stepped(std::shared_ptr<const Curve> curve,
                             std::vector<SpanOffsets> offsets) {
  assert(offsets.size() == curve->spans());
  RuledFace face;
  face.curve_ = std::move(curve);
  face.offsets_ = std::move(offsets);
  return face;
}

double RuledFace::variation(std::size_t span) const {
  const auto& [from, to] = offsets_[span];
  const double lap_change =
      std::abs(to.lap_mm - from.lap_mm) / std::min(from.lap_mm, to.lap_mm);
  const double slope_change = std::abs((to.low_mm - to.top_mm) / to.lap_mm -
                                       (from.low_mm - from.top_mm) / from.lap_mm);
  return std::max({curve_->bend(span), lap_change, slope_change});
}

double RuledFace::lap_mm(Place place) const {
  const double from = offsets_[place.span].from.lap_mm;
  const double to = offsets_[place.span].to.lap_mm;
  return from == to ? from : between(from, to, curve_->girth_share(place));
}

OffsetJet RuledFace::offset(Place place, double depth_mm) const {
  const auto& [from, to] = offsets_[place.span];
  const double top_step = to.top_mm - from.top_mm;
  const double low_step = to.low_mm - from.low_mm;
  const double lap_step = to.lap_mm - from.lap_mm;
  const bool level = top_step == 0 && low_step == 0 && lap_step == 0;
  const double share = level ? 0 : curve_->girth_share(place);
  const double lap = from.lap_mm + share * lap_step;
  const double top = from.top_mm + share * top_step;
  const double spread = from.low_mm + share * low_step - top;
  const double slope = spread / lap;
  const double lean = std::hypot(1, slope);
  OffsetJet jet{top + slope * depth_mm + thickness_mm_ * lean, 0, slope};
  const bool carried_on = place.u_mm < 0 || place.u_mm > curve_->chord_mm(place.span);
  if (level || carried_on) return jet;
  const double share_by_u =
      curve_->at(place).first.norm() / curve_->girth_mm(place.span);
  const double slope_by_share =
      (low_step - top_step) / lap - spread * lap_step / (lap * lap);
  jet.by_u = share_by_u * (top_step + slope_by_share * depth_mm +
                           thickness_mm_ * slope * slope_by_share / lean);
  return jet;
}

FacePoint RuledFace::at(Place place, double depth_mm) const {
  const Jet jet = curve_->at(place);
  const PlanFrame frame = plan_frame(jet);
  const OffsetJet offset = this->offset(place, depth_mm);
  FacePoint face;
  face.point = jet.point;
  face.point.head<2>() += offset.offset * frame.outboard;
  face.point.z() -= depth_mm;
  const double onward = frame.speed + offset.offset * frame.turn;
  face.by_u.head<2>() = onward * frame.along + offset.by_u * frame.outboard;
  face.by_u.z() = frame.rise;
  face.by_depth.head<2>() = offset.by_depth * frame.outboard;
  face.by_depth.z() = -1;
  face.normal = face.by_u.cross(face.by_depth).normalized();
  return face;
}

RuledFace RuledFace::shifted(double further_mm) const {
  RuledFace result = *this;
  for (SpanOffsets& span : result.offsets_)
    for (RuledOffsets* offsets : {&span.from, &span.to}) {
      offsets->top_mm += further_mm;
      offsets->low_mm += further_mm;
    }
  return result;
}

RuledFace RuledFace::thickened(double further_mm) const {
  RuledFace result = *this;
  result.thickness_mm_ += further_mm;
  return result;
}

}  // namespace sheerlap
