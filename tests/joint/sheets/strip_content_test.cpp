#include "joint/sheets/strip_content.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/example_joint.h"

namespace sheerlap {
namespace {

/// A box 2000 long and 1000 wide: each hand turns a corner at the bow.
Job box_job(const std::function<void(Joint&)>& change = [](Joint&) {}) {
  Joint joint = box_joint(2000, 1000, {});
  change(joint);
  auto job = work_out(joint, Parts::all());
  BOOST_TEST_REQUIRE(job.has_value());
  return *job;
}

void put_keepout(Joint& joint) {
  joint.keepouts.push_back({{SideChoice::Starboard, Length::mm(450), Length::mm(800)},
                            Length::mm(10),
                            "cleat"});
}

BOOST_AUTO_TEST_SUITE(strip_content_suite)

BOOST_AUTO_TEST_CASE(every_hole_of_a_side_is_on_one_of_its_stretches) {
  const Job job = box_job();
  for (const SideName side : {SideName::Starboard, SideName::Port, SideName::Transom}) {
    std::size_t found = 0, wanted = 0;
    for (const StripStretch& stretch : strip_content(job, side))
      for (const StripHole& hole : stretch.holes) {
        ++found;
        BOOST_TEST((hole.girth >= stretch.line.from()));
        BOOST_TEST((hole.girth <= stretch.line.to()));
        const Point2 by_girth = stretch.line.at(StripEdge::DrillLine, hole.girth);
        BOOST_TEST((hole.at - by_girth).norm() < 1e-3);
      }
    for (const DrillStation& station : job.schedule->stations)
      wanted += station.side == side;
    BOOST_TEST(found == wanted);
    BOOST_TEST(has_strip(job, side) == (wanted > 0));
  }
}

BOOST_AUTO_TEST_CASE(stretches_say_what_their_ends_are) {
  const Job job = box_job();
  const auto starboard = strip_content(job, SideName::Starboard);
  BOOST_TEST_REQUIRE(starboard.size() == 2u);
  BOOST_TEST(starboard[0].start == "ZERO: bow datum");
  BOOST_TEST(starboard[0].end == "corner of starboard");
  BOOST_TEST(starboard[1].start == "corner of starboard");
  BOOST_TEST(starboard[1].end == "END: starboard transom corner");
  BOOST_TEST(starboard[1].number == 2u);
  BOOST_TEST(starboard[1].of == 2u);
  const auto transom = strip_content(job, SideName::Transom);
  BOOST_TEST_REQUIRE(transom.size() == 1u);
  BOOST_TEST(transom[0].start == "ZERO: starboard transom corner");
  BOOST_TEST(transom[0].end == "END: port transom corner");
}

BOOST_AUTO_TEST_CASE(the_jigs_plate_and_marks_do_not_change_the_strip) {
  // property: paper has no thickness and is read from outside
  const Job thin = box_job();
  const Job thick = box_job([](Joint& joint) {
    joint.jig.plate = Length::mm(6);
    joint.jig.marks = PlateSide::Lip;
  });
  const auto one = strip_content(thin, SideName::Starboard);
  const auto other = strip_content(thick, SideName::Starboard);
  BOOST_TEST_REQUIRE(one.size() == other.size());
  for (std::size_t i = 0; i < one.size(); ++i)
    for (std::size_t hole = 0; hole < one[i].holes.size(); ++hole)
      BOOST_TEST((one[i].holes[hole].at - other[i].holes[hole].at).norm() == 0.0);
}

BOOST_AUTO_TEST_CASE(a_keep_out_is_cut_at_the_corner_with_its_clearance) {
  // derived: 440 to 810, parted at the corner
  const Job job = box_job(put_keepout);
  const auto stretches = strip_content(job, SideName::Starboard);
  BOOST_TEST_REQUIRE(stretches.size() == 2u);
  const Length corner = stretches[0].line.to();
  const auto keepout = [](const StripStretch& stretch) {
    for (const StripBand& band : stretch.bands)
      if (band.kind == StripBand::Kind::KeepOut && band.what == "cleat") return band;
    BOOST_FAIL("there is no such keep-out");
    return StripBand{};
  };
  BOOST_TEST(keepout(stretches[0]).from.in_mm() == 440.0);
  BOOST_TEST((keepout(stretches[0]).to == corner));
  BOOST_TEST((keepout(stretches[1]).from == corner));
  BOOST_TEST(keepout(stretches[1]).to.in_mm() == 810.0);
  BOOST_TEST(keepout(stretches[1]).clear.in_mm() == 10.0);
  for (const StripBand& band : strip_content(job, SideName::Port).front().bands)
    BOOST_TEST(band.what != "cleat");
}

BOOST_AUTO_TEST_CASE(a_hole_is_as_wide_as_the_bit_that_goes_first) {
  const Job job = box_job();
  const FastenerSpec& spec = job.schedule->fastener;
  BOOST_TEST_REQUIRE(spec.hull_pilot.has_value());
  for (const StripHole& hole : strip_content(job, SideName::Port).front().holes)
    BOOST_TEST((hole.diameter == *spec.hull_pilot));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
