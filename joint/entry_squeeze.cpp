#include "joint/entry_squeeze.h"

#include <algorithm>
#include <cmath>

namespace sheerlap {

std::optional<EntrySqueeze> entry_squeeze(const EntryPath& path,
                                          const std::vector<Spreader>& spreaders,
                                          const Perimeter& perimeter) {
  if (!path.squeeze || !(*path.squeeze > Length()) || spreaders.empty())
    return std::nullopt;
  const SideLine& sheer = perimeter.side(path.face.side)->sheer;
  const double x_mm =
      perimeter.hull->curve().at(sheer.place_at(path.face.girth)).point.x();
  const auto away = [&](const Spreader& spreader) {
    return std::abs(spreader.x.in_mm() - x_mm);
  };
  const auto nearest = std::min_element(
      spreaders.begin(), spreaders.end(),
      [&](const Spreader& a, const Spreader& b) { return away(a) < away(b); });
  const auto weakest = std::min_element(
      spreaders.begin(), spreaders.end(),
      [](const Spreader& a, const Spreader& b) { return a.most < b.most; });
  return EntrySqueeze{*path.squeeze,
                      static_cast<std::size_t>(nearest - spreaders.begin()),
                      nearest->most, weakest->most};
}

bool other_way_down(const Joint& joint, const Perimeter& perimeter) {
  if (joint.turned_entry) return true;
  const auto squeeze =
      entry_squeeze(straight_entry(perimeter), joint.seating.spreaders, perimeter);
  return squeeze && squeeze->lets_pass();
}

}  // namespace sheerlap
