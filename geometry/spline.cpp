#include "geometry/spline.h"

#include <Eigen/SparseCore>
#include <Eigen/SparseLU>
#include <cassert>

namespace sheerlap {
namespace {

using Triplets = std::vector<Eigen::Triplet<double>>;

int as_index(std::size_t i) { return static_cast<int>(i); }

std::vector<Vector3> solve(const Triplets& entries, const Eigen::MatrixX3d& right) {
  const auto n = right.rows();
  Eigen::SparseMatrix<double> matrix(n, n);
  matrix.setFromTriplets(entries.begin(), entries.end());
  Eigen::SparseLU<Eigen::SparseMatrix<double>> factors(matrix);
  assert(factors.info() == Eigen::Success);
  const Eigen::MatrixX3d solution = factors.solve(right);
  std::vector<Vector3> result(static_cast<std::size_t>(n));
  for (Eigen::Index i = 0; i < n; ++i)
    result[static_cast<std::size_t>(i)] = solution.row(i).transpose();
  return result;
}

/// The row that makes the first derivative continuous at knot `i`.
struct Row {
  std::size_t before, i, after;
  double chord_before, chord_after;
};

void add_continuity(const std::vector<Point3>& points,
                    const Row& row,
                    Triplets& entries,
                    Eigen::MatrixX3d& right) {
  const int at = as_index(row.i);
  entries.emplace_back(at, as_index(row.before), row.chord_before);
  entries.emplace_back(at, at, 2 * (row.chord_before + row.chord_after));
  entries.emplace_back(at, as_index(row.after), row.chord_after);
  const Vector3 slope_after = (points[row.after] - points[row.i]) / row.chord_after;
  const Vector3 slope_before = (points[row.i] - points[row.before]) / row.chord_before;
  right.row(at) = 6 * (slope_after - slope_before).transpose();
}

/// The row that makes knot `middle` no knot: one cubic on both sides of it.
void add_not_a_knot(std::size_t at,
                    std::size_t middle,
                    double chord_before,
                    double chord_after,
                    Triplets& entries) {
  entries.emplace_back(as_index(at), as_index(middle - 1), chord_after);
  entries.emplace_back(as_index(at), as_index(middle), -(chord_before + chord_after));
  entries.emplace_back(as_index(at), as_index(middle + 1), chord_before);
}

}  // namespace

std::vector<Vector3> open_spline_second_derivatives(const std::vector<Point3>& points) {
  const std::size_t n = points.size();
  assert(n >= 2);
  if (n == 2) return {Vector3::Zero(), Vector3::Zero()};
  std::vector<double> chord(n - 1);
  for (std::size_t i = 0; i + 1 < n; ++i) chord[i] = (points[i + 1] - points[i]).norm();
  if (n == 3) {
    const Vector3 bend =
        2 * ((points[2] - points[1]) / chord[1] - (points[1] - points[0]) / chord[0]) /
        (chord[0] + chord[1]);
    return {bend, bend, bend};
  }
  Triplets entries;
  entries.reserve(3 * n);
  Eigen::MatrixX3d right = Eigen::MatrixX3d::Zero(static_cast<Eigen::Index>(n), 3);
  for (std::size_t i = 1; i + 1 < n; ++i)
    add_continuity(points, {i - 1, i, i + 1, chord[i - 1], chord[i]}, entries, right);
  add_not_a_knot(0, 1, chord[0], chord[1], entries);
  add_not_a_knot(n - 1, n - 2, chord[n - 3], chord[n - 2], entries);
  return solve(entries, right);
}

std::vector<Vector3> periodic_spline_second_derivatives(
    const std::vector<Point3>& points) {
  const std::size_t n = points.size();
  assert(n >= 3);
  Triplets entries;
  entries.reserve(3 * n);
  Eigen::MatrixX3d right = Eigen::MatrixX3d::Zero(static_cast<Eigen::Index>(n), 3);
  for (std::size_t i = 0; i < n; ++i) {
    const std::size_t before = (i + n - 1) % n;
    const std::size_t after = (i + 1) % n;
    add_continuity(points,
                   {before, i, after, (points[i] - points[before]).norm(),
                    (points[after] - points[i]).norm()},
                   entries, right);
  }
  return solve(entries, right);
}

}  // namespace sheerlap
