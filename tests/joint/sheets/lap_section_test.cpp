#include "joint/sheets/lap_section.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/example_joint.h"

namespace sheerlap {
namespace {

/// A level box whose lip leans out, so that everything can be worked out by hand.
Job leaning_job() {
  ExampleFaces faces;
  faces.lap = 50;
  faces.hull_low = -3;
  faces.lip_top = 2;
  faces.lip_low = 4;
  auto job = work_out(box_joint(4000, 2000, faces), Parts::all());
  BOOST_REQUIRE(job.has_value());
  return *job;
}

/// The section at the middle of starboard.
LapSection section_of(const Job& job, std::optional<GapAt> gap = {}) {
  SectionPlace place;
  place.side = job.perimeter.side(SideName::Starboard);
  place.sheer_girth = Length::mm(3000);
  place.gap = gap;
  return lap_section(job, place);
}

BOOST_AUTO_TEST_SUITE(lap_sections)

BOOST_AUTO_TEST_CASE(edges_lie_where_the_offsets_and_thicknesses_put_them) {
  const LapSection section = section_of(leaning_job());
  BOOST_TEST(std::abs(section.lap_mm - 50) < 1e-9);
  BOOST_TEST(std::abs(section.hull.top_mm) < 1e-9);
  BOOST_TEST(std::abs(section.hull.low_mm + 3) < 1e-9);
  BOOST_TEST(std::abs(section.lip.low_mm - 4) < 1e-9);
  // derived: 5 mm square to a face that leans 2 in 50 is 5 sqrt(1 + 0.04^2) level
  const double level = 5 * std::sqrt(1 + 0.04 * 0.04);
  BOOST_TEST(std::abs(section.lip_outer.top_mm - (2 + level)) < 1e-9);
  // likewise the hull's 6 mm, leaning 3 in 50 the other way
  BOOST_TEST(std::abs(section.hull_inner.top_mm + 6 * std::sqrt(1 + 0.06 * 0.06)) <
             1e-9);
}

BOOST_AUTO_TEST_CASE(the_bit_goes_square_to_the_lip_through_all_faces) {
  const LapSection section = section_of(leaning_job());
  // derived: the lip goes 2 out for 50 down; square to it, inboard, is (-50, -2)
  const Vector2 square = Vector2(-50, -2).normalized();
  BOOST_TEST((section.bit - square).norm() < 1e-9);
  BOOST_TEST(std::abs(section.entry.y() + 25) < 1e-9);  // the drill line's depth
  BOOST_TEST(std::abs((section.at_lip - section.entry).norm() - 5) < 1e-9);
  const auto along = [&](const Point2& point) {
    return (point - section.entry).dot(square);
  };
  BOOST_TEST(along(section.at_lip) < along(section.at_hull));
  BOOST_TEST(along(section.at_hull) < along(section.at_inner));
  // the point on the hull's face lies on it
  BOOST_TEST((section.at_hull - section.on(section.hull, -section.at_hull.y())).norm() <
             1e-9);
}

BOOST_AUTO_TEST_CASE(a_gap_is_drawn_square_to_the_hull_and_as_wide_as_it_is) {
  const Job job = leaning_job();
  GapAt gap;
  gap.side = SideName::Starboard;
  gap.girth = Length::mm(3000);
  gap.depth = Length::mm(50);
  const LapSection section = section_of(job, gap);
  BOOST_TEST_REQUIRE(section.gap.has_value());
  const auto& [start, stop] = *section.gap;
  // derived: from (-3, -50) along (50, -3) / |.| to x = 2 - 0.04 y, 2 in 50: the foot
  // of the normal to the hull; 7 level, so 7 / (1 + 0.04 x 0.06) along (1, -0.06)
  const double level = 7 / (1 - 0.04 * 0.06);
  BOOST_TEST(std::abs((stop - start).norm() - level * std::sqrt(1 + 0.06 * 0.06)) <
             0.05);
  const Vector2 hull = section.on(section.hull, 50) - section.on(section.hull, 0);
  BOOST_TEST(std::abs((stop - start).dot(hull)) < 1e-9);
}

BOOST_AUTO_TEST_CASE(the_whole_lap_is_filled_where_no_band_is_given) {
  Job job = leaning_job();
  BOOST_TEST(std::abs(section_of(job).bond_to_mm - 50) < 1e-9);
  job.joint.bond.from = Length::mm(5);
  job.joint.bond.to = Length::mm(45);
  BOOST_TEST(section_of(job).bond_from_mm == 5);
  BOOST_TEST(section_of(job).bond_to_mm == 45);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
