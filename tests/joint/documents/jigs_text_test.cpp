#include "joint/documents/jigs_text.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <string>
#include <tuple>

#include "joint/flat_pattern.h"
#include "joint/jig_bushes.h"
#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

Job job_of(Joint joint) {
  auto job = work_out(std::move(joint), Parts::all());
  BOOST_TEST_REQUIRE(job.has_value());
  return std::move(*job);
}

std::string text_in(const Job& job, LengthUnit unit) {
  return jigs_text(job, NumberStyle(unit, job.joint.layout.round_to));
}

bool has(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

/// The flat pattern of the first jig.
FlatPattern first_pattern(const Job& job) {
  const auto& stations = job.schedule->stations;
  const JigSegment& jig = job.schedule->jigs.front();
  return flat_pattern(
      job.perimeter, stations,
      jig_stretch(job.perimeter, stations, jig.first, jig.last, job.joint.jig),
      job.joint.jig);
}

BOOST_AUTO_TEST_SUITE(jigs_text_suite)

BOOST_AUTO_TEST_CASE(every_hole_stands_under_every_jig_that_has_it) {
  const Job job = job_of(example_joint(small_boat(), {}));
  const std::string text = text_in(job, LengthUnit::Millimetres);
  std::size_t expected = 0, found = 0;
  for (const JigPiece& piece : job.schedule->jig_pieces) {
    BOOST_TEST(has(text, "\n" + piece.segment.name + ", "));
    expected += piece.holes.size();
  }
  for (const DrillStation& station : job.schedule->stations)
    for (std::size_t at = text.find("\n" + station.mark + " "); at != std::string::npos;
         at = text.find("\n" + station.mark + " ", at + 1))
      ++found;
  BOOST_TEST(found == expected);
}

BOOST_AUTO_TEST_CASE(a_plate_is_told_with_its_thickness) {
  Joint joint = circle_joint(800, 90, {});
  BOOST_TEST(has(text_in(job_of(joint), LengthUnit::Millimetres), "no thickness"));
  joint.jig.plate = Length::mm(3);
  BOOST_TEST(has(text_in(job_of(joint), LengthUnit::Millimetres), "strip 3 mm thick"));
}

BOOST_AUTO_TEST_CASE(a_twisted_lip_tells_what_laying_it_flat_leaves) {
  // property: what is printed is the pattern's own, in percent to three decimals
  Joint twisted = with_uneven_offsets(example_joint(small_boat(), {}));
  for (SheerRow& row : twisted.sheer.rows)
    row.offsets.lip_low += Length::mm(row.point.x() < 500 ? 15 : 0);
  const Job job = job_of(twisted);
  const FlatPattern pattern = first_pattern(job);
  const double percent = 100 * pattern.distortion.worst_strain;
  BOOST_TEST(percent > 0.001);
  BOOST_TEST(has(text_in(job, LengthUnit::Millimetres), decimals(percent, 3) + " %"));
}

BOOST_AUTO_TEST_CASE(a_hole_that_takes_the_likely_error_is_not_said_to_take_the_worst) {
  // derived: the hole set between the two sizes that are worked out, and above both
  Job job = job_of(example_joint(small_boat(), {}));
  const ApartHoles& apart = job.schedule->setting_out.apart;
  const auto words = [&](Length lip_hole) {
    job.schedule->fastener.lip_hole = lip_hole;
    std::string text = text_in(job, LengthUnit::Millimetres);
    std::replace(text.begin(), text.end(), '\n', ' ');
    return std::tuple{has(text, "drill lip and hull together"), has(text, "but not"),
                      has(text, "takes both")};
  };
  const Length little = Length::mm(0.01);
  BOOST_TEST((words(apart.hole_root_sum - little) == std::tuple{true, false, false}));
  BOOST_TEST((words(apart.hole_root_sum + little) == std::tuple{true, true, false}));
  BOOST_TEST((words(apart.hole_worst + little) == std::tuple{false, false, true}));
}

BOOST_AUTO_TEST_CASE(inches_are_inches_throughout) {
  Joint joint = example_joint(small_boat(), {});
  joint.jig.plate = Length::inches(0.125);
  const std::string text = text_in(job_of(joint), LengthUnit::Inches);
  BOOST_TEST(has(text, "strip 0.125 in thick"));
  // sizes of a metric fastener stay metric, as in the schedule
  BOOST_TEST(!has(text, "rounded to 1 mm"));
}

BOOST_AUTO_TEST_CASE(one_bore_will_do_where_one_bit_goes_through_all) {
  JigPiece piece;
  piece.holes.resize(4);
  std::vector<DrillStation> stations(1);
  stations[0].length = Length::mm(19);
  stations[0].edge_top = Length::mm(20);
  FastenerSpec spec;
  spec.lip_hole = Length::mm(6.4);
  const JigRules rules{Length::mm(1300), Length::mm(10)};
  BOOST_TEST(jig_bushes(piece, stations, spec, rules).size() == 1u);
  spec.hull_pilot = Length::mm(3.9);
  const auto bushes = jig_bushes(piece, stations, spec, rules);
  BOOST_TEST_REQUIRE(bushes.size() == 2u);
  BOOST_TEST(bushes[0].bore.in_mm() == 3.9);
  BOOST_TEST(bushes[1].bore.in_mm() == 6.4);
  for (const JigBush& bush : bushes) {
    BOOST_TEST(bush.count == 4u);
    BOOST_TEST(bush.outer.in_mm() == 10);
  }
}

BOOST_AUTO_TEST_CASE(a_hole_that_is_not_to_be_drilled_has_no_bush) {
  JigPiece piece;
  piece.holes.resize(4);
  const std::vector<DrillStation> none_serves(1);
  FastenerSpec spec;
  spec.lip_hole = Length::mm(6.4);
  BOOST_TEST(jig_bushes(piece, none_serves, spec, {}).empty());
  Joint joint = example_joint(small_boat(), {});
  joint.fastener.lengths = {Length::mm(6)};
  const Job job = job_of(joint);
  const std::string text = text_in(job, LengthUnit::Millimetres);
  BOOST_TEST(has(text, "DO NOT DRILL"));
  BOOST_TEST(!has(text, "for the pilot"));
}

BOOST_AUTO_TEST_CASE(the_flat_places_are_those_of_the_pattern) {
  Joint joint = circle_joint(800, 90, {});
  joint.jig.plate = Length::mm(3);
  const Job job = job_of(joint);
  const FlatPattern pattern = first_pattern(job);
  const NumberStyle style(LengthUnit::Millimetres, Length::mm(1));
  const std::string text = text_in(job, LengthUnit::Millimetres);
  for (const FlatHole& hole : pattern.holes)
    BOOST_TEST(has(text, style.span(Length::mm(std::abs(hole.at.x())))));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
