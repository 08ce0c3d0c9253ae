#pragma once

#include <Eigen/Core>

namespace sheerlap {

/// How many samples are worked out side by side.
inline constexpr Eigen::Index lane_count = 8;
/// One number of each of the samples.
using Lane = Eigen::Array<double, lane_count, 1>;
/// Many numbers of each: a column a number, a row a sample.
using Lanes = Eigen::Array<double, lane_count, Eigen::Dynamic>;

/// The sums of `weights` times `numbers`: column j is the sum over k of weights(k, j)
/// times numbers' column k. The sums run in that order whatever the machine, so that
/// they are the same to the last bit.
///
/// @param weights  K x N
/// @param numbers  K columns
/// @param sums     N columns; what it holds is written over
void sum_lanes(const Eigen::MatrixXd& weights, const Lanes& numbers, Lanes& sums);

}  // namespace sheerlap
