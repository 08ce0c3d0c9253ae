#include "joint/layout_stretches.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "joint/keepout_obstacles.h"
#include "joint/tight_bends.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

void append(Errors& errors, const Errors& more) {
  errors.insert(errors.end(), more.begin(), more.end());
}

/// The name of a zone in a message.
std::string name_of(const std::string& what) {
  return what.empty() ? "a zone" : "zone " + what;
}

/// Whether no space keeps the limits of both zones where they overlap.
bool exclude(const SpaceZone& a, const SpaceZone& b) {
  return std::min(a.to_mm, b.to_mm) > std::max(a.from_mm, b.from_mm) &&
         std::max(a.limits.least_mm, b.limits.least_mm) >
             std::min(a.limits.greatest_mm, b.limits.greatest_mm);
}

Errors add_zones(const Joint& joint,
                 const PerimeterSide& side,
                 LayoutGround& ground,
                 std::vector<SpaceZone>& zones) {
  Errors errors;
  for (std::size_t i = 0; i < joint.zones.size(); ++i) {
    const Zone& zone = joint.zones[i];
    if (!stands_on(zone.stretch.side, side.name)) continue;
    const std::string where = fmt::format("zone[{}]", i);
    const auto girths = stretch_on(side, zone.stretch, where, name_of(zone.what));
    if (!girths) {
      append(errors, girths.error());
      continue;
    }
    const SpaceLimits limits{zone.pitch_min.value_or(joint.layout.pitch_min).in_mm(),
                             zone.pitch_max.value_or(joint.layout.pitch_max).in_mm()};
    if (!(limits.least_mm <= limits.greatest_mm)) {
      errors.push_back(
          {ErrorKind::InvalidInput,
           where + (zone.pitch_max ? ".pitch_max" : ".pitch_min"),
           fmt::format("the zone's pitches run from {:.1f} to {:.1f} mm: its pitch_max "
                       "is to be no less than the pitch_min that holds there",
                       limits.least_mm, limits.greatest_mm)});
      continue;
    }
    const SpaceZone found{girths->first.in_mm(), girths->second.in_mm(), limits};
    for (std::size_t k = 0; k < zones.size(); ++k)
      if (exclude(zones[k], found))
        errors.push_back(
            {ErrorKind::InvalidInput, where,
             fmt::format("{} and {} overlap on {}, and no pitch keeps the limits of "
                         "both, {:.1f} to {:.1f} mm and {:.1f} to {:.1f} mm: part "
                         "them, or let their limits meet",
                         name_of(ground.named.zones[k].what), name_of(zone.what),
                         side_word(side.name), zones[k].limits.least_mm,
                         zones[k].limits.greatest_mm, limits.least_mm,
                         limits.greatest_mm)});
    zones.push_back(found);
    ground.named.zones.push_back({girths->first, girths->second, zone.what});
  }
  return errors;
}

/// Whether a place given for the other hand lies on the centreline, at a smooth end: it
/// is then a place of this side too.
bool on_the_centreline(const Perimeter& perimeter,
                       const PerimeterSide& side,
                       const FixedPlace& place) {
  if (side.name == SideName::Transom || place.side == SideChoice::Transom) return false;
  const SideName hand =
      side.name == SideName::Port ? SideName::Starboard : SideName::Port;
  const PerimeterSide& other = *perimeter.side(hand);
  if (!stands_on(place.side, hand)) return false;
  const auto girth = place_on(other, place, "");
  return girth && ((other.start == SideEnd::Smooth && *girth == Length()) ||
                   (other.end == SideEnd::Smooth && *girth == other.drill_line_length));
}

Errors add_places(const Joint& joint,
                  const Perimeter& perimeter,
                  const PerimeterSide& side,
                  LayoutGround& ground) {
  Errors errors;
  for (std::size_t i = 0; i < joint.places.size(); ++i) {
    const FixedPlace& place = joint.places[i];
    if (!stands_on(place.side, side.name) && !on_the_centreline(perimeter, side, place))
      continue;
    const std::string where = fmt::format("place[{}]", i);
    const std::string key = where + (place.by_x ? ".x" : ".at");
    const auto girth = place_on(side, place, where);
    if (!girth) {
      append(errors, girth.error());
      continue;
    }
    const auto inside = [&](const auto& stretch) {
      return stretch.from < *girth && *girth < stretch.to;
    };
    const auto& obstacles = ground.named.obstacles;
    const auto in = std::find_if(obstacles.begin(), obstacles.end(), inside);
    const auto opening = std::find_if(side.openings.begin(), side.openings.end(),
                                      [&](const OpeningSpan& span) {
                                        return span.from <= *girth && *girth <= span.to;
                                      });
    if (in != obstacles.end())
      errors.push_back(
          {ErrorKind::InvalidInput, key,
           fmt::format("{} at {:.1f} mm on {} stands in the keep-out {}, {:.1f} to "
                       "{:.1f} mm with its clearance: move the one or the other",
                       place.what, girth->in_mm(), side_word(side.name), in->what,
                       in->from.in_mm(), in->to.in_mm())});
    else if (opening != side.openings.end())
      errors.push_back({ErrorKind::InvalidInput, key,
                        fmt::format("{} at {:.1f} mm on {} stands in the opening {} or "
                                    "on its edge: there is no joint there",
                                    place.what, girth->in_mm(), side_word(side.name),
                                    opening->what)});
    else
      ground.named.places.push_back({*girth, place.what});
  }
  return errors;
}

/// Tight bends keep holes away, but for those the joint file asks for.
void add_bends(const Joint& joint,
               const Perimeter& perimeter,
               const PerimeterSide& side,
               SideObstacles& named) {
  for (const auto& [from, to] :
       tight_bends(side.drill_line, corner_knots(perimeter), joint.layout.radius_min)) {
    std::vector<Length> cuts{from, to};
    for (const NamedPlace& place : named.places)
      if (from < place.at && place.at < to) cuts.push_back(place.at);
    std::sort(cuts.begin(), cuts.end());
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i)
      named.obstacles.push_back({cuts[i], cuts[i + 1], Length(), "tight bend", true});
  }
}

std::string tip_name(const PerimeterSide& side, bool start) {
  if (side.name == SideName::Transom)
    return start ? "the starboard corner" : "the port corner";
  const SideEnd end = start ? side.start : side.end;
  if (end == SideEnd::End) return "the end of the joint";
  if (start) return end == SideEnd::Smooth ? "the bow centreline" : "the stem";
  return end == SideEnd::Smooth ? "the stern centreline" : "the transom corner";
}

/// A point at which a stretch ends or starts.
struct Border {
  double at_mm;
  std::string name;
  bool mirrored;
};

StretchEnd stretch_end(const Border& border, const LayoutRules& rules) {
  return {border.mirrored, rules.end_min.in_mm(), rules.end_max.in_mm()};
}

LayoutStretch stretch_between(const Border& start,
                              const Border& end,
                              const LayoutGround& ground,
                              const std::vector<SpaceZone>& zones,
                              const LayoutRules& rules) {
  LayoutStretch stretch;
  stretch.start_name = start.name;
  stretch.end_name = end.name;
  SpacingProblem& problem = stretch.problem;
  problem.from_mm = start.at_mm;
  problem.to_mm = end.at_mm;
  problem.start = stretch_end(start, rules);
  problem.end = stretch_end(end, rules);
  problem.limits = {rules.pitch_min.in_mm(), rules.pitch_max.in_mm()};
  const auto meets = [&](double from, double to) {
    return from < end.at_mm && to > start.at_mm;
  };
  for (const SpaceZone& zone : zones)
    if (meets(zone.from_mm, zone.to_mm)) problem.zones.push_back(zone);
  for (const Obstacle& obstacle : ground.named.obstacles)
    if (meets(obstacle.from.in_mm(), obstacle.to.in_mm()))
      problem.forbidden.push_back({obstacle.from.in_mm(), obstacle.to.in_mm()});
  // a place on a corner stands in the stretch that ends there
  const bool first = problem.from_mm == 0;
  for (const NamedPlace& place : ground.named.places)
    if ((place.at.in_mm() > start.at_mm || (first && place.at.in_mm() == 0)) &&
        place.at.in_mm() <= end.at_mm)
      problem.fixed_mm.push_back(place.at.in_mm());
  return stretch;
}

/// The stretches as pairs of borders, by girth.
std::vector<std::pair<Border, Border>> borders(const PerimeterSide& side) {
  const double length = side.drill_line_length.in_mm();
  struct Break {
    double from_mm, to_mm;
    std::string before, after;
  };
  std::vector<Break> breaks;
  for (const InnerCorner& corner : side.corners) {
    const std::string name = "the corner at girth " + worded(corner.girth);
    breaks.push_back({corner.girth.in_mm(), corner.girth.in_mm(), name, name});
  }
  for (const OpeningSpan& opening : side.openings) {
    const std::string name =
        opening.what.empty() ? "the opening" : "the " + opening.what;
    breaks.push_back({opening.from.in_mm(), opening.to.in_mm(), name, name});
  }
  std::sort(breaks.begin(), breaks.end(),
            [](const Break& a, const Break& b) { return a.from_mm < b.from_mm; });
  std::vector<std::pair<Border, Border>> result;
  Border start{0, tip_name(side, true), side.start == SideEnd::Smooth};
  for (const Break& gap : breaks) {
    if (gap.from_mm > start.at_mm)
      result.emplace_back(start, Border{gap.from_mm, gap.before, false});
    if (gap.to_mm >= start.at_mm) start = {gap.to_mm, gap.after, false};
  }
  if (length > start.at_mm)
    result.emplace_back(
        start, Border{length, tip_name(side, false), side.end == SideEnd::Smooth});
  return result;
}

}  // namespace

Result<LayoutGround> layout_ground(const Joint& joint,
                                   const Perimeter& perimeter,
                                   const PerimeterSide& side) {
  LayoutGround ground;
  std::vector<SpaceZone> zones;
  auto keepouts = keepout_obstacles(joint, perimeter, side);
  Errors errors = keepouts ? Errors() : keepouts.error();
  if (keepouts) ground.named.obstacles = std::move(*keepouts);
  append(errors, add_zones(joint, side, ground, zones));
  append(errors, add_places(joint, perimeter, side, ground));
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  add_bends(joint, perimeter, side, ground.named);
  for (const auto& [start, end] : borders(side))
    ground.stretches.push_back(
        stretch_between(start, end, ground, zones, joint.layout));
  return ground;
}

}  // namespace sheerlap
