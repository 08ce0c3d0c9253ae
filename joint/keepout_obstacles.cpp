#include "joint/keepout_obstacles.h"

#include <fmt/format.h>

#include <utility>

namespace sheerlap {
namespace {

/// An end of a side, and whether it is the start.
struct SideTip {
  const PerimeterSide* side;
  bool start;
};

/// The tip that goes on from one; none where the joint stops.
SideTip next_tip(const Perimeter& perimeter, const PerimeterSide& side, bool start) {
  const bool transom = side.name == SideName::Transom;
  if (transom)
    return {perimeter.side(start ? SideName::Starboard : SideName::Port), false};
  const SideName other =
      side.name == SideName::Starboard ? SideName::Port : SideName::Starboard;
  if (start)
    return {side.start == SideEnd::End ? nullptr : perimeter.side(other), true};
  // an open joint stops at its transom corners
  if (!perimeter.hull->curve().closed()) return {nullptr, false};
  if (const auto* across = perimeter.side(SideName::Transom))
    return {across, side.name == SideName::Starboard};
  return {perimeter.side(other), false};
}

/// What a keep-out on one side leaves free of holes on the next one.
void add_spill(const Perimeter& perimeter,
               const PerimeterSide& from,
               const Obstacle& obstacle,
               const PerimeterSide& side,
               std::vector<Obstacle>& obstacles) {
  for (const bool start : {true, false}) {
    const Length over = start ? -obstacle.from : obstacle.to - from.drill_line_length;
    const SideTip tip = next_tip(perimeter, from, start);
    if (over <= Length() || tip.side != &side) continue;
    const Length length = side.drill_line_length;
    obstacles.push_back({tip.start ? -over : length - over,
                         tip.start ? over : length + over, obstacle.clear,
                         obstacle.what});
  }
}

}  // namespace

Result<std::vector<Obstacle>> keepout_obstacles(const Joint& joint,
                                                const Perimeter& perimeter,
                                                const PerimeterSide& side) {
  std::vector<Obstacle> obstacles;
  Errors errors;
  for (std::size_t i = 0; i < joint.keepouts.size(); ++i) {
    const KeepOut& keepout = joint.keepouts[i];
    const std::string where = fmt::format("keepout[{}]", i);
    for (const PerimeterSide& stands : perimeter.sides) {
      if (!stands_on(keepout.stretch.side, stands.name)) continue;
      const auto girths =
          stretch_on(stands, keepout.stretch, where, "keep-out " + keepout.what);
      if (!girths) {
        if (&stands == &side)
          errors.insert(errors.end(), girths.error().begin(), girths.error().end());
        continue;
      }
      const Obstacle obstacle{girths->first - keepout.clear,
                              girths->second + keepout.clear, keepout.clear,
                              keepout.what};
      if (&stands == &side)
        obstacles.push_back(obstacle);
      else
        add_spill(perimeter, stands, obstacle, side, obstacles);
    }
  }
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  return obstacles;
}

}  // namespace sheerlap
