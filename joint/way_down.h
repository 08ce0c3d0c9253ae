#pragma once

#include "joint/fit.h"
#include "joint/reasons/working.h"

namespace sheerlap {

/// How much the lid clears the hull at a place, as the lip's low edge passes the hull's
/// top edge, mm.
///
/// @param lip_low   flange offset of the lip face at the foot of the lap, mm
/// @param hull_top  flange offset of the hull face at the sheer, mm
template <class Working>
auto way_clear(Working& work, double lip_low, double hull_top) {
  const Origin rows = Origin::of_joint(
      "the sheer table's offset, or [lap]'s, linear along the girth between rows");
  const auto o_lip = work.given(
      {"o_lip_low", "flange offset of the lip's low edge", "mm"}, lip_low, rows);
  const auto o_hull = work.given(
      {"o_hull_top", "flange offset of the hull's top edge", "mm"}, hull_top, rows);
  return work.figure(
      {"c_entry", "clearance on the way down", "mm",
       "derived: both level, square to the sheer in plan",
       "a lid lowered upright and straight down; the least lies at a row "
       "or at an opening's end, as offsets run linearly between"},
      o_lip - o_hull);
}

/// The tightest place of a side on the way down, and how much the way varies along it.
struct EntryOfSide {
  Entry entry;
  Length spread;
};

/// The tightest place on the way down. Offsets run linearly from knot to knot, so it
/// lies at a knot, or where an opening ends.
EntryOfSide side_entry(const Perimeter& perimeter, const PerimeterSide& side);

}  // namespace sheerlap
