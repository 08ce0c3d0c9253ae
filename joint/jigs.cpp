#include "joint/jigs.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <optional>
#include <utility>

#include "joint/jig_workings.h"
#include "joint/tight_bends.h"

namespace sheerlap {
namespace {

/// A piece as long as the longest counts as no longer: rounding only.
constexpr double rounding_mm = 1e-9;

using Bends = std::vector<std::pair<Length, Length>>;

/// The first of the bends that has more than a point in common with a stretch.
std::optional<std::pair<Length, Length>> first_bend(const Bends& bends,
                                                    Length from,
                                                    Length to) {
  for (const auto& bend : bends)
    if (bend.first < to && bend.second > from) return bend;
  return std::nullopt;
}

char letter_of(SideName side) {
  return side == SideName::Starboard ? 'S' : side == SideName::Port ? 'P' : 'T';
}

}  // namespace

bool parted(const PerimeterSide& side, Length from, Length to) {
  for (const InnerCorner& corner : side.corners)
    if (corner.girth >= from && corner.girth <= to) return true;
  for (const OpeningSpan& opening : side.openings)
    if (opening.to >= from && opening.from <= to) return true;
  return false;
}

Length piece_length(Length run, const JigRules& rules) {
  PlainWorking work;
  return Length::mm(length_of_piece(work, run, rules.bush));
}

Length longest_run(const JigRules& rules) {
  return rules.length_max - rules.bush - rules.bush;
}

namespace {

/// The outer holes of a piece, as indices into the stations.
using Cut = std::pair<std::size_t, std::size_t>;

/// The fewest pieces over holes that nothing parts, each as long as it may be.
std::vector<Cut> longest_cuts(const std::vector<DrillStation>& stations,
                              const Cut& holes,
                              Length run_max) {
  std::vector<Cut> cuts;
  const auto fits = [&](std::size_t from, std::size_t to) {
    return to <= holes.second && stations[to].girth - stations[from].girth <=
                                     run_max + Length::mm(rounding_mm);
  };
  for (std::size_t first = holes.first; first <= holes.second;) {
    std::size_t last = first;
    while (fits(first, last + 1)) ++last;
    cuts.emplace_back(first, last);
    if (last == holes.second) break;
    // a space no piece can span leaves no hole to share
    first = fits(last, last + 1) ? last : last + 1;
  }
  return cuts;
}

/// As many pieces, the longest of them as short as it can be.
std::vector<Cut> even_cuts(const std::vector<DrillStation>& stations,
                           const Cut& holes,
                           Length run_max) {
  std::vector<Cut> best = longest_cuts(stations, holes, run_max);
  const auto index_holes = [](const std::vector<Cut>& cuts) {
    std::size_t shared = 0;
    for (std::size_t i = 1; i < cuts.size(); ++i)
      shared += cuts[i].first == cuts[i - 1].second ? 1 : 0;
    return shared;
  };
  const std::size_t shared = index_holes(best);
  Length low, high = run_max;
  // to a tenth of what a saw takes
  while (high - low > Length::mm(0.1)) {
    const Length middle = (low + high) / 2;
    auto cuts = longest_cuts(stations, holes, middle);
    if (cuts.size() > best.size() || index_holes(cuts) < shared) {
      low = middle;
    } else {
      best = std::move(cuts);
      high = middle;
    }
  }
  return best;
}

/// Pieces of one hole that a neighbour has too are none.
std::vector<Cut> without_doubles(const std::vector<Cut>& cuts) {
  std::vector<Cut> kept;
  for (std::size_t i = 0; i < cuts.size(); ++i) {
    const auto [first, last] = cuts[i];
    const bool before = i > 0 && cuts[i - 1].second == first;
    const bool after = i + 1 < cuts.size() && cuts[i + 1].first == last;
    if (first != last || (!before && !after)) kept.push_back(cuts[i]);
  }
  return kept;
}

/// The pieces of one side's holes: bends that are tight have their own.
std::vector<Cut> side_cuts(const PerimeterSide& side,
                           const std::vector<DrillStation>& stations,
                           const Cut& holes,
                           const Bends& bends,
                           Length run_max) {
  std::vector<Cut> cuts;
  const auto add = [&](std::size_t first, std::size_t last) {
    for (const Cut& cut : even_cuts(stations, {first, last}, run_max))
      cuts.push_back(cut);
  };
  const auto goes_on = [&](std::size_t hole) {
    return hole < holes.second &&
           !parted(side, stations[hole].girth, stations[hole + 1].girth);
  };
  const auto bend_after = [&](std::size_t hole) {
    return first_bend(bends, stations[hole].girth, stations[hole + 1].girth);
  };
  for (std::size_t first = holes.first; first <= holes.second;) {
    std::size_t last = first;
    while (goes_on(last) && !bend_after(last)) ++last;
    add(first, last);
    first = last + 1;
    if (!goes_on(last)) continue;
    const Length end = bend_after(last)->second;
    while (goes_on(first) && stations[first].girth < end) ++first;
    add(last, first);
  }
  return without_doubles(cuts);
}

}  // namespace

std::vector<JigSegment> jig_segments(const Perimeter& perimeter,
                                     const std::vector<DrillStation>& stations,
                                     const JigLimits& limits) {
  assert(limits.run_max > Length());
  std::vector<JigSegment> segments;
  for (const PerimeterSide& side : perimeter.sides) {
    const auto on_side = [&](const DrillStation& station) {
      return station.side == side.name;
    };
    const auto first = std::find_if(stations.begin(), stations.end(), on_side);
    if (first == stations.end()) continue;
    const auto end = std::find_if_not(first, stations.end(), on_side);
    const Cut holes{first - stations.begin(), end - stations.begin() - 1};
    const Bends bends =
        tight_bends(side.drill_line, corner_knots(perimeter), limits.radius_min);
    std::size_t number = 0;
    for (const auto& [from, to] :
         side_cuts(side, stations, holes, bends, limits.run_max))
      segments.push_back(
          {fmt::format("J-{}{}", letter_of(side.name), ++number), side.name, from, to});
  }
  return segments;
}

}  // namespace sheerlap
