#include "joint/flat_pattern.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <optional>
#include <random>
#include <utility>

#include "joint/schedule.h"
#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

struct Example {
  Joint joint;
  Perimeter perimeter;
  Schedule schedule;

  FlatPattern pattern(const JigSegment& jig, const JigRules& rules) const {
    return flat_pattern(
        perimeter, schedule.stations,
        jig_stretch(perimeter, schedule.stations, jig.first, jig.last, rules), rules);
  }
};

Example example(const Joint& joint) {
  Example made{joint, perimeter_of(joint), {}};
  const auto spaced = layout(joint, made.perimeter);
  BOOST_TEST_REQUIRE(spaced.has_value());
  auto worked_out = schedule(joint, made.perimeter, *spaced);
  BOOST_TEST_REQUIRE(worked_out.has_value());
  made.schedule = std::move(*worked_out);
  return made;
}

Example boat() { return example(with_uneven_offsets(example_joint(small_boat(), {}))); }

double length_of(const std::vector<Point2>& line) {
  double length = 0;
  for (std::size_t i = 1; i < line.size(); ++i)
    length += (line[i] - line[i - 1]).norm();
  return length;
}

BOOST_AUTO_TEST_SUITE(flat_pattern_suite)

BOOST_AUTO_TEST_CASE(the_drill_line_keeps_its_length_on_every_jig) {
  // property: to 1e-6 of the girths of the schedule, on all sides of an uneven boat
  const Example made = boat();
  for (const JigSegment& jig : made.schedule.jigs) {
    const FlatPattern pattern = made.pattern(jig, made.joint.jig);
    const auto& stations = made.schedule.stations;
    for (const FlatHole& hole : pattern.holes)
      BOOST_TEST(std::abs((hole.flat -
                           (stations[hole.station].girth - stations[jig.first].girth))
                              .in_mm()) < 1e-6);
    BOOST_TEST(std::abs(pattern.longer.in_mm()) < 1e-6);
  }
}

BOOST_AUTO_TEST_CASE(holes_lie_on_the_flat_drill_line_at_their_girths) {
  // property: the line's points are 5 mm apart at most; measured along them
  const Example made = boat();
  for (const JigSegment& jig : made.schedule.jigs) {
    const FlatPattern pattern = made.pattern(jig, made.joint.jig);
    std::size_t next = 0;
    double run = 0, start = 0;
    for (std::size_t i = 0; i < pattern.drill_line.size(); ++i) {
      if (i > 0) run += (pattern.drill_line[i] - pattern.drill_line[i - 1]).norm();
      if (next < pattern.holes.size() &&
          (pattern.drill_line[i] - pattern.holes[next].at).norm() < 1e-9) {
        if (next == 0) start = run;
        BOOST_TEST(std::abs(run - start - pattern.holes[next].flat.in_mm()) < 1e-3);
        ++next;
      }
    }
    BOOST_TEST(next == pattern.holes.size());
  }
}

BOOST_AUTO_TEST_CASE(the_outer_holes_are_level_and_the_sheer_is_up) {
  const Example made = boat();
  for (const JigSegment& jig : made.schedule.jigs)
    for (const PlateSide side : {PlateSide::Outer, PlateSide::Lip}) {
      const FlatPattern pattern =
          made.pattern(jig, {Length::mm(1300), Length::mm(8), {}, side});
      BOOST_TEST(pattern.holes.front().at.norm() < 1e-9);
      BOOST_TEST(std::abs(pattern.holes.back().at.y()) < 1e-9);
      if (jig.last > jig.first)
        BOOST_TEST((pattern.holes.back().at.x() < 0) == pattern.runs_left());
      for (std::size_t i = 0; i < pattern.top.size(); ++i)
        BOOST_TEST(pattern.top[i].y() > pattern.low[i].y());
    }
}

BOOST_AUTO_TEST_CASE(bow_is_to_the_right_on_starboard_seen_from_outside) {
  // derived: looking at a boat's starboard side its bow is to the right
  const Example made = boat();
  for (const JigSegment& jig : made.schedule.jigs)
    BOOST_TEST(made.pattern(jig, made.joint.jig).runs_left() ==
               (jig.side != SideName::Port));
}

BOOST_AUTO_TEST_CASE(marks_on_the_lip_side_are_the_mirror_image) {
  const Example made = boat();
  JigRules inside = made.joint.jig;
  inside.marks = PlateSide::Lip;
  for (const JigSegment& jig : made.schedule.jigs) {
    const FlatPattern out = made.pattern(jig, made.joint.jig);
    const FlatPattern in = made.pattern(jig, inside);
    BOOST_TEST_REQUIRE(out.low.size() == in.low.size());
    for (std::size_t i = 0; i < out.low.size(); ++i) {
      BOOST_TEST(std::abs(out.low[i].x() + in.low[i].x()) < 1e-9);
      BOOST_TEST(std::abs(out.low[i].y() - in.low[i].y()) < 1e-9);
    }
  }
}

BOOST_AUTO_TEST_CASE(a_half_boats_port_pattern_is_the_mirror_of_starboard) {
  // property: the same holes on both hands, the geometry its own
  const Example made = boat();
  const auto jig_of = [&](SideName side) {
    for (const JigSegment& jig : made.schedule.jigs)
      if (jig.side == side) return jig;
    return JigSegment{};
  };
  const FlatPattern starboard =
      made.pattern(jig_of(SideName::Starboard), made.joint.jig);
  const FlatPattern port = made.pattern(jig_of(SideName::Port), made.joint.jig);
  BOOST_TEST_REQUIRE(starboard.holes.size() == port.holes.size());
  for (std::size_t i = 0; i < port.holes.size(); ++i) {
    BOOST_TEST(std::abs(starboard.holes[i].at.x() + port.holes[i].at.x()) < 1e-6);
    BOOST_TEST(std::abs(starboard.holes[i].at.y() - port.holes[i].at.y()) < 1e-6);
  }
}

BOOST_AUTO_TEST_CASE(a_thick_plate_is_longer_by_half_its_thickness_times_the_turn) {
  // derived: round a circle of radius 808, t / 2 for each radian: girth x t / (2 x 808)
  const Example made = example(circle_joint(800, 90, {}));
  const JigRules rules{Length::mm(1300), Length::mm(8), Length::mm(6),
                       PlateSide::Outer};
  for (const JigSegment& jig : made.schedule.jigs) {
    const FlatPattern pattern = made.pattern(jig, rules);
    const Length girth = made.schedule.stations[jig.last].girth -
                         made.schedule.stations[jig.first].girth;
    BOOST_TEST(pattern.longer.in_mm() == girth.in_mm() * 3 / 808, tolerance(1e-4));
  }
}

BOOST_AUTO_TEST_CASE(a_pattern_reaches_a_bush_beyond_its_outer_holes) {
  // derived: 8 at each end; the lip's ends are farther than that from any hole
  const Example made = example(circle_joint(800, 90, {}));
  for (const JigSegment& jig : made.schedule.jigs) {
    const FlatPattern pattern = made.pattern(jig, made.joint.jig);
    BOOST_TEST(length_of(pattern.drill_line) == pattern.holes.back().flat.in_mm() + 16,
               tolerance(1e-4));
  }
}

/// Two girths of a side that rounding puts in the wrong order within a span.
std::optional<std::pair<Length, Length>> swapped_places(const PerimeterSide& side) {
  std::mt19937 random(1);
  std::uniform_real_distribution<double> girth(100,
                                               side.drill_line_length.in_mm() - 100);
  for (int trial = 0; trial < 200000; ++trial) {
    const double one = girth(random);
    const double other = one * (1 + (1 + trial % 20) * 2e-16);
    const Place from = side.drill_line.place_at(Length::mm(one));
    const Place to = side.drill_line.place_at(Length::mm(other));
    const bool forward = side.drill_line.path().forward;
    if (from.span == to.span && (forward ? to.u_mm < from.u_mm : from.u_mm < to.u_mm))
      return std::pair{Length::mm(one), Length::mm(other)};
  }
  return std::nullopt;
}

BOOST_AUTO_TEST_CASE(holes_that_rounding_puts_in_the_wrong_order_lie_at_one_place) {
  // property: a strip goes from 50 before the one to 50 behind the other, not round the
  // boat
  const Example made = boat();
  std::size_t found = 0;
  for (const PerimeterSide& side : made.perimeter.sides) {
    const auto places = swapped_places(side);
    if (!places) continue;
    ++found;
    const auto [one, other] = *places;
    std::vector<DrillStation> stations(2);
    stations[0].side = stations[1].side = side.name;
    stations[0].girth = one;
    stations[1].girth = other;
    const FlatPattern pattern = flat_pattern(
        made.perimeter, stations, {0, 1, one - Length::mm(50), other + Length::mm(50)},
        made.joint.jig);
    BOOST_TEST(length_of(pattern.drill_line) == 100, tolerance(1e-6));
    BOOST_TEST((pattern.holes[1].at - pattern.holes[0].at).norm() < 1e-9);
  }
  BOOST_TEST(found > 0u);
}

BOOST_AUTO_TEST_CASE(strips_are_parted_at_corners_and_openings) {
  // derived: the box's bow corner parts starboard in two; the opening the rest
  Joint joint = box_joint(2000, 1000, {});
  joint.openings.push_back(
      {{SideChoice::Starboard, Length::mm(1000), Length::mm(1300)}, "well"});
  const Example made = example(joint);
  for (const PerimeterSide& side : made.perimeter.sides) {
    const auto stretches = strip_stretches(side, made.schedule.stations);
    if (side.name == SideName::Starboard) BOOST_TEST(stretches.size() == 3u);
    if (side.name == SideName::Port) BOOST_TEST(stretches.size() == 2u);
    if (side.name == SideName::Transom) BOOST_TEST(stretches.size() == 1u);
    for (const FlatStretch& stretch : stretches) {
      const FlatPattern pattern =
          flat_pattern(made.perimeter, made.schedule.stations, stretch, made.joint.jig);
      BOOST_TEST(length_of(pattern.drill_line) == (stretch.to - stretch.from).in_mm(),
                 tolerance(1e-9));
      BOOST_TEST(pattern.distortion.worst_strain < 1e-9);  // walls are planes
    }
  }
}

BOOST_AUTO_TEST_CASE(a_bent_plates_faces_are_strained_by_half_its_thickness_by_radius) {
  // derived: t / 2 R, R = 808
  const Example made = example(circle_joint(800, 90, {}));
  const JigRules rules{Length::mm(1300), Length::mm(8), Length::mm(6),
                       PlateSide::Outer};
  for (const JigSegment& jig : made.schedule.jigs) {
    const FlatPattern pattern = made.pattern(jig, rules);
    BOOST_TEST(pattern.fibre_strain == 3. / 808, tolerance(1e-3));
    BOOST_TEST(!pattern.too_thick);
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
