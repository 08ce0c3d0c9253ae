#include "joint/contradictions.h"

#include <boost/test/unit_test.hpp>
#include <limits>

#include "tests/joint/example_joint.h"

namespace sheerlap {
namespace {

Joint sound_joint() { return box_joint(4000, 1600, {}); }

/// The message of the only contradiction.
std::string message_of(const Joint& joint, LengthUnit unit = LengthUnit::Millimetres) {
  const Errors errors = contradictions(joint, unit);
  BOOST_TEST_REQUIRE(errors.size() == 1u);
  return errors.front().message;
}

BOOST_AUTO_TEST_SUITE(contradictory_joints)

BOOST_AUTO_TEST_CASE(a_sound_joint_has_none) {
  BOOST_TEST(contradictions(sound_joint(), LengthUnit::Millimetres).size() == 0u);
}

BOOST_AUTO_TEST_CASE(the_shallowest_lap_bounds_the_drill_line) {
  Joint joint = sound_joint();
  joint.sheer.rows[2].offsets.lap = Length::mm(24);
  joint.sheer.rows[2].station = "7";
  BOOST_TEST(message_of(joint) ==
             "[fastener] line is at a depth of 25 mm and the lap is 24 mm deep at "
             "station 7: within the lap");
  joint.fastener.line = Length::mm(24);
  BOOST_TEST(contradictions(joint, LengthUnit::Millimetres).size() == 0u);
}

BOOST_AUTO_TEST_CASE(lengths_are_told_in_the_files_units) {
  Joint joint = sound_joint();
  joint.layout.pitch_min = Length::inches(8);
  joint.layout.pitch_max = Length::inches(6);
  BOOST_TEST(message_of(joint, LengthUnit::Inches) ==
             "[layout] pitch_min is 8 in and pitch_max 6 in: pitch_min is no larger");
}

BOOST_AUTO_TEST_CASE(a_keep_out_on_both_sides_stands_where_one_on_port_does) {
  Joint joint = sound_joint();
  const auto keepout = [](SideChoice side, double from) {
    return KeepOut{{side, Length::mm(from), Length::mm(200)}, Length(), "cleat"};
  };
  joint.keepouts = {keepout(SideChoice::Both, 100), keepout(SideChoice::Transom, 100),
                    keepout(SideChoice::Starboard, 110)};
  BOOST_TEST(contradictions(joint, LengthUnit::Millimetres).size() == 0u);
  joint.keepouts.push_back(keepout(SideChoice::Port, 100));
  BOOST_TEST(message_of(joint) ==
             "this [[keepout]] stands where number 1 of them does: leave one out");
}

BOOST_AUTO_TEST_CASE(the_limits_of_readings_leave_a_gap_between_them) {
  Joint joint = sound_joint();  // the adhesive's window is 1 to 8 mm
  joint.reading_limits.gap_min = Length::mm(8);
  BOOST_TEST(message_of(joint) ==
             "[readings] gap_max is 8 mm (from [adhesive]) and gap_min 8 mm: gap_max "
             "is the larger");
  joint.reading_limits.gap_max = Length::mm(9);
  BOOST_TEST(contradictions(joint, LengthUnit::Millimetres).size() == 0u);
  joint.adhesive.reset();
  joint.reading_limits.gap_max = Length::mm(2);
  BOOST_TEST(message_of(joint) ==
             "[readings] gap_max is 2 mm and gap_min 8 mm: gap_max is the larger");
}

BOOST_AUTO_TEST_CASE(a_rule_by_length_needs_the_length) {
  Joint joint = sound_joint();
  joint.strength.rules = {"deck_to_hull_by_length"};
  BOOST_TEST(message_of(joint) ==
             "rule deck_to_hull_by_length goes by the boat's length: give [strength] "
             "hull_length");
  joint.strength.hull_length = Length::mm(12000);
  BOOST_TEST(contradictions(joint, LengthUnit::Millimetres).size() == 0u);
}

BOOST_AUTO_TEST_CASE(a_pitch_left_to_the_strength_needs_loads) {
  Joint joint = sound_joint();
  joint.layout.by_strength = true;
  BOOST_TEST(message_of(joint) ==
             "[layout] pitch_max is \"strength\" and the file has no [loads]: give the "
             "loads, or a length");
  joint.loads = Loads{};
  BOOST_TEST(contradictions(joint, LengthUnit::Millimetres).size() == 0u);
}

BOOST_AUTO_TEST_CASE(a_value_that_was_not_read_contradicts_nothing) {
  Joint joint = sound_joint();
  const Length unread = Length::mm(std::numeric_limits<double>::quiet_NaN());
  joint.layout = {unread, Length::mm(40), unread, Length::mm(1), unread, unread};
  joint.fastener.line = unread;
  joint.adhesive->gap_min = unread;
  joint.keepouts = {{{SideChoice::Both, unread, unread}, Length(), "cleat"},
                    {{SideChoice::Both, unread, unread}, Length(), "cleat"}};
  joint.bond = {unread, Length::mm(40)};
  BOOST_TEST(contradictions(joint, LengthUnit::Millimetres).size() == 0u);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
