#include "joint/sheets/drill_hand.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>

#include "joint/mark_ranges.h"

namespace sheerlap {
namespace {

/// Holes whose girths differ by no more than this are set out alike.
constexpr double alike_within_mm = 0.01;

/// The marks of a side's holes that the other hand has not got.
std::string marks_of_own(const Schedule& schedule, SideName side, SideName other) {
  const auto& stations = schedule.stations;
  return mark_ranges(stations, [&](const DrillStation& station) {
    return station.side == side &&
           std::none_of(stations.begin(), stations.end(), [&](const auto& one) {
             return one.side == other && one.because == station.because &&
                    std::abs((one.girth - station.girth).in_mm()) <= alike_within_mm;
           });
  });
}

std::string port_words(const Schedule& schedule) {
  const std::string port = marks_of_own(schedule, SideName::Port, SideName::Starboard);
  const std::string starboard =
      marks_of_own(schedule, SideName::Starboard, SideName::Port);
  if (port.empty() && starboard.empty())
    return "its girths are the same as starboard's, and the sheets are still for port "
           "only.";
  std::string words = "it is no mirror image of starboard.";
  if (!port.empty()) words += fmt::format(" Port's own holes or reasons: {}.", port);
  if (!starboard.empty())
    words += fmt::format(" Starboard's, not on port: {}.", starboard);
  return words;
}

}  // namespace

std::string hand_words(const Schedule& schedule, SideName side) {
  switch (side) {
    case SideName::Starboard:
      return "The right-hand side, looking forward. This is STARBOARD: port is set out "
             "from its own geometry and keep-outs and has its own sheets. Do not turn "
             "these over for it.";
    case SideName::Port:
      return fmt::format(
          "The left-hand side, looking forward. This is PORT, set out from its own "
          "geometry and keep-outs: {} Do not drill it from starboard's sheets.",
          port_words(schedule));
    case SideName::Transom:
      return "Across the stern, from the starboard corner to the port corner.";
  }
  assert(false);
  return "";
}

}  // namespace sheerlap
