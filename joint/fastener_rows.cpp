#include "joint/fastener_rows.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <utility>

#include "joint/fastener_metal.h"
#include "joint/fastener_modes.h"
#include "joint/fastener_use.h"
#include "joint/mechanics/bracketed_root.h"

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

/// Where a hole of the other half on the centreline would be for this one: the first or
/// last of port for starboard's hole there, and the other way round.
const DrillStation* over_centreline(const PerimeterSide& side,
                                    const std::vector<DrillStation>& stations,
                                    Length girth,
                                    bool before) {
  if ((before ? side.start : side.end) != SideEnd::Smooth) return nullptr;
  const Length centre = before ? Length() : side.drill_line_length;
  const bool on_centre = girth == centre;
  if (side.name == SideName::Starboard && !on_centre) return nullptr;
  const DrillStation* found = nullptr;
  for (const DrillStation& station : stations) {
    if (side.name == SideName::Port &&
        !(station.side == SideName::Starboard && station.girth == centre))
      continue;
    if (side.name == SideName::Starboard && station.side != SideName::Port) continue;
    if (found == nullptr || !before) found = &station;
  }
  return found;
}

Beside beside(const PerimeterSide& side,
              const std::vector<DrillStation>& stations,
              std::size_t hole,
              bool before,
              Length port_length) {
  const Length girth = stations[hole].girth;
  const auto away = [&](Length other) {
    return before ? girth - other : other - girth;
  };
  Length border = before ? Length() : side.drill_line_length;
  // a hole on a border goes by what lies beyond it
  for (const Length one : borders_of(side)) {
    if (before && one < girth) border = std::max(border, one);
    if (!before && one > girth) border = std::min(border, one);
  }
  const bool first = before ? hole == 0 : hole + 1 == stations.size();
  const DrillStation* next = first ? nullptr : &stations[before ? hole - 1 : hole + 1];
  if (next != nullptr && next->side == side.name && away(next->girth) <= away(border))
    return {away(next->girth), true};
  const Length centre = before ? Length() : side.drill_line_length;
  if (border == centre)
    if (const DrillStation* other = over_centreline(side, stations, girth, before)) {
      // port's hole to starboard's on the centreline, or from that one to port's
      if (side.name == SideName::Port) return {away(centre), true};
      return {before ? other->girth : port_length - other->girth, true};
    }
  return {away(border), false};
}

/// The mean load over what a hole carries, on the other half too where it stands on the
/// centreline.
JointLoad mean_load(const PerimeterSide& side,
                    const JointLoads& loads,
                    std::pair<Length, Length> reach,
                    Length port_length) {
  const auto [from, to] = reach;
  const Length length = side.drill_line_length;
  const Length start = std::max(from, Length()), end = std::min(to, length);
  JointLoad sum;
  const auto add = [&](SideName name, Length one, Length other) {
    if (!(other > one)) return;
    const JointLoad load = loads.mean(name, one, other);
    const double part = (other - one) / (to - from);
    sum.along += part * load.along;
    sum.across += part * load.across;
    sum.off += part * load.off;
  };
  if (!(to > from)) return loads.at(side.name, from);
  add(side.name, start, end);
  add(SideName::Port, Length(), -from);
  add(SideName::Port, port_length - (to - length), port_length);
  return sum;
}

}  // namespace

HoleNeighbours hole_neighbours(const Perimeter& perimeter,
                               const std::vector<DrillStation>& stations,
                               std::size_t hole,
                               const JointLoads& loads) {
  const DrillStation& station = stations[hole];
  const PerimeterSide& side = *perimeter.side(station.side);
  const Length port = perimeter.side(SideName::Port)->drill_line_length;
  const Beside before = beside(side, stations, hole, true, port);
  const Beside after = beside(side, stations, hole, false, port);
  const auto part = [](const Beside& of) {
    return of.is_hole ? of.distance / 2 : of.distance;
  };
  HoleNeighbours neighbours;
  neighbours.tributary = part(before) + part(after);
  neighbours.load = mean_load(
      side, loads, {station.girth - part(before), station.girth + part(after)}, port);
  const auto full = [](const Beside& of) {
    return of.is_hole ? of.distance : 2 * of.distance;
  };
  neighbours.space = std::min(full(before), full(after));
  return neighbours;
}

FastenerRow fastener_row(const Joint& joint,
                         const FastenerSpec& spec,
                         const DrillStation& station,
                         const HoleNeighbours& neighbours) {
  FastenerRow row;
  row.mark = station.mark;
  row.side = station.side;
  row.girth = station.girth;
  row.tributary = neighbours.tributary;
  const HoleSetting setting{station.edge_low, station.edge_top, neighbours.space};
  PlainWorking work;
  const HoleLoad on_hole = load_on_hole(work, neighbours.load, neighbours.tributary);
  row.load = on_hole.shear;
  row.pull = on_hole.pull;
  const auto lip =
      laminate_modes(work, joint, spec, holed_lip(joint, spec, setting), setting.space);
  const auto hull = laminate_modes(work, joint, spec, holed_hull(joint, spec, setting),
                                   setting.space);
  row.bearing = std::min(lip.bearing, hull.bearing);
  row.shear_out = std::min(lip.shear_out, hull.shear_out);
  row.net_tension = std::min(lip.net_tension, hull.net_tension);
  row.pull_through = head_hold(work, joint, spec, joint.lip, "lip");
  if (spec.kind == FastenerKind::Bolt)
    row.pull_through =
        std::min(*row.pull_through, head_hold(work, joint, spec, joint.hull, "hull"));
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
    strengths.rows.push_back(
        fastener_row(joint, schedule.fastener, stations[i],
                     hole_neighbours(perimeter, stations, i, loads)));
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
  const auto use_at = [&](Length space) {
    return fastener_row(joint, spec, station, {space, space, load}).utilisation;
  };
  // beyond six shanks the capacities do not depend on the space
  const Length strip = 6 * spec.diameter;
  const double at_strip = use_at(strip);
  if (at_strip <= 1) return strip / at_strip;
  // below, the strip that tears grows narrower with the space
  constexpr int steps = 64;
  Length over = strip;
  for (int i = steps - 1; i > 0; --i) {
    const Length space = strip * (static_cast<double>(i) / steps);
    if (use_at(space) <= 1) {
      const double root =
          bracketed_root([&](double at_mm) { return use_at(Length::mm(at_mm)) - 1; },
                         space.in_mm(), over.in_mm());
      return Length::mm(root);
    }
    over = space;
  }
  return Length();
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
