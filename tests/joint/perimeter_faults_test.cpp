#include <fmt/format.h>

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <chrono>
#include <cmath>
#include <numbers>

#include "joint/worded_length.h"
#include "tests/geometry/example_curves.h"
#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

Error only_error(const Joint& joint) {
  const auto result = perimeter(joint);
  BOOST_TEST_REQUIRE(!result.has_value());
  BOOST_TEST_REQUIRE(result.error().size() == 1u);
  return result.error().front();
}

/// A half ellipse with a wavy rise, as dense as wanted; its offsets change all along.
Joint dense_joint(std::size_t rows, CurveKind kind) {
  auto points = ellipse_points(3200, 1200, 2 * (rows - 1), 250);
  points.resize(rows);
  points.back().y() = 0;
  Joint joint = example_joint(points, {});
  for (std::size_t i = 0; i < rows; ++i)
    joint.sheer.rows[i].offsets.lip_low = Length::mm(
        5 + std::sin(20. * static_cast<double>(i) / static_cast<double>(rows)));
  joint.sheer.curve = kind;
  return joint;
}

double seconds(const Joint& joint) {
  const auto start = std::chrono::steady_clock::now();
  const Perimeter result = perimeter_of(joint);
  BOOST_TEST(result.sheer_length.in_mm() > 1000);
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start)
      .count();
}

BOOST_AUTO_TEST_SUITE(perimeter_faults)

BOOST_AUTO_TEST_CASE(an_offset_beyond_the_radius_of_the_bow_is_said_word_for_word) {
  // derived: the tip of an ellipse has the radius b^2/a = 200^2/1000 = 40 mm; the curve
  // through the points has it within 1 in 1000
  auto points = ellipse_points(1000, 200, 1200);
  points.resize(601);
  points.back().y() = 0;
  ExampleFaces faces;
  faces.hull_low = -41;
  const auto result = perimeter(example_joint(points, faces));
  BOOST_TEST_REQUIRE(!result.has_value());
  BOOST_TEST(result.error().front().where == "sheer.row[0]");
  BOOST_TEST(result.error().back().where == "sheer.row[599]");  // at the stern
  for (const Error& error : result.error())
    BOOST_TEST(std::count_if(result.error().begin(), result.error().end(),
                             [&](const Error& other) {
                               return other.where == error.where;
                             }) == 1);  // not for port again
  BOOST_TEST(
      result.error()[0].message ==
      "the hull face folds on itself after this row: it stands -41.0 mm off the "
      "sheer where the sheer bends to a radius of 40.0 mm: an offset to the inside "
      "of a bend stays under its radius");
  faces.hull_low = -38;
  BOOST_TEST(perimeter(example_joint(points, faces)).has_value());
}

BOOST_AUTO_TEST_CASE(a_corner_that_cannot_be_mitred_names_its_row_once) {
  // derived: a bay of 20 mm in a side, offset by 8 + 8 mm and by 11 + 11
  const auto bay = [](double lip) {
    ExampleFaces faces;
    faces.lip_top = faces.lip_low = lip;
    Joint joint = example_joint({{0, 0, 0},
                                 {0, 500, 0},
                                 {900, 500, 0},
                                 {900, 400, 0},
                                 {920, 400, 0},
                                 {920, 500, 0},
                                 {2000, 500, 0},
                                 {2000, 0, 0}},
                                faces);
    joint.sheer.curve = CurveKind::Chords;
    return perimeter(joint);
  };
  BOOST_TEST(bay(3).has_value());
  const auto tight = bay(6);
  BOOST_TEST_REQUIRE(!tight.has_value());
  BOOST_TEST_REQUIRE(tight.error().size() == 2u);
  BOOST_TEST(tight.error()[0].where == "sheer.row[3]");
  BOOST_TEST(tight.error()[1].where == "sheer.row[4]");
  BOOST_TEST(
      tight.error()[0].message ==
      "the faces on both sides of this corner do not meet, 11.0 mm off a turn of "
      "-90 degrees: a smaller offset, or longer chords from the rows beside it");
}

BOOST_AUTO_TEST_CASE(corners_beyond_twenty_are_counted) {
  // derived: a half circle of 20 mm in 40 chords, its hull 30 mm inboard: none of its
  // 41 corners can be made, those on the centreline among them
  ExampleFaces faces;
  faces.hull_top = faces.hull_low = -30;
  Joint joint = circle_joint(20, 41, faces);
  joint.sheer.curve = CurveKind::Chords;
  const auto result = perimeter(joint);
  BOOST_TEST_REQUIRE(!result.has_value());
  BOOST_TEST_REQUIRE(result.error().size() == 21u);
  BOOST_TEST(result.error().back().message ==
             "the faces do not meet at 21 more corners: mend those above first");
}

BOOST_AUTO_TEST_CASE(errors_of_the_rows_come_through) {
  Joint joint = example_joint(small_boat(), {});
  joint.sheer.rows.back().point.y() = 10;
  BOOST_TEST(only_error(joint).where == "sheer.row[11]");
}

BOOST_AUTO_TEST_CASE(a_wave_in_the_sheer_is_warned_of_once_and_by_its_rows) {
  // derived: a straight side of stations 600 mm apart into a round stern: the curve
  // waves in the straight, on both sides of the boat, said for starboard
  std::vector<Point3> points{{0, 0, 0}, {0, 800, 0}};
  for (int i = 1; i <= 6; ++i) points.emplace_back(600 * i, 800, 0);
  for (int i = 1; i < 5; ++i) {
    const double angle = i * std::numbers::pi / 10;
    points.emplace_back(3600 + 800 * std::sin(angle), 800 * std::cos(angle), 0);
  }
  points.emplace_back(4400, 0, 0);
  const Perimeter boat = perimeter_of(example_joint(points, {}));
  BOOST_TEST_REQUIRE(boat.checks.size() >= 1u);
  for (const Check& check : boat.checks) {
    BOOST_TEST(check.id == "sheer.fair");
    BOOST_TEST((check.state == CheckState::Warn));
    BOOST_TEST(check.value > 0.5);
  }
  const Check& last = boat.checks.back();
  BOOST_TEST(last.what ==
             fmt::format("the curve through the points has a false hollow or bump of "
                         "about {} in plan between rows 6 and 7 (from X 2400 mm Y 800 "
                         "mm): give rows between them, or flag a knuckle",
                         worded(Length::mm(last.value))));
  double wave = 0;
  const Curve& curve = boat.hull->curve();
  for (int i = 0; i <= 100; ++i)
    wave = std::max(wave, std::abs(curve.at({5, 6. * i}).point.y() - 800));
  BOOST_TEST(std::abs(last.value - wave) < wave / 3);
  Joint chords = example_joint(points, {});
  chords.sheer.curve = CurveKind::Chords;
  BOOST_TEST(perimeter_of(chords).checks.empty());
  BOOST_TEST(perimeter_of(example_joint(small_boat(), {})).checks.empty());
}

BOOST_AUTO_TEST_CASE(ten_times_the_rows_take_ten_times_as_long) {
  // property: nothing quadratic, which would take a hundred times; generous, as the
  // machine does other things too
  for (const CurveKind kind : {CurveKind::Spline, CurveKind::Chords}) {
    const double some = seconds(dense_joint(5000, kind));
    const double many = seconds(dense_joint(50000, kind));
    BOOST_TEST_MESSAGE("10000 rows round: " << some << " s, 100000: " << many << " s");
    BOOST_TEST(many < 40 * some);
    BOOST_TEST(many < 20);
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
