#include "joint/adhesive_reasons.h"

#include <string>
#include <utility>

#include "joint/mean_gap.h"
#include "joint/reasons/working.h"

namespace sheerlap {
namespace {

/// The amounts of one boat: volume, packs and mass.
void add_amounts(Explanations& reasons,
                 const Adhesive& adhesive,
                 const AdhesiveAmounts& amounts,
                 const std::string& at) {
  WrittenWorking work;
  const auto boat = boat_adhesive(work, amounts.bead, adhesive);
  reasons.push_back({at + ".boat_volume",
                     "adhesive and packs of one boat",
                     work.release(),
                     {{at + ".packs", "n_packs"},
                      {at + ".nozzles", "n_packs"},
                      {at + ".bead_volume", "V_bead"},
                      {at + ".boat_volume", "V_boat"}}});
  if (!adhesive.density) return;
  WrittenWorking mass;
  adhesive_mass(mass,
                mass.given({"V_boat", "adhesive one boat takes", "ml"},
                           boat.boat.value(), Origin::of_joint(at + ".boat_volume")),
                *adhesive.density);
  reasons.push_back({at + ".mass_kg",
                     "mass of what one boat takes",
                     mass.release(),
                     {{at + ".mass_kg", "m"}}});
}

void add_volume(Explanations& reasons,
                const FoundWords& words,
                const AdhesiveAmounts& amounts,
                const std::string& at) {
  WrittenWorking work;
  work.found(words, amounts.joint.in_ml());
  reasons.push_back({at + ".joint_volume",
                     std::string(words.figure.what),
                     work.release(),
                     {{at + ".joint_volume", std::string(words.figure.letters)}}});
}

void add_beads(Explanations& reasons,
               const Adhesive& adhesive,
               const std::vector<BeadRun>& beads) {
  if (beads.empty()) return;
  const BeadRun& run = beads.front();
  WrittenWorking end, needed, section, laid;
  end.found(run_girth_words, run.to.in_mm());
  reasons.push_back(
      {"adhesive.beads.0.to",
       "where a run of one bead begins and ends",
       end.release(),
       {{"adhesive.beads.*.from", "s_to"}, {"adhesive.beads.*.to", "s_to"}}});
  section_needed(needed, run.needed_mm2 / (1 + adhesive.squeeze_out),
                 adhesive.squeeze_out);
  reasons.push_back({"adhesive.beads.0.needed",
                     "section that a run's beads have to cover, the first run's",
                     needed.release(),
                     {{"adhesive.beads.*.needed", "a_needed"}}});
  bead_section(section, adhesive.bead_shape, run.size, static_cast<double>(run.beads));
  reasons.push_back({"adhesive.beads.0.area",
                     "section of a run's beads, the first run's",
                     section.release(),
                     {{"adhesive.beads.*.area", "a_bead"},
                      {"adhesive.beads.*.size", "d"},
                      {"adhesive.beads.*.beads", "n"}}});
  volume_laid(laid, beads);
  reasons.push_back({"adhesive.bead_volume",
                     "adhesive laid as beads",
                     laid.release(),
                     {{"adhesive.bead_volume", "V_bead"}}});
}

void add_time(Explanations& reasons,
              const Joint& joint,
              const AdhesivePlan& plan,
              std::size_t fasteners) {
  if (!plan.time) return;
  WrittenWorking total, has;
  time_parts(total, *joint.shop, plan.nominal, fasteners);
  reasons.push_back({"adhesive.time.total",
                     "time from the first adhesive to the last fastener",
                     total.release(),
                     {{"adhesive.time.dispensing", "t_lay"},
                      {"adhesive.time.pack_changes", "t_packs"},
                      {"adhesive.time.seating", "t_seat"},
                      {"adhesive.time.driving", "t_drive"},
                      {"adhesive.time.total", "t"}}});
  time_to_work(has, *joint.adhesive->working_time, joint.adhesive->working_time_at,
               joint.shop->temperature);
  reasons.push_back({"adhesive.time.working_time",
                     "working time at the shop's temperature",
                     has.release(),
                     {{"adhesive.time.working_time", "t_work"}}});
}

}  // namespace

Explanations adhesive_reasons(const Joint& joint,
                              const AdhesivePlan& plan,
                              std::size_t fasteners) {
  const Adhesive& adhesive = *joint.adhesive;
  Explanations reasons;
  add_volume(reasons, joint_volume_words, plan.nominal, "adhesive");
  WrittenWorking area;
  area.found(bond_area_words, plan.bond_area_mm2);
  reasons.push_back({"adhesive.bond_area",
                     "area to be bonded",
                     area.release(),
                     {{"adhesive.bond_area", "A_bond"}}});
  add_beads(reasons, adhesive, plan.beads);
  add_amounts(reasons, adhesive, plan.nominal, "adhesive");
  for (const auto& [amounts, at] :
       {std::pair(plan.least, "adhesive.least"), std::pair(plan.most, "adhesive.most")})
    if (amounts) {
      add_volume(reasons, shifted_volume_words, *amounts, at);
      add_amounts(reasons, adhesive, *amounts, at);
    }
  add_time(reasons, joint, plan, fasteners);
  return reasons;
}

}  // namespace sheerlap
