#include "joint/jigs.h"

#include <fmt/format.h>

#include <cassert>

namespace sheerlap {
namespace {

/// A piece as long as the longest counts as no longer: rounding only.
constexpr double rounding_mm = 1e-9;

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
  return run + rules.bush + rules.bush;
}

Length longest_run(const JigRules& rules) {
  return rules.length_max - rules.bush - rules.bush;
}

std::vector<JigSegment> jig_segments(const Perimeter& perimeter,
                                     const std::vector<DrillStation>& stations,
                                     Length run_max) {
  assert(run_max > Length());
  std::vector<JigSegment> segments;
  std::size_t on_side = 0;
  for (std::size_t first = 0; first < stations.size();) {
    const DrillStation& start = stations[first];
    const PerimeterSide& side = *perimeter.side(start.side);
    if (segments.empty() || segments.back().side != start.side) on_side = 0;
    const auto one_piece = [&](std::size_t from, std::size_t to) {
      return to < stations.size() && stations[to].side == start.side &&
             !parted(side, stations[to - 1].girth, stations[to].girth) &&
             stations[to].girth - stations[from].girth <=
                 run_max + Length::mm(rounding_mm);
    };
    std::size_t last = first;
    while (one_piece(first, last + 1)) ++last;
    segments.push_back({fmt::format("J-{}{}", letter_of(start.side), ++on_side),
                        start.side, first, last});
    first = one_piece(last, last + 1) ? last : last + 1;
  }
  return segments;
}

}  // namespace sheerlap
