#include "joint/sheets/section_places.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/example_joint.h"

namespace sheerlap {
namespace {

Job box_job(bool fit) {
  Joint joint = box_joint(4000, 2000, {});
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

BOOST_AUTO_TEST_CASE(without_a_fit_there_is_one_place_and_without_holes_none) {
  Job job = box_job(false);
  BOOST_TEST(section_places(job).size() == 1U);
  job.schedule->stations.clear();
  BOOST_TEST(section_places(job).empty());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
