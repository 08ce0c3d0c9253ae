#include "joint/fine_histogram.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <utility>
#include <vector>

#include "geometry/random_stream.h"
#include "joint/sample_figures.h"

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(fine_histogram_suite)

BOOST_AUTO_TEST_CASE(quantiles_are_those_of_the_numbers_within_half_a_step) {
  FineHistogram histogram(-5, 0.01, 1000);
  std::vector<double> numbers;
  RandomStream stream(1, 2, 3);
  for (int i = 0; i < 5000; ++i) {
    numbers.push_back(stream.normal());
    histogram.add(numbers.back());
  }
  std::sort(numbers.begin(), numbers.end());
  for (const double share : {0.01, 0.1, 0.5, 0.9, 0.999}) {
    const Estimate other = quantile_estimate(numbers, share);
    const Estimate found = histogram.quantile(share);
    BOOST_TEST(std::abs(found.value - other.value) <= 0.005 + 1e-12);
    BOOST_TEST(std::abs(found.low - other.low) <= 0.005 + 1e-12);
    BOOST_TEST(std::abs(found.high - other.high) <= 0.005 + 1e-12);
  }
}

BOOST_AUTO_TEST_CASE(numbers_beyond_the_steps_widen_them) {
  // derived: 10 steps of 1 from 0; 37 takes them to 4 wide, 0 to 40; -100 to 16 wide,
  // from -120 on: 40 - 80 - 80
  FineHistogram histogram(0, 1, 10);
  for (const double number : {0.5, 37.0}) histogram.add(number);
  BOOST_TEST(histogram.step() == 4);
  histogram.add(-100.0);
  BOOST_TEST(histogram.count() == 3u);
  BOOST_TEST(histogram.step() == 16);
  for (const auto& [share, number] :
       {std::pair(0.1, -100.0), std::pair(0.5, 0.5), std::pair(0.9, 37.0)})
    BOOST_TEST(std::abs(histogram.quantile(share).value - number) <= 8);
}

BOOST_AUTO_TEST_CASE(quantiles_hold_where_the_numbers_leave_the_steps) {
  FineHistogram histogram(0, 0.01, 100);
  std::vector<double> numbers;
  RandomStream stream(4, 5, 6);
  for (int i = 0; i < 3000; ++i) {
    numbers.push_back(3 * stream.normal());
    histogram.add(numbers.back());
  }
  std::sort(numbers.begin(), numbers.end());
  for (const double share : {0.05, 0.5, 0.95})
    BOOST_TEST(std::abs(histogram.quantile(share).value -
                        quantile_estimate(numbers, share).value) <=
               histogram.step() / 2 + 1e-12);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
