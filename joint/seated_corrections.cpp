#include "joint/seated_corrections.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstddef>
#include <utility>

#include "joint/sheer_places.h"

namespace sheerlap {
namespace {

/// The gaps of the lid as drawn on the hull as moulded.
std::vector<double> nominal_gaps(SeatingTask task) {
  for (LapPoint& point : task.points) {
    point.free = {};
    point.squeezed.clear();
  }
  const auto nominal = seating_at(task, LidUnknowns::Zero(first_squeeze));
  // there is one, or the joint had no fit
  assert(nominal.has_value());
  return nominal->gaps_mm;
}

/// The corrections at all the places of one side, by their girth along the sheer.
std::vector<GapCorrection> all_of_side(const PerimeterSide& side,
                                       const SeatingTask& task,
                                       const FoundSeating& seated,
                                       const std::vector<double>& nominal) {
  std::vector<GapCorrection> all;
  for (std::size_t i = 0; i + 1 < task.points.size(); i += 2) {
    if (task.points[i].side != side.name) continue;
    GapCorrection at;
    at.girth = task.points[i].girth;
    at.top = Length::mm(seated.gaps_mm[i] - nominal[i]);
    at.low = Length::mm(seated.gaps_mm[i + 1] - nominal[i + 1]);
    if (all.empty() || (at.girth - all.back().girth).in_mm() > 1) all.push_back(at);
  }
  return all;
}

/// How far a place is from the straight line between two others.
double astray_mm(const GapCorrection& from,
                 const GapCorrection& to,
                 const GapCorrection& at) {
  const double share = (at.girth - from.girth) / (to.girth - from.girth);
  const auto off = [&](Length GapCorrection::*edge) {
    return std::abs(
        (at.*edge - (from.*edge + share * (to.*edge - from.*edge))).in_mm());
  };
  return std::max(off(&GapCorrection::top), off(&GapCorrection::low));
}

/// Of the places between two kept ones the one furthest astray is kept, and so on,
/// until none is.
std::vector<GapCorrection> thinned(const std::vector<GapCorrection>& all) {
  if (all.size() < 3) return all;
  std::vector<bool> kept(all.size(), false);
  kept.front() = kept.back() = true;
  std::vector<std::pair<std::size_t, std::size_t>> stretches{{0, all.size() - 1}};
  while (!stretches.empty()) {
    const auto [from, to] = stretches.back();
    stretches.pop_back();
    std::size_t worst = from;
    double most = correction_tolerance.in_mm();
    for (std::size_t i = from + 1; i < to; ++i)
      if (const double off = astray_mm(all[from], all[to], all[i]); off > most) {
        most = off;
        worst = i;
      }
    if (worst == from) continue;
    kept[worst] = true;
    stretches.push_back({from, worst});
    stretches.push_back({worst, to});
  }
  std::vector<GapCorrection> few;
  for (std::size_t i = 0; i < all.size(); ++i)
    if (kept[i]) few.push_back(all[i]);
  return few;
}

}  // namespace

std::vector<SideCorrections> seated_corrections(const Perimeter& perimeter,
                                                const SeatingTask& task,
                                                const FoundSeating& seated) {
  const std::vector<double> nominal = nominal_gaps(task);
  std::vector<SideCorrections> corrections;
  for (const PerimeterSide& side : perimeter.sides) {
    auto few = thinned(all_of_side(side, task, seated, nominal));
    for (GapCorrection& at : few)
      at.girth = drill_girth(side, side.sheer.place_at(at.girth));
    corrections.push_back({side.name, std::move(few)});
  }
  return corrections;
}

}  // namespace sheerlap
