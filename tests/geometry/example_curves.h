#pragma once

#include <memory>
#include <vector>

#include "geometry/curve.h"
#include "geometry/ruled_face.h"

namespace sheerlap {

/// `count` points of a closed ellipse about the origin, at even steps of the eccentric
/// angle, clockwise seen from above as a sheer runs; the height is
/// `rise_mm * (x / semi_x_mm)^2`.
std::vector<Point3> ellipse_points(double semi_x_mm,
                                   double semi_y_mm,
                                   std::size_t count,
                                   double rise_mm = 0);

/// A smooth curve that is closed, without knuckles.
std::shared_ptr<const Curve> closed_curve(const std::vector<Point3>& points);

/// An open curve: smooth, or the polyline.
std::shared_ptr<const Curve> open_curve(const std::vector<Point3>& points,
                                        bool straight = false);

/// A closed polyline.
std::shared_ptr<const Curve> polygon(const std::vector<Point3>& points);

/// A face with the same offsets at each knot.
RuledFace even_face(const std::shared_ptr<const Curve>& curve,
                    const RuledOffsets& offsets,
                    double thickness_mm = 0);

/// Random points of a winding line that goes on in x, for trials without symmetry;
/// the same seed gives the same points.
std::vector<Point3> winding_points(unsigned seed, std::size_t count);

}  // namespace sheerlap
