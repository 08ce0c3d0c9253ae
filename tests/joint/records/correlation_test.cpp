#include "joint/records/correlation.h"

#include <gsl/gsl_statistics_double.h>

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/records/normal_values.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(correlation)

BOOST_AUTO_TEST_CASE(figures_are_those_worked_by_hand) {
  // derived: means 2.5 and 2.75; S_xx 5, S_yy 8.75, S_xy 6.5
  const auto found = correlation_of({{1, 1}, {2, 2}, {3, 3}, {4, 5}});
  BOOST_TEST_REQUIRE(found.has_value());
  BOOST_TEST(found->r == 6.5 / std::sqrt(5 * 8.75), tolerance(1e-12));
  BOOST_TEST(found->slope == 1.3, tolerance(1e-12));
  // derived: n - 3 = 1, so z -+ 1.959964
  BOOST_TEST(found->low == std::tanh(std::atanh(found->r) - 1.959964), tolerance(1e-6));
  BOOST_TEST(found->high == std::tanh(std::atanh(found->r) + 1.959964),
             tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(the_coefficient_agrees_with_another_library) {
  std::mt19937_64 source(5);
  const auto x = normal_values(source, 60);
  auto y = normal_values(source, 60);
  std::vector<FigurePair> pairs;
  for (std::size_t i = 0; i < x.size(); ++i) {
    y[i] += x[i];
    pairs.push_back({x[i], y[i]});
  }
  BOOST_TEST(correlation_of(pairs)->r ==
                 gsl_stats_correlation(x.data(), 1, y.data(), 1, x.size()),
             tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(figures_that_do_not_vary_or_are_few_have_none) {
  BOOST_TEST(!correlation_of({{1, 1}, {2, 2}, {3, 3}}).has_value());
  BOOST_TEST(!correlation_of({{1, 2.7}, {2, 2.7}, {3, 2.7}, {4, 2.7}}).has_value());
}

BOOST_AUTO_TEST_CASE(figures_in_line_have_a_coefficient_of_one) {
  const auto found = correlation_of({{1, -2}, {2, -4}, {3, -6}, {4, -8}});
  BOOST_TEST(found->r == -1, tolerance(1e-12));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
