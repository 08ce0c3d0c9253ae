#pragma once

#include <vector>

#include "joint/perimeter.h"
#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"

namespace sheerlap {

/// The starboard half of a small boat with a stem, sheer and a transom, at uneven
/// stations; the transom corner is row 9 of 12, the last row is on the centreline.
std::vector<Point3> small_boat();

/// A half boat's table given once round: the same rows and their port images.
Joint as_whole(const Joint& half);

/// A joint's offsets made to differ from row to row.
Joint with_uneven_offsets(Joint joint);

/// The sheer, drill line and hull line of each side at tenths of their girth, and their
/// lengths: numbers by which two perimeters are told apart.
std::vector<Point3> traces(const Perimeter& perimeter);

}  // namespace sheerlap
