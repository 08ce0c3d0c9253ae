#include "joint/fine_histogram.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>
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

BOOST_AUTO_TEST_CASE(numbers_beyond_the_steps_count_in_the_outermost) {
  FineHistogram histogram(0, 1, 10);
  for (const double number : {-100.0, 0.5, 1e9}) histogram.add(number);
  BOOST_TEST(histogram.count() == 3u);
  // derived: ranks 1, 2 and 3 are in steps 0, 0 and 9
  BOOST_TEST(histogram.quantile(0.5).value == 0.5);
  BOOST_TEST(histogram.quantile(0.9).value == 9.5);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
