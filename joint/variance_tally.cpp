#include "joint/variance_tally.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "joint/sample_figures.h"

namespace sheerlap {

void VarianceTally::add(Ratio& ratio, double difference, double variance) {
  const double half = difference * difference / 2;
  ratio.sum += half;
  ratio.squared += half * half;
  ratio.with_variance += half * variance;
}

void VarianceTally::add(const SwappedAnswers& answers) {
  assert(answers.swapped.size() == total_.size());
  const double apart = answers.first - answers.second;
  const double variance = apart * apart / 2;
  ++boats_;
  variance_ += variance;
  variance_squared_ += variance * variance;
  for (std::size_t i = 0; i < total_.size(); ++i) {
    add(by_itself_[i], answers.second - answers.swapped[i], variance);
    add(total_[i], answers.first - answers.swapped[i], variance);
  }
}

/// Of the ratio of the mean half square to the mean variance: the spread of what is
/// left of each boat's half square when the ratio times its variance is taken off.
double VarianceTally::error_of(const Ratio& ratio) const {
  const double n = static_cast<double>(boats_);
  const double share = ratio.sum / variance_;
  const double squares = ratio.squared - 2 * share * ratio.with_variance +
                         share * share * variance_squared_;
  return std::sqrt(std::max(0.0, squares) * n / (n - 1)) / variance_;
}

std::vector<VarianceShare> VarianceTally::shares() const {
  std::vector<VarianceShare> shares;
  if (boats_ < 2 || !(variance_ > 0)) return shares;
  for (std::size_t i = 0; i < total_.size(); ++i)
    shares.push_back(
        {i, normal_estimate(1 - by_itself_[i].sum / variance_, error_of(by_itself_[i])),
         normal_estimate(total_[i].sum / variance_, error_of(total_[i]))});
  return shares;
}

}  // namespace sheerlap
