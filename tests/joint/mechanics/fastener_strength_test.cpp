#include "joint/mechanics/fastener_strength.h"

#include <boost/test/unit_test.hpp>

#include "tests/published_table.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(fastener_strength_test)

BOOST_AUTO_TEST_CASE(bolts_have_the_published_stress_areas_and_loads) {
  // published: fixtures/published/iso_898_1_loads.csv, class 8.8, 800 N/mm2; rounded
  // there to three digits, the area first
  PlainWorking work;
  for (const auto& row : published_table("iso_898_1_loads.csv"))
    BOOST_TEST_CONTEXT(row.text("size")) {
      const double As = stress_area(work, row.number("diameter"), row.number("pitch"));
      BOOST_TEST(As == row.number("stress_area"), tolerance(0.005));
      BOOST_TEST(fastener_tension(work, 800, As) == row.number("load_8_8"),
                 tolerance(0.005));
    }
}

BOOST_AUTO_TEST_CASE(a_six_mm_stainless_screw_is_far_stronger_than_its_laminate) {
  // derived: As = pi/4 (6 - 0.9382)^2 = 20.1233; 0.6 x 700 As; 700 As
  PlainWorking work;
  const double As = stress_area(work, 6, 1);
  BOOST_TEST(As == 20.1233, tolerance(3e-6));
  BOOST_TEST(fastener_shear(work, 700, As) == 8451.80, tolerance(3e-6));
  BOOST_TEST(fastener_tension(work, 700, As) == 14086.3, tolerance(3e-6));
}

BOOST_AUTO_TEST_CASE(a_bearing_of_2628_allows_788_wet_with_a_factor_of_three) {
  // derived: 2628 x 0.9 / 3; 2628 x 0.25
  PlainWorking work;
  BOOST_TEST(allowable_load(work, {2628, hot_wet_share, 3}) == 788.4, tolerance(1e-12));
  BOOST_TEST(fatigue_level(work, 2628) == 657, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(shear_of_1000_leaves_2528_of_a_pull_of_2733) {
  // derived: 2733.19 sqrt(1 - (1000/2628)^2)
  PlainWorking work;
  BOOST_TEST(pull_beside_shear(work, {1000, 2628, 0, 2733.19}) == 2527.58,
             tolerance(3e-6));
}

BOOST_AUTO_TEST_CASE(the_pull_left_uses_the_fastener_up) {
  // property
  PlainWorking work;
  const double left = pull_beside_shear(work, {1000, 2628, 0, 2733.19});
  BOOST_TEST(shear_and_pull(work, {1000, 2628, left, 2733.19}) == 1, tolerance(1e-12));
  BOOST_TEST(shear_and_pull_use(work, {1000, 2628, left, 2733.19}) == 1,
             tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(the_use_of_a_fastener_grows_with_its_load) {
  // derived: sqrt(0.36 + 0.64) = 1, and half of it at half the load
  PlainWorking work;
  BOOST_TEST(shear_and_pull_use(work, {60, 100, 160, 200}) == 1, tolerance(1e-12));
  BOOST_TEST(shear_and_pull_use(work, {30, 100, 80, 200}) == 0.5, tolerance(1e-12));
  BOOST_TEST(shear_and_pull(work, {30, 100, 80, 200}) == 0.25, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_working_on_paper_gives_the_numbers_of_the_plain_one) {
  PlainWorking plain;
  WrittenWorking work;
  const ShearAndPull<Term> load{30., 100., 80., 200.};
  const Term As = stress_area(work, 6, 1);
  BOOST_TEST(As.value() == stress_area(plain, 6, 1));
  BOOST_TEST(fastener_shear(work, 700, As).value() ==
             fastener_shear(plain, 700, As.value()));
  BOOST_TEST(fastener_tension(work, 700, As).value() ==
             fastener_tension(plain, 700, As.value()));
  BOOST_TEST(shear_and_pull_use(work, load).value() == 0.5, tolerance(1e-12));
  BOOST_TEST(pull_beside_shear(work, load).value() ==
             pull_beside_shear(plain, {30, 100, 80, 200}));
  BOOST_TEST(allowable_load(work, {2628., 0.9, 3.}).value() ==
             allowable_load(plain, {2628, 0.9, 3}));
  BOOST_TEST(fatigue_level(work, 2628).value() == 657);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
