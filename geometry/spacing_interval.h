#pragma once

#include <vector>

namespace sheerlap {

/// A part of the line, ends included; a single place is one of no length.
struct SpacingInterval {
  double from_mm = 0;
  double to_mm = 0;
};

/// Adds an interval that does not start before the last one; joins the two if they
/// touch.
void append(std::vector<SpacingInterval>& intervals, SpacingInterval added);

/// The same ground, in order and with as few intervals as can be.
void join(std::vector<SpacingInterval>& intervals);

/// What is left of an interval without others; single places are left only if the
/// interval is one.
///
/// @param taken  in order, disjoint
std::vector<SpacingInterval> rest_of(SpacingInterval whole,
                                     const std::vector<SpacingInterval>& taken);

}  // namespace sheerlap
