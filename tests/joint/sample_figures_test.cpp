#include "joint/sample_figures.h"

#include <boost/math/distributions/binomial.hpp>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "geometry/random_stream.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

RunningFigures figures_of(const std::vector<double>& values) {
  RunningFigures figures;
  for (const double value : values) figures.add(value);
  return figures;
}

/// Uniform numbers to the fourth power: a law with a long tail on one hand.
std::vector<double> skewed(std::size_t count) {
  RandomStream stream(640, 0, 1);
  std::vector<double> values;
  for (std::size_t i = 0; i < count; ++i)
    values.push_back(std::pow(stream.uniform(), 4));
  return values;
}

BOOST_AUTO_TEST_SUITE(sample_figures)

BOOST_AUTO_TEST_CASE(shares_have_the_intervals_of_the_published_table) {
  const struct {
    std::size_t count, of;
    double low, high;
  } rows[] = {{81, 263, 0.2553, 0.3662},
              {15, 148, 0.0624, 0.1605},
              {0, 20, 0, 0.1611},
              {1, 29, 0.0061, 0.1718}};
  // published: R. G. Newcombe, Two-sided confidence intervals for the single
  // proportion, Statistics in Medicine 17 (1998), table I, score method; from memory,
  // confirm
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.count << " of " << row.of) {
      const Estimate found = share_estimate(row.count, row.of);
      BOOST_TEST(std::abs(found.low - row.low) < 0.00005 + 1e-12);  // four decimals
      BOOST_TEST(std::abs(found.high - row.high) < 0.00005 + 1e-12);
    }
}

BOOST_AUTO_TEST_CASE(
    a_share_that_would_lie_at_an_end_of_its_interval_is_at_the_normal_reach) {
  // derived: the score interval is where |p - share| = z sqrt(p (1 - p) / n)
  for (const std::size_t count : {1UL, 37UL, 99UL}) {
    const Estimate found = share_estimate(count, 100);
    for (const double p : {found.low, found.high}) {
      const double reach = std::abs(p - found.value) / std::sqrt(p * (1 - p) / 100);
      BOOST_TEST(reach == 1.9599639845400545, tolerance(1e-12));
    }
  }
}

BOOST_AUTO_TEST_CASE(none_and_all_are_told_with_an_end_of_their_interval) {
  BOOST_TEST(share_estimate(0, 7).low == 0);
  BOOST_TEST(share_estimate(7, 7).high == 1);
  BOOST_TEST(share_estimate(7, 7).low == 1 - share_estimate(0, 7).high,
             tolerance(1e-14));  // property: what is seen and what is not change places
}

BOOST_AUTO_TEST_CASE(a_small_spread_about_a_great_mean_is_not_lost) {
  // derived: 1001 numbers, 0.2 once and 0.1 and 0.3 500 times each, have the mean 0.2
  // and the sum of squares 1000 * 0.01: variance 10 / 1000
  std::vector<double> values{1e7 + 0.2};
  for (int i = 0; i < 500; ++i) values.insert(values.end(), {1e7 + 0.1, 1e7 + 0.3});
  const RunningFigures figures = figures_of(values);
  BOOST_TEST(figures.mean() == 1e7 + 0.2, tolerance(1e-15));
  // numbers near 1e7 are held to 1e-9, a tenth of one to 2e-8
  BOOST_TEST(figures.variance() == 0.01, tolerance(4e-8));
}

BOOST_AUTO_TEST_CASE(errors_are_those_of_the_moments_about_the_mean) {
  // derived: 0 0 0 0 5: mean 1, sums of 2nd and 4th powers 20 and 260; variance 5,
  // error of the mean sqrt(5 / 5), of the variance sqrt((52 - 25 * 2 / 4) / 5)
  const RunningFigures figures = figures_of({0, 0, 0, 0, 5});
  BOOST_TEST(figures.mean() == 1, tolerance(1e-15));
  BOOST_TEST(figures.variance() == 5, tolerance(1e-15));
  BOOST_TEST(figures.mean_error() == 1, tolerance(1e-15));
  BOOST_TEST(figures.variance_error() == std::sqrt(39.5 / 5), tolerance(1e-14));
}

BOOST_AUTO_TEST_CASE(skewness_is_the_third_moment_over_the_deviations_cube) {
  // derived: 0, 0, 0 and 1 have the mean 1/4, the second moment 3/16, the third 3/32
  RunningFigures figures;
  for (const double number : {0., 0., 0., 1.}) figures.add(number);
  BOOST_TEST(figures.skewness() == 3. / 32 / std::pow(3. / 16, 1.5), tolerance(1e-12));
  RunningFigures alike;
  for (int i = 0; i < 5; ++i) alike.add(7);
  BOOST_TEST(alike.skewness() == 0);
}

BOOST_AUTO_TEST_CASE(a_normal_interval_is_196_hundredths_of_the_error_each_way) {
  const Estimate found = normal_estimate(5, 2);
  BOOST_TEST(found.value == 5);
  // published: the standard normal law's 97.5 % point, 1.959964 (any table; from
  // memory, confirm)
  BOOST_TEST(found.high - 5 == 2 * 1.959964, tolerance(1e-6));
  BOOST_TEST(5 - found.low == 2 * 1.959964, tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(parts_merged_are_as_the_whole) {
  const std::vector<double> values = skewed(1000);
  const RunningFigures whole = figures_of(values);
  RunningFigures merged;
  merged.merge({});
  for (const auto& [from, to] : {std::pair{0, 1}, {1, 300}, {300, 300}, {300, 1000}})
    merged.merge(figures_of({values.begin() + from, values.begin() + to}));
  BOOST_TEST(merged.count() == 1000U);
  BOOST_TEST(merged.mean() == whole.mean(), tolerance(1e-13));
  BOOST_TEST(merged.variance() == whole.variance(), tolerance(1e-12));
  BOOST_TEST(merged.variance_error() == whole.variance_error(), tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(quantiles_have_the_ranks_of_the_published_table) {
  const struct {
    std::size_t count, low, high;
    double held;
  } rows[] = {
      {10, 2, 9, 0.979}, {20, 6, 15, 0.959}, {50, 18, 33, 0.967}, {100, 40, 61, 0.965}};
  // published: D. G. Altman and others, Statistics with Confidence, table of ranks for
  // the interval of a median, 95 %; from memory, confirm
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.count) {
      const QuantileRanks ranks = quantile_ranks(row.count, 0.5);
      BOOST_TEST(ranks.low == row.low);
      BOOST_TEST(ranks.high == row.high);
      BOOST_TEST(std::abs(ranks.held - row.held) < 0.0005 + 1e-9);  // three decimals
    }
}

BOOST_AUTO_TEST_CASE(ranks_are_the_closest_that_miss_in_no_more_than_5_of_100) {
  for (const std::size_t count : {36UL, 250UL, 10000UL, 100000UL})
    for (const double share : {0.1, 0.5, 0.9})
      BOOST_TEST_CONTEXT(count << " " << share) {
        const QuantileRanks ranks = quantile_ranks(count, share);
        const boost::math::binomial_distribution<> below(static_cast<double>(count),
                                                         share);
        const auto at_most = [&](std::size_t number) {
          return boost::math::cdf(below, static_cast<double>(number));
        };
        BOOST_TEST(at_most(ranks.low - 1) <= 0.025);
        BOOST_TEST(at_most(ranks.low) > 0.025);
        BOOST_TEST(1 - at_most(ranks.high - 1) <= 0.025);
        BOOST_TEST(1 - at_most(ranks.high - 2) > 0.025);
        BOOST_TEST(ranks.held >= 0.95);
        BOOST_TEST(ranks.low <= ranks.at);
        BOOST_TEST(ranks.at <= ranks.high);
      }
}

BOOST_AUTO_TEST_CASE(a_sample_too_small_for_an_interval_says_so) {
  // derived: all of 28 are below the 90th percentile with 0.9^28 = 0.0523, more than
  // the 5 of 100 that may miss at both ends together; all of 36 with 0.0225
  BOOST_TEST(quantile_ranks(28, 0.9).held < 0.95);
  BOOST_TEST(quantile_ranks(36, 0.9).held >= 0.95);
  BOOST_TEST(quantile_ranks(1, 0.5).held == 0);
}

BOOST_AUTO_TEST_CASE(quantiles_are_members_of_the_sample) {
  // derived: of 1 to 100, 90 are at most 90
  std::vector<double> values;
  for (int i = 1; i <= 100; ++i) values.push_back(i);
  BOOST_TEST(quantile_estimate(values, 0.9).value == 90);
  BOOST_TEST(quantile_estimate(values, 0.5).low == 40);
  BOOST_TEST(quantile_estimate({3}, 0.1).high == 3);
}

BOOST_AUTO_TEST_CASE(intervals_hold_the_truth_in_95_of_100_samples) {
  // derived: u^4 has mean 1/5, variance 1/9 - 1/25, median 1/16. Of 2000 samples 95 of
  // 100 hold it, give or take sqrt(2000 * .95 * .05) = 9.7; the mean's interval is by
  // the normal law, the quantile's holds it in 95.6 of 100 at 400, the deviation's
  // for a law like this about as often. Fewer than 1840 or more than 1960 in a false
  // alarm: below 1e-6 for the first two, 6 deviations
  int mean = 0, median = 0, deviation = 0;
  constexpr int samples = 2000;
  for (std::uint64_t sample = 0; sample < samples; ++sample) {
    RandomStream stream(640, sample, 2);
    std::vector<double> values;
    for (int i = 0; i < 400; ++i) values.push_back(std::pow(stream.uniform(), 4));
    const RunningFigures figures = figures_of(values);
    std::sort(values.begin(), values.end());
    const auto holds = [](const Estimate& estimate, double truth) {
      return estimate.low <= truth && truth <= estimate.high;
    };
    mean += holds(figures.mean_estimate(), 0.2);
    median += holds(quantile_estimate(values, 0.5), 1. / 16);
    deviation += holds(figures.deviation_estimate(), std::sqrt(1. / 9 - 1. / 25));
  }
  for (const int held : {mean, median, deviation}) {
    BOOST_TEST(held > 1840);
    BOOST_TEST(held < 1960);
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
