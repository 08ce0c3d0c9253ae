#pragma once

#include <cstddef>
#include <utility>
#include <vector>

#include "geometry/spacing_ground.h"
#include "geometry/spacing_interval.h"

namespace sheerlap {

/// The ground from which the end is reached with so many steps and no fewer.
///
/// A row of the fewest points stands on no other: where it comes to a place, the rest
/// of the way takes the fewest steps there are from there.
class SpacingWayBack {
 public:
  SpacingWayBack(const SpacingGround& ground, const SpacingAllowance& allowance);

  /// Whether a part of a cell has ground where a row of the fewest points may stand
  /// after so many steps. Ground that is off it by rounding counts.
  bool meets(std::size_t cell, std::size_t steps, const SpacingInterval& part) const;

 private:
  /// What of a cell has the end within so many steps and no fewer; in order, disjoint.
  struct Left {
    std::size_t steps = 0;
    std::vector<SpacingInterval> parts;
  };
  void spread(std::size_t to, const SpacingInterval& part);
  bool step_back(std::size_t from, std::size_t to, const SpacingInterval& part);
  void settle(std::size_t steps);

  const SpacingGround& ground_;
  const SpacingAllowance allowance_;
  const double rounding_mm_;
  std::size_t fewest_steps_ = 0;         ///< from start to end; 0 if there is no way
  std::vector<std::vector<Left>> left_;  ///< of each cell, by steps
  std::vector<std::vector<SpacingInterval>> covered_;  ///< of each cell
  std::vector<std::vector<SpacingInterval>> news_;     ///< of each cell
  std::vector<std::size_t> last_fixed_;  ///< the last fixed cell before each
  std::vector<std::size_t> touched_;     ///< cells with news
};

}  // namespace sheerlap
