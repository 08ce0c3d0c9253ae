#include "geometry/lanes.h"

#include <cassert>

namespace sheerlap {

void sum_lanes(const Eigen::MatrixXd& weights, const Lanes& numbers, Lanes& sums) {
  assert(weights.rows() == numbers.cols());
  const Eigen::Index count = weights.cols();
  sums.resize(lane_count, count);
  Eigen::Index j = 0;
  // two at a time, so that each number is fetched half as often
  for (; j + 1 < count; j += 2) {
    Lane first = Lane::Zero();
    Lane second = Lane::Zero();
    for (Eigen::Index k = 0; k < weights.rows(); ++k) {
      const Lane number = numbers.col(k);
      first += weights(k, j) * number;
      second += weights(k, j + 1) * number;
    }
    sums.col(j) = first;
    sums.col(j + 1) = second;
  }
  for (; j < count; ++j) {
    Lane sum = Lane::Zero();
    for (Eigen::Index k = 0; k < weights.rows(); ++k)
      sum += weights(k, j) * numbers.col(k);
    sums.col(j) = sum;
  }
}

}  // namespace sheerlap
