#include "joint/sheer_curve.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

SheerCurve curve_of(const Sheer& sheer) { return sheer_curve(sheer).value(); }

Error only_error(const Sheer& sheer) {
  const auto curve = sheer_curve(sheer);
  BOOST_TEST_REQUIRE(!curve.has_value());
  BOOST_TEST(curve.error().size() == 1u);
  return curve.error().front();
}

BOOST_AUTO_TEST_SUITE(sheer_curve_suite)

BOOST_AUTO_TEST_CASE(a_turn_above_the_knuckle_angle_is_a_corner) {
  // derived: chords at 0, 20 and 45 degrees: turns of 20 and 25, and of 45 to the stern
  Sheer sheer = example_joint({{0, 0, 0},
                               {0, 1000, 0},
                               {342.0201, 1939.6926, 0},
                               {1049.1269, 2646.7994, 0},
                               {4000, 2646.7994, 0},
                               {4000, 0, 0}},
                              {})
                    .sheer;
  const auto corners = [&](double knuckle_angle) {
    sheer.knuckle_angle = Angle::degrees(knuckle_angle);
    std::vector<std::size_t> rows;
    for (const SheerKnot& knot : curve_of(sheer).knots)
      if (knot.corner && !knot.mirrored) rows.push_back(knot.row);
    return rows;
  };
  BOOST_TEST((corners(46) == std::vector<std::size_t>{4}));
  BOOST_TEST((corners(44) == std::vector<std::size_t>{3, 4}));
  BOOST_TEST((corners(24) == std::vector<std::size_t>{2, 3, 4}));
  sheer.rows[1].knuckle = true;  // and one that is flagged
  BOOST_TEST((corners(46) == std::vector<std::size_t>{1, 4}));
}

BOOST_AUTO_TEST_CASE(the_transom_corners_are_the_last_before_the_centreline) {
  // derived: a pram: two corners at the bow, two at the quarter, two at the transom
  Sheer sheer = box_joint(2000, 1000, {}).sheer;
  auto quarter = sheer.rows[2];
  quarter.point = {1900, 600, 0};
  quarter.knuckle = true;
  sheer.rows.insert(sheer.rows.begin() + 2, quarter);
  const SheerCurve curve = curve_of(sheer);
  BOOST_TEST_REQUIRE(curve.sides.size() == 3u);
  BOOST_TEST((curve.sides[0].name == SideName::Starboard));
  BOOST_TEST(curve.sides[0].path.span_count == 3u);
  BOOST_TEST(curve.sides[1].path.span_count == 3u);
  BOOST_TEST(curve.sides[2].path.span_count == 2u);
  BOOST_TEST(curve.sides[2].path.from_knot == 3u);
}

BOOST_AUTO_TEST_CASE(a_sharp_stern_is_no_transom) {
  // derived: a diamond: its only corners are the stem, the stern and, forward of the
  // middle, the shoulders
  const SheerCurve curve =
      curve_of(example_joint({{0, 0, 0}, {900, 800, 0}, {2000, 0, 0}}, {}).sheer);
  BOOST_TEST_REQUIRE(curve.sides.size() == 2u);
  for (const SheerSide& side : curve.sides) {
    BOOST_TEST((side.start == SideEnd::Corner && side.end == SideEnd::Corner));
    BOOST_TEST(side.path.span_count == 2u);
  }
}

BOOST_AUTO_TEST_CASE(what_is_wrong_with_the_corners_is_said_word_for_word) {
  const Error back = only_error(example_joint({{0, 0, 0},
                                               {900, 300, 0},
                                               {300, 130, 0},
                                               {250, 600, 0},
                                               {1500, 600, 0},
                                               {2000, 0, 0}},
                                              {})
                                    .sheer);
  BOOST_TEST(back.where == "sheer.row[1]");
  BOOST_TEST(
      back.message ==
      "the sheer turns back on itself by 177 degrees: a corner turns by less than "
      "170");

  Sheer one_sided = as_whole(example_joint(small_boat(), {})).sheer;
  one_sided.rows[13].point = {5900, -700, 625};  // a round quarter to port
  one_sided.rows[12].point = {6180, -330, 632};
  one_sided.rows[14].point = {5000, -880, 615};
  one_sided.knuckle_angle = Angle::degrees(50);
  const Error one = only_error(one_sided);
  BOOST_TEST(one.where == "sheer.file");
  BOOST_TEST(
      one.message ==
      "there is a transom corner on starboard only: flag the other one as a knuckle "
      "too");

  Sheer endless = circle_joint(900, 30, {}).sheer;
  endless.closed = false;
  const Error none = only_error(endless);
  BOOST_TEST(none.where == "sheer.closed");
  BOOST_TEST(
      none.message ==
      "the joint is to stop at the transom corners, and the sheer has none: flag "
      "them as knuckles, or say closed = true");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
