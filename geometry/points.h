#pragma once

#include <Eigen/Core>

namespace sheerlap {

/// Points and vectors in the plane and in space; every coordinate is in mm.
/// In plan the plane is (x, y).
using Point2 = Eigen::Vector2d;
using Vector2 = Eigen::Vector2d;
using Point3 = Eigen::Vector3d;
using Vector3 = Eigen::Vector3d;

}  // namespace sheerlap
