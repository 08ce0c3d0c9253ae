#pragma once

#include <string>

#include "joint/boat.h"
#include "joint/boat_found.h"
#include "joint/reasons/working.h"

namespace sheerlap {

/// How far a gap read is from the drawn one, mm.
template <class Working>
auto gap_correction(Working& work,
                    Length read,
                    const std::string& address,
                    double drawn_mm) {
  const auto g_read =
      work.given({"g_read", "gap read", "mm"}, read.in_mm(), Origin::of_file(address));
  const auto g_drawn = work.found(drawn_gap_words, drawn_mm);
  return work.figure({"c", "gap read less gap as drawn", "mm",
                      "derived: the difference at the place and edge", boat_validity},
                     g_read - g_drawn);
}

/// What is to be taken off and put on at one edge, mm.
template <class Number>
struct EdgeWork {
  Number grind;
  Number build_up;
};

/// What brings a gap inside its limits.
template <class Working>
EdgeWork<typename Working::Number> edge_work(Working& work,
                                             Length gap,
                                             const GapLimits& limits) {
  const auto g = work.found(boat_gap_words, gap.in_mm());
  const auto g_min =
      work.given({"g_min", "least gap accepted", "mm"}, limits.gap_min.in_mm(),
                 Origin::of_file(limits.min_address));
  const auto g_max =
      work.given({"g_max", "greatest gap accepted", "mm"}, limits.gap_max.in_mm(),
                 Origin::of_file(limits.max_address));
  const auto off = work.figure(
      {"o_grind", "to be ground off", "mm", "derived: what the gap lacks of the least",
       "off the one face or the other; the laminate must spare it"},
      max(0, g_min - g));
  const auto on =
      work.figure({"o_shim", "to be shimmed or built up", "mm",
                   "derived: what the gap has over the greatest", "on the hull's face"},
                  max(0, g - g_max));
  return {off, on};
}

/// How far a value is from its limit, mm.
template <class Working>
auto out_of_limit(Working& work,
                  const typename Working::Number& value,
                  Length limit,
                  const Origin& origin) {
  const auto v_limit =
      work.given({"v_limit", "what it is held against", "mm"}, limit.in_mm(), origin);
  return work.figure(
      {"o", "how far it is out", "mm",
       "derived: the value and its limit, without the sign", boat_validity},
      abs(value - v_limit));
}

}  // namespace sheerlap
