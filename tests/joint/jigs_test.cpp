#include "joint/jigs.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <limits>
#include <numbers>
#include <random>

#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"

namespace sheerlap {
namespace {

/// Stations on starboard at the girths given.
std::vector<DrillStation> stations_at(const std::vector<double>& girths) {
  std::vector<DrillStation> stations;
  for (const double girth : girths) {
    DrillStation station;
    station.girth = Length::mm(girth);
    stations.push_back(station);
  }
  return stations;
}

std::vector<JigSegment> jigs_of(const Joint& joint,
                                const std::vector<double>& girths,
                                double length_max) {
  return jig_segments(perimeter_of(joint), stations_at(girths),
                      {Length::mm(length_max), joint.layout.radius_min});
}

/// The fewest pieces by trying every one that ends at each hole.
std::size_t fewest(const std::vector<double>& girths, double length_max) {
  const std::size_t none = std::numeric_limits<std::size_t>::max() / 2;
  std::vector<std::size_t> to(girths.size(), none);
  for (std::size_t last = 0; last < girths.size(); ++last)
    for (std::size_t first = 0; first <= last; ++first) {
      if (girths[last] - girths[first] > length_max) continue;
      std::size_t before = none;
      if (first == 0) before = 0;
      // the piece before shares `first`, or a space no piece can span parts them
      else if (girths[first] - girths[first - 1] > length_max)
        before = to[first - 1];
      else if (last > first)
        before = to[first];
      to[last] = std::min(to[last], before + 1);
    }
  return to.back();
}

BOOST_AUTO_TEST_SUITE(jigs)

BOOST_AUTO_TEST_CASE(neighbours_share_one_hole) {
  // derived: 600 in pieces of 250: 0-200, 200-400, 400-600
  const auto jigs =
      jigs_of(circle_joint(800, 25, {}), {0, 100, 200, 300, 400, 500, 600}, 250);
  BOOST_TEST_REQUIRE(jigs.size() == 3u);
  BOOST_TEST(jigs[0].last == 2u);
  BOOST_TEST(jigs[1].first == 2u);
  BOOST_TEST(jigs[2].last == 6u);
  BOOST_TEST(jigs[2].name == "J-S3");
}

BOOST_AUTO_TEST_CASE(of_as_few_pieces_the_longest_is_short) {
  // derived: 1000 in pieces of 900 takes two; 500 and 500 rather than 900 and 100
  const auto jigs =
      jigs_of(circle_joint(800, 25, {}),
              {0, 100, 200, 300, 400, 500, 600, 700, 800, 900, 1000}, 900);
  BOOST_TEST_REQUIRE(jigs.size() == 2u);
  BOOST_TEST(jigs[0].last == 5u);
  BOOST_TEST(jigs[1].first == 5u);
}

BOOST_AUTO_TEST_CASE(a_piece_may_be_just_as_long_as_the_longest) {
  BOOST_TEST(jigs_of(circle_joint(800, 25, {}), {0, 100, 200}, 200).size() == 1u);
}

BOOST_AUTO_TEST_CASE(a_piece_is_a_bush_longer_than_its_holes_at_each_end) {
  // derived: 1274 and twice 8; common practice, no source, for the ends
  const JigRules rules{Length::mm(1300), Length::mm(8)};
  BOOST_TEST(piece_length(Length::mm(1274), rules).in_mm() == 1290);
  BOOST_TEST(longest_run(rules).in_mm() == 1284);
  BOOST_TEST(piece_length(longest_run(rules), rules).in_mm() == 1300);
}

BOOST_AUTO_TEST_CASE(a_corner_ends_a_piece) {
  // derived: the box's bow corner is at 508 on the drill line
  const auto jigs = jigs_of(box_joint(2000, 1000, {}), {300, 400, 478, 538, 700}, 1300);
  BOOST_TEST_REQUIRE(jigs.size() == 2u);
  BOOST_TEST(jigs[0].last == 2u);
  BOOST_TEST(jigs[1].first == 3u);
}

BOOST_AUTO_TEST_CASE(an_opening_ends_a_piece) {
  Joint joint = circle_joint(800, 25, {});
  joint.openings.push_back(
      {{SideChoice::Starboard, Length::mm(320), Length::mm(580)}, "well"});
  const auto jigs = jigs_of(joint, {100, 200, 290, 610, 700}, 1300);
  BOOST_TEST_REQUIRE(jigs.size() == 2u);
  BOOST_TEST(jigs[1].first == 3u);
}

/// A level half boat with a straight side to x = 1000 and a quarter circle of 120 from
/// there to the transom, given every 3 degrees.
Joint round_cornered_joint() {
  std::vector<Point3> points{{0, 0, 0}, {0, 300, 0}};
  for (int x = 100; x <= 1000; x += 100) points.emplace_back(x, 300, 0);
  for (int i = 1; i <= 30; ++i) {
    const double angle = i * std::numbers::pi / 60;
    points.emplace_back(1000 + 120 * std::sin(angle), 180 + 120 * std::cos(angle), 0);
  }
  for (int y = 120; y >= 0; y -= 60) points.emplace_back(1120, y, 0);
  Joint joint = example_joint(points, {});
  joint.layout.radius_min = Length::mm(150);
  return joint;
}

BOOST_AUTO_TEST_CASE(a_bend_tighter_than_the_least_radius_has_its_own_piece) {
  // derived: the drill line is 8 outside the sheer; its bow corner is at 308, the bend
  // begins 1008 after that and is 128 pi / 2 = 201 long; holes before, in and after it
  const auto jigs =
      jigs_of(round_cornered_joint(), {400, 800, 1200, 1300, 1420, 1530, 1580}, 1300);
  BOOST_TEST_REQUIRE(jigs.size() == 3u);
  BOOST_TEST(jigs[0].last == 3u);
  BOOST_TEST(jigs[1].first == 3u);
  BOOST_TEST(jigs[1].last == 5u);
  BOOST_TEST(jigs[2].first == 5u);
}

BOOST_AUTO_TEST_CASE(a_tight_bend_without_a_hole_is_spanned_by_its_own_piece) {
  const auto jigs =
      jigs_of(round_cornered_joint(), {400, 800, 1200, 1300, 1530, 1580}, 1300);
  BOOST_TEST_REQUIRE(jigs.size() == 3u);
  BOOST_TEST(jigs[1].first == 3u);
  BOOST_TEST(jigs[1].last == 4u);
}

BOOST_AUTO_TEST_CASE(a_space_longer_than_a_jig_leaves_no_shared_hole) {
  const auto jigs = jigs_of(circle_joint(800, 25, {}), {0, 100, 900, 1000}, 300);
  BOOST_TEST_REQUIRE(jigs.size() == 2u);
  BOOST_TEST(jigs[0].last == 1u);
  BOOST_TEST(jigs[1].first == 2u);
}

BOOST_AUTO_TEST_CASE(no_fewer_pieces_would_do) {
  // property, against every way of cutting: random holes
  const Joint joint = circle_joint(800, 25, {});
  std::mt19937 random(7);
  std::uniform_real_distribution<double> girth(0, 2500);
  for (int trial = 0; trial < 40; ++trial) {
    std::vector<double> girths;
    for (int i = 0; i < 25; ++i) girths.push_back(girth(random));
    std::sort(girths.begin(), girths.end());
    for (const double length_max : {150., 333., 900.}) {
      const auto jigs = jigs_of(joint, girths, length_max);
      BOOST_TEST(jigs.size() == fewest(girths, length_max));
      for (const JigSegment& jig : jigs)
        BOOST_TEST(girths[jig.last] - girths[jig.first] <= length_max);
      BOOST_TEST(jigs.back().last == girths.size() - 1);
    }
  }
}

BOOST_AUTO_TEST_CASE(no_holes_need_no_jig) {
  BOOST_TEST(jigs_of(circle_joint(800, 25, {}), {}, 1300).empty());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
