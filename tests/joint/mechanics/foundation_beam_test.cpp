#include "joint/mechanics/foundation_beam.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>
#include <vector>

#include "joint/mechanics/lip_bending.h"
#include "tests/joint/mechanics/foundation_differences.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(foundation_beam_test)

/// A rail of the textbook, 99.1 mm from axis to foot, under loads of 170 kN.
constexpr FoundationBeam<double> rail{14, 200000, 36.9e6};
constexpr double foot = 99.1, wheel = 170000;

BOOST_AUTO_TEST_CASE(one_load_on_a_rail_gives_the_published_figures) {
  // published: A. P. Boresi and R. J. Schmidt, Advanced Mechanics of Materials, chapter
  // 10, example 1, page 366: 5.04 mm, 51.21 kN m, 137.54 MPa; half their last digit
  PlainWorking work;
  const double M = single_load_moment(work, rail, wheel);
  BOOST_TEST(std::abs(single_load_deflection(work, rail, wheel) - 5.04) <= 0.005);
  BOOST_TEST(std::abs(M / 1e6 - 51.21) <= 0.005);
  BOOST_TEST(std::abs(M * foot / rail.I - 137.54) <= 0.005);
}

BOOST_AUTO_TEST_CASE(three_loads_on_a_rail_give_the_published_figures) {
  // published: the same example with three loads 1.7 m apart: 7.86 mm in the middle,
  // 37.02 kN m and 99.42 MPa at an outer one
  const std::vector<PointLoad> wheels{{wheel, -1700}, {wheel, 0}, {wheel, 1700}};
  const double M = moment(rail, wheels, 1700);
  BOOST_TEST(std::abs(deflection(rail, wheels, 0) - 7.86) <= 0.005);
  BOOST_TEST(std::abs(M / 1e6 - 37.02) <= 0.005);
  BOOST_TEST(std::abs(M * foot / rail.I - 99.42) <= 0.005);
}

BOOST_AUTO_TEST_CASE(the_rail_has_the_worked_figures_behind_the_published_ones) {
  // derived: (14/(4 x 200000 x 36.9e6))^(1/4) and P beta/(2 k), P/(4 beta)
  PlainWorking work;
  const std::vector<PointLoad> wheels{{wheel, -1700}, {wheel, 0}, {wheel, 1700}};
  BOOST_TEST(foundation_beta(work, rail) == 8.29856e-4, tolerance(2e-6));
  BOOST_TEST(single_load_deflection(work, rail, wheel) == 5.03841, tolerance(2e-6));
  BOOST_TEST(single_load_moment(work, rail, wheel) == 51.2137e6, tolerance(2e-6));
  BOOST_TEST(deflection(rail, wheels, 0) == 7.85708, tolerance(2e-6));
  BOOST_TEST(moment(rail, wheels, 1700) == 37.0181e6, tolerance(2e-6));
}

BOOST_AUTO_TEST_CASE(the_formulas_agree_with_finite_differences) {
  // derived: 100 000 unknowns over 20/beta; (20/50000)^2 = 1.6e-7
  PlainWorking work;
  const double beta = foundation_beta(work, rail);
  const SolvedBeam solved = beam_by_differences(rail, wheel, 20 / beta, 49999);
  BOOST_TEST(solved.residual < 1e-8);
  BOOST_TEST(single_load_deflection(work, rail, wheel) == solved.at_load,
             tolerance(1e-6));
  BOOST_TEST(single_load_moment(work, rail, wheel) == solved.moment, tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(the_layer_carries_the_whole_load) {
  // property: k_f times the area under the bend is P; midpoints over 25/beta
  PlainWorking work;
  const double beta = foundation_beta(work, rail), step = 25 / beta / 20000;
  double carried = 0;
  for (int i = 0; i < 20000; ++i)
    carried += 2 * rail.k_f * step * deflection(rail, {{wheel, 0}}, (i + 0.5) * step);
  BOOST_TEST(carried == wheel, tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(one_load_presses_as_far_as_its_reach_and_lifts_beyond) {
  // property
  PlainWorking work;
  const double reach = contact_half_length(work, rail);
  const std::vector<PointLoad> load{{wheel, 0}};
  BOOST_TEST(std::abs(deflection(rail, load, reach)) < 1e-12);
  BOOST_TEST(deflection(rail, load, 0.99 * reach) > 0);
  BOOST_TEST(deflection(rail, load, 1.01 * reach) < 0);
}

BOOST_AUTO_TEST_CASE(a_lip_on_cured_bond_feels_its_clamps_within_18_mm) {
  // derived: 1000 x 50/3; 50 x 5^3/12; (16666.7/(4 x 8000 x 520.833))^(1/4); and for
  // a sealant of 1.2 N/mm2
  PlainWorking work;
  const double I = lip_inertia(work, 50, 5);
  const double k_f = foundation_stiffness(work, 1000, 50, 3);
  const double soft = foundation_stiffness(work, 1.2, 50, 3);
  BOOST_TEST(I == 520.833, tolerance(1e-6));
  BOOST_TEST(k_f == 16666.7, tolerance(3e-6));
  BOOST_TEST(soft == 20, tolerance(1e-12));
  const double beta = foundation_beta(work, {k_f, 8000, I});
  const double soft_beta = foundation_beta(work, {soft, 8000, I});
  BOOST_TEST(beta == 0.177828, tolerance(3e-6));
  BOOST_TEST(std::numbers::pi / beta == 17.6665, tolerance(3e-6));
  BOOST_TEST(soft_beta == 0.0330975, tolerance(3e-6));
  BOOST_TEST(std::numbers::pi / soft_beta == 94.9193, tolerance(3e-6));
}

BOOST_AUTO_TEST_CASE(a_working_on_paper_gives_the_numbers_of_the_plain_one) {
  WrittenWorking work;
  PlainWorking plain;
  const FoundationBeam<Term> same{14., 200000., 36.9e6};
  BOOST_TEST(single_load_deflection(work, same, wheel).value() ==
             single_load_deflection(plain, rail, wheel));
  BOOST_TEST(single_load_moment(work, same, wheel).value() ==
             single_load_moment(plain, rail, wheel));
  BOOST_TEST(contact_half_length(work, same).value() ==
             contact_half_length(plain, rail));
  BOOST_TEST(foundation_stiffness(work, 1000, 50, 4).value() == 12500);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
