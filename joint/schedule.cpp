#include "joint/schedule.h"

#include <fmt/format.h>

#include <utility>

#include "joint/schedule_checks.h"

namespace sheerlap {
namespace {

void add(Checks& checks, Checks more) {
  checks.insert(checks.end(), std::make_move_iterator(more.begin()),
                std::make_move_iterator(more.end()));
}

/// Names at each station the jigs that have it.
void assign_jigs(Schedule& made) {
  for (const JigSegment& jig : made.jigs)
    for (std::size_t i = jig.first; i <= jig.last; ++i) {
      DrillStation& station = made.stations[i];
      if (!station.jig.empty()) {
        station.next_jig = jig.name;
        continue;
      }
      station.jig = jig.name;
      station.jig_girth = station.girth - made.stations[jig.first].girth;
    }
}

}  // namespace

Result<Schedule> schedule(const Joint& joint,
                          const Perimeter& perimeter,
                          const Layout& layout) {
  auto spec = fastener(joint.fastener);
  if (!spec) return tl::unexpected(spec.error());
  auto stations = drill_stations(joint, perimeter, layout, *spec);
  if (!stations) return tl::unexpected(stations.error());
  if (!(longest_run(joint.jig) > Length()))
    return invalid_input(
        "jig.length_max",
        fmt::format("{:g} mm leaves nothing between the ends: they take a bush of {:g} "
                    "mm each",
                    joint.jig.length_max.in_mm(), joint.jig.bush.in_mm()));
  Schedule result;
  result.fastener = std::move(*spec);
  result.stations = std::move(*stations);
  result.jigs = jig_segments(perimeter, result.stations,
                             {longest_run(joint.jig), joint.layout.radius_min});
  assign_jigs(result);
  result.jig_pieces =
      jig_pieces(perimeter, result.stations, result.jigs, joint.lip.trim);
  result.setting_out =
      setting_out(joint, perimeter, layout, result.stations, result.fastener);
  result.datums = side_datums(perimeter);
  result.check_lines = check_lines(perimeter, result.stations, result.jigs);
  add(result.checks, station_checks(joint, layout, result.stations, result.fastener));
  add(result.checks, fastener_checks(result.fastener));
  add(result.checks, jig_checks(perimeter, result.stations, result.jigs, joint.jig));
  add(result.checks, bush_checks(joint.jig, result.fastener, layout.smallest_pitch));
  add(result.checks, bush_edge_checks(joint.jig, result.stations, result.jig_pieces));
  return result;
}

}  // namespace sheerlap
