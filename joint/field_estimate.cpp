#include "joint/field_estimate.h"

#include <Eigen/Cholesky>
#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

#include "joint/sample_figures.h"
#include "joint/sample_groups.h"

namespace sheerlap {
namespace {

using Eigen::Index;

constexpr double least_length_mm = 50;
constexpr int length_steps = 32;
constexpr int noise_steps = 20;
constexpr double least_noise = 1e-3, greatest_noise = 3;  ///< against the spread
constexpr int spread_steps = 200;
constexpr double furthest_spread = 5;   ///< times the likeliest, and over it
constexpr double likely_within = 1.92;  ///< of the logarithm
/// Less is rounding, and has no logarithm.
constexpr double least_spread = 1e-6;

double stepped(double from, double to, int step, int steps) {
  return from * std::pow(to / from, static_cast<double>(step) / steps);
}

/// The line that the samples are of.
struct SampledLine {
  double length_mm = 0;
  bool closed = true;
};

/// The correlation of two places, on a closed line summed over the ways round.
double correlation(const SampledLine& line, double apart_mm, double length_mm) {
  const auto one = [&](double apart) {
    return std::exp(-apart * apart / (2 * length_mm * length_mm));
  };
  if (!line.closed) return one(apart_mm);
  double sum = 0, whole = 0;
  for (const double round : {-2., -1., 0., 1., 2.}) {
    sum += one(apart_mm + round * line.length_mm);
    whole += one(round * line.length_mm);
  }
  return sum / whole;
}

/// What is left to say of samples once correlation and noise are chosen.
struct Likelihood {
  double length_mm = 0;
  double noise = 0;  ///< against the spread
  double mean = 0;
  double mean_weight = 0;  ///< the mean's variance is the spread's square over it
  double squares = 0;      ///< of the spread
  double degrees = 0;
  double rest = 0;  ///< of the logarithm

  double spread() const { return std::sqrt(squares / degrees); }
  double logarithm(double spread) const {
    return rest - degrees * std::log(spread) - squares / (2 * spread * spread);
  }
  double greatest() const { return logarithm(spread()); }
};

using Parted = Eigen::LLT<Eigen::MatrixXd>;

/// The covariance of what is left of a sample, against the spread's square.
Parted covariance_of(const SampleGroup& group,
                     const SampledLine& line,
                     double length_mm,
                     double noise) {
  const auto count = static_cast<Index>(group.along_mm.size());
  Eigen::MatrixXd covariance(count, count);
  for (Index i = 0; i < count; ++i)
    for (Index j = 0; j < count; ++j)
      covariance(i, j) = correlation(line,
                                     group.along_mm[static_cast<std::size_t>(i)] -
                                         group.along_mm[static_cast<std::size_t>(j)],
                                     length_mm) +
                         (i == j ? noise * noise : 0);
  return Parted(group.rest.transpose() * covariance * group.rest);
}

/// The logarithm of the root of what was parted's determinant.
double half_logarithm(const Parted& parted) {
  return Eigen::MatrixXd(parted.matrixL()).diagonal().array().log().sum();
}

/// The likeliest pattern, its weight taken off the likelihood.
Eigen::VectorXd take_pattern(const std::vector<SampleGroup>& groups,
                             const std::vector<Parted>& parted,
                             Likelihood& found) {
  const Index parts = groups.front().pattern.cols();
  Eigen::MatrixXd weights = Eigen::MatrixXd::Zero(parts, parts);
  Eigen::VectorXd sum = Eigen::VectorXd::Zero(parts);
  for (std::size_t i = 0; i < groups.size(); ++i) {
    const SampleGroup& group = groups[i];
    const Eigen::MatrixXd solved = parted[i].solve(group.pattern);
    weights += group.samples * group.pattern.transpose() * solved;
    sum += group.samples * solved.transpose() * group.mean;
  }
  const Parted weighing(weights);
  found.degrees -= static_cast<double>(parts);
  found.rest -= half_logarithm(weighing);
  return weighing.solve(sum);
}

Likelihood likelihood(const std::vector<SampleGroup>& groups,
                      const SampledLine& line,
                      double length_mm,
                      double noise) {
  Likelihood found{length_mm, noise};
  std::vector<Parted> parted;
  double weighed = 0;
  for (const SampleGroup& group : groups) {
    parted.push_back(covariance_of(group, line, length_mm, noise));
    const Eigen::VectorXd level = parted.back().solve(group.level);
    found.mean_weight += group.samples * level.dot(group.level);
    weighed += group.samples * level.dot(group.mean);
    found.degrees += group.samples * static_cast<double>(group.level.size());
    found.rest -= group.samples * half_logarithm(parted.back());
  }
  found.mean = weighed / found.mean_weight;
  const Eigen::VectorXd pattern = take_pattern(groups, parted, found);
  for (std::size_t i = 0; i < groups.size(); ++i) {
    const SampleGroup& group = groups[i];
    const Eigen::VectorXd off = group.mean - group.pattern * pattern;
    found.squares += parted[i].solve(group.squares).trace() +
                     group.samples * off.dot(parted[i].solve(off));
  }
  found.squares = std::max(found.squares, found.degrees * least_spread * least_spread);
  return found;
}

/// Ranges of correlation lengths (mm) and of noise against the spread.
struct GridRange {
  double from_mm = 0, to_mm = 0;
  double quiet = 0, loud = 0;
};

std::vector<Likelihood> likelihoods(const std::vector<SampleGroup>& groups,
                                    const SampledLine& line,
                                    const GridRange& range) {
  std::vector<Likelihood> all;
  for (int i = 0; i <= length_steps; ++i)
    for (int j = 0; j <= noise_steps; ++j)
      all.push_back(likelihood(groups, line,
                               stepped(range.from_mm, range.to_mm, i, length_steps),
                               stepped(range.quiet, range.loud, j, noise_steps)));
  return all;
}

const Likelihood& likeliest(const std::vector<Likelihood>& all) {
  return *std::max_element(all.begin(), all.end(), [](const auto& a, const auto& b) {
    return a.greatest() < b.greatest();
  });
}

Estimate likely_spread(const std::vector<Likelihood>& all, const Likelihood& best) {
  Estimate spread{best.spread(), best.spread(), best.spread()};
  for (int i = 0; i <= spread_steps; ++i) {
    const double tried = stepped(spread.value / furthest_spread,
                                 spread.value * furthest_spread, i, spread_steps);
    double greatest = -std::numeric_limits<double>::infinity();
    for (const Likelihood& one : all)
      greatest = std::max(greatest, one.logarithm(tried));
    if (best.greatest() - greatest > likely_within) continue;
    spread.low = std::min(spread.low, tried);
    spread.high = std::max(spread.high, tried);
  }
  return spread;
}

/// What the likely ones have of one number.
Estimate likely_number(const std::vector<Likelihood>& all, double Likelihood::*number) {
  const Likelihood& best = likeliest(all);
  Estimate found{best.*number, best.*number, best.*number};
  for (const Likelihood& one : all) {
    if (best.greatest() - one.greatest() > likely_within) continue;
    found.low = std::min(found.low, one.*number);
    found.high = std::max(found.high, one.*number);
  }
  return found;
}

/// The likely part of a grid, and a step of it more on all sides.
GridRange likely_part(const std::vector<Likelihood>& all, const GridRange& whole) {
  const Estimate length = likely_number(all, &Likelihood::length_mm);
  const Estimate noise = likely_number(all, &Likelihood::noise);
  const double step = stepped(1, whole.to_mm / whole.from_mm, 1, length_steps);
  const double noise_step = stepped(1, whole.loud / whole.quiet, 1, noise_steps);
  return {std::max(whole.from_mm, length.low / step),
          std::min(whole.to_mm, length.high * step),
          std::max(whole.quiet, noise.low / noise_step),
          std::min(whole.loud, noise.high * noise_step)};
}

}  // namespace

std::optional<FieldEstimate> field_estimate(const std::vector<FieldSample>& samples,
                                            double line_mm,
                                            bool closed) {
  auto groups = grouped(samples);
  double left = 0;
  for (const SampleGroup& group : groups)
    left += group.samples * static_cast<double>(group.level.size());
  if (left < 3) return std::nullopt;
  add_pattern(groups);
  if (left - static_cast<double>(groups.front().pattern.cols()) < 3)
    return std::nullopt;
  const SampledLine line{line_mm, closed};
  const GridRange whole{least_length_mm, line_mm / 4, least_noise, greatest_noise};
  auto all = likelihoods(groups, line, whole);
  // once more and closely where it is likely
  all = likelihoods(groups, line, likely_part(all, whole));
  const Likelihood& best = likeliest(all);
  FieldEstimate found;
  found.mean = normal_estimate(best.mean, best.spread() / std::sqrt(best.mean_weight));
  found.spread = likely_spread(all, best);
  found.correlation_mm = likely_number(all, &Likelihood::length_mm);
  constexpr double rounding = 1e-9;
  found.correlation_open = found.correlation_mm.low <= whole.from_mm * (1 + rounding) ||
                           found.correlation_mm.high >= whole.to_mm * (1 - rounding);
  found.noise = best.spread() * best.noise;
  found.samples = samples.size();
  for (const FieldSample& sample : samples) found.readings += sample.along_mm.size();
  return found;
}

}  // namespace sheerlap
