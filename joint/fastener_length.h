#pragma once

#include "joint/fasteners.h"
#include "joint/reasons/working.h"

namespace sheerlap {

/// How a station's length from stock is found.
inline constexpr FoundWords serving_length_words{
    {"L", "length of the fastener, from stock", "mm",
     "derived: the shortest of fastener.lengths that serves the stack",
     "a screw's whole thread in the hull; a bolt's nut on and two threads out; a rivet "
     "by its grip"},
    "the lengths in stock tried from the shortest",
    "exact: a length that is 1e-9 mm short serves"};

/// A lip hole with the relief round it, mm.
template <class Working>
auto relieved_hole(Working& work, Length lip_hole, Length relief) {
  const auto d_lip = work.given({"d_lip", "hole in the lip", "mm"}, lip_hole.in_mm(),
                                Origin::of_joint("schedule: `lip_hole`"));
  const auto r =
      work.given({"r", "relief in the gelcoat, over the hole", "mm"}, relief.in_mm(),
                 Origin::of_joint("common practice, no source"));
  return work.figure({"d_sink", "relief round a pan head's hole, diameter", "mm",
                      "common practice, no source", "a lip with gelcoat on it"},
                     d_lip + r);
}

/// The least length that serves a stack, mm; of a rivet the grip.
template <class Working>
auto least_length(Working& work, const FastenerSpec& spec, Length stack) {
  const auto t_stack = work.given({"t_stack", "lip, gap and hull along the bit", "mm"},
                                  stack.in_mm(), Origin::of_joint("schedule: `stack`"));
  const auto b =
      work.given({"b", "point, nut, washers and threads beyond it", "mm"},
                 spec.beyond_stack.in_mm(), Origin::of_joint("the fastener's table"));
  return work.figure({"L_least", "least length that serves", "mm",
                      "derived: the stack and what stands beyond it",
                      "head flush on the lip's outer face"},
                     t_stack + b);
}

}  // namespace sheerlap
