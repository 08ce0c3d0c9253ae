#pragma once

#include <memory>
#include <vector>

#include "geometry/mitre.h"
#include "geometry/result.h"
#include "geometry/ruled_face.h"

namespace sheerlap {

/// The line on a face at one depth, all along the face's curve, mitred where the curve
/// has a knuckle; measured by its arc length in space.
class FaceLine {
 public:
  FaceLine() = default;
  /// @errors  InvalidInput at "knot[N]": a mitre that does not exist, or two that leave
  ///          nothing of the span between them
  static Result<FaceLine> at_depth(std::shared_ptr<const RuledFace> face,
                                   double depth_mm);

  double depth_mm() const { return depth_mm_; }
  const RuledFace& face() const { return *face_; }
  FacePoint at(Place place) const { return face_->at(place, depth_mm_); }

  /// Where the line starts and ends within a span; beyond the span's own ends where a
  /// mitre carries it on, inside them where a mitre cuts it back; alike where nothing
  /// is left of the span.
  double begin_u_mm(std::size_t span) const { return begin_u_[span]; }
  double end_u_mm(std::size_t span) const { return end_u_[span]; }
  /// The length of the line within a span (mm).
  double span_mm(std::size_t span) const { return span_mm_[span]; }
  /// The length from one parameter to another of one span (mm); negative backwards.
  double length_mm(std::size_t span, double from_u, double to_u) const;
  /// The parameter at which the line has run `length_mm` from its start in the span.
  /// @accuracy  1e-12 of the span
  double u_at(std::size_t span, double length_mm) const;

 private:
  void cut_back(std::size_t knot, const Mitre& mitre);
  Errors overlaps() const;
  double smooth_length_mm(std::size_t span, double from_u, double to_u) const;

  std::shared_ptr<const RuledFace> face_;
  double depth_mm_ = 0;
  std::vector<double> begin_u_, end_u_, span_mm_;
};

}  // namespace sheerlap
