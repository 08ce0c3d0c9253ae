#include "joint/boat_perimeter.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

#include "joint/adhesive.h"
#include "joint/fit.h"
#include "joint/gap_profile.h"
#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

GapCorrection correction(Length girth, double top, double low) {
  return {girth, Length::mm(top), Length::mm(low), false, "", {}, false};
}

std::vector<SideCorrections> same_all_round(const Perimeter& perimeter,
                                            double top,
                                            double low) {
  std::vector<SideCorrections> corrections;
  for (const PerimeterSide& side : perimeter.sides)
    corrections.push_back(
        {side.name, {correction(0.37 * side.drill_line_length, top, low)}});
  return corrections;
}

Perimeter boat_of(const Joint& joint,
                  const Perimeter& drawn,
                  const std::vector<SideCorrections>& corrections) {
  auto boat = boat_perimeter(joint, drawn, corrections);
  BOOST_TEST_REQUIRE(boat.has_value());
  return std::move(*boat);
}

/// The gap at a girth on a side's drill line.
double gap_at(const Perimeter& perimeter, SideName name, Length girth, bool low) {
  const PerimeterSide& side = *perimeter.side(name);
  const GapProfile profile(perimeter, side);
  const Place place = side.drill_line.place_at(girth);
  return profile.gap_mm(place, low ? perimeter.hull->lap_mm(place) : 0);
}

double volume_ml(const Joint& joint, const Perimeter& perimeter) {
  const auto plan = adhesive_plan(joint, perimeter, 0);
  BOOST_TEST_REQUIRE(plan.has_value());
  return plan->nominal.joint.in_ml();
}

BOOST_AUTO_TEST_SUITE(boat_perimeter_suite)

BOOST_AUTO_TEST_CASE(a_circle_read_wider_holds_the_volume_between_its_circles) {
  // derived: a hull of radius R, a lip l(z) out of it, z down the lap D, from 3 to 5.
  // In the section a hull line h(z) of slope m has, square to itself, a gap of sqrt(1 +
  // m^2) (l - h) / (1 + k m) to a lip line of slope k. From the gaps at both edges h
  // follows, and the volume is the integral of pi ((R + l)^2 - (R + h)^2), a quadratic
  // in z
  ExampleFaces faces;
  faces.lip_low = 5;
  Joint joint = circle_joint(2000, 96, faces);
  joint.bond = {};
  const Perimeter drawn = perimeter_of(joint);
  const double lap = 50;
  for (const auto& [d, e] :
       {std::pair(0., 0.), std::pair(1., 1.), std::pair(0.5, -2.)}) {
    double top = 0;
    double low = 0;
    for (int round = 0; round < 50; ++round) {
      const double slope = (low - top) / lap;
      const double level = (1 + 2 / lap * slope) / std::hypot(1, slope);
      top = 3 - (3 + d) * level;
      low = 5 - (5 + e) * level;
    }
    const auto ring = [&](double share) {
      const double outer = 2000 + 3 + 2 * share;
      const double inner = 2000 + top + (low - top) * share;
      return std::numbers::pi * (outer * outer - inner * inner);
    };
    const double expected = lap / 6 * (ring(0) + 4 * ring(0.5) + ring(1)) / 1000;
    const Perimeter boat = boat_of(joint, drawn, same_all_round(drawn, d, e));
    // the spline through the points strays from the circle by some 1e-7 of it
    BOOST_TEST(volume_ml(joint, boat) == expected, tolerance(1e-6));
  }
}

BOOST_AUTO_TEST_CASE(where_it_was_read_the_gap_is_what_was_read) {
  // property, on a boat with a stem, flare and a transom
  Joint joint = with_uneven_offsets(example_joint(small_boat(), ExampleFaces()));
  const Perimeter drawn = perimeter_of(joint);
  std::vector<SideCorrections> corrections;
  for (const PerimeterSide& side : drawn.sides) {
    SideCorrections of{side.name, {}};
    for (const double share : {0.2, 0.41, 0.55, 0.8})
      of.at.push_back(
          correction(share * side.drill_line_length, 3 * share - 1, 0.7 - share));
    corrections.push_back(of);
  }
  const Perimeter boat = boat_of(joint, drawn, corrections);
  for (const SideCorrections& side : corrections)
    for (const GapCorrection& at : side.at) {
      const auto more = [&](bool low) {
        return gap_at(boat, side.side, at.girth, low) -
               gap_at(drawn, side.side, at.girth, low);
      };
      // the hull bends at the place, so that it is not quite square to both stretches
      BOOST_TEST(std::abs(more(false) - at.top.in_mm()) < 1e-3);
      BOOST_TEST(std::abs(more(true) - at.low.in_mm()) < 1e-3);
    }
}

BOOST_AUTO_TEST_CASE(between_readings_the_gap_changes_straight) {
  // derived: a circle, +1 at a quarter and +2 at a half of a side: 1.5 midway
  const Joint joint = circle_joint(2000, 48, ExampleFaces());
  const Perimeter drawn = perimeter_of(joint);
  const Length side = drawn.sides[0].drill_line_length;
  const Perimeter boat =
      boat_of(joint, drawn,
              {{SideName::Starboard,
                {correction(0.25 * side, 1, 1), correction(0.5 * side, 2, 2)}}});
  const auto more = [&](SideName name, double share) {
    return gap_at(boat, name, share * side, false) -
           gap_at(drawn, name, share * side, false);
  };
  BOOST_TEST(std::abs(more(SideName::Starboard, 0.375) - 1.5) < 1e-4);
  BOOST_TEST(std::abs(more(SideName::Starboard, 0.1) - 1) < 1e-4);
  BOOST_TEST(std::abs(more(SideName::Starboard, 0.9) - 2) < 1e-4);
  BOOST_TEST(std::abs(more(SideName::Port, 0.5)) < 1e-12);
}

BOOST_AUTO_TEST_CASE(sheer_lip_and_drill_line_are_those_of_the_drawing) {
  const Joint joint = with_uneven_offsets(example_joint(small_boat(), ExampleFaces()));
  const Perimeter drawn = perimeter_of(joint);
  const Perimeter boat = boat_of(joint, drawn, same_all_round(drawn, 1.5, -0.5));
  for (std::size_t i = 0; i < drawn.sides.size(); ++i) {
    const PerimeterSide& one = drawn.sides[i];
    const PerimeterSide& other = boat.sides[i];
    BOOST_TEST(other.sheer_length.in_mm() == one.sheer_length.in_mm(),
               tolerance(1e-12));
    BOOST_TEST(other.drill_line_length.in_mm() == one.drill_line_length.in_mm(),
               tolerance(1e-12));
    for (const double share : {0.05, 0.5, 0.93}) {
      const auto at = [&](const Perimeter& perimeter, const PerimeterSide& side) {
        return perimeter.lip_outer
            ->at(side.drill_line.place_at(share * one.drill_line_length),
                 joint.fastener.line.in_mm())
            .point;
      };
      BOOST_TEST((at(boat, other) - at(drawn, one)).norm() < 1e-8);
    }
  }
}

BOOST_AUTO_TEST_CASE(corrections_of_nothing_leave_the_gaps_as_drawn) {
  const Joint joint = with_uneven_offsets(example_joint(small_boat(), ExampleFaces()));
  const Perimeter drawn = perimeter_of(joint);
  const Perimeter boat = boat_of(joint, drawn, same_all_round(drawn, 0, 0));
  for (const PerimeterSide& side : drawn.sides)
    for (const double share : {0., 0.3, 0.77, 1.})
      for (const bool low : {false, true}) {
        const Length girth = share * side.drill_line_length;
        BOOST_TEST(
            gap_at(boat, side.name, girth, low) == gap_at(drawn, side.name, girth, low),
            tolerance(1e-10));
      }
}

BOOST_AUTO_TEST_CASE(a_hull_face_that_folds_is_refused) {
  const Joint joint = circle_joint(300, 24, ExampleFaces());
  const Perimeter drawn = perimeter_of(joint);
  const auto boat = boat_perimeter(joint, drawn, same_all_round(drawn, 400, 400));
  BOOST_TEST_REQUIRE(!boat.has_value());
  BOOST_TEST(!boat.error().empty());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
