#pragma once

#include <cstddef>
#include <numbers>
#include <vector>

#include "geometry/quantity.h"
#include "joint/adhesive_product.h"
#include "joint/reasons/working.h"

namespace sheerlap {

/// The section of some beads side by side, mm2.
/// @param size  base and height of a triangle, diameter of a round bead
template <class Working>
auto bead_section(Working& work, BeadShape shape, Length size, double beads = 1) {
  const auto d =
      work.given({"d", "size of the bead", "mm"}, size.in_mm(),
                 Origin::of_joint("of adhesive.bead_sizes, the smallest that covers"));
  const auto n =
      work.given({"n", "beads side by side", "1"}, beads,
                 Origin::of_joint("one; more where the largest does not cover"));
  if (shape == BeadShape::Triangle)
    return work.figure({"a_bead", "section of the beads", "mm2",
                        "derived: a triangle as high as its base",
                        "the bead as laid, before the lid comes down"},
                       n * (d * d / 2));
  return work.figure({"a_bead", "section of the beads", "mm2", "derived: a circle",
                      "the bead as laid, before the lid comes down"},
                     n * (std::numbers::pi / 4 * d * d));
}

/// The section that beads have to cover, mm2.
/// @param section_mm2  of the joint
template <class Working>
auto section_needed(Working& work, double section_mm2, double squeeze_out) {
  const auto A = work.given(
      {"A", "section of the joint, the run's largest", "mm2"}, section_mm2,
      Origin::of_joint("area between the faces over the bond band, across the sheer"));
  const auto s = work.given({"s", "share meant to squeeze out", "1"}, squeeze_out,
                            Origin::of_file("adhesive.squeeze_out"));
  return work.figure({"a_needed", "section that the beads have to cover", "mm2",
                      "derived: the joint full and the share squeezed out",
                      "the paste does not flow along the joint"},
                     (1 + s) * A);
}

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
