#include "joint/documents/boat_text.h"

#include <boost/test/unit_test.hpp>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>

#include "joint/documents/boat_json.h"
#include "joint/documents/report.h"
#include "joint/documents/text_table.h"
#include "tests/joint/example_joint.h"
#include "tests/joint/example_readings.h"

namespace sheerlap {
namespace {

/// A box of a joint of which starboard and the transom were read: tight amidships, wide
/// and with holes that no fastener serves further aft, a step over the limit.
const Job& read_box() {
  static const Job job = [] {
    Joint joint = box_joint(4000, 2000, {});
    joint.reading_limits.step = Length::mm(5);
    const auto starboard = SideName::Starboard;
    return boat_job(
        joint, boat_parts(),
        {girth_reading(starboard, 0, 3, 3), girth_reading(starboard, 2000, 3, 3),
         girth_reading(starboard, 2500, 0.25, 3), girth_reading(starboard, 3000, 3, 3),
         girth_reading(starboard, 4000, 13, 13),
         girth_reading(SideName::Transom, 1000, {}, 3.5)});
  }();
  return job;
}

std::string text_in(LengthUnit unit) {
  return boat_text(read_box(), {unit, Length::mm(1)});
}

/// The text on one line.
std::string unwrapped(const std::string& text) {
  std::string line;
  for (const char letter : text) {
    const bool blank = letter == ' ' || letter == '\n';
    if (!blank || line.empty() || line.back() != ' ') line += blank ? ' ' : letter;
  }
  return line;
}

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

BOOST_AUTO_TEST_SUITE(boat_text_suite)

BOOST_AUTO_TEST_CASE(reports_of_a_boat_keep_to_80_characters) {
  for (const LengthUnit unit : {LengthUnit::Millimetres, LengthUnit::Inches})
    for (const Subject subject : {Subject::Fit, Subject::Adhesive, Subject::Schedule}) {
      std::istringstream lines(report(subject, read_box(), {unit, std::nullopt}));
      for (std::string line; std::getline(lines, line);)
        BOOST_TEST(width_of(line) <= 80, line);
    }
}

BOOST_AUTO_TEST_CASE(the_heading_names_the_file_and_the_state) {
  BOOST_TEST(report(Subject::Schedule, read_box(), {})
                 .starts_with("Example: drilling schedule, the boat of hull.csv, read "
                              "dry\n"));
}

BOOST_AUTO_TEST_CASE(where_nothing_was_read_is_said_before_any_number) {
  const std::string text = unwrapped(text_in(LengthUnit::Millimetres));
  const std::size_t held = text.find("NOT READ, the nearest difference is held there:");
  const std::size_t drawn = text.find("NOT READ, taken as drawn: port.");
  BOOST_TEST(held != std::string::npos);
  BOOST_TEST(drawn != std::string::npos);
  BOOST_TEST(std::max(held, drawn) < text.find("least gap"));
}

BOOST_AUTO_TEST_CASE(each_non_conformance_has_its_number_and_what_is_open) {
  const std::string text = text_in(LengthUnit::Millimetres);
  const Boat& boat = *read_box().boat;
  BOOST_TEST_REQUIRE(boat.out.size() >= 3U);
  for (const NonConformance& out : boat.out)
    BOOST_TEST(holds(text, "\nNC" + std::to_string(out.number) + " "));
  BOOST_TEST(!holds(text, "NC" + std::to_string(boat.out.size() + 1)));
  // derived: 0.25 against 1 mm, and 13 against 3 in one step
  const std::string line = unwrapped(text);
  BOOST_TEST(holds(line, "0.75 below 1"));
  BOOST_TEST(holds(line, "differ by 10.00, 5.00 over 5"));
  BOOST_TEST(holds(line, "no fastener in stock serves"));
}

BOOST_AUTO_TEST_CASE(work_is_told_to_wait_until_the_lid_is_seated) {
  BOOST_TEST(holds(unwrapped(text_in(LengthUnit::Millimetres)),
                   "To grind, shim or build up AFTER the lid is seated in its best "
                   "place and read again, by hole"));
}

BOOST_AUTO_TEST_CASE(a_boat_that_is_glued_is_told_no_work_and_no_seating) {
  std::vector<GivenReading> readings;
  for (const double girth : {0., 2000., 2500., 3000., 4000.}) {
    const double gap = girth == 2500 ? 0.25 : 3;
    readings.push_back(girth_reading(SideName::Starboard, girth, gap, gap));
    readings.back().state = ReadingState::After;
  }
  const Job job = boat_job(box_joint(4000, 2000, {}), boat_parts(), readings);
  const std::string text = unwrapped(report(Subject::Fit, job, {}));
  BOOST_TEST(holds(text,
                   "0.75 below 1 open: repair, reject, or ask whoever answers for "
                   "the joint"));
  BOOST_TEST(holds(text, "Where it is out, by hole and reading"));
  for (const char* words : {"grind", "shim", "What to do", "Move the deck", "squeeze",
                            "best place", "fit.seating", "fit.entry"})
    BOOST_TEST(!holds(text, words), words << " in " << text);
}

BOOST_AUTO_TEST_CASE(a_boat_with_nothing_out_is_accepted_as_far_as_it_was_read) {
  const Joint joint = box_joint(4000, 2000, {});
  const auto text_of = [&](const std::vector<GivenReading>& readings) {
    return boat_text(boat_job(joint, boat_parts(), readings),
                     {LengthUnit::Millimetres, Length::mm(1)});
  };
  const std::string part = text_of({girth_reading(SideName::Starboard, 2000, 3, 3)});
  BOOST_TEST(holds(part, "ACCEPT as far as it was read"));
  BOOST_TEST(holds(part, "every hole takes the length drawn"));
  BOOST_TEST(holds(part, "as drawn all the way"));
}

BOOST_AUTO_TEST_CASE(no_report_says_that_a_boat_complies) {
  for (const LengthUnit unit : {LengthUnit::Millimetres, LengthUnit::Inches})
    BOOST_TEST(!holds(text_in(unit), "compl"));
}

BOOST_AUTO_TEST_CASE(the_result_has_the_work_at_every_hole_and_reading) {
  const Json boat = boat_json(*read_box().boat);
  const std::size_t holes = read_box().schedule->stations.size();
  BOOST_TEST(boat["work"].size() >= holes);
  BOOST_TEST(boat["work"].size() <= holes + 6);
  BOOST_TEST(boat["accepted"] == false);
  // derived: transom read at its low edge alone, 3.5 for a drawn 3
  const Json& transom = boat["corrections"].back();
  BOOST_TEST(transom["side"] == "transom");
  BOOST_TEST(transom["read_top"].is_null());
  BOOST_TEST(transom["one_edge"] == true);
  BOOST_TEST(transom["top"] == transom["low"]);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
