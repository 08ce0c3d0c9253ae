#include "joint/documents/hole_text.h"

#include <boost/test/unit_test.hpp>

#include "joint/documents/hole_move_words.h"
#include "tests/joint/strong_joint.h"

namespace sheerlap {
namespace {

const NumberStyle in_mm(LengthUnit::Millimetres, Length::mm(1));

bool has(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

/// A hole 10 mm from where it was: 162.3 mm from the next, where 150 mm are allowed.
HoleMove example_move() {
  HoleMove move;
  move.by = Length::mm(-10);
  move.way = "forward";
  move.at.emplace();
  HoleSpace& before = move.at->before;
  before = {"S13", true, Length::mm(139.7), Length::mm(40), Length::mm(150), ""};
  move.at->after = {"S15",           true, Length::mm(162.3), Length::mm(40),
                    Length::mm(150), ""};
  move.at->station.edge_low = Length::mm(20);
  move.at->station.edge_top = Length::mm(26);
  move.at->station.length = Length::mm(19);
  move.at->reserve = Length::mm(0.7);
  return move;
}

HoleAt example_here() {
  HoleAt here = *example_move().at;
  here.station.length = Length::mm(22);
  return here;
}

BOOST_AUTO_TEST_SUITE(hole_text_of_a_job)

BOOST_AUTO_TEST_CASE(a_step_says_its_spaces_edges_and_length) {
  BOOST_TEST(hole_move_words(example_move(), example_here(), in_mm) ==
             "10 mm forward: space to S13 139.7 mm, within 40.0 to 150.0 mm; space to "
             "S15 162.3 mm, over the 150.0 mm allowed; 20.0 mm to the lip's low edge, "
             "26.0 mm to the hull's top edge; 19 mm long in place of 22 mm, 0.7 mm in "
             "reserve");
}

BOOST_AUTO_TEST_CASE(a_step_that_breaks_something_says_what) {
  HoleMove move = example_move();
  move.at->after.whose = "the class rule";
  move.at->stands_in = {"in the keep-out cleat, girth 100 to 200 mm"};
  move.at->station.edge_top = Length::mm(-1);
  move.at->station.length.reset();
  const std::string words = hole_move_words(move, example_here(), in_mm);
  BOOST_TEST(has(words, "over the 150.0 mm allowed by the class rule"));
  BOOST_TEST(
      has(words, "; in the keep-out cleat, girth 100 to 200 mm; misses the hull"));
  BOOST_TEST(has(words, "no length in stock serves"));
}

BOOST_AUTO_TEST_CASE(a_rule_is_named_where_its_state_changes) {
  HoleMove move = example_move();
  RuleRow row;
  row.rule = "edge_class";
  row.has = Length::mm(9);
  row.asks = Length::mm(9.6);
  row.state = RuleState::Fail;
  move.at->rules = {row};
  HoleAt here = example_here();
  row.state = RuleState::Pass;
  here.rules = {row};
  BOOST_TEST(has(hole_move_words(move, here, in_mm),
                 "breaks a rule: 9.0 mm, 9.6 mm asked by edge_class"));
  here.rules[0].state = RuleState::Fail;
  BOOST_TEST(!has(hole_move_words(move, here, in_mm), "edge_class"));
}

BOOST_AUTO_TEST_CASE(a_place_that_cannot_be_says_why) {
  HoleMove move = example_move();
  move.at.reset();
  move.why_not = "on or past S13";
  BOOST_TEST(hole_move_words(move, example_here(), in_mm) ==
             "10 mm forward: it cannot be there, on or past S13");
}

BOOST_AUTO_TEST_CASE(no_most_is_no_number) {
  HoleSpace space{"S02", true, Length::mm(300), Length::mm(40), unlimited_pitch, ""};
  BOOST_TEST(limit_words(space, in_mm) == "at least 40.0 mm");
}

BOOST_AUTO_TEST_CASE(every_part_of_the_story_has_its_heading) {
  Parts parts;
  parts.schedule = parts.strength = true;
  const auto job = work_out(strong_joint(), parts);
  BOOST_TEST_REQUIRE(job.has_value());
  const std::string text = hole_text(*job, "S05", in_mm);
  for (const char* heading :
       {"S05: tapping screw ST4.8 on starboard, girth ", "\nWhy it is there\n",
        "\nSpaces on either hand\n", "\nEdges and rules\n", "\nThrough the stack\n",
        "\nThe fastener alone, the bond gone\n", "\nThe bond there\n",
        "\nA step either way, all other holes as they are\n",
        "  10 mm forward: ", "  1 mm aft: "})
    BOOST_TEST(has(text, heading), heading);
}

BOOST_AUTO_TEST_CASE(without_loads_what_it_carries_is_left_out) {
  Joint joint = strong_joint();
  joint.loads.reset();
  Parts parts;
  parts.schedule = true;
  const auto job = work_out(joint, parts);
  BOOST_TEST_REQUIRE(job.has_value());
  const std::string text = hole_text(*job, "S05", in_mm);
  BOOST_TEST(!has(text, "The fastener alone"));
  BOOST_TEST(!has(text, "use alone"));
  BOOST_TEST(has(text, "A step either way"));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
