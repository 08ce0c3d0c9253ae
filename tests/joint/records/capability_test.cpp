#include "joint/records/capability.h"

#include <gsl/gsl_cdf.h>

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/records/normal_values.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(capability)

BOOST_AUTO_TEST_CASE(figures_are_those_worked_by_hand) {
  // derived: mean 3, squares 4 + 1 + 0 + 1 + 4 = 10, deviation sqrt(10 / 4); window 1
  // to 8: Cp = 7 / (6 s), Cpk = min(5, 2) / (3 s)
  const auto found = capability_of({1, 2, 3, 4, 5}, {1, 8});
  BOOST_TEST_REQUIRE(found.has_value());
  const double s = std::sqrt(2.5);
  BOOST_TEST(found->deviation == s, tolerance(1e-12));
  BOOST_TEST(found->cp == 7 / (6 * s), tolerance(1e-12));
  BOOST_TEST(found->cpk == 2 / (3 * s), tolerance(1e-12));
  // derived: z(0.975) = 1.959964
  const double half = 1.959964 * std::sqrt(1.0 / 45 + found->cpk * found->cpk / 8);
  BOOST_TEST(found->cpk_low == found->cpk - half, tolerance(1e-6));
  BOOST_TEST(found->cpk_high == found->cpk + half, tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(the_interval_of_cp_is_chi_squared) {
  const auto found = capability_of({1, 2, 3, 4, 5}, {1, 8});
  BOOST_TEST(found->cp_low == found->cp * std::sqrt(gsl_cdf_chisq_Pinv(0.025, 4) / 4),
             tolerance(1e-9));
  BOOST_TEST(found->cp_high == found->cp * std::sqrt(gsl_cdf_chisq_Pinv(0.975, 4) / 4),
             tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_mean_outside_the_window_has_a_negative_index) {
  BOOST_TEST(capability_of({8.5, 8.7, 8.9}, {1, 8})->cpk < 0);
}

BOOST_AUTO_TEST_CASE(without_scatter_there_is_no_capability) {
  BOOST_TEST(!capability_of({3}, {1, 8}).has_value());
  BOOST_TEST(!capability_of(std::vector<double>(9, 2.7), {1, 8}).has_value());
}

BOOST_AUTO_TEST_CASE(intervals_hold_the_truth_nineteen_times_in_twenty) {
  // property: N(0, 1) in a window of -2.5 to 4 has Cp 6.5 / 6 and Cpk 2.5 / 3. Of 4000
  // samples of 40 a share of 0.95 covers, 4 standard errors being 0.0138; the interval
  // of Cpk is an approximation, good to about 0.02 there (derived by this count)
  std::mt19937_64 source(3);
  int cp = 0;
  int cpk = 0;
  constexpr int rounds = 4000;
  for (int round = 0; round < rounds; ++round) {
    const auto found = capability_of(normal_values(source, 40), {-2.5, 4});
    if (found->cp_low < 6.5 / 6 && 6.5 / 6 < found->cp_high) ++cp;
    if (found->cpk_low < 2.5 / 3 && 2.5 / 3 < found->cpk_high) ++cpk;
  }
  BOOST_TEST(std::abs(cp / double(rounds) - 0.95) < 0.0138);
  BOOST_TEST(std::abs(cpk / double(rounds) - 0.95) < 0.0138 + 0.02);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
