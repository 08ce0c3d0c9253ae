#include "joint/documents/hole_explanations.h"

#include <algorithm>
#include <cassert>

#include "joint/fastener_rows.h"
#include "joint/joint_loads.h"

namespace sheerlap {

Explanations hole_explanations(const Job& job, const std::string& mark) {
  if (!job.strength) return {};
  const auto& stations = job.schedule->stations;
  const auto found =
      std::find_if(stations.begin(), stations.end(),
                   [&](const DrillStation& station) { return station.mark == mark; });
  assert(found != stations.end());
  const auto loads = JointLoads::of(job.joint, job.perimeter);
  assert(loads);  // the strength was worked with them
  const auto hole = static_cast<std::size_t>(found - stations.begin());
  return fastener_reasons(job.joint, job.schedule->fastener, *found,
                          hole_neighbours(job.perimeter, stations, hole, *loads),
                          "strength.fasteners." + mark);
}

}  // namespace sheerlap
