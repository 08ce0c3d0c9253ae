#pragma once

#include <vector>

#include "geometry/points.h"
#include "geometry/quantity.h"
#include "joint/flat_pattern.h"

namespace sheerlap {

/// The three lines of a strip of the lip's outer face.
enum class StripEdge { Sheer, DrillLine, Low };

/// A stretch of the lip's outer face laid flat, looked up by girth on the drill line.
///
/// Points are those of the flat pattern: mm, y up, seen from outside the boat.
class StripLine {
 public:
  /// @param pattern  of a sheet without thickness
  /// @param stretch  what it is the pattern of
  StripLine(const FlatPattern& pattern, const FlatStretch& stretch);

  Length from() const { return Length::mm(girths_.front()); }
  Length to() const { return Length::mm(girths_.back()); }
  /// Whether girths grow to the left.
  bool runs_left() const { return runs_left_; }

  /// The point of a line where the ruling through a girth meets it.
  /// @param girth  clamped to the stretch
  /// @accuracy  of straight lines between rulings not more than 5 mm apart
  Point2 at(StripEdge edge, Length girth) const;
  /// The same for all girths from one to another, ends among them.
  std::vector<Point2> between(StripEdge edge, Length from, Length to) const;
  /// The way of the drill line at a girth, as the girth grows; unit.
  Vector2 along(Length girth) const;

 private:
  std::size_t segment_of(double girth_mm) const;
  const std::vector<Point2>& points(StripEdge edge) const;

  bool runs_left_ = false;
  std::vector<double> girths_;  ///< of the rulings, mm
  std::vector<Point2> sheer_, drill_line_, low_;
};

}  // namespace sheerlap
