#pragma once

#include "joint/layout.h"
#include "joint/reasons/working.h"

namespace sheerlap {

inline constexpr std::string_view layout_source =
    "derived: fewest holes that keep every limit; of those the smallest largest space; "
    "of those the least sum of squared spaces";
inline constexpr std::string_view layout_validity =
    "the joint file's pitch limits, end distances, keep-outs, zones and places, and "
    "what "
    "the strength allows where it is asked to set them";

/// How the figures of a layout are found.
inline constexpr FoundWords hole_girth_words{
    {"s", "girth of the hole on the drill line", "mm", layout_source, layout_validity},
    "searched for among all places that the limits leave, stretch by stretch; each "
    "hole's own reason stands with it under `because`",
    "exact but for rounding: 1e-9 of the greatest space"};
inline constexpr FoundWords hole_count_words{
    {"n", "holes of a side", "1", layout_source, layout_validity},
    "the fewest that keep every limit, found exactly",
    "exact; a hole on the centreline counts with starboard"};
inline constexpr FoundWords largest_space_words{
    {"p_max", "largest space", "mm", layout_source, layout_validity},
    "the largest of the spaces from hole to hole, and of twice the distance to a "
    "smooth end",
    "exact but for rounding: 1e-9 of the greatest space"};
inline constexpr FoundWords smallest_space_words{
    {"p_min", "smallest space", "mm", layout_source, layout_validity},
    "the smallest of the spaces from hole to hole, and of twice the distance to a "
    "smooth end",
    "exact but for rounding: 1e-9 of the greatest space"};
inline constexpr FoundWords bridged_words{
    {"p_bridge", "space that does not keep its limit", "mm",
     "derived: bridged from the two edges of what stands in the way",
     "across a smooth end the space and its limit are counted on both sides"},
    "what is left between the nearest places a hole may be",
    "exact but for rounding: 1e-9 of the greatest space"};

/// The pitch of a run of equal spaces, mm.
template <class Working>
auto run_pitch(Working& work, Length from, Length to, std::size_t spaces) {
  const Origin held = Origin::of_joint("the fixed points that the run lies between");
  const auto s_from =
      work.given({"s_from", "girth of the run's first hole", "mm"}, from.in_mm(), held);
  const auto s_to =
      work.given({"s_to", "girth of the run's last hole", "mm"}, to.in_mm(), held);
  const auto n = work.given({"n", "spaces", "1"}, static_cast<double>(spaces),
                            Origin::of_joint("the fewest that the limits allow"));
  return work.figure(
      {"p", "pitch of the run", "mm", "derived: equal spaces between two fixed points",
       "girth on the drill line, lip's outer face; never rounded"},
      (s_to - s_from) / n);
}

/// The holes of all sides.
template <class Working>
auto holes_of_all(Working& work, const std::vector<LayoutSide>& sides) {
  typename Working::Number sum(0);
  std::size_t number = 0;
  for (const LayoutSide& side : sides) {
    const std::string letters = "n_" + std::to_string(++number);
    const auto term = work.given({letters, "holes of one side", "1"},
                                 static_cast<double>(side.girths.size()),
                                 Origin::of_joint("layout.sides: `count`"));
    sum = number == 1 ? term : sum + term;
  }
  return work.figure({"n_all", "holes of the joint", "1", "derived: the sides' added",
                      "a hole on the centreline counts once"},
                     sum);
}

}  // namespace sheerlap
