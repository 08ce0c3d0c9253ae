#include "joint/jigs.h"

#include <fmt/format.h>

#include <cassert>
#include <optional>
#include <utility>

#include "joint/tight_bends.h"

namespace sheerlap {
namespace {

/// A piece as long as the longest counts as no longer: rounding only.
constexpr double rounding_mm = 1e-9;

using Bends = std::vector<std::pair<Length, Length>>;

std::vector<bool> corners_of(const Perimeter& perimeter) {
  std::vector<bool> corners;
  for (const SheerKnot& knot : perimeter.knots) corners.push_back(knot.corner);
  return corners;
}

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
  return run + rules.bush + rules.bush;
}

Length longest_run(const JigRules& rules) {
  return rules.length_max - rules.bush - rules.bush;
}

std::vector<JigSegment> jig_segments(const Perimeter& perimeter,
                                     const std::vector<DrillStation>& stations,
                                     const JigLimits& limits) {
  assert(limits.run_max > Length());
  std::vector<JigSegment> segments;
  std::size_t on_side = 0;
  Bends bends;
  for (std::size_t first = 0; first < stations.size();) {
    const DrillStation& start = stations[first];
    const PerimeterSide& side = *perimeter.side(start.side);
    if (segments.empty() || segments.back().side != start.side) {
      on_side = 0;
      bends = tight_bends(side.drill_line, corners_of(perimeter), limits.radius_min);
    }
    const auto one_piece = [&](std::size_t from, std::size_t to) {
      return to < stations.size() && stations[to].side == start.side &&
             !parted(side, stations[to - 1].girth, stations[to].girth) &&
             stations[to].girth - stations[from].girth <=
                 limits.run_max + Length::mm(rounding_mm);
    };
    const auto bend_before = [&](std::size_t to) {
      return first_bend(bends, start.girth, stations[to].girth);
    };
    std::size_t last = first;
    if (one_piece(first, first + 1)) {
      const auto bend = bend_before(++last);
      // straight on up to the next bend, or round the one that is next
      while (one_piece(first, last + 1) &&
             (bend ? stations[last].girth < bend->second : !bend_before(last + 1)))
        ++last;
    }
    segments.push_back({fmt::format("J-{}{}", letter_of(start.side), ++on_side),
                        start.side, first, last});
    first = one_piece(last, last + 1) ? last : last + 1;
  }
  return segments;
}

}  // namespace sheerlap
