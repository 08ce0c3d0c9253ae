#include "tests/geometry/example_curves.h"

#include <cmath>
#include <numbers>
#include <random>

namespace sheerlap {

std::vector<Point3> ellipse_points(double semi_x_mm,
                                   double semi_y_mm,
                                   std::size_t count,
                                   double rise_mm) {
  std::vector<Point3> points;
  for (std::size_t i = 0; i < count; ++i) {
    const double angle =
        2 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(count);
    const double x = -std::cos(angle);
    points.emplace_back(semi_x_mm * x, semi_y_mm * std::sin(angle), rise_mm * x * x);
  }
  return points;
}

std::shared_ptr<const Curve> closed_curve(const std::vector<Point3>& points) {
  return std::make_shared<const Curve>(
      points, CurveShape{true, false, std::vector<bool>(points.size(), false)});
}

std::shared_ptr<const Curve> open_curve(const std::vector<Point3>& points,
                                        bool straight) {
  return std::make_shared<const Curve>(
      points, CurveShape{false, straight, std::vector<bool>(points.size(), false)});
}

std::shared_ptr<const Curve> polygon(const std::vector<Point3>& points) {
  return std::make_shared<const Curve>(
      points, CurveShape{true, true, std::vector<bool>(points.size(), false)});
}

RuledFace even_face(const std::shared_ptr<const Curve>& curve,
                    const RuledOffsets& offsets,
                    double thickness_mm) {
  return {curve, std::vector<RuledOffsets>(curve->knots(), offsets), thickness_mm};
}

std::vector<Point3> winding_points(unsigned seed, std::size_t count) {
  std::mt19937 random(seed);
  // the engine's own numbers: distributions differ between libraries
  const auto between = [&](double low, double high) {
    return low + (high - low) * static_cast<double>(random()) / 4294967296.0;
  };
  std::vector<Point3> points;
  double x = 0;
  for (std::size_t i = 0; i < count; ++i) {
    points.emplace_back(x, between(-150, 150), between(-60, 60));
    x += between(150, 500);
  }
  return points;
}

}  // namespace sheerlap
