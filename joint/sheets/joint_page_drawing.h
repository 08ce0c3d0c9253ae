#pragma once

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "joint/documents/number_style.h"
#include "joint/job.h"
#include "joint/layout_stretches.h"
#include "joint/sheets/plan_line.h"

namespace sheerlap {

/// Keeps names in a drawing apart.
class NameRoom {
 public:
  /// Whether a name as high as `letter` along a segment is clear of all before it; it
  /// then counts from now on.
  bool take(const Point2& from, const Point2& to, double letter) {
    constexpr int steps = 12;
    std::vector<Point2> points;
    for (int i = 0; i <= steps; ++i)
      points.push_back(from + (to - from) * (static_cast<double>(i) / steps));
    for (const Point2& taken : taken_)
      for (const Point2& point : points)
        if ((taken - point).norm() < letter) return false;
    taken_.insert(taken_.end(), points.begin(), points.end());
    return true;
  }
  /// Keeps names off a line that is drawn, for names as high as `letter`.
  void block(const std::vector<Point2>& line, double letter) {
    for (std::size_t i = 1; i < line.size(); ++i) {
      const double steps = std::ceil(2 * (line[i] - line[i - 1]).norm() / letter);
      for (double step = 0; step <= steps; ++step)
        taken_.push_back(line[i - 1] +
                         (line[i] - line[i - 1]) * (step / std::max(steps, 1.0)));
    }
  }

 private:
  std::vector<Point2> taken_;
};

/// What the parts of a plan have in common; sizes in mm of the boat.
struct PlanDrawing {
  const Job& job;
  const NumberStyle& style;
  Eigen::AlignedBox2d box;        ///< of the drill line as drawn
  Eigen::AlignedBox2d names_box;  ///< of the names as drawn
  double letter_mm = 0;           ///< height of the lettering
  double within_mm = 0;           ///< how true the lines are
  NameRoom names;                 ///< taken by names so far
};

/// The plan of a job with nothing in it yet.
PlanDrawing plan_drawing(const Job& job, const NumberStyle& style);

/// A coordinate or length of a drawing, to 0.001 of its unit.
std::string coordinate(double value);

/// Points of the plan as drawn.
std::vector<Point2> drawn_points(const std::vector<Point2>& points);

/// A stretch of a side's line, as true as the plan is; its own `within_mm` is not used.
std::string plan_path(const PlanDrawing& plan,
                      const SideLine& along,
                      const PlanStretch& stretch,
                      const std::string& kind);

/// A band of even width along a side's drill line.
std::string plan_band(const PlanDrawing& plan,
                      const PerimeterSide& side,
                      Length from,
                      Length to,
                      const std::string& kind);

/// Lettering that runs away from a line, outboard or inboard of it, from left to right
/// or upwards.
std::string lettering(const PlanDrawing& plan,
                      const PlanPoint& at,
                      double outboard_mm,
                      const std::string& text,
                      const std::string& kind);

/// The keep-outs of a side, by girth; those of one name and clearance that are less
/// than `apart` from each other are joined.
std::vector<Obstacle> joined_keepouts(const Job& job,
                                      const PerimeterSide& side,
                                      Length apart);

/// A keep-out by its name; a tight bend with the radius it is under.
std::string keepout_name(const Job& job,
                         const Obstacle& obstacle,
                         const NumberStyle& style);

/// Whether a point near a side lies on the hand of that side; the transom has both.
bool on_hand(const PerimeterSide& side, const Point2& point);

/// Where a name may stand.
enum class NamePlace { Inboard, InboardOrBeyondTheMarks };

/// A level name beside a place of the drill line, moved along it or further inboard to
/// where there is room, then with a line to it; none where there is not.
std::string plan_name(PlanDrawing& plan,
                      const PerimeterSide& side,
                      Length girth,
                      const std::string& text,
                      NamePlace where);

}  // namespace sheerlap
