#pragma once

#include <cstddef>
#include <vector>

#include "geometry/quantity.h"
#include "joint/adhesive_product.h"

namespace sheerlap {

/// The section of one bead (mm2).
/// @param size  base and height of a triangle, diameter of a round bead
double bead_area_mm2(BeadShape shape, Length size);

/// The length of bead that a volume lays.
Length bead_yield(Volume volume, BeadShape shape, Length size);

/// Equal beads laid side by side.
struct Beads {
  Length size;
  std::size_t count = 1;
  double area_mm2 = 0;  ///< of all of them together

  bool operator==(const Beads&) const = default;
};

/// The beads an adhesive can be laid in, ready to be asked many times over.
class BeadRack {
 public:
  /// @param adhesive  with at least one bead size, in any order
  explicit BeadRack(const Adhesive& adhesive);

  /// What `smallest_beads` picks.
  Beads smallest(double needed_mm2) const;

 private:
  std::vector<Length> sizes_;  ///< ascending
  std::vector<double> areas_;  ///< of them, mm2
};

/// The fewest beads, and of those the smallest, whose section covers the one needed.
///
/// @param adhesive   with at least one bead size
/// @param needed_mm2 squeeze-out included; what is within 1e-9 of itself of a bead's
///                   section is covered by it
Beads smallest_beads(const Adhesive& adhesive, double needed_mm2);

}  // namespace sheerlap
