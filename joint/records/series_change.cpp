#include "joint/records/series_change.h"

#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <cassert>
#include <cmath>

namespace sheerlap {
namespace {

double mean_of(const std::vector<double>& values) {
  double sum = 0;
  for (const double value : values) sum += value;
  return sum / static_cast<double>(values.size());
}

/// What is left of a sum of squares by rounding alone.
double rounding_of(const std::vector<double>& values) {
  double sum = 0;
  for (const double value : values) sum += value * value;
  return 1e-24 * sum;
}

/// t of a difference and its standard error; that of a difference without scatter is
/// beyond all bounds.
double chance_of(double difference, double error, double freedom) {
  if (difference == 0) return 1;
  if (error == 0) return 0;
  return student_chance(difference / error, freedom);
}

}  // namespace

double student_chance(double t, double freedom) {
  assert(freedom > 0);
  if (!std::isfinite(t)) return 0;
  const boost::math::students_t_distribution<> student(freedom);
  return 2 * boost::math::cdf(boost::math::complement(student, std::abs(t)));
}

std::optional<Drift> drift_of(const std::vector<double>& values, double least_scatter) {
  if (values.size() < 3) return std::nullopt;
  const double count = static_cast<double>(values.size());
  const double middle = (count - 1) / 2;
  const double mean = mean_of(values);
  double s_xy = 0;
  for (std::size_t i = 0; i < values.size(); ++i)
    s_xy += (static_cast<double>(i) - middle) * (values[i] - mean);
  const double s_xx = count * (count * count - 1) / 12;
  Drift drift;
  drift.slope = s_xy / s_xx;
  double squares = 0;
  for (std::size_t i = 0; i < values.size(); ++i) {
    const double off =
        values[i] - mean - drift.slope * (static_cast<double>(i) - middle);
    squares += off * off;
  }
  if (squares <= rounding_of(values)) squares = 0;
  if (drift.slope * drift.slope * s_xx <= rounding_of(values)) drift.slope = 0;
  drift.scatter = std::sqrt(squares / (count - 2));
  drift.slope_error = std::max(drift.scatter, least_scatter) / std::sqrt(s_xx);
  drift.chance = chance_of(drift.slope, drift.slope_error, count - 2);
  return drift;
}

std::optional<Step> step_of(const std::vector<double>& values, double least_scatter) {
  if (values.size() < 2 * least_part) return std::nullopt;
  const double count = static_cast<double>(values.size());
  const double mean = mean_of(values);
  double squares = 0;
  for (const double value : values) squares += (value - mean) * (value - mean);
  // the split that takes most off the sum of squares: n1 n2 / n (difference of means)^2
  Step step;
  double most = -1;
  double sum = 0;
  for (std::size_t at = 1; at + least_part <= values.size(); ++at) {
    sum += values[at - 1] - mean;
    if (at < least_part) continue;
    const double before = static_cast<double>(at);
    const double taken = sum * sum * count / (before * (count - before));
    if (taken <= most) continue;
    most = taken;
    step.at = at;
    step.before = mean + sum / before;
    step.after = mean - sum / (count - before);
  }
  const double left = squares - most;
  step.scatter = left <= rounding_of(values) ? 0 : std::sqrt(left / (count - 2));
  const double before = static_cast<double>(step.at);
  const double error = std::max(step.scatter, least_scatter) *
                       std::sqrt(1 / before + 1 / (count - before));
  const bool flat = most <= rounding_of(values);
  const auto splits = static_cast<double>(values.size() - 2 * least_part + 1);
  step.chance = flat ? 1
                     : std::min(1.0, splits * chance_of(step.after - step.before, error,
                                                        count - 2));
  return step;
}

}  // namespace sheerlap
