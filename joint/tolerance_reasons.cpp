#include "joint/tolerance_reasons.h"

#include <array>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "joint/range_reason.h"
#include "joint/reasons/found.h"
#include "joint/reasons/working.h"
#include "joint/tolerance_figures.h"

namespace sheerlap {
namespace {

using Paths = std::vector<std::string>;

constexpr FoundWords boats_words{
    {"n", "boats made up and seated", "1", counted_source, sample_validity},
    "counted; less than were asked for if the run was stopped",
    "exact"};
constexpr FoundWords stations_words{
    {"n_stations", "stations of the joint at which gaps are looked at", "1",
     "derived: rows of the sheer table and places between them",
     "between two stations the gap is not looked at"},
    "counted; at each the gap is looked at both edges of the lap",
    "exact"};
constexpr FoundWords afresh_words{
    {"n_afresh", "boats whose quick seating was not proved", "1", counted_source,
     "they were seated again by the programme's slow and sure way"},
    "counted",
    "exact"};
constexpr FoundWords drawn_words{
    {"g_drawn", "margin of the boat as drawn, the lid in its best place", "mm",
     "derived: the seating's linear programme",
     "by the slopes of the gaps in the boat as drawn"},
    "the greatest margin of the worst gap inside the window, proved by its dual",
    "1e-9 mm for the gaps at the stations"};
constexpr FoundWords stretch_words{
    {"s_stretch", "end of a stretch, girth on the sheer", "mm",
     "derived: each side in equal parts", "only what is counted together"},
    "each side in equal stretches of 500 mm or a little less",
    "1e-9 mm"};
constexpr FoundWords laid_words{
    {"V_run", "laid for the run as beads, as drawn", "ml",
     "derived: boats times what one as drawn takes", run_validity},
    "beads of a boat as drawn, times the boats",
    "exact for the faces given"};
constexpr FoundWords packs_words{
    {"n_packs", "packs for the run", "1",
     "derived: as the order has them, rounded up once", run_validity},
    "what is laid, with waste, purge and what rests in part packs, over what comes out "
    "of a pack",
    "exact"};
constexpr FoundWords nozzles_words{{"n_nozzles", "nozzles for the run", "1",
                                    "derived: as the order has them", run_validity},
                                   "one a pack, and those that start a boat",
                                   "exact"};
constexpr FoundWords drawn_count_words{
    {"n_drawn", "fasteners of this length in a boat as drawn", "1",
     "derived: the schedule", "the joint as drawn"},
    "counted over the schedule's holes",
    "exact"};
constexpr FoundWords drive_boats_words{
    {"n_drives", "boats made up twice for the shares of variance", "1", counted_source,
     sample_validity},
    "counted",
    "exact"};

Explanation decile_reason(const std::array<RangeWords, 3>& words,
                          const FoundWords& within,
                          const std::string& what,
                          const Deciles& deciles,
                          const std::string& figure) {
  WrittenWorking work;
  Explanation reason{figure + ".p90.value", what, {}};
  work.found(within, deciles.within);
  reason.tells.push_back({figure + ".within", "within"});
  const std::array<const Estimate*, 3> estimates{&deciles.p10, &deciles.p50,
                                                 &deciles.p90};
  const std::array<const char*, 3> names{".p10", ".p50", ".p90"};
  for (std::size_t i = 0; i < names.size(); ++i)
    add_range(work, reason, words[i], *estimates[i], {figure + names[i]});
  reason.steps = work.release();
  return reason;
}

constexpr std::string_view score_source =
    "E. B. Wilson, J. Am. Stat. Assoc. 22 (1927): the score interval, 95 %";

/// A share, and the score interval worked by its formula.
Explanation share_reason(const Tolerance& of) {
  WrittenWorking work;
  const Origin counted = Origin::of_joint("counted over the boats made up");
  const double boats = static_cast<double>(of.boats);
  const Term n = work.given({"n", "boats made up", "1"}, boats, counted);
  const Term k = work.given({"k", "of them those that go on", "1"},
                            std::round(of.shares.on.value * boats), counted);
  const Term z = work.given({"z", "of the standard normal law, 97.5 of 100", "1"},
                            1.9599639845400545, Origin::of_joint("the normal law"));
  const Term p = work.figure(
      {"p", "share of the boats", "1", counted_source, sample_validity}, k / n);
  const Term middle = work.figure(
      {"p_mid", "middle of its range", "1", score_source, "any share and number"},
      (p + power(z, 2) / (2 * n)) / (1 + power(z, 2) / n));
  const Term reach =
      work.figure({"r", "half of its range", "1", score_source, "any share and number"},
                  z * sqrt(p * (1 - p) / n + power(z, 2) / (4 * power(n, 2))) /
                      (1 + power(z, 2) / n));
  work.figure({"p_low", "low end of its range", "1", score_source,
               "any share and number; 0 where none was seen"},
              middle - reach);
  work.figure({"p_high", "high end of its range", "1", score_source,
               "any share and number; 1 where all were seen"},
              middle + reach);
  Explanation reason{"tolerance.shares.on.value",
                     "boats that go on, and what other shares are had like",
                     work.release()};
  for (const char* path : {"tolerance.shares.*", "tolerance.stretches.*.tight",
                           "tolerance.stretches.*.wide"})
    for (const auto& [end, letters] :
         {std::pair{".value", "p"}, {".low", "p_low"}, {".high", "p_high"}})
      reason.tells.push_back({std::string(path) + end, letters});
  return reason;
}

Explanation sample_reason(const Tolerance& of) {
  WrittenWorking work;
  const Origin asked = Origin::of_joint("the joint file, or the command line");
  work.given({"n_asked", "boats asked for", "1"}, static_cast<double>(of.asked), asked);
  work.given({"seed", "which boats they are", "1"}, static_cast<double>(of.seed),
             asked);
  work.found(stations_words, static_cast<double>(of.stations));
  work.found(afresh_words, static_cast<double>(of.solved_afresh));
  work.found(boats_words, static_cast<double>(of.boats));
  return {"tolerance.boats",
          "the boats made up",
          work.release(),
          {{"tolerance.boats", "n"},
           {"tolerance.asked", "n_asked"},
           {"tolerance.seed", "seed"},
           {"tolerance.stations", "n_stations"},
           {"tolerance.solved_afresh", "n_afresh"}}};
}

void add_margins(Explanations& reasons, const Tolerance& of) {
  const Paths drawn{"tolerance.nominal_margin"};
  reasons.push_back(
      found_reason(drawn_words, of.nominal_margin_mm, drawn.front(), drawn));
  reasons.push_back(range_reason(mean_words("mm"), "margin of the boats, mean",
                                 of.margin_mean_mm, "tolerance.margin_mean",
                                 {"tolerance.margin_mean"}));
  reasons.push_back(decile_reason(decile_words("mm"), within_words("mm"),
                                  "margin of the boats", of.margin_mm,
                                  "tolerance.margin"));
  if (of.squeeze_mm)
    reasons.push_back(decile_reason(decile_words("mm"), within_words("mm"),
                                    "squeeze of the boats that it helps",
                                    *of.squeeze_mm, "tolerance.squeeze"));
}

void add_stretches(Explanations& reasons, const Tolerance& of) {
  if (of.stretches.empty()) return;
  const std::string any = "tolerance.stretches.*.";
  const BlamedStretch& first = of.stretches.front();
  reasons.push_back(range_reason(mean_words("1"),
                                 "boats whose margin is held on a stretch", first.holds,
                                 "tolerance.stretches.0.holds", {any + "holds"}));
  reasons.push_back(found_reason(stretch_words, first.to.in_mm(),
                                 "tolerance.stretches.0.to",
                                 {any + "from", any + "to"}));
}

void add_adhesive(Explanations& reasons, const ToleranceAdhesive& of) {
  const std::string at = "tolerance.adhesive.";
  const auto words = decile_words("ml");
  const auto within = within_words("ml");
  reasons.push_back(decile_reason(words, within, "adhesive in the joint", of.joint,
                                  at + "joint_volume"));
  reasons.push_back(decile_reason(words, within, "adhesive that a boat takes", of.boat,
                                  at + "boat_volume"));
  reasons.push_back(range_reason(mean_words("ml"), "adhesive in the joint, mean",
                                 of.mean, at + "joint_volume_mean",
                                 {at + "joint_volume_mean"}));
  reasons.push_back(range_reason(deviation_words, "adhesive in the joint, its spread",
                                 of.deviation, at + "joint_volume_deviation",
                                 {at + "joint_volume_deviation"}));
}

void add_run(Explanations& reasons, const ToleranceRun& of) {
  const std::string at = "tolerance.run.";
  reasons.push_back(range_reason(mean_words("ml"), "laid for a run, mean", of.laid_mean,
                                 at + "laid_mean", {at + "laid_mean"}));
  reasons.push_back(range_reason(run_words("ml"), "laid for a run", of.laid_p90,
                                 at + "laid_p90", {at + "laid_p90"}));
  const Paths laid{at + "nominal.laid", at + "*.laid"};
  reasons.push_back(found_reason(laid_words, of.nominal.laid.in_ml(), laid[0], laid));
  const Paths packs{at + "at_p90.packs", at + "*.packs"};
  reasons.push_back(
      found_reason(packs_words, static_cast<double>(of.at_p90.packs), packs[0], packs));
  const Paths nozzles{at + "at_p90.nozzles", at + "*.nozzles"};
  reasons.push_back(found_reason(nozzles_words, static_cast<double>(of.at_p90.nozzles),
                                 nozzles[0], nozzles));
}

void add_lengths(Explanations& reasons, const Tolerance& of) {
  if (of.lengths.empty()) return;
  const LengthMix& first = of.lengths.front();
  const std::string any = "tolerance.lengths.*.", at = "tolerance.lengths.0.";
  reasons.push_back(found_reason(drawn_count_words, static_cast<double>(first.nominal),
                                 at + "nominal", {any + "nominal"}));
  reasons.push_back(range_reason(mean_words("1"), "fasteners of a length in a boat",
                                 first.in_a_boat, at + "in_a_boat",
                                 {any + "in_a_boat"}));
  if (first.run_p90)
    reasons.push_back(range_reason(run_words("1"), "fasteners of a length for a run",
                                   *first.run_p90, at + "run_p90", {any + "run_p90"}));
}

void add_drives(Explanations& reasons, const VarianceShares& of) {
  const std::string at = "tolerance.drives.";
  reasons.push_back(found_reason(drive_boats_words, static_cast<double>(of.boats),
                                 at + "boats", {at + "boats"}));
  if (of.volume.empty()) return;
  const VarianceShare& first = of.volume.front();
  const std::string figure = at + "volume.0.";
  reasons.push_back(range_reason(drive_words(false), "which error drives what",
                                 first.first, figure + "first", {at + "*.*.first"}));
  reasons.push_back(range_reason(drive_words(true), "which error drives what, in all",
                                 first.total, figure + "total", {at + "*.*.total"}));
}

}  // namespace

Explanations tolerance_reasons(const Tolerance& tolerance) {
  Explanations reasons;
  reasons.push_back(sample_reason(tolerance));
  reasons.push_back(share_reason(tolerance));
  add_margins(reasons, tolerance);
  add_stretches(reasons, tolerance);
  add_adhesive(reasons, tolerance.adhesive);
  if (tolerance.run) add_run(reasons, *tolerance.run);
  add_lengths(reasons, tolerance);
  add_drives(reasons, tolerance.drives);
  return reasons;
}

}  // namespace sheerlap
