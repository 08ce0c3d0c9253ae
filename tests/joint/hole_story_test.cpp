#include "joint/hole_story.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>

#include "tests/joint/strong_joint.h"

namespace sheerlap {
namespace {

constexpr double rounding = 1e-6;  // mm: faces are met to 1e-9
namespace tools = boost::test_tools;

Job job_of(const Joint& joint) {
  Parts parts;
  parts.schedule = true;
  parts.strength = joint.loads.has_value();
  const auto job = work_out(joint, parts);
  BOOST_TEST_REQUIRE(job.has_value());
  return *job;
}

HoleStory story_of(const Job& job, const std::string& mark) {
  const auto story = hole_story(job, mark);
  BOOST_TEST_REQUIRE(story.has_value());
  return *story;
}

/// A joint with a hole at 1500 mm on starboard, and more between.
Joint with_place(const Joint& joint, double at_mm) {
  Joint made = joint;
  FixedPlace place;
  place.side = SideChoice::Starboard;
  place.at = Length::mm(at_mm);
  place.what = "strap";
  made.places.push_back(place);
  return made;
}

std::string mark_at(const Job& job, double girth_mm) {
  const auto& stations = job.schedule->stations;
  const auto found = std::find_if(stations.begin(), stations.end(), [&](auto& one) {
    return one.side == SideName::Starboard &&
           std::abs(one.girth.in_mm() - girth_mm) < rounding;
  });
  BOOST_TEST_REQUIRE((found != stations.end()));
  return found->mark;
}

const HoleMove& moved(const HoleStory& story, double by_mm) {
  const auto found =
      std::find_if(story.moves.begin(), story.moves.end(),
                   [&](const HoleMove& move) { return move.by == Length::mm(by_mm); });
  BOOST_TEST_REQUIRE((found != story.moves.end()));
  return *found;
}

BOOST_AUTO_TEST_SUITE(hole_story_of_a_job)

BOOST_AUTO_TEST_CASE(a_mark_that_no_hole_has_has_no_story) {
  BOOST_TEST(!hole_story(job_of(strong_joint()), "S999").has_value());
}

BOOST_AUTO_TEST_CASE(where_it_is_a_hole_has_the_figures_of_its_job) {  // property
  const Job job = job_of(strong_joint());
  for (std::size_t i = 0; i < job.schedule->stations.size(); ++i) {
    const DrillStation& station = job.schedule->stations[i];
    const HoleStory story = story_of(job, station.mark);
    BOOST_TEST((story.here.station.girth == station.girth));
    BOOST_TEST_REQUIRE(story.here.alone.has_value());
    BOOST_TEST(story.here.alone->utilisation ==
               job.strength->fasteners.rows[i].utilisation);
    BOOST_TEST(!story.here.before.over());
    BOOST_TEST(!story.here.after.under());
    BOOST_TEST(story.here.stands_in.empty());
  }
}

BOOST_AUTO_TEST_CASE(the_bond_beside_it_is_that_of_its_girth) {
  const Job job = job_of(strong_joint());
  const HoleStory story = story_of(job, "S03");
  BOOST_TEST_REQUIRE(story.here.bond.has_value());
  // derived: faces 3 mm apart all round, filled over the whole lap of 50 mm
  BOOST_TEST(story.here.bond->gap().in_mm() == 3, tools::tolerance(rounding));
  BOOST_TEST(story.here.bond->width.in_mm() == 50, tools::tolerance(rounding));
  BOOST_TEST(story.here.bond->load.along == 4);
}

BOOST_AUTO_TEST_CASE(stack_length_and_reserve_add_up) {
  const Job job = job_of(strong_joint());
  const HoleStory story = story_of(job, "S03");
  // derived: 5 + 3 + 6 = 14 mm, the point of ST4.8 4.3 mm: 18.3 of 19 mm
  BOOST_TEST(story.here.station.stack.in_mm() == 14, tools::tolerance(rounding));
  BOOST_TEST(story.here.reserve->in_mm() == 0.7, tools::tolerance(rounding));
  BOOST_TEST(story.next_length->in_mm() == 22);
}

BOOST_AUTO_TEST_CASE(a_step_moves_both_spaces_by_as_much) {  // property
  const Job job = job_of(strong_joint());
  const HoleStory story = story_of(job, "S05");
  BOOST_TEST(story.moves.size() == 4u);  // 1 and 10 mm, either way
  for (const HoleMove& move : story.moves) {
    BOOST_TEST_REQUIRE(move.at.has_value());
    BOOST_TEST(
        (move.at->before.space - story.here.before.space).in_mm() == move.by.in_mm(),
        tools::tolerance(rounding));
    BOOST_TEST(
        (story.here.after.space - move.at->after.space).in_mm() == move.by.in_mm(),
        tools::tolerance(rounding));
    BOOST_TEST(move.at->station.mark == "S05");
  }
  BOOST_TEST(moved(story, 10).way == "aft");
  BOOST_TEST(moved(story, -1).way == "forward");
}

BOOST_AUTO_TEST_CASE(a_step_past_the_limit_is_over_it) {
  Joint joint = strong_joint();
  joint.layout.pitch_max = Length::mm(100);
  // derived: holes are held at 1000 and 2000 mm, between them ten spaces of 100 mm
  const Job job = job_of(with_place(with_place(joint, 1400), 2400));
  const HoleStory story = story_of(job, mark_at(job, 1500));
  BOOST_TEST(story.here.after.space.in_mm() == 100, tools::tolerance(rounding));
  BOOST_TEST(!story.here.after.over());
  BOOST_TEST(moved(story, -10).at->after.space.in_mm() == 110,
             tools::tolerance(rounding));
  BOOST_TEST(moved(story, -10).at->after.over());
  BOOST_TEST(!moved(story, -10).at->before.over());
  BOOST_TEST(moved(story, 1).at->before.over());
  BOOST_TEST_REQUIRE(story.held_by.size() == 2u);
  BOOST_TEST(story.held_by[1].find("the space to ") == 0u);
  BOOST_TEST(story.held_by[1].find(" is the most allowed, 100 mm") !=
             std::string::npos);
}

BOOST_AUTO_TEST_CASE(off_a_given_place_and_into_a_keep_out_is_said) {
  Joint joint = with_place(strong_joint(), 1500);
  KeepOut keepout;
  keepout.stretch.side = SideChoice::Starboard;
  keepout.stretch.from = Length::mm(1505);
  keepout.stretch.to = Length::mm(1600);
  keepout.clear = Length::mm(2);
  keepout.what = "cleat";
  joint.keepouts.push_back(keepout);
  const Job job = job_of(joint);
  const HoleStory story = story_of(job, mark_at(job, 1500));
  BOOST_TEST_REQUIRE(!story.held_by.empty());
  BOOST_TEST(story.held_by[0] == "fixed: strap");
  const std::vector<std::string> off{"off its given place, strap"};
  BOOST_TEST((moved(story, -1).at->stands_in == off));
  // derived: the keep-out with its clearance begins at 1503
  const std::vector<std::string> both{
      "in the keep-out cleat, girth 1503 to 1602 mm with its clearance",
      "off its given place, strap"};
  BOOST_TEST((moved(story, 10).at->stands_in == both));
  BOOST_TEST((moved(story, 1).at->stands_in == off));
}

BOOST_AUTO_TEST_CASE(on_or_past_its_neighbour_it_cannot_be) {
  Joint joint = strong_joint();
  joint.layout.pitch_min = Length::mm(5);
  const Job job = job_of(with_place(with_place(joint, 1500), 1510));
  const HoleStory story = story_of(job, mark_at(job, 1500));
  BOOST_TEST(!moved(story, 10).at.has_value());
  BOOST_TEST(moved(story, 10).why_not == "on or past " + mark_at(job, 1510));
  BOOST_TEST(moved(story, 1).at.has_value());
}

BOOST_AUTO_TEST_CASE(a_hole_is_put_to_chosen_and_read_rules_by_itself) {
  Joint joint = strong_joint();
  joint.strength.rules = {"edge_class"};
  const HoleStory story = story_of(job_of(joint), "S05");
  const auto row = std::find_if(
      story.here.rules.begin(), story.here.rules.end(),
      [](const RuleRow& one) { return one.rule == "edge_class" && one.chosen; });
  BOOST_TEST_REQUIRE((row != story.here.rules.end()));
  // derived: 50 - 25 - 2 mm to the lip's low edge, 2 d of ST4.8 asked
  BOOST_TEST(row->has->in_mm() == 23, tools::tolerance(rounding));
  BOOST_TEST(row->asks->in_mm() == 9.6, tools::tolerance(rounding));
  for (const RuleRow& one : story.here.rules)
    if (one.quantity == RuleQuantity::GreatestPitch)
      BOOST_TEST(one.has->in_mm() == std::max(story.here.before.space.in_mm(),
                                              story.here.after.space.in_mm()));
}

BOOST_AUTO_TEST_CASE(without_loads_there_is_no_strength_but_a_story) {
  Joint joint = strong_joint();
  joint.loads.reset();
  const HoleStory story = story_of(job_of(joint), "S05");
  BOOST_TEST(!story.here.alone.has_value());
  BOOST_TEST(!story.here.bond.has_value());
  BOOST_TEST(moved(story, 10).at.has_value());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
