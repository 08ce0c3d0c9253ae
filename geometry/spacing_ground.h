#pragma once

#include <cstddef>
#include <limits>
#include <vector>

#include "geometry/spacing.h"

namespace sheerlap {

/// A place where a point may stand: a whole window of allowed ground that no zone's
/// edge divides, or a single place. The limits of the space between two points depend
/// on nothing but the two cells they stand in.
struct SpacingCell {
  double from_mm = 0;
  double to_mm = 0;
  /// The part of the ground that a space to the right starts with, and the one that a
  /// space to the left ends with; they differ on the edge of a zone.
  int right_part = 0;
  int left_part = 0;
  bool fixed = false;  ///< no path may leave it out

  bool is_point() const { return from_mm == to_mm; }
};

/// How far one may go from a point to the next.
struct SpacingStep {
  double least_mm = 0;
  double greatest_mm = 0;
  double weight = 0;  ///< of the squared distance in the sum
  double spaces = 0;  ///< what the space is of the distance; 0 if it is no space
  /// What the sum grows by where an excess starts; from there on the excess counts like
  /// a space. An end distance so gives way only where no space can do so in its stead.
  double excess_slope_mm = 0;
};

/// A limit that is exceeded by no more than this part of itself is kept.
constexpr double kept_limit = 1e-9;
/// The slack that rounding asks for, as a part of the limit.
constexpr double rounding_of_limit = 1e-12;

/// How the limits are taken.
struct SpacingAllowance {
  double slack = 0;  ///< by what part of itself a limit is loosened
  double largest_mm = std::numeric_limits<double>::infinity();  ///< space there may be
};

/// Greatest limits that are given up: the points on both sides stay where they are.
struct SpacingGiveWay {
  std::vector<double> points_mm;  ///< those points
  std::vector<double> after_mm;   ///< the points after which a limit is given up
  bool at_start = false;          ///< so is the one from the start to the first point
};

/// One stretch, cut into cells. The first cell is the start and the last the end:
/// both are fixed, neither is a point.
class SpacingGround {
 public:
  /// @param problem  as `space_out` accepts it
  SpacingGround(const SpacingProblem& problem, const SpacingGiveWay& give_way);

  const std::vector<SpacingCell>& cells() const { return cells_; }
  std::size_t start() const { return 0; }
  std::size_t end() const { return cells_.size() - 1; }
  /// The first fixed cell after this one.
  std::size_t next_fixed(std::size_t cell) const { return next_fixed_[cell]; }

  /// What the limits ask of the step from a cell to the same or a later one.
  SpacingStep asked(std::size_t from, std::size_t to) const;
  /// What a path has to keep: a limit that is given up is not asked, and two fixed
  /// places may be as close as they are.
  SpacingStep step(std::size_t from,
                   std::size_t to,
                   const SpacingAllowance& allowance) const;
  /// The loosening of a step's limits.
  double slack_mm(const SpacingStep& asked, double slack) const;

  /// The measure of what is small here.
  double scale_mm() const { return scale_mm_; }
  /// Of all the limits there are, in zones and outside.
  double largest_least_mm() const { return extremes_.least_mm; }
  double smallest_greatest_mm() const { return extremes_.greatest_mm; }
  /// No space that keeps its limits is larger.
  double largest_space_mm() const { return largest_space_mm_; }

 private:
  void measure_limits();
  void cut_into_parts();
  void cut_into_cells(const SpacingGiveWay& give_way);
  void add_window(const Forbidden& window, const std::vector<double>& fixed);
  void add_cell(double from_mm, double to_mm, bool fixed);
  void mark_fixed(const SpacingGiveWay& give_way);
  std::vector<Forbidden> windows() const;
  SpaceLimits limits(int first_part, int last_part) const;

  SpacingProblem problem_;
  std::vector<double> part_edges_;
  /// [k][i]: the limits of the 2^k parts from the i-th
  std::vector<std::vector<SpaceLimits>> part_limits_;
  std::vector<SpacingCell> cells_;
  std::vector<std::size_t> next_fixed_;
  std::vector<bool> given_up_;  ///< the limit from this cell to the next fixed one
  SpaceLimits extremes_;
  double scale_mm_ = 0;
  double largest_space_mm_ = 0;
};

}  // namespace sheerlap
