#include "joint/bead_changes.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

BeadRun run(double from, double to, double size, SideName side = SideName::Starboard) {
  BeadRun made;
  made.side = side;
  made.from = Length::mm(from);
  made.to = Length::mm(to);
  made.size = Length::mm(size);
  return made;
}

BOOST_AUTO_TEST_SUITE(bead_changes_suite)

BOOST_AUTO_TEST_CASE(runs_laid_over_each_other_differ_where_their_beads_do) {
  // derived: 10 to 400 and 12 beyond, against 10 to 300 and 12 to 700 and 14 beyond
  const auto changes =
      bead_changes({run(0, 400, 10), run(400, 1000, 12)},
                   {run(0, 300, 10), run(300, 700, 12), run(700, 1000, 14)});
  BOOST_TEST_REQUIRE(changes.size() == 2U);
  BOOST_TEST(changes[0].from.in_mm() == 300.);
  BOOST_TEST(changes[0].to.in_mm() == 400.);
  BOOST_TEST(changes[0].drawn_size.in_mm() == 10.);
  BOOST_TEST(changes[0].size.in_mm() == 12.);
  BOOST_TEST(changes[1].from.in_mm() == 700.);
  BOOST_TEST(changes[1].to.in_mm() == 1000.);
}

BOOST_AUTO_TEST_CASE(the_same_runs_change_nothing) {
  const std::vector<BeadRun> runs{run(0, 400, 10), run(400, 900, 12)};
  BOOST_TEST(bead_changes(runs, runs).empty());
  // rounding of an end is no change
  BOOST_TEST(
      bead_changes(runs, {run(0, 400.000001, 10), run(400.000001, 900, 12)}).empty());
}

BOOST_AUTO_TEST_CASE(the_sides_are_apart) {
  const auto changes = bead_changes({run(0, 400, 10), run(0, 400, 10, SideName::Port)},
                                    {run(0, 400, 10), run(0, 400, 12, SideName::Port)});
  BOOST_TEST_REQUIRE(changes.size() == 1U);
  BOOST_TEST((changes[0].side == SideName::Port));
}

BOOST_AUTO_TEST_CASE(another_count_of_the_same_bead_is_a_change) {
  BeadRun two = run(0, 400, 20);
  two.beads = 2;
  const auto changes = bead_changes({run(0, 400, 20)}, {two});
  BOOST_TEST_REQUIRE(changes.size() == 1U);
  BOOST_TEST(changes[0].drawn_beads == 1U);
  BOOST_TEST(changes[0].beads == 2U);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
