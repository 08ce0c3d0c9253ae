#include "joint/fastener_rows.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <utility>

#include "joint/fastener_metal.h"
#include "joint/fastener_modes.h"
#include "joint/fastener_use.h"

namespace sheerlap {
namespace {

/// What lies beside a hole on one hand: the border of its stretch, or the next hole.
struct Beside {
  Length distance;
  bool is_hole = false;
};

/// The girths of a side at which a stretch of joint starts or ends, within its ends.
std::vector<Length> borders_of(const PerimeterSide& side) {
  std::vector<Length> borders{Length(), side.drill_line_length};
  for (const OpeningSpan& opening : side.openings) {
    borders.push_back(opening.from);
    borders.push_back(opening.to);
  }
  for (const InnerCorner& corner : side.corners) borders.push_back(corner.girth);
  std::sort(borders.begin(), borders.end());
  return borders;
}

Beside beside(const PerimeterSide& side,
              Length girth,
              const DrillStation* neighbour,
              bool before) {
  const auto borders = borders_of(side);
  Length border = before ? Length() : side.drill_line_length;
  for (const Length one : borders) {
    if (before && one <= girth) border = std::max(border, one);
    if (!before && one >= girth) border = std::min(border, one);
  }
  const bool nearer =
      neighbour != nullptr && neighbour->side == side.name &&
      (before ? neighbour->girth >= border : neighbour->girth <= border);
  if (nearer)
    return {before ? girth - neighbour->girth : neighbour->girth - girth, true};
  return {before ? girth - border : border - girth, false};
}

}  // namespace

HoleNeighbours hole_neighbours(const Perimeter& perimeter,
                               const std::vector<DrillStation>& stations,
                               std::size_t hole) {
  const DrillStation& station = stations[hole];
  const PerimeterSide& side = *perimeter.side(station.side);
  const DrillStation* last = hole > 0 ? &stations[hole - 1] : nullptr;
  const DrillStation* next = hole + 1 < stations.size() ? &stations[hole + 1] : nullptr;
  const Beside before = beside(side, station.girth, last, true);
  const Beside after = beside(side, station.girth, next, false);
  const auto part = [](const Beside& of) {
    return of.is_hole ? of.distance / 2 : of.distance;
  };
  HoleNeighbours neighbours;
  neighbours.tributary = part(before) + part(after);
  const auto full = [](const Beside& of) {
    return of.is_hole ? of.distance : 2 * of.distance;
  };
  neighbours.space = std::min(full(before), full(after));
  return neighbours;
}

FastenerRow fastener_row(const Joint& joint,
                         const FastenerSpec& spec,
                         const DrillStation& station,
                         const HoleNeighbours& neighbours,
                         const JointLoad& load) {
  FastenerRow row;
  row.mark = station.mark;
  row.side = station.side;
  row.girth = station.girth;
  row.tributary = neighbours.tributary;
  const HoleSetting setting{station.edge_low, station.edge_top, neighbours.space};
  PlainWorking work;
  const HoleLoad on_hole = load_on_hole(work, load, neighbours.tributary);
  row.load = on_hole.shear;
  row.pull = on_hole.pull;
  const auto lip =
      laminate_modes(work, joint, spec, holed_lip(joint, spec, setting), setting.space);
  const auto hull = laminate_modes(work, joint, spec, holed_hull(joint, spec, setting),
                                   setting.space);
  row.bearing = std::min(lip.bearing, hull.bearing);
  row.shear_out = std::min(lip.shear_out, hull.shear_out);
  row.net_tension = std::min(lip.net_tension, hull.net_tension);
  row.pull_through = head_hold(work, joint, spec);
  if (spec.kind == FastenerKind::TappingScrew)
    row.pull_out = thread_hold(work, joint, spec);
  const auto known = metal_strength(joint.fastener.strength);
  const std::optional<MetalStrength> metal = known ? *known : std::nullopt;
  const FastenerStrength& own = joint.fastener.strength;
  if (own.shear_capacity)
    row.shank = own.shear_capacity;
  else if (metal && spec.tensile_mm2)
    row.shank = shank_shear(work, spec, *metal);
  if (own.pull_capacity)
    row.shank_pull = own.pull_capacity;
  else if (metal && spec.tensile_mm2)
    row.shank_pull = shank_pull(work, spec, *metal);
  const RowUse use = row_use(work, joint, row);
  row.governing = use.governing;
  row.utilisation = use.use;
  return row;
}

Result<FastenerStrengths> fastener_strengths(const Joint& joint,
                                             const Perimeter& perimeter,
                                             const Schedule& schedule,
                                             const JointLoads& loads) {
  assert(joint.loads);
  FastenerStrengths strengths;
  const auto metal = metal_strength(joint.fastener.strength);
  if (!metal) return tl::unexpected(metal.error());
  const auto& stations = schedule.stations;
  for (std::size_t i = 0; i < stations.size(); ++i) {
    const DrillStation& station = stations[i];
    strengths.rows.push_back(fastener_row(joint, schedule.fastener, station,
                                          hole_neighbours(perimeter, stations, i),
                                          loads.at(station.side, station.girth)));
    if (strengths.rows.back().utilisation > strengths.rows[strengths.worst].utilisation)
      strengths.worst = i;
  }
  strengths.left_out = modes_left_out(joint, schedule.fastener);
  return strengths;
}

std::optional<Length> carried_pitch(const Joint& joint,
                                    const FastenerSpec& spec,
                                    const DrillStation& station,
                                    const JointLoad& load) {
  if (!(load.along > 0 || load.across > 0 || load.off > 0)) return std::nullopt;
  const Length strip = 6 * spec.diameter;
  // beyond six shanks the capacities do not depend on the space
  const auto use_at = [&](Length space) {
    return fastener_row(joint, spec, station, {space, space}, load).utilisation;
  };
  const double at_strip = use_at(strip);
  if (!std::isfinite(at_strip)) return Length();
  return strip / at_strip;
}

std::string mode_words(FastenerMode mode) {
  switch (mode) {
    case FastenerMode::Shank:
      return "fastener sheared";
    case FastenerMode::ShankPull:
      return "fastener torn";
    case FastenerMode::Bearing:
      return "laminate crushed";
    case FastenerMode::ShearOut:
      return "laminate sheared out to its edge";
    case FastenerMode::NetTension:
      return "laminate torn across the hole";
    case FastenerMode::PullThrough:
      return "head pulled through";
    case FastenerMode::PullOut:
      break;
  }
  return "thread pulled out";
}

}  // namespace sheerlap
