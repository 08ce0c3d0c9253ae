#pragma once

#include <cstddef>
#include <vector>

#include "joint/tolerance_answers.h"

namespace sheerlap {

/// One answer for a boat with its first set of errors, with its second, and with the
/// first but one error of the second.
struct SwappedAnswers {
  double first = 0;
  double second = 0;
  std::vector<double> swapped;  ///< one an error
};

/// Counts which share of an answer's variance each error brings, over boats.
///
/// With V the variance, f an answer and i the error changed over: the share by itself
/// is 1 - mean((f(second) - f(swapped i))^2) / (2 V), the total share
/// mean((f(first) - f(swapped i))^2) / (2 V), and V is mean((f(first) -
/// f(second))^2) / 2. Their errors are those of ratios of means.
///
/// @source  M. J. W. Jansen, Analysis of variance designs for model output, Computer
///          Physics Communications 117 (1999); A. Saltelli and others, Variance based
///          sensitivity analysis of model output, Computer Physics Communications 181
///          (2010), table 2; from memory, confirm
class VarianceTally {
 public:
  explicit VarianceTally(std::size_t errors) : by_itself_(errors), total_(errors) {}

  void add(const SwappedAnswers& answers);
  std::size_t boats() const { return boats_; }
  /// One an error; empty where the answer does not vary, or of fewer than 2 boats.
  std::vector<VarianceShare> shares() const;

 private:
  struct Ratio {
    double sum = 0, squared = 0, with_variance = 0;
  };
  static void add(Ratio& ratio, double difference, double variance);
  double error_of(const Ratio& ratio) const;

  std::size_t boats_ = 0;
  double variance_ = 0, variance_squared_ = 0;  ///< sums over boats
  std::vector<Ratio> by_itself_, total_;
};

}  // namespace sheerlap
