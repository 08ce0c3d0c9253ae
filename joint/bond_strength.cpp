#include "joint/bond_strength.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

#include "joint/bond_outside.h"
#include "joint/bond_places.h"
#include "joint/bond_use.h"

namespace sheerlap {
namespace {

/// How far apart the bond is looked at.
constexpr Length step = Length::mm(50);

/// Knots of the curve that are rows of the table, as girths along a side's sheer.
std::vector<Length> row_girths(const Perimeter& perimeter, const PerimeterSide& side) {
  std::vector<Length> girths;
  const SidePath& path = side.sheer.path();
  const Curve& curve = perimeter.hull->curve();
  for (std::size_t k = 0; k <= path.span_count; ++k) {
    const std::size_t spans = curve.spans();
    const std::size_t knot = path.forward
                                 ? path.from_knot + k
                                 : path.from_knot + 2 * perimeter.knots.size() - k;
    const SheerKnot& found = perimeter.knots[knot % perimeter.knots.size()];
    if (spans > 0 && !found.added) girths.push_back(side.sheer.girth_at_span(k));
  }
  return girths;
}

void add_side(const Joint& joint,
              const Perimeter& perimeter,
              const PerimeterSide& side,
              const JointLoads& loads,
              BondStrength& strength,
              Errors& errors) {
  auto found = bond_places(joint, perimeter, side, loads, step);
  if (!found) {
    errors.insert(errors.end(), found.error().begin(), found.error().end());
    return;
  }
  std::vector<BondPoint> points = std::move(*found);
  for (BondPoint& point : points) judge(joint, point);
  for (const Length girth : row_girths(perimeter, side)) {
    const auto at = std::find_if(points.begin(), points.end(), [&](const auto& point) {
      return std::abs((point.girth - girth).in_mm()) < 1e-6;
    });
    if (at != points.end()) strength.stations.push_back(*at);
  }
  strength.along.insert(strength.along.end(), points.begin(), points.end());
}

}  // namespace

Result<BondStrength> bond_strength(const Joint& joint,
                                   const Perimeter& perimeter,
                                   const JointLoads& loads) {
  assert(joint.adhesive && joint.loads);
  BondStrength strength;
  Errors errors;
  for (const PerimeterSide& side : perimeter.sides)
    add_side(joint, perimeter, side, loads, strength, errors);
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  assert(!strength.along.empty());
  strength.worst = *std::max_element(
      strength.along.begin(), strength.along.end(),
      [](const auto& a, const auto& b) { return a.utilisation < b.utilisation; });
  strength.outside = bond_outside(joint, strength.along);
  return strength;
}

std::string mode_words(BondMode mode) {
  switch (mode) {
    case BondMode::AdhesiveShear:
      return "adhesive in shear";
    case BondMode::AdhesivePeel:
      return "adhesive in peel";
    case BondMode::LaminateShear:
      return "laminate between its plies";
    case BondMode::LaminateThrough:
      return "laminate through its thickness";
    case BondMode::NoBondLine:
      break;
  }
  return "no bond line";
}

}  // namespace sheerlap
