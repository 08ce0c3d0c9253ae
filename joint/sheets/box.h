#pragma once

#include <vector>

#include "geometry/points.h"

namespace sheerlap {

/// A rectangle on a sheet, mm; y runs down.
struct Box {
  double left = 0;
  double top = 0;
  double width = 0;
  double height = 0;

  double right() const { return left + width; }
  double bottom() const { return top + height; }
  Point2 centre() const { return {left + width / 2, top + height / 2}; }
  /// The box with this much taken off on all sides; negative: put on.
  Box inset(double by_mm) const {
    return {left + by_mm, top + by_mm, width - 2 * by_mm, height - 2 * by_mm};
  }
  /// Clockwise from the top left.
  std::vector<Point2> corners() const {
    return {{left, top}, {right(), top}, {right(), bottom()}, {left, bottom()}};
  }
  bool overlaps(const Box& other) const {
    return left < other.right() && other.left < right() && top < other.bottom() &&
           other.top < bottom();
  }
};

}  // namespace sheerlap
