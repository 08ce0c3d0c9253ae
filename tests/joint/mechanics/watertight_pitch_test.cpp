#include "joint/mechanics/watertight_pitch.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(watertight_pitch_test)

BOOST_AUTO_TEST_CASE(the_flange_rule_gives_the_worked_pitches) {
  const struct {
    SealedFlange<double> flange;
    double pitch;  // mm; derived: 2 d + 6 t/(m + 0.5) by hand
  } rows[] = {{{20, 30, 2}, 112},
              {{6, 5, self_sealing}, 72},
              {{6, 5, soft_elastomer}, 42},
              {{6, 5, firm_elastomer}, 32},
              {{8, 8, soft_elastomer}, 64}};
  PlainWorking work;
  for (const auto& row : rows)
    BOOST_TEST(flange_pitch(work, row.flange) == row.pitch, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_wide_pitch_raises_the_fasteners_load_threefold) {
  // derived: sqrt(150/(2 x 6 + 5))
  PlainWorking work;
  BOOST_TEST(wide_pitch_factor(work, {6, 5, 0.5}, 150) == 2.97044, tolerance(2e-6));
}

BOOST_AUTO_TEST_CASE(a_tool_needs_two_and_a_half_diameters) {
  // derived: 2.5 x 6
  PlainWorking work;
  BOOST_TEST(closest_pitch(work, {6, 5, 0.5}) == 15);
}

BOOST_AUTO_TEST_CASE(the_least_of_the_pitches_keeps_a_joint_tight) {
  PlainWorking work;
  BOOST_TEST(sealing_pitch(work, 42, 93, 143) == 42);
  BOOST_TEST(sealing_pitch(work, 72, 60, 143) == 60);
  BOOST_TEST(sealing_pitch(work, 72, 93, 50) == 50);
}

BOOST_AUTO_TEST_CASE(a_working_on_paper_gives_the_numbers_of_the_plain_one) {
  WrittenWorking work;
  const SealedFlange<Term> flange{6., 5., 0.5};
  BOOST_TEST(flange_pitch(work, flange).value() == 42);
  BOOST_TEST(wide_pitch_factor(work, flange, 17).value() == 1);
  BOOST_TEST(closest_pitch(work, flange).value() == 15);
  BOOST_TEST(sealing_pitch(work, 42, 93, 143).value() == 42);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
