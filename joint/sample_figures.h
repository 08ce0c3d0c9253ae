#pragma once

#include <cstddef>
#include <vector>

#include "joint/tolerance_answers.h"

namespace sheerlap {

/// The share of which `count` of `of` were seen, and its interval.
///
/// @param of  > 0, >= `count`
/// @source  E. B. Wilson, Probable inference, the law of succession, and statistical
///          inference, J. Am. Stat. Assoc. 22 (1927): the score interval, 95 %
Estimate share_estimate(std::size_t count, std::size_t of);

/// A figure and its interval, 95 %, by the normal law.
/// @param error  standard error
Estimate normal_estimate(double value, double error);

/// Mean, spread and shape of numbers that come one by one and are not kept.
///
/// Parts are merged exactly as written, so that one order of merging gives one result
/// to the last bit.
///
/// @source  B. P. Welford, Note on a method for calculating corrected sums of squares
///          and products, Technometrics 4 (1962); its like for a merge of parts and for
///          third and fourth powers derived: binomial expansion about the joint mean
class RunningFigures {
 public:
  void add(double value);
  /// As if the other's numbers had been added after these.
  void merge(const RunningFigures& other);

  std::size_t count() const { return count_; }
  double mean() const { return mean_; }
  /// With one degree of freedom taken off; 0 of fewer than two numbers.
  double variance() const;
  double skewness() const;    ///< third moment over the deviation's cube; 0 if it is 0
  double mean_error() const;  ///< standard error of the mean
  /// Standard error of the variance, whatever the numbers' law: by their fourth moment.
  double variance_error() const;

  /// The mean and its interval, 95 %, by the normal law: for 30 numbers or more.
  Estimate mean_estimate() const;
  /// The standard deviation and its interval, 95 %, none of it below 0: for 100 numbers
  /// or more of a law without long tails.
  Estimate deviation_estimate() const;

 private:
  std::size_t count_ = 0;
  double mean_ = 0;
  double second_ = 0, third_ = 0, fourth_ = 0;  ///< sums of powers about the mean
};

/// Ranks, counted from 1, in a sample put in order: of the number that estimates a
/// quantile, and of those that hold the true one between them in 95 of 100 samples.
struct QuantileRanks {
  std::size_t at = 1;
  std::size_t low = 1, high = 1;
  /// Less than 0.95 where the sample is too small for any two ranks to do it.
  double held = 0;
};

/// @param count  > 0
/// @param share  0 < share < 1
/// @source  derived: the number of values below the quantile is binomial, so ranks
///          low < high hold it between them with P(low <= number < high), whatever the
///          law; each end misses it in no more than 2.5 of 100
QuantileRanks quantile_ranks(std::size_t count, double share);

/// The value that `share` of them stay below, and its interval.
///
/// @param ascending  N >= 1
Estimate quantile_estimate(const std::vector<double>& ascending, double share);

}  // namespace sheerlap
