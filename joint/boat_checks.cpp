#include "joint/boat_checks.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <string>
#include <vector>

#include "joint/perimeter.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

constexpr const char* readings_source = "the reading file";

/// "NC1", or "NC1 to NC4".
std::string numbers_of(const std::vector<NonConformance>& out) {
  if (out.size() == 1) return "NC1";
  return fmt::format("NC1 to NC{}", out.size());
}

Check acceptance(const Boat& boat) {
  std::string source =
      fmt::format("{}, {}", boat.limits.min_address, boat.limits.max_address);
  if (boat.limits.step) source += ", readings.step";
  const bool accepted = boat.out.empty();
  return {"boat.non_conformances",
          accepted
              ? "places at which this boat is out of its limits"
              : fmt::format("this boat is out of its limits: {}", numbers_of(boat.out)),
          static_cast<double>(boat.out.size()),
          0,
          "",
          accepted ? CheckState::Pass : CheckState::Fail,
          "the joint file: " + source};
}

void add_held(Checks& checks, const Boat& boat) {
  if (boat.held.empty()) return;
  std::vector<std::string> words;
  Length length;
  for (const HeldStretch& stretch : boat.held) {
    length = length + (stretch.to - stretch.from);
    words.push_back(fmt::format("{}, girth {}", side_word(stretch.side),
                                worded_range(stretch.from, stretch.to)));
  }
  checks.push_back({"boat.held",
                    fmt::format("not between two readings, so that the difference at "
                                "the nearest is held: {}",
                                fmt::join(words, "; ")),
                    length.in_mm(), std::nullopt, "mm", CheckState::Warn,
                    readings_source});
}

void add_unread(Checks& checks, const Boat& boat) {
  if (boat.unread.empty()) return;
  checks.push_back(
      {"boat.unread",
       fmt::format("nothing was read on {}: taken as drawn", sides_words(boat.unread)),
       static_cast<double>(boat.unread.size()), std::nullopt, "", CheckState::Warn,
       readings_source});
}

void add_one_edge(Checks& checks, const Boat& boat) {
  std::vector<std::string> places;
  for (const SideCorrections& side : boat.corrections)
    for (const GapCorrection& correction : side.at)
      if (correction.one_edge && !correction.between_sides)
        places.push_back(correction.place);
  if (places.empty()) return;
  checks.push_back({"boat.one_edge",
                    fmt::format("read at one edge, whose difference stands for both: "
                                "{}",
                                fmt::join(places, ", ")),
                    static_cast<double>(places.size()), std::nullopt, "",
                    CheckState::Warn, readings_source});
}

}  // namespace

Checks boat_checks(const Boat& boat) {
  Checks checks{acceptance(boat)};
  add_held(checks, boat);
  add_unread(checks, boat);
  add_one_edge(checks, boat);
  return checks;
}

}  // namespace sheerlap
