#include <utility>

#include "joint/fastener_metal.h"
#include "joint/fastener_modes.h"
#include "joint/fastener_rows.h"
#include "joint/fastener_use.h"

namespace sheerlap {

Explanations fastener_reasons(const Joint& joint,
                              const FastenerSpec& spec,
                              const DrillStation& station,
                              const HoleNeighbours& neighbours,
                              const std::string& figure) {
  const FastenerRow row = fastener_row(joint, spec, station, neighbours);
  const HoleSetting setting{station.edge_low, station.edge_top, neighbours.space};
  Explanations reasons;
  WrittenWorking on_hole, lip, hull, head, metal;
  load_on_hole(on_hole, neighbours.load, neighbours.tributary);
  reasons.push_back({figure + ".load", "load on the hole", on_hole.release()});
  laminate_modes(lip, joint, spec, holed_lip(joint, spec, setting), setting.space);
  reasons.push_back(
      {figure + ".lip", "what the lip carries at the hole", lip.release()});
  laminate_modes(hull, joint, spec, holed_hull(joint, spec, setting), setting.space);
  reasons.push_back(
      {figure + ".hull", "what the hull carries at the hole", hull.release()});
  head_hold(head, joint, spec, joint.lip, "lip");
  reasons.push_back(
      {figure + ".pull_through", "what holds the head on the lip", head.release()});
  if (spec.kind == FastenerKind::Bolt) {
    WrittenWorking washer;
    head_hold(washer, joint, spec, joint.hull, "hull");
    reasons.push_back({figure + ".pull_through_hull",
                       "what holds the nut's washer on the hull", washer.release()});
  }
  if (spec.kind == FastenerKind::TappingScrew) {
    WrittenWorking thread;
    thread_hold(thread, joint, spec);
    reasons.push_back(
        {figure + ".pull_out", "what holds the thread in the hull", thread.release()});
  }
  const auto strength = metal_strength(joint.fastener.strength);
  if (strength && *strength && spec.tensile_mm2) {
    shank_shear(metal, spec, **strength);
    shank_pull(metal, spec, **strength);
    reasons.push_back(
        {figure + ".shank", "what the metal itself carries", metal.release()});
  }
  WrittenWorking use;
  if (weakest(shear_modes(row)).second > 0 && weakest(pull_modes(row)).second > 0) {
    hole_use(use, joint, row);
    reasons.push_back({figure + ".utilisation", "what is used, shear and pull together",
                       use.release()});
  }
  return reasons;
}

}  // namespace sheerlap
