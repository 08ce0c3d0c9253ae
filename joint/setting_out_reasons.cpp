#include "joint/setting_out_reasons.h"

#include <algorithm>

#include "joint/setting_out_workings.h"

namespace sheerlap {
namespace {

void add_run(Explanations& reasons, const SteppedRun& run, Length step) {
  WrittenWorking stepped, rounded;
  stepped.found(stepped_words, run.stepped.in_mm());
  reasons.push_back({"setting_out.runs.0.stepped",
                     "end of a run stepped off with dividers, the first run's",
                     stepped.release(),
                     {{"setting_out.runs.*.stepped", "d_step"}}});
  rounded_error(rounded, run.run, step);
  reasons.push_back({"setting_out.runs.0.rounded",
                     "end of a run set out with the pitch rounded, the first run's",
                     rounded.release(),
                     {{"setting_out.runs.*.rounded", "d_round"}}});
}

void add_apart(Explanations& reasons, const Joint& joint, const Schedule& schedule) {
  const ApartHoles& apart = schedule.setting_out.apart;
  const std::string at = "setting_out.apart.";
  WrittenWorking worst, root, worst_hole, root_hole, lean;
  worst_off(worst, apart);
  reasons.push_back({at + "off_worst",
                     "how far a hole in the lip and one in the hull may be apart",
                     worst.release(),
                     {{at + "off_worst", "d_worst"},
                      {at + "along.*.off", "e_1"},
                      {at + "across.*.off", "f_1"},
                      {at + "leaning.*.off", "l_1"}}});
  root_sum_off(root, apart);
  reasons.push_back({at + "off_root_sum",
                     "the same, errors that do not depend on each other",
                     root.release(),
                     {{at + "off_root_sum", "d_root"}}});
  hole_for(worst_hole, schedule.fastener, apart.off_worst);
  reasons.push_back({at + "hole_worst",
                     "hole for parts drilled apart, the worst",
                     worst_hole.release(),
                     {{at + "hole_worst", "d_hole"}}});
  hole_for(root_hole, schedule.fastener, apart.off_root_sum);
  reasons.push_back({at + "hole_root_sum",
                     "the same, errors that do not depend on each other",
                     root_hole.release(),
                     {{at + "hole_root_sum", "d_hole"}}});
  exit_shift_of(lean, joint.lip.thickness, bit_out_of_square);
  reasons.push_back({at + "leaning.0.off",
                     "a bit out of square in the lip",
                     lean.release(),
                     {{at + "leaning.*.off", "d_exit"}}});
}

}  // namespace

Explanations setting_out_reasons(const Joint& joint, const Schedule& schedule) {
  const SettingOut& errors = schedule.setting_out;
  Explanations reasons;
  WrittenWorking running, leaning;
  running_error(running, joint.layout.round_to);
  reasons.push_back({"setting_out.running",
                     "holes off by running dimensions",
                     running.release(),
                     {{"setting_out.running", "d_run"}}});
  const auto thickest = std::find_if(
      schedule.stations.begin(), schedule.stations.end(),
      [&](const DrillStation& one) { return one.mark == errors.thickest; });
  if (thickest != schedule.stations.end()) {
    exit_shift_of(leaning, thickest->stack, bit_out_of_square);
    reasons.push_back({"setting_out.leaning_exit",
                       "exit of a hole by a bit out of square, at " + thickest->mark,
                       leaning.release(),
                       {{"setting_out.leaning_exit", "d_exit"}}});
  }
  if (!errors.runs.empty())
    add_run(reasons, errors.runs.front(), joint.layout.round_to);
  add_apart(reasons, joint, schedule);
  return reasons;
}

}  // namespace sheerlap
