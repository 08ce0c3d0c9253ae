#include "joint/schedule_reasons.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "joint/drill_workings.h"
#include "joint/fastener_length.h"
#include "joint/jig_reasons.h"
#include "joint/setting_out_reasons.h"

namespace sheerlap {
namespace {

/// Adds the reasons of one station, each under its own key.
class StationReasons {
 public:
  StationReasons(Explanations& reasons, const DrillStation& station)
      : reasons_(reasons), station_(station) {}

  void add(const std::string& key,
           const std::string& what,
           WrittenWorking& work,
           std::vector<Told> also = {}) {
    std::vector<Reason> steps = work.release();
    also.insert(also.begin(), {"schedule.*." + key, steps.back().letters});
    reasons_.push_back({fmt::format("schedule.{}.{}", station_.mark, key),
                        fmt::format("{}, at {}", what, station_.mark), std::move(steps),
                        std::move(also)});
  }
  void add_found(const std::string& key,
                 const FoundWords& words,
                 double value,
                 std::vector<Told> also = {}) {
    WrittenWorking work;
    work.found(words, value);
    add(key, std::string(words.figure.what), work, std::move(also));
  }

 private:
  Explanations& reasons_;
  const DrillStation& station_;
};

void add_places(StationReasons& reasons,
                const DrillStation& station,
                const DrillStation* before) {
  reasons.add_found("hull_girth", hull_girth_words, station.hull_girth.in_mm());
  WrittenWorking pitch;
  girth_between(pitch, before ? before->girth : Length(), station.girth);
  reasons.add("pitch", "girth from the hole before, or from the side's start", pitch);
  if (before && station.chord) {
    WrittenWorking chord;
    straight_between(chord, before->point, station.point);
    reasons.add("chord", "straight from the hole before", chord);
  }
  reasons.add_found("x", hole_x_words, station.point.x(),
                    {{"schedule_datums.*.x", "x"}});
  reasons.add_found("y", hole_y_words, station.point.y(),
                    {{"schedule_datums.*.y", "y"}});
  reasons.add_found("z", hole_z_words, station.point.z(),
                    {{"schedule_datums.*.z", "z"}});
  reasons.add_found("ax", axis_words, station.axis.x(),
                    {{"schedule.*.ay", "a_x"}, {"schedule.*.az", "a_x"}});
}

void add_edges(StationReasons& reasons,
               const Joint& joint,
               const DrillStation& station) {
  WrittenWorking low, top;
  edge_left(low, edge_low_words,
            low.found(low_edge_words, (station.edge_low + joint.lip.trim).in_mm()),
            joint.lip.trim, "lip.trim");
  edge_left(top, edge_top_words,
            top.found(top_edge_words, (station.edge_top + joint.hull.trim).in_mm()),
            joint.hull.trim, "hull.trim");
  reasons.add("edge_low", "material left to the lip's low edge", low);
  reasons.add("edge_top", "material left to the hull's top edge", top);
}

void add_depths(StationReasons& reasons,
                const Joint& joint,
                const Perimeter& perimeter,
                const DrillStation& station) {
  const BitWay way = bit_way(joint, perimeter, station);
  WrittenWorking stack, through, lip;
  reasons.add_found("gap", hole_gap_words, station.gap.in_mm());
  stack_along(stack, way, station.gap.in_mm());
  reasons.add("stack", "what the bit goes through", stack);
  through_bit_depth(through, station.stack);
  reasons.add("drill_depth", "depth stop of the bit that goes through", through);
  if (!station.lip_depth) return;
  lip_bit_depth(lip, way);
  reasons.add("lip_depth", "depth stop of the bit that opens the lip", lip);
}

/// The source that a fastener's value was taken from; empty if it has none.
std::string source_of(const FastenerSpec& spec, std::string_view start) {
  const auto found = std::find_if(
      spec.values.begin(), spec.values.end(), [&](const FastenerValue& value) {
        return std::string_view(value.what).starts_with(start);
      });
  return found == spec.values.end() ? "the fastener's table" : found->source;
}

void add_fastener(StationReasons& reasons,
                  const FastenerSpec& spec,
                  const DrillStation& station) {
  WrittenWorking lip, hull, relief, length;
  lip.given({"d_lip", "hole in the lip", "mm"}, station.lip_hole.in_mm(),
            Origin::of_joint(source_of(spec, "hole in")));
  reasons.add("lip_hole", "hole in the lip", lip, {{"jigs.*.bushes.*.bore", "d_lip"}});
  if (station.hull_pilot) {
    hull.given({"d_pilot", "pilot hole in the hull", "mm"}, station.hull_pilot->in_mm(),
               Origin::of_joint(source_of(spec, "pilot hole")));
    reasons.add("hull_pilot", "pilot hole in the hull", hull);
  }
  if (spec.head == HeadKind::Countersunk)
    relief.given({"d_sink", "countersink, as wide as the head", "mm"},
                 station.countersink.in_mm(),
                 Origin::of_joint(source_of(spec, "head")));
  else
    relieved_hole(relief, station.lip_hole, station.countersink - station.lip_hole);
  reasons.add("countersink", "countersink on the lip's outer face", relief);
  if (!station.length) return;
  least_length(length, spec, station.stack);
  length.found(serving_length_words, station.length->in_mm());
  reasons.add("length", "length of the fastener", length);
}

}  // namespace

std::size_t told_station(const std::vector<DrillStation>& stations) {
  std::size_t told = 0;
  bool has_before = false;
  for (std::size_t i = 0; i < stations.size(); ++i) {
    const bool follows = i > 0 && stations[i - 1].side == stations[i].side;
    if (follows < has_before || !drillable(stations[i])) continue;
    if (follows > has_before || stations[i].stack > stations[told].stack) told = i;
    has_before = follows;
  }
  return told;
}

Explanations schedule_reasons(const Joint& joint,
                              const Perimeter& perimeter,
                              const Schedule& schedule) {
  Explanations reasons;
  if (!schedule.stations.empty()) {
    const std::size_t told = told_station(schedule.stations);
    const DrillStation& station = schedule.stations[told];
    const bool follows = told > 0 && schedule.stations[told - 1].side == station.side;
    StationReasons of(reasons, station);
    add_places(of, station, follows ? &schedule.stations[told - 1] : nullptr);
    add_edges(of, joint, station);
    add_depths(of, joint, perimeter, station);
    add_fastener(of, schedule.fastener, station);
  }
  for (Explanations more : {check_line_reasons(schedule), jig_reasons(joint, schedule),
                            setting_out_reasons(joint, schedule)})
    for (Explanation& one : more) reasons.push_back(std::move(one));
  return reasons;
}

}  // namespace sheerlap
