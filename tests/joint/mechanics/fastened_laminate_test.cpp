#include "joint/mechanics/fastened_laminate.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(fastened_laminate_test)

/// A 6 mm screw in 5 mm of laminate, edge distance 18 mm, pitch 150 mm.
template <class Number>
HoleInLaminate<Number> hole_near_edge() {
  return {6., 6.5, 5., 18., 150.};
}

template <class Number>
HoleInLaminate<Number> hole_far_in() {
  return {6., 6.5, 5., 36., 150.};
}

BOOST_AUTO_TEST_CASE(each_mode_carries_what_its_area_times_its_strength_gives) {
  PlainWorking work;
  const auto hole = hole_near_edge<double>();
  const struct {
    double load, expected;  // N
    const char* source;
  } rows[] = {
      {bearing(work, hole, 87.6), 2628, "derived: 6 x 5 x 87.6"},
      {shear_out(work, hole, 46.4), 6844, "derived: 2 (18 - 3.25) 5 x 46.4"},
      {pull_through(work, 12, 5, 14.5), 2733.19, "derived: pi 12 x 5 x 14.5"},
      {pull_out(work, {6, 5, common_engagement}, 14.5), 683.296,
       "derived: pi 6 x 5 x 14.5 x 0.5"},
      {strip_width(work, hole), 36, "derived: six shanks, less than the pitch"},
      {strip_width(work, {6, 6.5, 5, 18, 30}), 30, "derived: the pitch, less than 36"},
  };
  for (const auto& row : rows)
    BOOST_TEST(row.load == row.expected, tolerance(2e-6) << row.source);
}

BOOST_AUTO_TEST_CASE(shear_out_takes_the_safe_planes_and_not_those_from_the_centre) {
  // derived: from the centre it would be 2 x 18 x 5 x 46.4 = 8352 N
  PlainWorking work;
  BOOST_TEST(shear_out(work, hole_near_edge<double>(), 46.4) < 8352 - 1500);
}

BOOST_AUTO_TEST_CASE(net_tension_follows_the_peak_of_stress_at_the_hole) {
  const struct {
    HoleInLaminate<double> hole;
    double Kte, Ktc, load;
    const char* source;
  } rows[] = {
      // w/dh = 72/13; Kte = 2 + 59/13 - 1.5 x 59/85
      {hole_far_in<double>(), 5.49729, 2.4841, 3182.64, "derived: e = w, Th = 1"},
      // Th = 1.5 - 0.5/0.5 = 0.5; Kte = 2 + 59/13 - 0.75 x 59/85
      {hole_near_edge<double>(), 6.01787, 2.6559, 2976.77,
       "derived: e = w/2, Th = 0.5"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.source) {
      WrittenWorking work;
      const HoleInLaminate<Term> hole{row.hole.d, row.hole.dh, row.hole.t, row.hole.e,
                                      row.hole.s};
      const Term load = net_tension(work, hole, 53.6, glass_relief);
      BOOST_TEST_REQUIRE(work.steps().size() == 5U);
      BOOST_TEST(work.steps()[2].value == row.Kte, tolerance(2e-6));
      BOOST_TEST(work.steps()[3].value == row.Ktc, tolerance(1e-5));
      BOOST_TEST(load.value() == row.load, tolerance(2e-6));
    }
}

BOOST_AUTO_TEST_CASE(the_edges_part_runs_into_one_without_a_step) {
  // property: Th = 1.5 - 0.5 w/e is 1 at e = w
  PlainWorking work;
  HoleInLaminate<double> hole = hole_far_in<double>();
  const double at = net_tension(work, hole, 53.6, 1);
  hole.e *= 1 - 1e-9;
  BOOST_TEST(net_tension(work, hole, 53.6, 1) == at, tolerance(1e-8));
}

BOOST_AUTO_TEST_CASE(a_ductile_laminate_tears_at_its_full_net_section) {
  // property: C = 0 leaves (w - dh) t sut = 29.5 x 5 x 53.6; C = 1 is the weakest
  PlainWorking work;
  const auto hole = hole_near_edge<double>();
  BOOST_TEST(net_tension(work, hole, 53.6, 0) == 7906, tolerance(1e-12));
  BOOST_TEST(net_tension(work, hole, 53.6, brittle_relief) <
             net_tension(work, hole, 53.6, glass_relief));
}

BOOST_AUTO_TEST_CASE(a_working_on_paper_gives_the_numbers_of_the_plain_one) {
  PlainWorking plain;
  WrittenWorking work;
  const auto hole = hole_near_edge<Term>();
  const auto same = hole_near_edge<double>();
  BOOST_TEST(bearing(work, hole, 87.6).value() == bearing(plain, same, 87.6));
  BOOST_TEST(shear_out(work, hole, 46.4).value() == shear_out(plain, same, 46.4));
  BOOST_TEST(net_tension(work, hole, 53.6, 1).value() ==
             net_tension(plain, same, 53.6, 1));
  BOOST_TEST(pull_through(work, 12, 5, 14.5).value() ==
             pull_through(plain, 12, 5, 14.5));
  BOOST_TEST(pull_out(work, {6., 5., 0.5}, 14.5).value() ==
             pull_out(plain, {6, 5, 0.5}, 14.5));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
