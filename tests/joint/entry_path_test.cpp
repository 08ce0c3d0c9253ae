#include "joint/entry_path.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

#include "tests/joint/example_joint.h"

namespace sheerlap {
namespace {

Perimeter perimeter_of(const Joint& joint) {
  auto found = perimeter(joint);
  BOOST_TEST_REQUIRE(found.has_value());
  return std::move(*found);
}

TurnedEntry turned(FirstEnd first, double degrees) {
  return {first, Angle::degrees(degrees)};
}

/// A hull with a flare (radians) under a lip parallel to it, the gap 3 square to it.
ExampleFaces flared(double flare) {
  ExampleFaces faces;
  faces.hull_low = -50 * std::tan(flare);
  faces.lip_top = 3 / std::cos(flare);
  faces.lip_low = faces.hull_low + faces.lip_top;
  return faces;
}

BOOST_AUTO_TEST_SUITE(entry_path)

BOOST_AUTO_TEST_CASE(upright_faces_clear_each_other_all_the_way) {
  // derived: a level cut through upright faces is the same at every height; turned by
  // an angle a, the lid's ends stand off by 3 / cos a and more
  const Perimeter box = perimeter_of(box_joint(4000, 2000, {}));
  for (const EntryPath& path :
       {straight_entry(box), turned_entry(box, turned(FirstEnd::Bow, 3)),
        turned_entry(box, turned(FirstEnd::Stern, 3))}) {
    BOOST_TEST(path.face.worst.in_mm() == 3, boost::test_tools::tolerance(1e-9));
    BOOST_TEST_REQUIRE(path.low_edge.has_value());
    BOOST_TEST(path.low_edge->worst.in_mm() == 3, boost::test_tools::tolerance(1e-9));
    BOOST_TEST_REQUIRE(path.squeeze.has_value());
    BOOST_TEST(path.squeeze->in_mm() == 0);
    BOOST_TEST(path.lead_in.in_mm() == 0);
  }
}

BOOST_AUTO_TEST_CASE(a_parallel_lip_on_a_flared_hull_clashes_straight_and_turned) {
  // derived: over a lap of 50 the low edge clears by 3 / cos f - 50 tan f, and a level
  // line off a side meets a lid turned about y at the same face; the figures to 0.1 mm
  // are common practice, no source
  const struct {
    double degrees, clearance_mm;
  } rows[] = {{0, 3.0}, {2, 1.3}, {5, -1.4}, {10, -5.8}};
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.degrees) {
      const double flare = row.degrees * std::numbers::pi / 180;
      const Perimeter box = perimeter_of(box_joint(4000, 2000, flared(flare)));
      const double expected = 3 / std::cos(flare) - 50 * std::tan(flare);
      BOOST_TEST(std::abs(expected - row.clearance_mm) < 0.05);
      for (const EntryPath& path :
           {straight_entry(box), turned_entry(box, turned(FirstEnd::Bow, 3))}) {
        BOOST_TEST_REQUIRE(path.low_edge.has_value());
        BOOST_TEST(path.low_edge->worst.in_mm() == expected,
                   boost::test_tools::tolerance(1e-9));
        BOOST_TEST(path.low_edge->height.in_mm() == 50,
                   boost::test_tools::tolerance(1e-9));
        BOOST_TEST(path.lead_in.in_mm() == std::max(0., -expected),
                   boost::test_tools::tolerance(1e-9));
      }
    }
}

BOOST_AUTO_TEST_CASE(a_lid_that_turns_is_over_the_edge_near_its_pivot_from_the_start) {
  // derived: at x from the bow the lid is x sin a up; of 4000 mm turned by 0.5 degrees
  // the stern is 34.9 up, less than the lap of 50, and nothing passes the low edge
  const Perimeter box = perimeter_of(box_joint(4000, 2000, {}));
  BOOST_TEST(!turned_entry(box, turned(FirstEnd::Bow, 0.5)).low_edge.has_value());
  BOOST_TEST(turned_entry(box, turned(FirstEnd::Bow, 1)).low_edge.has_value());
}

BOOST_AUTO_TEST_CASE(the_stern_of_a_flared_lid_is_met_where_the_plane_of_its_lip_is) {
  // derived: lip's plane at the stern x = l + p - d t, d down it, turned about the bow
  // by a: x' = (l + p - d t) cos a + d sin a and, at the hull edge's height, 0 =
  // (l + p - d t) sin a - d cos a. With the sides upright only the ends are flared.
  // At d = 50 the tangent of a is 50 / (l + p - 50 t), and the clearance x' - l
  constexpr double l = 4000, p = 2, t = 0.2;
  Joint joint = box_joint(l, 2000, {});
  SheerRow& stern = joint.sheer.rows.back();
  stern.offsets.lip_top = Length::mm(p);
  stern.offsets.lip_low = Length::mm(p - 50 * t);
  const Perimeter box = perimeter_of(joint);
  const double low = l + p - 50 * t;
  const double angle = std::atan(50 / low);
  const double expected = low * std::cos(angle) + 50 * std::sin(angle) - l;
  const EntryPath path = turned_entry(box, turned(FirstEnd::Bow, 3));
  BOOST_TEST_REQUIRE(path.low_edge.has_value());
  BOOST_TEST((path.low_edge->side == SideName::Transom));
  BOOST_TEST(path.low_edge->worst.in_mm() == expected,
             boost::test_tools::tolerance(1e-9));
  BOOST_TEST(path.low_edge->angle.in_radians() == angle,
             boost::test_tools::tolerance(1e-9));
  BOOST_TEST(!path.squeeze.has_value());
}

BOOST_AUTO_TEST_CASE(a_squeeze_moves_each_side_by_what_it_clashes) {
  // derived: only the sides are flared, so that no end clashes: each is to move by
  // 50 tan 5 deg - 3 / cos 5 deg
  const double flare = 5 * std::numbers::pi / 180;
  Joint joint = box_joint(4000, 2000, {});
  joint.sheer.rows.insert(joint.sheer.rows.begin() + 2, joint.sheer.rows[1]);
  joint.sheer.rows[2].point = {2000, 1000, 0};
  const ExampleFaces faces = flared(flare);
  joint.sheer.rows[2].offsets.hull_low = Length::mm(faces.hull_low);
  joint.sheer.rows[2].offsets.lip_top = Length::mm(faces.lip_top);
  joint.sheer.rows[2].offsets.lip_low = Length::mm(faces.lip_low);
  const EntryPath path = straight_entry(perimeter_of(joint));
  BOOST_TEST(path.face.girth.in_mm() == 3000, boost::test_tools::tolerance(1e-12));
  BOOST_TEST_REQUIRE(path.squeeze.has_value());
  BOOST_TEST(path.squeeze->in_mm() == 50 * std::tan(flare) - 3 / std::cos(flare),
             boost::test_tools::tolerance(1e-9));
  BOOST_TEST(path.lead_in.in_mm() == path.squeeze->in_mm(),
             boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
