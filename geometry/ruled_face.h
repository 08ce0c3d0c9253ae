#pragma once

#include <memory>
#include <vector>

#include "geometry/curve.h"
#include "geometry/points.h"

namespace sheerlap {

/// The frame of a curve in plan: the way along it and the way outboard, which is to
/// the left of it.
struct PlanFrame {
  Vector2 along;     ///< unit
  Vector2 outboard;  ///< unit, `along` turned a quarter to the left
  double speed = 0;  ///< plan length for each unit of the parameter
  double turn = 0;   ///< radians to the right for each unit of the parameter
  double rise = 0;   ///< height for each unit of the parameter
};

inline PlanFrame plan_frame(const Jet& jet) {
  PlanFrame frame;
  const Vector2 first = jet.first.head<2>();
  frame.speed = first.norm();
  frame.along = first / frame.speed;
  frame.outboard = Vector2(-frame.along.y(), frame.along.x());
  frame.turn = -frame.outboard.dot(jet.second.head<2>()) / frame.speed;
  frame.rise = jet.first.z();
  return frame;
}

/// Offsets of a face at one knot of its curve, mm: horizontal, outboard, at depth 0
/// and at depth `lap`.
struct RuledOffsets {
  double top_mm = 0;
  double low_mm = 0;
  double lap_mm = 0;
};

/// Offsets of a face over one span of its curve.
struct SpanOffsets {
  RuledOffsets from;  ///< where the span starts
  RuledOffsets to;
};

/// A point of a face and how it moves.
struct FacePoint {
  Point3 point;
  Vector3 by_u;      ///< derivative by the curve's parameter
  Vector3 by_depth;  ///< derivative by the depth
  Vector3 normal;    ///< unit, outboard

  /// The area swept for each unit of parameter and depth (mm).
  double area_mm() const;
};

/// The offset of a face (mm), and how it changes.
struct OffsetJet {
  double offset = 0;
  double by_u = 0;
  double by_depth = 0;
};

/// A face hung from a curve: at each depth, measured straight down from the curve, it
/// stands a horizontal distance outboard of it, square to the curve in plan. Down from
/// the curve it is straight; along it the offsets run linearly by the curve's arc
/// length from knot to knot. Beyond a knuckle or a free end it is carried straight on.
class RuledFace {
 public:
  /// @param offsets  one a knot
  /// @param thickness_mm  the face lies this much further out, measured square to it in
  ///                      the vertical section across the curve
  RuledFace(std::shared_ptr<const Curve> curve,
            const std::vector<RuledOffsets>& offsets,
            double thickness_mm = 0);
  /// A face that may have a step where two spans meet.
  ///
  /// @param offsets  one a span
  static RuledFace stepped(std::shared_ptr<const Curve> curve,
                           std::vector<SpanOffsets> offsets);
  const Curve& curve() const { return *curve_; }
  const std::shared_ptr<const Curve>& shared_curve() const { return curve_; }

  const SpanOffsets& offsets(std::size_t span) const { return offsets_[span]; }
  /// How much the face changes within a span: the bend of the curve (radians), the
  /// lap's change as a share of it, or the change of the slope, whichever is greatest.
  double variation(std::size_t span) const;
  /// The depth of the lap at a place (mm).
  double lap_mm(Place place) const;
  OffsetJet offset(Place place, double depth_mm) const;
  FacePoint at(Place place, double depth_mm) const;
  /// The face `further_mm` further out, horizontally, all over.
  RuledFace shifted(double further_mm) const;
  /// The face `further_mm` further out, square to it in the vertical section across the
  /// curve: the other face of a laminate.
  RuledFace thickened(double further_mm) const;

 private:
  RuledFace() = default;

  std::shared_ptr<const Curve> curve_;
  std::vector<SpanOffsets> offsets_;  ///< one a span
  double thickness_mm_ = 0;
};

}  // namespace sheerlap
