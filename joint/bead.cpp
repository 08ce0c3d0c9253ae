#include "joint/bead.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

namespace sheerlap {
namespace {

/// What is covered but for this share of itself is covered: rounding only.
constexpr double rounding = 1e-9;

}  // namespace

double bead_area_mm2(BeadShape shape, Length size) {
  const double across = size.in_mm();
  return shape == BeadShape::Triangle ? across * across / 2
                                      : std::numbers::pi / 4 * across * across;
}

Length bead_yield(Volume volume, BeadShape shape, Length size) {
  return Length::mm(volume.in_ml() * 1000 / bead_area_mm2(shape, size));
}

Beads smallest_beads(const Adhesive& adhesive, double needed_mm2) {
  assert(!adhesive.bead_sizes.empty());
  const double covered = needed_mm2 * (1 - rounding);
  const Length largest =
      *std::max_element(adhesive.bead_sizes.begin(), adhesive.bead_sizes.end());
  const double largest_area = bead_area_mm2(adhesive.bead_shape, largest);
  const double count = std::max(1.0, std::ceil(covered / largest_area));
  Length smallest = largest;
  for (const Length size : adhesive.bead_sizes)
    if (count * bead_area_mm2(adhesive.bead_shape, size) >= covered)
      smallest = std::min(smallest, size);
  return {smallest, static_cast<std::size_t>(count),
          count * bead_area_mm2(adhesive.bead_shape, smallest)};
}

}  // namespace sheerlap
