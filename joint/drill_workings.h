#pragma once

#include "joint/drill_stations.h"
#include "joint/drill_words.h"
#include "joint/reasons/working.h"

namespace sheerlap {

/// How far it is along a bit to the faces it goes through, mm.
struct BitWay {
  double lip_mm = 0;      ///< to the lip's inner face
  double hull_mm = 0;     ///< to the hull's outer face
  double through_mm = 0;  ///< to the hull's inner face
};

/// The way of the bit at a station of the schedule.
BitWay bit_way(const Joint& joint,
               const Perimeter& perimeter,
               const DrillStation& station);

/// The stack along the bit, mm.
template <class Working>
auto stack_along(Working& work, const BitWay& way, double gap_mm) {
  const auto b_through = work.found(through_words, way.through_mm);
  const auto g = work.found(hole_gap_words, gap_mm);
  return work.figure({"t_stack", "lip, gap and hull along the bit", "mm",
                      "derived: to the hull's inner face",
                      "where the faces interfere as drawn, they touch and do not "
                      "overlap"},
                     b_through + max(0, -g));
}

/// Where the bit that opens the lip stops, mm from the lip's outer face.
template <class Working>
auto lip_bit_depth(Working& work, const BitWay& way) {
  const auto b_lip = work.found(to_gap_words, way.lip_mm);
  const auto b_hull = work.found(to_hull_words, way.hull_mm);
  return work.figure({"t_lip", "stop of the bit that opens the lip", "mm",
                      "derived: as far from the hull as from a lip not cut through",
                      "where the faces interfere, the lip alone"},
                     b_lip + max(0, b_hull - b_lip) / 2);
}

/// The stop of the bit that goes through, mm from the lip's outer face.
template <class Working>
auto through_bit_depth(Working& work, Length stack) {
  const auto t_stack = work.given({"t_stack", "lip, gap and hull along the bit", "mm"},
                                  stack.in_mm(), Origin::of_joint("schedule: `stack`"));
  const auto b = work.given({"b", "how far the bit's point comes through", "mm"},
                            bit_beyond_stack.in_mm(),
                            Origin::of_joint("common practice, no source"));
  return work.figure({"t_drill", "depth stop from the lip's outer face", "mm",
                      "derived: the stack and the bit's point",
                      "a bit square to the lip, the lid held on its seat"},
                     t_stack + b);
}

/// What a distance to an edge comes to where the trim is at its worst, mm.
template <class Working>
auto edge_left(Working& work,
               const FigureWords& words,
               const typename Working::Number& drawn,
               Length trim,
               const char* address) {
  const auto trim_mm = work.given({"trim", "tolerance of the trimmed edge", "mm"},
                                  trim.in_mm(), Origin::of_file(address));
  return work.figure(words, drawn - trim_mm);
}

/// From one girth to a further one, mm.
template <class Working>
auto girth_between(Working& work, Length before, Length girth) {
  const Origin laid = Origin::of_joint("layout");
  const auto s_0 =
      work.given({"s_0", "girth it is counted from", "mm"}, before.in_mm(), laid);
  const auto s = work.given({"s", "girth of the hole on the drill line", "mm"},
                            girth.in_mm(), laid);
  return work.figure({"p", "girth from one to the other", "mm",
                      "derived: difference of running girths",
                      "on the drill line; a tape laid along it, not a chord"},
                     s - s_0);
}

/// The straight distance of two points, mm.
template <class Working>
auto straight_between(Working& work, const Point3& from, const Point3& to) {
  const Origin before = Origin::of_joint("the point it is measured from");
  const auto x_0 = work.given({"x_0", "aft", "mm"}, from.x(), before);
  const auto y_0 = work.given({"y_0", "to starboard", "mm"}, from.y(), before);
  const auto z_0 = work.given({"z_0", "up", "mm"}, from.z(), before);
  const auto x = work.found(hole_x_words, to.x());
  const auto y = work.found(hole_y_words, to.y());
  const auto z = work.found(hole_z_words, to.z());
  return work.figure({"c", "straight from one to the other", "mm",
                      "derived: distance of two points", faces_validity},
                     sqrt(power(x - x_0, 2) + power(y - y_0, 2) + power(z - z_0, 2)));
}

}  // namespace sheerlap
