#include "joint/sample_figures.h"

#include <algorithm>
#include <boost/math/distributions/binomial.hpp>
#include <cassert>
#include <cmath>

namespace sheerlap {
namespace {

constexpr double each_end = 0.025;  ///< share of intervals that miss on one hand
/// Of the standard normal law, 1 - `each_end`.
constexpr double normal_reach = 1.9599639845400545;

}  // namespace

Estimate share_estimate(std::size_t count, std::size_t of) {
  assert(of > 0 && count <= of);
  const double n = static_cast<double>(of);
  const double p = static_cast<double>(count) / n;
  const double z2 = normal_reach * normal_reach;
  const double middle = (p + z2 / (2 * n)) / (1 + z2 / n);
  const double reach =
      normal_reach * std::sqrt(p * (1 - p) / n + z2 / (4 * n * n)) / (1 + z2 / n);
  // exactly 0 and 1 where none and all were seen
  return {p, count == 0 ? 0 : middle - reach, count == of ? 1 : middle + reach};
}

Estimate normal_estimate(double value, double error) {
  return {value, value - normal_reach * error, value + normal_reach * error};
}

void RunningFigures::add(double value) {
  const double before = static_cast<double>(count_);
  ++count_;
  const double n = before + 1;
  const double step = (value - mean_) / n;
  const double squared = (value - mean_) * step * before;
  mean_ += step;
  fourth_ += squared * step * step * (n * n - 3 * n + 3) + 6 * step * step * second_ -
             4 * step * third_;
  third_ += squared * step * (n - 2) - 3 * step * second_;
  second_ += squared;
}

void RunningFigures::merge(const RunningFigures& other) {
  if (other.count_ == 0) return;
  if (count_ == 0) {
    *this = other;
    return;
  }
  const double a = static_cast<double>(count_), b = static_cast<double>(other.count_);
  const double n = a + b;
  const double step = other.mean_ - mean_;
  const double step2 = step * step;
  fourth_ += other.fourth_ +
             step2 * step2 * a * b * (a * a - a * b + b * b) / (n * n * n) +
             6 * step2 * (a * a * other.second_ + b * b * second_) / (n * n) +
             4 * step * (a * other.third_ - b * third_) / n;
  third_ += other.third_ + step * step2 * a * b * (a - b) / (n * n) +
            3 * step * (a * other.second_ - b * second_) / n;
  second_ += other.second_ + step2 * a * b / n;
  mean_ += step * b / n;
  count_ += other.count_;
}

double RunningFigures::variance() const {
  return count_ < 2 ? 0 : second_ / (static_cast<double>(count_) - 1);
}

double RunningFigures::skewness() const {
  if (!(second_ > 0)) return 0;
  const double n = static_cast<double>(count_);
  return third_ / n / std::pow(second_ / n, 1.5);
}

double RunningFigures::mean_error() const {
  return count_ < 2 ? 0 : std::sqrt(variance() / static_cast<double>(count_));
}

double RunningFigures::variance_error() const {
  if (count_ < 4) return 0;
  const double n = static_cast<double>(count_);
  const double squared = variance() * variance();
  return std::sqrt(std::max(0., (fourth_ / n - squared * (n - 3) / (n - 1)) / n));
}

Estimate RunningFigures::mean_estimate() const {
  return normal_estimate(mean_, mean_error());
}

Estimate RunningFigures::deviation_estimate() const {
  const double reach = normal_reach * variance_error();
  return {std::sqrt(variance()), std::sqrt(std::max(0., variance() - reach)),
          std::sqrt(variance() + reach)};
}

QuantileRanks quantile_ranks(std::size_t count, double share) {
  assert(count > 0 && share > 0 && share < 1);
  const double n = static_cast<double>(count);
  const boost::math::binomial_distribution<> below(n, share);
  const auto at_most = [&](double number) {
    return number < 0 ? 0 : boost::math::cdf(below, std::min(number, n));
  };
  QuantileRanks ranks;
  ranks.at = std::clamp<std::size_t>(
      static_cast<std::size_t>(std::ceil(n * share * (1 - 1e-12))), 1, count);
  const double deviation = std::sqrt(n * share * (1 - share));
  // from well outside, inward to the first rank that still misses seldom enough
  double low = std::max(1., std::floor(n * share - 6 * deviation));
  while (low < n && at_most(low) <= each_end) ++low;
  double high = std::min(n, std::ceil(n * share + 6 * deviation) + 1);
  while (high > low && 1 - at_most(high - 2) <= each_end) --high;
  ranks.low = static_cast<std::size_t>(low);
  ranks.high = static_cast<std::size_t>(high);
  ranks.held = at_most(high - 1) - at_most(low - 1);
  return ranks;
}

Estimate quantile_estimate(const std::vector<double>& ascending, double share) {
  const QuantileRanks ranks = quantile_ranks(ascending.size(), share);
  return {ascending[ranks.at - 1], ascending[ranks.low - 1], ascending[ranks.high - 1]};
}

}  // namespace sheerlap
