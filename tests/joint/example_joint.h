#pragma once

#include <vector>

#include "geometry/points.h"
#include "joint/joint.h"

namespace sheerlap {

/// Flange offsets of the examples, mm.
struct ExampleFaces {
  double lap = 50;
  double hull_top = 0;
  double hull_low = 0;
  double lip_top = 3;
  double lip_low = 3;
  double lip_thickness = 5;
  double hull_thickness = 6;
};

/// A joint through the points given, with the same faces at each, a drill line 25 mm
/// down, pitch 40 to 150 and an adhesive for gaps of 1 to 8 mm; half a boat.
Joint example_joint(const std::vector<Point3>& points, const ExampleFaces& faces);

/// A half circle in plan about (radius, 0), given by `rows` points, level.
Joint circle_joint(double radius_mm, std::size_t rows, const ExampleFaces& faces);

/// A half box in plan, given by its four corners, level, straight between them: two of
/// the corners inside the side at the bow.
Joint box_joint(double length_mm, double beam_mm, const ExampleFaces& faces);

}  // namespace sheerlap
