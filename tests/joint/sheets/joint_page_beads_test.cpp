#include "joint/sheets/joint_page_beads.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

const NumberStyle in_mm(LengthUnit::Millimetres, Length::mm(1));

BeadRun run_of(double from_mm, double to_mm, double size_mm, std::size_t beads = 1) {
  const double area = static_cast<double>(beads) * size_mm * size_mm / 2;
  return {SideName::Starboard,
          Length::mm(from_mm),
          Length::mm(to_mm),
          Length::mm(size_mm),
          beads,
          area,
          area};
}

BOOST_AUTO_TEST_SUITE(joint_page_beads_suite)

BOOST_AUTO_TEST_CASE(
    a_bead_too_short_to_be_seen_goes_with_the_one_before_at_the_larger) {
  AdhesivePlan plan;
  plan.beads = {run_of(0, 500, 18), run_of(500, 501, 20), run_of(501, 502, 16),
                run_of(502, 900, 18)};
  const auto drawn = drawn_beads(plan, SideName::Starboard, Length::mm(5));
  BOOST_TEST_REQUIRE(drawn.size() == 2U);
  BOOST_TEST(drawn[0].from.in_mm() == 0.0);
  BOOST_TEST(drawn[0].to.in_mm() == 502.0);
  BOOST_TEST(drawn[0].size.in_mm() == 20.0);
  BOOST_TEST(drawn[1].size.in_mm() == 18.0);
}

BOOST_AUTO_TEST_CASE(two_beads_are_larger_than_one_of_a_larger_size) {
  AdhesivePlan plan;
  plan.beads = {run_of(0, 500, 26), run_of(500, 501, 20, 2)};
  const auto drawn = drawn_beads(plan, SideName::Starboard, Length::mm(5));
  BOOST_TEST_REQUIRE(drawn.size() == 1U);
  BOOST_TEST(bead_name(drawn[0], in_mm) == "2 of 20");  // derived: 400 against 338 mm2
}

BOOST_AUTO_TEST_CASE(words_say_when_short_runs_are_joined) {
  Job job;
  PerimeterSide side;
  side.name = SideName::Starboard;
  side.sheer_length = Length::mm(5000);
  job.perimeter.sides = {side};
  BOOST_TEST(bead_words(job, SideName::Starboard, in_mm).empty());
  job.adhesive.emplace();
  job.adhesive->beads = {run_of(0, 500, 18), run_of(500, 510, 20),
                         run_of(510, 5000, 18)};
  BOOST_TEST(bead_words(job, SideName::Starboard, in_mm) ==
             "0 to 500: 18; 500 to 510: 20; 510 to 5000: 18");
  job.adhesive->beads[1].to = job.adhesive->beads[2].from = Length::mm(504);
  BOOST_TEST(bead_words(job, SideName::Starboard, in_mm) ==
             "0 to 504: 20; 504 to 5000: 18; runs shorter than 5 mm go with the one "
             "before, at the larger of the two");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
