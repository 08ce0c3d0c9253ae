#include "joint/hole_spaces.h"

#include <algorithm>
#include <optional>

#include "joint/space_limits.h"

namespace sheerlap {
namespace {

/// Girths and spaces closer than this are the same, mm.
constexpr double same_mm = 1e-6;

/// One end of a stretch, as one of its holes sees it.
struct EndOfStretch {
  const StretchEnd& end;
  const std::string& name;
  double at_mm;
  bool start;
};

/// The hole of the other hand that is nearest to a centreline.
struct Across {
  std::string mark;
  double distance_mm;
};

std::optional<Across> nearest_across(const Perimeter& perimeter,
                                     const std::vector<DrillStation>& stations,
                                     SideName side,
                                     bool start) {
  const SideName other = side == SideName::Port ? SideName::Starboard : SideName::Port;
  const PerimeterSide* hand = perimeter.side(other);
  std::optional<Across> nearest;
  for (const DrillStation& station : stations) {
    if (station.side != other || hand == nullptr) continue;
    const Length distance =
        start ? station.girth : hand->drill_line_length - station.girth;
    if (!nearest || distance.in_mm() < nearest->distance_mm)
      nearest = {station.mark, distance.in_mm()};
  }
  return nearest;
}

HoleSpace limited(HoleSpace space,
                  double from_mm,
                  double to_mm,
                  const LayoutStretch& stretch) {
  const SpaceLimits limits = limits_over(from_mm, to_mm, stretch.problem);
  space.least = Length::mm(limits.least_mm);
  space.greatest = Length::mm(limits.greatest_mm);
  const NamedLimit* limit = limit_on(from_mm, to_mm, stretch);
  if (limit != nullptr && !limit->gave_way()) space.whose = limit->whose;
  return space;
}

HoleSpace across_centreline(const Perimeter& perimeter,
                            const std::vector<DrillStation>& stations,
                            const DrillStation& station,
                            const EndOfStretch& end,
                            const LayoutStretch& stretch) {
  const double here_mm = std::abs(station.girth.in_mm() - end.at_mm);
  const auto across = nearest_across(perimeter, stations, station.side, end.start);
  const double beyond_mm = across ? across->distance_mm : here_mm;
  // a hole on the centreline itself has the ground of the other hand, as its own
  const double ground_mm = here_mm > same_mm ? here_mm : beyond_mm;
  HoleSpace space;
  space.to = across ? across->mark : "its own mirror image";
  space.space = Length::mm(here_mm + beyond_mm);
  return end.start ? limited(space, end.at_mm, end.at_mm + ground_mm, stretch)
                   : limited(space, end.at_mm - ground_mm, end.at_mm, stretch);
}

HoleSpace to_end(const DrillStation& station, const EndOfStretch& end) {
  HoleSpace space;
  space.to = end.name;
  space.to_hole = false;
  space.space = end.start ? station.girth - Length::mm(end.at_mm)
                          : Length::mm(end.at_mm) - station.girth;
  space.least = Length::mm(end.end.least_mm);
  space.greatest = Length::mm(end.end.greatest_mm);
  return space;
}

HoleSpace to_hole(const DrillStation& station,
                  const DrillStation& neighbour,
                  const LayoutStretch& stretch) {
  const Length from = std::min(station.girth, neighbour.girth);
  const Length to = std::max(station.girth, neighbour.girth);
  HoleSpace space;
  space.to = neighbour.mark;
  space.space = to - from;
  return limited(space, from.in_mm(), to.in_mm(), stretch);
}

bool on_stretch(const DrillStation& station,
                SideName side,
                const LayoutStretch& stretch) {
  return station.side == side &&
         station.girth.in_mm() >= stretch.problem.from_mm - same_mm &&
         station.girth.in_mm() <= stretch.problem.to_mm + same_mm;
}

}  // namespace

bool HoleSpace::over() const { return (space - greatest).in_mm() > same_mm; }

bool HoleSpace::under() const { return (least - space).in_mm() > same_mm; }

HoleSpaces hole_spaces(const Perimeter& perimeter,
                       const std::vector<DrillStation>& stations,
                       std::size_t hole,
                       const LayoutStretch& stretch) {
  const DrillStation& station = stations[hole];
  const SpacingProblem& problem = stretch.problem;
  const auto beside = [&](const DrillStation* neighbour, const EndOfStretch& end) {
    if (neighbour != nullptr && on_stretch(*neighbour, station.side, stretch))
      return to_hole(station, *neighbour, stretch);
    if (!end.end.mirrored) return to_end(station, end);
    return across_centreline(perimeter, stations, station, end, stretch);
  };
  return {beside(hole > 0 ? &stations[hole - 1] : nullptr,
                 {problem.start, stretch.start_name, problem.from_mm, true}),
          beside(hole + 1 < stations.size() ? &stations[hole + 1] : nullptr,
                 {problem.end, stretch.end_name, problem.to_mm, false})};
}

}  // namespace sheerlap
