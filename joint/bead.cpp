#include "joint/bead.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace sheerlap {
namespace {

/// What is covered but for this share of itself is covered: rounding only.
constexpr double rounding = 1e-9;

}  // namespace

double bead_area_mm2(BeadShape shape, Length size) {
  PlainWorking work;
  return bead_section(work, shape, size);
}

Length bead_yield(Volume volume, BeadShape shape, Length size) {
  return Length::mm(volume.in_ml() * 1000 / bead_area_mm2(shape, size));
}

BeadRack::BeadRack(const Adhesive& adhesive) : sizes_(adhesive.bead_sizes) {
  assert(!sizes_.empty());
  std::sort(sizes_.begin(), sizes_.end());
  for (const Length size : sizes_)
    areas_.push_back(bead_area_mm2(adhesive.bead_shape, size));
}

Beads BeadRack::smallest(double needed_mm2) const {
  const double covered = needed_mm2 * (1 - rounding);
  const double count = std::max(1.0, std::ceil(covered / areas_.back()));
  const auto covers =
      std::partition_point(areas_.begin(), areas_.end(),
                           [&](double area) { return count * area < covered; });
  const auto last = static_cast<std::ptrdiff_t>(areas_.size()) - 1;
  const auto picked = static_cast<std::size_t>(std::min(covers - areas_.begin(), last));
  return {sizes_[picked], static_cast<std::size_t>(count), count * areas_[picked]};
}

Beads smallest_beads(const Adhesive& adhesive, double needed_mm2) {
  return BeadRack(adhesive).smallest(needed_mm2);
}

}  // namespace sheerlap
