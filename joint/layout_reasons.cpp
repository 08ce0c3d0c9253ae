#include "joint/layout_reasons.h"

#include <fmt/format.h>

#include <algorithm>

#include "joint/layout_workings.h"
#include "joint/reasons/found.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

Explanation run_reason(const LayoutSide& side, std::size_t index) {
  const LayoutRun& run = side.runs[index];
  WrittenWorking work;
  run_pitch(work, run.from, run.to, run.spaces);
  const std::string any = "layout.sides.*.runs.*.", stepped = "setting_out.runs.*.";
  return {fmt::format("layout.sides.{}.runs.{}.pitch", side_word(side.name), index),
          fmt::format("pitch on {}, girth {}", side_word(side.name),
                      worded_range(run.from, run.to)),
          work.release(),
          {{any + "from", "s_from"},
           {any + "to", "s_to"},
           {any + "spaces", "n"},
           {any + "pitch", "p"},
           {stepped + "from", "s_from"},
           {stepped + "to", "s_to"},
           {stepped + "spaces", "n"},
           {stepped + "pitch", "p"}}};
}

void add_bridge(Explanations& reasons, const LayoutSide& side, const Bridge& bridge) {
  const std::string any = "layout.sides.*.bridged.*.";
  const Origin held = Origin::of_joint("where a hole may still be, or the side's end");
  WrittenWorking work;
  work.given({"s_from", "girth it begins at", "mm"}, bridge.from.in_mm(), held);
  work.given({"s_to", "girth it ends at", "mm"}, bridge.to.in_mm(), held);
  work.given({"p_limit", "limit that is not kept", "mm"}, bridge.limit.in_mm(),
             Origin::of_joint("the limits of the ground the space covers"));
  work.found(bridged_words, bridge.pitch.in_mm());
  reasons.push_back(
      {fmt::format("layout.sides.{}.bridged.0.pitch", side_word(side.name)),
       fmt::format("space on {} that cannot keep its limit: {}", side_word(side.name),
                   bridge.what),
       work.release(),
       {{any + "from", "s_from"},
        {any + "to", "s_to"},
        {any + "limit", "p_limit"},
        {any + "pitch", "p_bridge"}}});
}

/// The search's own figures, told of the first side that has holes.
void add_found(Explanations& reasons, const Layout& layout, const LayoutSide& side) {
  const std::string at = "layout.sides." + side_word(side.name);
  const std::string any = "layout.sides.*.";
  reasons.push_back(found_reason(hole_count_words,
                                 static_cast<double>(side.girths.size()), at + ".count",
                                 {any + "count"}));
  reasons.push_back(found_reason(hole_girth_words, side.girths.front().in_mm(),
                                 at + ".girths.0",
                                 {any + "girths.*", any + "why.*.girth",
                                  "schedule.*.girth", "jigs.*.from_start"}));
  reasons.push_back(found_reason(largest_space_words, layout.largest_pitch.in_mm(),
                                 "layout.largest_pitch",
                                 {"layout.largest_pitch", any + "largest_pitch"}));
  reasons.push_back(found_reason(smallest_space_words, layout.smallest_pitch.in_mm(),
                                 "layout.smallest_pitch",
                                 {"layout.smallest_pitch", any + "smallest_pitch"}));
}

}  // namespace

Explanations layout_reasons(const Layout& layout) {
  WrittenWorking all;
  holes_of_all(all, layout.sides);
  Explanations reasons{{"layout.count",
                        "holes of the joint",
                        all.release(),
                        {{"layout.count", "n_all"}}}};
  const auto first =
      std::find_if(layout.sides.begin(), layout.sides.end(),
                   [](const LayoutSide& side) { return !side.girths.empty(); });
  if (first != layout.sides.end()) add_found(reasons, layout, *first);
  for (const LayoutSide& side : layout.sides)
    for (std::size_t i = 0; i < side.runs.size(); ++i)
      if (side.runs[i].spaces > 1) reasons.push_back(run_reason(side, i));
  const auto bridged =
      std::find_if(layout.sides.begin(), layout.sides.end(),
                   [](const LayoutSide& side) { return !side.bridged.empty(); });
  if (bridged != layout.sides.end())
    add_bridge(reasons, *bridged, bridged->bridged.front());
  return reasons;
}

}  // namespace sheerlap
