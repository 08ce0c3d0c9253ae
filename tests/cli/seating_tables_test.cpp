#include "cli/seating_tables.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <string>
#include <vector>

#include "joint/job.h"
#include "tests/cli/boat_folder.h"

namespace sheerlap {
namespace {

const std::string stations_text =
    "station,x,y,z\n"
    "stem,0,0,900\n"
    "7,1500,800,850\n"
    "corner,4000,1000,800\n"
    "aft,4000,0,800\n";

/// The short joint file with more at its end; its own last line is `short_lines`.
std::string with_tables(const std::string& more) { return short_joint_text + more; }

std::size_t short_lines() {
  return static_cast<std::size_t>(
      std::count(short_joint_text.begin(), short_joint_text.end(), '\n'));
}

/// What is refused of tables put behind the short joint file, their lines counted from
/// 1.
std::vector<std::string> refused(const std::string& tables) {
  std::vector<std::string> messages = refusal_of(with_tables(tables), stations_text);
  for (std::string& message : messages) {
    const std::size_t from = message.find(':') + 1;
    const std::size_t to = message.find(':', from);
    const std::size_t line = std::stoul(message.substr(from, to - from));
    BOOST_TEST_REQUIRE(line > short_lines());
    message = std::to_string(line - short_lines()) + message.substr(to);
  }
  return messages;
}

Joint joint_of(const std::string& text) {
  const BoatFolder folder;
  folder.write("joint.toml", text);
  folder.write("sheer.csv", stations_text);
  const auto file = folder.read();
  BOOST_REQUIRE_MESSAGE(file.has_value(), file.error().front().message);
  return file->joint;
}

const std::string reading = "[[beam_reading]]\nx = 2000\nmould = 2000\nfree = 2010\n";

BOOST_AUTO_TEST_SUITE(seating_tables)

BOOST_AUTO_TEST_CASE(entry_readings_and_spreaders_are_read_as_written) {
  // derived: as full_joint_text writes them
  const BoatFolder folder;
  folder.write("joint.toml", full_joint_text);
  folder.write("sheer.csv", sheer_text);
  const auto file = folder.read();
  BOOST_TEST_REQUIRE(file.has_value());
  const Joint& joint = file->joint;
  BOOST_TEST_REQUIRE(joint.turned_entry.has_value());
  BOOST_TEST((joint.turned_entry->first == FirstEnd::Stern));
  BOOST_TEST((joint.turned_entry->angle == Angle::degrees(5)));
  const auto& readings = joint.seating.readings;
  BOOST_TEST_REQUIRE(readings.size() == 2u);
  BOOST_TEST(readings[0].x->in_mm() == 2000.0);
  BOOST_TEST(readings[0].mould.in_mm() == 2000.0);
  BOOST_TEST(readings[0].free.in_mm() == 2010.0);
  BOOST_TEST(readings[0].held->in_mm() == 2001.0);
  BOOST_TEST(!readings[1].held.has_value());
  BOOST_TEST_REQUIRE(joint.seating.spreaders.size() == 1u);
  BOOST_TEST(joint.seating.spreaders[0].x.in_mm() == 2100.0);
  BOOST_TEST(joint.seating.spreaders[0].most.in_mm() == 12.0);
}

BOOST_AUTO_TEST_CASE(
    without_its_tables_a_lid_comes_straight_down_on_a_hull_as_moulded) {
  const Joint joint = joint_of(short_joint_text);
  BOOST_TEST(!joint.turned_entry.has_value());
  BOOST_TEST(joint.seating.readings.empty());
  BOOST_TEST(joint.seating.spreaders.empty());
  for (const DefaultUsed& used : joint.defaults)
    BOOST_TEST(!used.key.starts_with("entry"));
}

BOOST_AUTO_TEST_CASE(lengths_may_carry_their_own_unit_and_a_place_a_station) {
  const Joint joint = joint_of(with_tables(
      "[[beam_reading]]\nstation = \"7\"\nmould = \"1.6 m\"\n"
      "free = \"5 ft 3 in\"\n[[spreader]]\nx = \"2 m\"\nmost = \"1/2 in\"\n"));
  BOOST_TEST(joint.seating.readings[0].station == "7");
  BOOST_TEST(!joint.seating.readings[0].x.has_value());
  BOOST_TEST(joint.seating.readings[0].mould.in_mm() == 1600.0);
  // derived: 63 in of 25.4 mm
  BOOST_TEST(joint.seating.readings[0].free.in_mm() == 63 * 25.4,
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(joint.seating.spreaders[0].most.in_mm() == 12.7,
             boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(an_unknown_key_or_table_names_the_nearest) {
  check_messages(
      refused("[entry]\nfirst = \"bow\"\nangel = 5\n"),
      {"1: [entry] has no angle: the lid's angle to its seat, in degrees, as the other "
       "end comes down",
       "3: unknown key \"angel\" in [entry]: did you mean angle?"});
  check_messages(refused(reading + "hold = 2001\n"),
                 {"5: unknown key \"hold\" in [[beam_reading]]: did you mean held?"});
  check_messages(refused("[[spreaders]]\nx = 1\nmost = 2\n"),
                 {"1: unknown table \"spreaders\": did you mean spreader?"});
  check_messages(refused("[[spreader]]\nx = 2000\nmost = 8\nstation = \"7\"\n"),
                 {"4: unknown key \"station\" in [[spreader]]: one of x, most"});
}

BOOST_AUTO_TEST_CASE(a_missing_key_says_what_to_give) {
  check_messages(refused("[entry]\nangle = 5\n"),
                 {"1: [entry] has no first: bow or stern: the end that is set home "
                  "first"});
  check_messages(
      refused("[[beam_reading]]\nheld = 2000\n"),
      {"1: [[beam_reading]] has no x: the x where it is read, or station",
       "1: [[beam_reading]] has no mould: the beam over the hull's top edge in the "
       "mould",
       "1: [[beam_reading]] has no free: the beam there out of the mould, nothing "
       "holding it"});
  check_messages(refused("[[spreader]]\n"),
                 {"1: [[spreader]] has no x: the x where it stands",
                  "1: [[spreader]] has no most: how far each side may be forced there, "
                  "in or out, at the most"});
}

BOOST_AUTO_TEST_CASE(a_value_out_of_range_says_what_would_be_right) {
  check_messages(refused("[entry]\nfirst = \"sten\"\nangle = 0\n"),
                 {"2: [entry] first is \"sten\": did you mean stern?",
                  "3: [entry] angle is 0: more than 0 and at most 45 degrees"});
  check_messages(
      refused("[[beam_reading]]\nx = 2000\nmould = 0\nfree = -1\nheld = \"wide\"\n"),
      {"3: [[beam_reading]] mould is 0 mm: more than 0",
       "4: [[beam_reading]] free is -1 mm: more than 0",
       "5: [[beam_reading]] held \"wide\" is not a length: write a number, a number "
       "with its unit (mm, cm, m, in or ft), or feet-inches-eighths such as "
       "\"3-4-5\""});
  check_messages(refused("[[spreader]]\nx = 2000\nmost = 0\n"),
                 {"3: [[spreader]] most is 0 mm: more than 0"});
  check_messages(refused(reading + "station = \"7\"\n"),
                 {"2: [[beam_reading]] is given by station and by x: station, or x"});
}

BOOST_AUTO_TEST_CASE(a_place_that_the_boat_does_not_have_is_located_by_line) {
  const auto located_errors = [](const std::string& tables) {
    const BoatFolder folder;
    folder.write("joint.toml", with_tables(tables));
    folder.write("sheer.csv", stations_text);
    const auto file = folder.read();
    BOOST_REQUIRE_MESSAGE(file.has_value(), file.error().front().message);
    Parts fit;
    fit.fit = true;
    const auto job = work_out(file->joint, fit);
    BOOST_TEST_REQUIRE(!job.has_value());
    std::vector<std::size_t> lines;
    for (const Error& error : job.error())
      lines.push_back(source_line(file->sources, error.where).line - short_lines());
    return lines;
  };
  using Lines = std::vector<std::size_t>;
  const std::string adhesive =
      "[adhesive]\nname = \"paste\"\ngap_min = 1\ngap_max = 8\nbead_sizes = [8]\n"
      "pack = 490\npack_usable = 430\nnozzle_purge = 30\n";
  // derived: the adhesive has 8 lines; x = 4100 is abaft the transom at 4000
  BOOST_TEST((located_errors(adhesive + "[[spreader]]\nx = 4100\nmost = 5\n") ==
              Lines{10, 10}));
  BOOST_TEST((located_errors(adhesive + reading + reading) == Lines{14}));
  BOOST_TEST((located_errors(adhesive + "[[beam_reading]]\nstation = \"8\"\n"
                                        "mould = 1\nfree = 1\n") == Lines{10}));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
