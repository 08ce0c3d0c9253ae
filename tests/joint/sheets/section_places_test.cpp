#include "joint/sheets/section_places.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/example_joint.h"

namespace sheerlap {
namespace {

/// @param wider_mm  how much wider than elsewhere the gap is at the transom
Job box_job(bool fit, double wider_mm = 1) {
  Joint joint = box_joint(4000, 2000, {.lip_low = 3.5});
  for (SheerRow& row : joint.sheer.rows)
    if (row.point.x() > 3999) {
      row.offsets.lip_top += Length::mm(wider_mm);
      row.offsets.lip_low += Length::mm(wider_mm);
    }
  if (!fit) joint.adhesive.reset();
  auto job = work_out(std::move(joint), Parts::all());
  BOOST_REQUIRE(job.has_value());
  return *job;
}

BOOST_AUTO_TEST_SUITE(section_place)

BOOST_AUTO_TEST_CASE(a_fit_has_a_typical_place_and_those_of_its_worst_gaps) {
  const Job job = box_job(true);
  const auto places = section_places(job);
  BOOST_TEST_REQUIRE(places.size() == 3U);
  BOOST_TEST(places[0].letter == "A");
  BOOST_TEST_REQUIRE(places[0].hole != nullptr);
  BOOST_TEST(places[0].what == "typical, at " + places[0].hole->mark);
  BOOST_TEST(places[1].what == "least gap");
  BOOST_TEST((places[1].gap->gap == job.fit->least.gap));
  BOOST_TEST(places[2].letter == "C");
  BOOST_TEST((places[2].sheer_girth == job.fit->greatest.girth));
}

BOOST_AUTO_TEST_CASE(the_typical_hole_is_the_one_whose_gap_is_nearest_to_the_mean) {
  Job job = box_job(true);
  for (DrillStation& station : job.schedule->stations) station.gap = Length::mm(7);
  job.schedule->stations[3].gap = job.fit->mean;
  BOOST_TEST(section_places(job)[0].hole->mark == job.schedule->stations[3].mark);
}

BOOST_AUTO_TEST_CASE(
    where_the_gap_is_the_same_all_round_only_the_typical_place_is_cut) {
  // derived: lip_top and lip_low are the same at every row; they differ by 0.5 mm from
  // each other, which is no difference round the boat
  const Job same = box_job(true, 0);
  BOOST_TEST(same_gap_all_round(same));
  BOOST_TEST_REQUIRE(section_places(same).size() == 1U);
  BOOST_TEST(section_places(same)[0].letter == "A");
  const auto& holes = same.schedule->stations;
  BOOST_TEST(section_places(same)[0].hole == &holes[holes.size() / 2]);
  BOOST_TEST(!same_gap_all_round(box_job(true, 0.2)));
  BOOST_TEST(!same_gap_all_round(box_job(false, 0)));
}

BOOST_AUTO_TEST_CASE(the_same_gap_at_the_rows_is_not_enough) {
  Job job = box_job(true, 0);
  job.fit->greatest.gap += Length::mm(0.2);
  BOOST_TEST(!same_gap_all_round(job));
}

BOOST_AUTO_TEST_CASE(without_a_fit_there_is_one_place_and_without_holes_none) {
  Job job = box_job(false);
  BOOST_TEST(section_places(job).size() == 1U);
  job.schedule->stations.clear();
  BOOST_TEST(section_places(job).empty());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
