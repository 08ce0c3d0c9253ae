#include "joint/working_temperature.h"

#include <boost/test/unit_test.hpp>

#include "joint/working_time.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(working_temperature_suite)

BOOST_AUTO_TEST_CASE(a_plan_of_half_the_time_can_be_ten_degrees_warmer) {
  const auto at = [](double minutes) {
    return working_temperature(Duration::minutes(50), 23, Duration::minutes(minutes));
  };
  // derived: the time halves for every 10 degrees
  BOOST_TEST(at(50) == 23, tolerance(1e-12));
  BOOST_TEST(at(25) == 33, tolerance(1e-12));
  BOOST_TEST(at(200) == 3, tolerance(1e-12));
  // property: there and back
  BOOST_TEST(working_time(Duration::minutes(50), 23, at(37.4)).in_minutes() == 37.4,
             tolerance(1e-12));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
