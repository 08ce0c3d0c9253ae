#include "joint/out_stretches.h"

#include <boost/test/unit_test.hpp>

#include "joint/boat_perimeter.h"
#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

/// A box, 4000 x 2000, with upright faces 3 apart, whose starboard gap was read.
struct ReadBox {
  ReadBox() : joint(box_joint(4000, 2000, {})), drawn(perimeter_of(joint)) {}

  Perimeter boat(const std::vector<GapCorrection>& starboard) const {
    auto made = boat_perimeter(joint, drawn, {{SideName::Starboard, starboard}});
    BOOST_TEST_REQUIRE(made.has_value());
    return std::move(*made);
  }
  static GapCorrection off(double girth, double top, double low) {
    GapCorrection correction;
    correction.girth = Length::mm(girth);
    correction.top = Length::mm(top);
    correction.low = Length::mm(low);
    return correction;
  }
  Joint joint;
  Perimeter drawn;
};

BOOST_FIXTURE_TEST_SUITE(out_stretches, ReadBox)

BOOST_AUTO_TEST_CASE(a_gap_as_drawn_inside_its_limits_has_none) {
  for (const PerimeterSide& side : drawn.sides) {
    BOOST_TEST(stretches_below(drawn, side, Length::mm(1)).empty());
    BOOST_TEST(stretches_above(drawn, side, Length::mm(8)).empty());
  }
}

BOOST_AUTO_TEST_CASE(a_stretch_ends_where_the_gap_passes_its_limit) {
  // derived: on the straight side the gap falls from 3 at girth 2000 to 0.5 at 2500 and
  // rises to 3 at 3000: 1 mm is passed 400 mm past 2000 and 400 mm before 3000. The
  // hull face slopes by 2.5 in 500, so that the gap square to it is a part in 1e5 less
  const Perimeter read =
      boat({off(2000, 0, 0), off(2500, -2.5, -2.5), off(3000, 0, 0)});
  const auto found = stretches_below(read, read.sides[0], Length::mm(1));
  BOOST_TEST_REQUIRE(found.size() == 1U);
  BOOST_TEST(found[0].from.in_mm() == 2400., tolerance(1e-4));
  BOOST_TEST(found[0].to.in_mm() == 2600., tolerance(1e-4));
  BOOST_TEST(found[0].at.in_mm() == 2500., tolerance(1e-9));
  BOOST_TEST(found[0].worst.in_mm() == 0.5, tolerance(1e-4));
  BOOST_TEST(stretches_above(read, read.sides[0], Length::mm(8)).empty());
}

BOOST_AUTO_TEST_CASE(a_place_may_be_below_one_limit_and_above_the_other) {
  // derived: 0.5 at the top and 9 at the foot
  const Perimeter read = boat({off(2500, -2.5, 6)});
  const auto below = stretches_below(read, read.sides[0], Length::mm(1));
  const auto above = stretches_above(read, read.sides[0], Length::mm(8));
  BOOST_TEST_REQUIRE(below.size() == 1U);
  BOOST_TEST_REQUIRE(above.size() == 1U);
  BOOST_TEST(below[0].depth.in_mm() == 0.);
  BOOST_TEST(above[0].depth.in_mm() == 50.);
  BOOST_TEST(below[0].worst.in_mm() < 0.501);
  BOOST_TEST(above[0].worst.in_mm() > 8.999);
}

BOOST_AUTO_TEST_CASE(a_side_that_is_out_all_along_is_one_stretch) {
  // property: knots and inner corners do not part it
  const Perimeter read = boat({off(2500, 6, 6)});
  const auto found = stretches_above(read, read.sides[0], Length::mm(8));
  BOOST_TEST_REQUIRE(found.size() == 1U);
  BOOST_TEST(found[0].from.in_mm() == 0.);
  BOOST_TEST(found[0].to.in_mm() == read.sides[0].drill_line_length.in_mm(),
             tolerance(1e-12));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
