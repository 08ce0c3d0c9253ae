#include "joint/bond_strength.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <utility>

#include "joint/bond_heat.h"
#include "joint/bond_outside.h"
#include "joint/bond_pass.h"
#include "joint/bond_use.h"
#include "joint/gap_profile.h"

namespace sheerlap {
namespace {

/// How far apart the bond is looked at.
constexpr double step_mm = 50;

/// The bond band of a place as depths.
struct Band {
  double from_mm;
  double to_mm;
};

Band band_at(const Joint& joint, const Perimeter& perimeter, Place place) {
  const double lap = perimeter.hull->lap_mm(place);
  return {joint.bond.from ? joint.bond.from->in_mm() : 0,
          joint.bond.to ? joint.bond.to->in_mm() : lap};
}

/// A place of the sheer with its gaps and its load.
BondPoint point_at(const Joint& joint,
                   const Perimeter& perimeter,
                   const PerimeterSide& side,
                   const GapProfile& profile,
                   const JointLoads& loads,
                   Place place) {
  const Band band = band_at(joint, perimeter, place);
  BondPoint point;
  point.side = side.name;
  point.girth = side.sheer.girth_at(place);
  point.on_line =
      std::clamp(side.drill_line.girth_at(place), Length(), side.drill_line_length);
  point.gap_top = Length::mm(profile.gap_mm(place, band.from_mm));
  point.gap_low = Length::mm(profile.gap_mm(place, band.to_mm));
  point.width = Length::mm((perimeter.hull->at(place, band.to_mm).point -
                            perimeter.hull->at(place, band.from_mm).point)
                               .norm());
  point.load = loads.at(side.name, point.on_line);
  point.load.along += heat_flow(joint, loads, point);
  return point;
}

/// The places of a side that are looked at.
std::vector<Place> places_of(const PerimeterSide& side,
                             const GapProfile& profile,
                             const JointLoads& loads) {
  std::vector<Place> places;
  for (const GapSection& section : profile.sections(step_mm))
    places.push_back(section.place);
  const auto in_opening = [&](Length girth) {
    return std::any_of(side.openings.begin(), side.openings.end(),
                       [&](const OpeningSpan& opening) {
                         return opening.from < girth && girth < opening.to;
                       });
  };
  for (const Length girth : loads.jumps_on(side.name))
    if (!in_opening(girth)) places.push_back(side.drill_line.place_at(girth));
  return places;
}

bool earlier(const BondPoint& a, const BondPoint& b) { return a.girth < b.girth; }

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
  const GapProfile profile(perimeter, side);
  std::vector<BondPoint> points;
  for (const Place place : places_of(side, profile, loads)) {
    points.push_back(point_at(joint, perimeter, side, profile, loads, place));
    judge(joint, points.back());
  }
  if (const auto lost = profile.lost()) {
    errors.push_back(
        {ErrorKind::InvalidInput, "sheer",
         fmt::format("no gap can be measured on {} near girth {:.1f} mm: "
                     "see `fit`",
                     side_word(side.name), side.sheer.girth_at(*lost).in_mm())});
    return;
  }
  std::stable_sort(points.begin(), points.end(), earlier);
  const auto same = [](const BondPoint& a, const BondPoint& b) {
    return a.girth == b.girth && a.gap_top == b.gap_top && a.gap_low == b.gap_low;
  };
  points.erase(std::unique(points.begin(), points.end(), same), points.end());
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
