#include "joint/field_estimate.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

#include "geometry/random_stream.h"

namespace sheerlap {
namespace {

constexpr double line_mm = 15000;

/// Boats read every 500 mm, in a field of mean 0.3, spread 0.8 and correlation length
/// `correlation_mm`, with 0.1 of noise, and any amount of two smooth modes.
std::vector<FieldSample> made_up(std::uint64_t seed,
                                 std::uint64_t boats,
                                 double correlation_mm) {
  std::vector<double> along;
  for (int i = 0; i < 30; ++i) along.push_back(500 * i);
  const Eigen::MatrixXd basis = field_basis({line_mm, correlation_mm, true}, along);
  FieldSample sample{along, Eigen::VectorXd(30), Eigen::MatrixXd(30, 2)};
  for (Eigen::Index i = 0; i < 30; ++i) {
    const double turn =
        2 * std::numbers::pi * along[static_cast<std::size_t>(i)] / line_mm;
    sample.modes.row(i) << std::cos(turn), std::sin(turn);
  }
  std::vector<FieldSample> samples;
  for (std::uint64_t boat = 0; boat < boats; ++boat) {
    RandomStream stream(seed, boat, 0);
    const auto normals = [&](Eigen::Index count) {
      Eigen::VectorXd numbers(count);
      for (double& number : numbers) number = stream.normal();
      return numbers;
    };
    sample.values = 0.8 * basis * normals(basis.cols()) + 0.1 * normals(30) +
                    sample.modes * (5 * normals(2));
    sample.values.array() += 0.3;
    samples.push_back(sample);
  }
  return samples;
}

bool holds(const Estimate& estimate, double exact) {
  return estimate.low <= exact && exact <= estimate.high;
}

BOOST_AUTO_TEST_SUITE(field_estimate_suite)

BOOST_AUTO_TEST_CASE(a_field_is_told_from_thirty_boats) {
  // derived: what the boats were made of, whatever the modes
  const auto found = field_estimate(made_up(2, 30, 700), line_mm, true);
  BOOST_TEST_REQUIRE(found.has_value());
  BOOST_TEST(found->samples == 30u);
  BOOST_TEST(found->readings == 900u);
  BOOST_TEST(holds(found->mean, 0.3));
  BOOST_TEST(holds(found->spread, 0.8));
  BOOST_TEST(holds(found->correlation_mm, 700));
  BOOST_TEST(!found->correlation_open);
  // the intervals are worth having
  BOOST_TEST(found->mean.high - found->mean.low < 0.3);
  BOOST_TEST(found->spread.high - found->spread.low < 0.2);
  BOOST_TEST(found->correlation_mm.high - found->correlation_mm.low < 150);
  BOOST_TEST(found->noise < 0.2);
}

BOOST_AUTO_TEST_CASE(intervals_hold_the_truth_about_as_often_as_they_say) {
  // derived: of 40 records of 6 boats 38 hold it; fewer than 32 with a wrong alarm in
  // 1,000, and grid and large-sample law may take one or two more
  int mean = 0, spread = 0, correlation = 0;
  for (std::uint64_t seed = 100; seed < 140; ++seed) {
    const auto found = field_estimate(made_up(seed, 6, 900), line_mm, true);
    BOOST_TEST_REQUIRE(found.has_value());
    mean += holds(found->mean, 0.3);
    spread += holds(found->spread, 0.8);
    correlation += holds(found->correlation_mm, 900);
  }
  BOOST_TEST(mean >= 32);
  BOOST_TEST(spread >= 32);
  BOOST_TEST(correlation >= 32);
}

/// The samples with a pattern of its own at each place put on all of them.
std::vector<FieldSample> on_a_pattern(std::vector<FieldSample> samples) {
  for (FieldSample& sample : samples) {
    for (Eigen::Index i = 0; i < sample.values.size(); ++i) {
      sample.pattern.push_back(static_cast<std::size_t>(i));
      sample.values[i] += 4 * std::sin(static_cast<double>(7 * i * i % 30));
    }
  }
  return samples;
}

BOOST_AUTO_TEST_CASE(a_pattern_that_all_have_is_not_of_the_spread) {
  // derived: what the boats were made of, whatever the pattern
  const auto found = field_estimate(on_a_pattern(made_up(2, 30, 700)), line_mm, true);
  BOOST_TEST_REQUIRE(found.has_value());
  BOOST_TEST(holds(found->spread, 0.8));
  BOOST_TEST(holds(found->correlation_mm, 700));
  BOOST_TEST(found->spread.high - found->spread.low < 0.2);
  BOOST_TEST(found->noise < 0.2);
}

BOOST_AUTO_TEST_CASE(the_means_degrees_of_freedom_are_taken_off) {
  // derived: of 40 records of 3 boats 38 hold the spread, and n in place of n - 1 would
  // have it 0.82 times too small
  int spread = 0;
  for (std::uint64_t seed = 200; seed < 240; ++seed) {
    const auto found =
        field_estimate(on_a_pattern(made_up(seed, 3, 700)), line_mm, true);
    BOOST_TEST_REQUIRE(found.has_value());
    spread += holds(found->spread, 0.8);
  }
  BOOST_TEST(spread >= 32);
}

BOOST_AUTO_TEST_CASE(boats_all_alike_have_no_spread) {
  const FieldSample boat = on_a_pattern(made_up(5, 1, 700)).front();
  const auto found = field_estimate(std::vector<FieldSample>(30, boat), line_mm, true);
  BOOST_TEST_REQUIRE(found.has_value());
  // property: nothing differs, to the rounding of a mm
  BOOST_TEST(found->spread.value < 1e-4);
  BOOST_TEST(found->noise < 1e-4);
  BOOST_TEST(!field_estimate({boat}, line_mm, true).has_value());
}

BOOST_AUTO_TEST_CASE(readings_too_far_apart_do_not_tell_the_correlation) {
  // derived: at 50 mm no two places 500 mm apart are alike: anything shorter would do
  const auto found = field_estimate(made_up(3, 20, 60), line_mm, true);
  BOOST_TEST_REQUIRE(found.has_value());
  BOOST_TEST(found->correlation_open);
}

BOOST_AUTO_TEST_CASE(nothing_is_told_from_readings_that_the_modes_take_up) {
  const FieldSample sample{
      {0, 500}, Eigen::VectorXd::Ones(2), Eigen::MatrixXd::Identity(2, 2)};
  BOOST_TEST(!field_estimate({sample, sample}, line_mm, true).has_value());
  BOOST_TEST(!field_estimate({}, line_mm, true).has_value());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
