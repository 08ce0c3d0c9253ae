#include "joint/mechanics/foundation_row.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>
#include <vector>

#include "tests/joint/mechanics/foundation_differences.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(foundation_row_test)

/// A lip 50 x 5 on a soft sealant 50 x 3.
constexpr FoundationBeam<double> lip{20, 8000, 520.8333333333334};

LoadRow<double> row_of(double beta_s) {
  PlainWorking work;
  return {lip, 100, beta_s / foundation_beta(work, lip)};
}

double evenness(double beta_s) {
  PlainWorking work;
  return row_deflection_between(work, row_of(beta_s)) /
         row_deflection_at(work, row_of(beta_s));
}

BOOST_AUTO_TEST_CASE(the_pressure_midway_falls_as_worked_with_the_pitch) {
  const struct {
    double beta_s, share;  // derived: single loads summed outside this program
  } rows[] = {{1, 0.989667},   {std::numbers::pi / 2, 0.939559}, {2, 0.852449},
              {2.5, 0.691027}, {std::numbers::pi, 0.434537},     {4, 0.144095}};
  for (const auto& row : rows)
    BOOST_TEST(evenness(row.beta_s) == row.share, tolerance(4e-6));
}

BOOST_AUTO_TEST_CASE(the_lip_lifts_off_at_4730_thousandths_and_no_sooner) {
  // property: the root of tan(x/2) = -tanh(x/2)
  BOOST_TEST(std::abs(evenness(lift_off_root)) < 1e-14);
  BOOST_TEST(evenness(lift_off_root * 0.999) > 0);
  BOOST_TEST(evenness(lift_off_root * 1.001) < 0);
  BOOST_TEST(std::tan(lift_off_root / 2) == -std::tanh(lift_off_root / 2),
             tolerance(1e-14));
  BOOST_TEST(lift_off_root == 4.73004, tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(a_lip_on_soft_sealant_lifts_off_beyond_143_mm) {
  // derived: 4.73004/0.0330975
  PlainWorking work;
  BOOST_TEST(lift_off_pitch(work, lip) == 142.912, tolerance(4e-6));
}

BOOST_AUTO_TEST_CASE(a_row_is_the_sum_of_its_loads) {
  // property: 41 single loads, of which the outer ones no longer count
  PlainWorking work;
  for (const double beta_s : {1.0, 2.0, 4.0, 6.0}) {
    const LoadRow<double> row = row_of(beta_s);
    std::vector<PointLoad> loads;
    for (int i = -40; i <= 40; ++i) loads.push_back({row.P, i * row.s});
    BOOST_TEST(row_deflection_at(work, row) == deflection(lip, loads, 0),
               tolerance(1e-9));
    BOOST_TEST(row_deflection_between(work, row) == deflection(lip, loads, row.s / 2),
               tolerance(1e-9));
  }
}

BOOST_AUTO_TEST_CASE(a_row_agrees_with_finite_differences) {
  // derived: 100 000 unknowns over half a pitch; (2/50000)^2 is far below the
  // tolerance, which rounding sets
  PlainWorking work;
  const LoadRow<double> row = row_of(4);
  const SolvedBeam solved = beam_by_differences(lip, row.P, row.s / 2, 49999);
  BOOST_TEST(row_deflection_at(work, row) == solved.at_load, tolerance(1e-6));
  BOOST_TEST(row_deflection_between(work, row) == solved.at_end, tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(a_close_row_presses_evenly_and_a_far_one_as_single_loads) {
  // property: P/(k_f s) and P beta/(2 k_f), and nothing overflows
  PlainWorking work;
  const LoadRow<double> close = row_of(0.01), far = row_of(2000);
  BOOST_TEST(row_deflection_at(work, close) == 100 / (20 * close.s), tolerance(1e-8));
  BOOST_TEST(row_deflection_between(work, close) == 100 / (20 * close.s),
             tolerance(1e-8));
  BOOST_TEST(row_deflection_at(work, far) == single_load_deflection(work, lip, 100),
             tolerance(1e-12));
  BOOST_TEST(std::abs(row_deflection_between(work, far)) < 1e-12);
}

BOOST_AUTO_TEST_CASE(a_working_on_paper_gives_the_numbers_of_the_plain_one) {
  WrittenWorking work;
  PlainWorking plain;
  const LoadRow<Term> same{{20., 8000., 520.8333333333334}, 100., 150.};
  const LoadRow<double> row{lip, 100, 150};
  BOOST_TEST(row_deflection_at(work, same).value() == row_deflection_at(plain, row));
  BOOST_TEST(row_deflection_between(work, same).value() ==
             row_deflection_between(plain, row));
  BOOST_TEST(lift_off_pitch(work, same.beam).value() == lift_off_pitch(plain, lip));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
