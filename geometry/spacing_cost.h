#pragma once

#include <compare>
#include <utility>
#include <vector>

#include "geometry/spacing_ground.h"

namespace sheerlap {

/// What a row of points costs: any excess over the greatest limits counts before the
/// sum of squared spaces.
struct CostValue {
  double excess_mm = 0;
  double squares_mm2 = 0;
};

/// How fast a cost grows with the place of the last point; compared part by part.
struct CostSlope {
  int excess = 0;         ///< 0, or 1 where the excess grows
  double squares_mm = 0;  ///< of the sum of squares
  auto operator<=>(const CostSlope&) const = default;
};

/// A corner of the slope's polyline.
struct CostCorner {
  double at_mm = 0;
  double before_mm = 0;  ///< where the point before stands if this one stands here
  CostSlope slope;
};

/// The least cost of a row of points whose last one stands at a place: a convex,
/// piecewise quadratic function on an interval, kept as the polyline of its slope.
class SpacingCost {
 public:
  /// Of no point yet: nothing, at the start.
  static SpacingCost at_start(double at_mm);
  /// Of one more point, a step away. Where the least limit lets a step be only longer
  /// than the greatest, its excess counts from the start.
  ///
  /// @param beyond_mm  how much longer than the greatest limit the step may be
  /// @source  derived: the infimal convolution of two convex functions adds the
  ///          inverses of their slopes
  SpacingCost after(const SpacingStep& step, double beyond_mm) const;
  /// The same on a part of the interval.
  SpacingCost within(double from_mm, double to_mm) const;

  double from_mm() const { return corners_.front().at_mm; }
  double to_mm() const { return corners_.back().at_mm; }
  CostValue value_at(double at_mm) const;
  /// Where the point before stands.
  double before_mm(double at_mm) const;
  /// In order; equal places are jumps of the slope.
  const std::vector<CostCorner>& corners() const { return corners_; }
  CostValue first_value() const { return first_; }

 private:
  SpacingCost(std::vector<CostCorner> corners, CostValue first)
      : corners_(std::move(corners)), first_(first) {}
  void drop_jumps_at_ends();

  std::vector<CostCorner> corners_;
  CostValue first_;  ///< at the first corner
};

/// The corner there would be on a line between two.
CostCorner corner_between(const CostCorner& one, const CostCorner& other, double at_mm);

}  // namespace sheerlap
