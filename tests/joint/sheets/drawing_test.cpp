#include "joint/sheets/drawing.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/example_boats.h"
#include "tests/joint/sheets/read_back.h"

namespace sheerlap {
namespace {

std::string drawn(Joint joint, const SheetStyle& style = {}) {
  auto job = work_out(std::move(joint), Parts::all());
  BOOST_REQUIRE(job.has_value());
  auto bytes = drawing(*job, style);
  BOOST_REQUIRE(bytes.has_value());
  return *bytes;
}

bool says(const std::string& text, const std::string& words) {
  return text.find(words) != std::string::npos;
}

BOOST_AUTO_TEST_SUITE(drawings)

BOOST_AUTO_TEST_CASE(a_joint_with_corners_all_round_has_all_its_views) {
  const std::string text = text_of_pdf(drawn(box_joint(4000, 2000, {})));
  for (const char* words :
       {"PLAN from above, 1:", "PROFILE from port, 1:", "STARBOARD laid flat",
        "PORT laid flat", "TRANSOM laid flat", "SECTION A-A", "Perimeter", "corner",
        "sheet 3 of 3"})
    BOOST_TEST(says(text, words), words);
}

BOOST_AUTO_TEST_CASE(a_joint_without_an_adhesive_is_drawn_without_its_fit) {
  Joint joint = box_joint(4000, 2000, {});
  joint.adhesive.reset();
  const std::string text = text_of_pdf(drawn(joint));
  BOOST_TEST(says(text, "FIT: not worked out"));
  BOOST_TEST(says(text, "SECTION A-A"));
  BOOST_TEST(!says(text, "SECTION B-B"));
}

BOOST_AUTO_TEST_CASE(a_joint_that_stops_at_its_corners_has_no_transom_to_draw) {
  Joint joint = box_joint(4000, 2000, {});
  joint.sheer.rows.pop_back();
  joint.sheer.closed = false;
  BOOST_TEST(!says(text_of_pdf(drawn(joint)), "TRANSOM laid flat"));
}

BOOST_AUTO_TEST_CASE(a_joint_without_a_single_hole_is_drawn_all_the_same) {
  auto job = work_out(box_joint(4000, 2000, {}), Parts::all());
  BOOST_REQUIRE(job.has_value());
  job->schedule->stations.clear();
  job->schedule->jigs.clear();
  for (LayoutSide& side : job->layout->sides) {
    side.girths.clear();
    side.runs.clear();
  }
  BOOST_TEST(drawing(*job, {}).has_value());
}

BOOST_AUTO_TEST_CASE(very_small_and_very_large_joints_keep_to_their_sheet) {
  Joint small = box_joint(600, 300, {});
  small.layout.pitch_min = Length::mm(20);
  BOOST_TEST(says(text_of_pdf(drawn(small)), "PLAN from above, 1:2\n"));
  BOOST_TEST(
      says(text_of_pdf(drawn(box_joint(40000, 9000, {}))), "PLAN from above, 1:150\n"));
}

BOOST_AUTO_TEST_CASE(the_projection_is_the_one_of_the_paper) {
  SheetStyle style;
  // first angle: the plan below; third angle: above
  const std::string first = text_of_pdf(drawn(box_joint(4000, 2000, {}), style));
  BOOST_TEST(first.find("PROFILE") < first.find("PLAN"));
  style.paper = Paper::Letter;
  const std::string third = text_of_pdf(drawn(box_joint(4000, 2000, {}), style));
  BOOST_TEST(third.find("PLAN") < third.find("PROFILE"));
}

BOOST_AUTO_TEST_CASE(the_same_joint_gives_the_same_drawing) {
  BOOST_TEST((drawn(circle_joint(1500, 21, {})) == drawn(circle_joint(1500, 21, {}))));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
