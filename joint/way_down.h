#pragma once

#include "joint/fit.h"

namespace sheerlap {

/// The tightest place of a side on the way down, and how much the way varies along it.
struct EntryOfSide {
  Entry entry;
  Length spread;
};

/// The tightest place on the way down. Offsets run linearly from knot to knot, so it
/// lies at a knot, or where an opening ends.
EntryOfSide side_entry(const Perimeter& perimeter, const PerimeterSide& side);

}  // namespace sheerlap
