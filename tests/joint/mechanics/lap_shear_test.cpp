#include "joint/mechanics/lap_shear.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(lap_shear_test)

BOOST_AUTO_TEST_CASE(the_shear_lag_is_that_of_the_published_parameter) {
  // published: ESDU 80011 (1980), page 1, parameter
  // sqrt[(Ga t1/(E1 ta))(1 + E1 t1/(E2 t2))] = lam t1, here 0.480885 with t1 = 6
  PlainWorking work;
  const double lam = shear_lag(work, ShearLap<double>{370, 3, 48000, 32000, 50});
  BOOST_TEST(lam == 0.480885 / 6, boost::test_tools::tolerance(1e-6));
  BOOST_TEST(lam == 0.0801474, boost::test_tools::tolerance(1e-6));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
