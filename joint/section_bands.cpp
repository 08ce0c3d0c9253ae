#include "joint/section_bands.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <map>

#include "joint/adhesive.h"
#include "joint/bead_runs.h"
#include "joint/bond_space.h"

namespace sheerlap {
namespace {

/// More levels than these are not cut for.
constexpr std::size_t most_levels = 1500;

/// The beads to lay for each of the lips, least, nominal and most.
class Soundings {
 public:
  Soundings(const Joint& joint, const Perimeter& perimeter)
      : joint_(joint),
        perimeter_(perimeter),
        lips_{perimeter.lip->shifted(-lip_shift.in_mm()), *perimeter.lip,
              perimeter.lip->shifted(lip_shift.in_mm())} {}

  std::vector<BeadRun> runs(std::size_t lip, const Adhesive& adhesive) const {
    return bead_runs(perimeter_, bond_space(joint_.bond, perimeter_, lips_[lip]),
                     adhesive);
  }
  std::size_t count() const { return lips_.size(); }

 private:
  const Joint& joint_;
  const Perimeter& perimeter_;
  std::vector<RuledFace> lips_;
};

double largest_section_mm2(const Soundings& soundings, const Adhesive& adhesive) {
  double largest = 0;
  for (std::size_t lip = 0; lip < soundings.count(); ++lip)
    for (const BeadRun& run : soundings.runs(lip, adhesive))
      largest = std::max(largest, run.needed_mm2 / (1 + adhesive.squeeze_out));
  return largest;
}

/// The sections at which `smallest_beads` changes, up to the first that covers
/// `largest_mm2`; empty if they are more than `most_levels`.
std::vector<double> bead_steps(const Adhesive& adhesive, double largest_mm2) {
  std::vector<double> areas;
  for (const Length size : adhesive.bead_sizes)
    areas.push_back(bead_area_mm2(adhesive.bead_shape, size));
  std::sort(areas.begin(), areas.end());
  std::vector<double> steps;
  for (double count = 1; steps.empty() || steps.back() < largest_mm2; ++count) {
    for (const double area : areas)
      if (steps.empty() || count * area > steps.back()) steps.push_back(count * area);
    if (steps.size() > most_levels) return {};
  }
  return steps;
}

/// The squeeze-outs to cut for.
std::vector<double> squeeze_outs(double own, int step_percent) {
  std::vector<double> shares{own};
  for (int percent = 0; percent <= SectionBands::percent_to; percent += step_percent)
    shares.push_back(percent / 100.0);
  return shares;
}

/// An adhesive whose beads are the levels to cut at; none if there would be too many.
std::optional<Adhesive> level_beads(const Adhesive& adhesive,
                                    double largest_mm2,
                                    int step_percent) {
  const auto shares = squeeze_outs(adhesive.squeeze_out, step_percent);
  const double widest = 1 + *std::max_element(shares.begin(), shares.end());
  const auto steps = bead_steps(adhesive, largest_mm2 * widest);
  if (steps.empty() || steps.size() * shares.size() > most_levels) return std::nullopt;
  Adhesive levels = adhesive;
  levels.squeeze_out = 0;
  levels.bead_shape = BeadShape::Triangle;
  levels.bead_sizes.clear();
  for (const double step : steps)
    for (const double share : shares)
      levels.bead_sizes.push_back(Length::mm(std::sqrt(2 * step / (1 + share))));
  std::sort(levels.bead_sizes.begin(), levels.bead_sizes.end());
  const auto same = [](Length a, Length b) { return b / a < 1 + 1e-12; };
  levels.bead_sizes.erase(
      std::unique(levels.bead_sizes.begin(), levels.bead_sizes.end(), same),
      levels.bead_sizes.end());
  return levels;
}

}  // namespace

SectionBands section_bands(const Joint& joint, const Perimeter& perimeter) {
  assert(joint.adhesive);
  const Soundings soundings(joint, perimeter);
  const double largest = largest_section_mm2(soundings, *joint.adhesive);
  SectionBands result;
  Adhesive levels = *joint.adhesive;
  for (const int step : {1, 2, 5, 10, 25})
    if (const auto beads = level_beads(*joint.adhesive, largest, step)) {
      levels = *beads;
      result.step_percent = step;
      break;
    }
  std::map<double, SectionBand> bands;
  constexpr Length SectionBand::*columns[] = {
      &SectionBand::least, &SectionBand::nominal, &SectionBand::most};
  for (std::size_t lip = 0; lip < soundings.count(); ++lip)
    for (const BeadRun& run : soundings.runs(lip, levels))
      bands[run.area_mm2].*columns[lip] += run.to - run.from;
  for (auto& [area, band] : bands) {
    band.up_to_mm2 = area / (1 + levels.squeeze_out);
    result.bands.push_back(band);
  }
  return result;
}

}  // namespace sheerlap
