#include "joint/schedule.h"

#include <utility>

#include "joint/schedule_checks.h"

namespace sheerlap {
namespace {

void add(Checks& checks, Checks more) {
  checks.insert(checks.end(), std::make_move_iterator(more.begin()),
                std::make_move_iterator(more.end()));
}

}  // namespace

Result<Schedule> schedule(const Joint& joint,
                          const Perimeter& perimeter,
                          const Layout& layout) {
  auto spec = fastener(joint.fastener);
  if (!spec) return tl::unexpected(spec.error());
  auto stations = drill_stations(joint, perimeter, layout, *spec);
  if (!stations) return tl::unexpected(stations.error());
  Schedule result;
  result.fastener = std::move(*spec);
  result.stations = std::move(*stations);
  result.jigs = jig_segments(perimeter, result.stations, joint.jig.length_max);
  for (const JigSegment& jig : result.jigs)
    for (std::size_t i = jig.first; i <= jig.last; ++i) {
      DrillStation& station = result.stations[i];
      if (!station.jig.empty()) continue;  // shared with the jig before
      station.jig = jig.name;
      station.jig_girth = station.girth - result.stations[jig.first].girth;
    }
  result.check_lines = check_lines(perimeter, result.stations, result.jigs);
  add(result.checks, station_checks(joint, layout, result.stations, result.fastener));
  add(result.checks, fastener_checks(result.fastener));
  add(result.checks,
      jig_checks(perimeter, result.stations, result.jigs, joint.jig.length_max));
  return result;
}

}  // namespace sheerlap
