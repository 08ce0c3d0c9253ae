#include "joint/sheets/joint_page_beads.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace sheerlap {

std::vector<BeadRun> drawn_beads(const AdhesivePlan& plan,
                                 SideName side,
                                 Length shortest) {
  std::vector<BeadRun> runs;
  for (const BeadRun& run : plan.beads) {
    if (run.side != side) continue;
    const bool joins = !runs.empty() && run.to - run.from < shortest &&
                       std::abs((runs.back().to - run.from).in_mm()) < 1e-3;
    if (!joins) {
      runs.push_back(run);
      continue;
    }
    const Length from = runs.back().from;
    if (run.area_mm2 > runs.back().area_mm2) runs.back() = run;
    runs.back().from = from;
    runs.back().to = run.to;
  }
  return runs;
}

std::string bead_name(const BeadRun& run, const NumberStyle& style) {
  return run.beads == 1 ? style.size(run.size)
                        : fmt::format("{} of {}", run.beads, style.size(run.size));
}

std::string bead_words(const Job& job, SideName side, const NumberStyle& style) {
  if (!job.adhesive) return "";
  constexpr std::size_t most = 40;
  const Length shortest = job.perimeter.side(side)->sheer_length / 1000;
  const auto runs = drawn_beads(*job.adhesive, side, shortest);
  std::string text;
  for (std::size_t i = 0; i < std::min(most, runs.size()); ++i)
    text +=
        fmt::format("{}{} to {}: {}", i == 0 ? "" : "; ", style.running(runs[i].from),
                    style.running(runs[i].to), bead_name(runs[i], style));
  if (runs.size() > most) text += fmt::format("; and {} more", runs.size() - most);
  const auto all = std::count_if(job.adhesive->beads.begin(), job.adhesive->beads.end(),
                                 [&](const BeadRun& run) { return run.side == side; });
  if (static_cast<std::size_t>(all) > runs.size())
    text += fmt::format(
        "; runs shorter than {} go with the one before, at the larger "
        "of the two",
        style.size_with_unit(shortest));
  return text;
}

}  // namespace sheerlap
