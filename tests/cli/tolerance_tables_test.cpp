#include "cli/tolerance_tables.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>

#include "tests/cli/boat_folder.h"

namespace sheerlap {
namespace {

/// Lines of their own behind the other tables, counted from 1 at the first.
const std::string tolerance_lines = R"([tolerance]
boats = 5000
seed = 17
[[error]]
kind = "hull shrinkage"
law = "normal"
mean = 0.1
spread = 0.02
[[error]]
kind = "hull twist"
law = "uniform"
mean = -0.5
spread = 0.2
[[error]]
kind = "hull face"
law = "normal"
mean = 0.5
spread = "1/16 in"
correlation = 700
)";

const std::string joint_with_tolerance = short_joint_text + tolerance_lines;

ToleranceInputs inputs_of(const std::string& joint) {
  const BoatFolder folder;
  folder.write("joint.toml", joint);
  folder.write("sheer.csv", sheer_text);
  const auto file = folder.read();
  BOOST_REQUIRE_MESSAGE(file.has_value(), file.error().front().message);
  BOOST_TEST_REQUIRE(file->joint.tolerance.has_value());
  return *file->joint.tolerance;
}

/// The messages without the file and line before them, and the line from the first of
/// `tolerance_lines`.
void check_refused(const std::string& from,
                   const std::string& to,
                   std::size_t line,
                   const std::string& message) {
  const auto found = refusal_of(replaced(joint_with_tolerance, from, to));
  const auto before =
      std::count(short_joint_text.begin(), short_joint_text.end(), '\n');
  const std::string expected =
      "joint.toml:" + std::to_string(static_cast<std::size_t>(before) + line) + ": " +
      message;
  BOOST_TEST_CONTEXT(from << " -> " << to) check_messages(found, {expected});
}

BOOST_AUTO_TEST_SUITE(tolerance_tables)

BOOST_AUTO_TEST_CASE(errors_are_read_in_their_own_units) {
  const ToleranceInputs inputs = inputs_of(joint_with_tolerance);
  BOOST_TEST(inputs.boats == 5000U);
  BOOST_TEST(inputs.seed == 17U);
  BOOST_TEST_REQUIRE(inputs.errors.size() == 3U);
  const ProcessError& shrinkage = inputs.errors[0];
  BOOST_TEST((shrinkage.kind == ProcessErrorKind::HullShrinkage));
  BOOST_TEST((shrinkage.law == ErrorLaw::Normal));
  const auto rounding = boost::test_tools::tolerance(1e-14);
  BOOST_TEST(shrinkage.mean == 0.001, rounding);  // derived: 0.1 per cent as a share
  BOOST_TEST(shrinkage.spread == 0.0002, rounding);
  BOOST_TEST((inputs.errors[1].law == ErrorLaw::Uniform));
  BOOST_TEST(inputs.errors[1].mean == -0.5);  // degrees
  BOOST_TEST(inputs.errors[2].spread == 25.4 / 16, rounding);
  BOOST_TEST(inputs.errors[2].correlation.in_mm() == 700);
}

BOOST_AUTO_TEST_CASE(bare_lengths_of_errors_are_in_the_files_unit) {
  std::string text =
      replaced(joint_with_tolerance, "correlation = 700", "correlation = \"700 mm\"");
  const ToleranceInputs mm = inputs_of(text);
  BOOST_TEST(mm.errors[2].mean == 0.5);
  BOOST_TEST(mm.errors[2].correlation.in_mm() == 700);
}

BOOST_AUTO_TEST_CASE(every_kind_of_error_has_its_word) {
  const struct {
    const char* word;
    ProcessErrorKind kind;
    bool along;
  } rows[] = {{"hull shrinkage", ProcessErrorKind::HullShrinkage, false},
              {"lid shrinkage", ProcessErrorKind::LidShrinkage, false},
              {"hull opening", ProcessErrorKind::HullOpening, false},
              {"hull twist", ProcessErrorKind::HullTwist, false},
              {"hull trim", ProcessErrorKind::HullTrim, true},
              {"hull face", ProcessErrorKind::HullFace, true},
              {"lip thickness", ProcessErrorKind::LipThickness, true}};
  for (const auto& row : rows) {
    std::string text = replaced(joint_with_tolerance, "\"hull face\"",
                                "\"" + std::string(row.word) + "\"");
    text = replaced(text, "\"1/16 in\"", "1.5");
    if (!row.along) text = replaced(text, "correlation = 700\n", "");
    BOOST_TEST((inputs_of(text).errors[2].kind == row.kind), row.word);
  }
}

BOOST_AUTO_TEST_CASE(what_is_left_out_and_has_a_custom_is_put_on_record) {
  const BoatFolder folder;
  std::string text = replaced(joint_with_tolerance, "seed = 17\n", "");
  text = replaced(text, "law = \"uniform\"\nmean = -0.5\n", "");
  folder.write("joint.toml", text);
  folder.write("sheer.csv", sheer_text);
  const auto file = folder.read();
  BOOST_TEST_REQUIRE(file.has_value());
  BOOST_TEST(file->joint.tolerance->seed == 1U);
  BOOST_TEST(file->joint.tolerance->errors[1].mean == 0);
  std::vector<std::string> keys;
  for (const DefaultUsed& one : file->joint.defaults) keys.push_back(one.key);
  for (const char* key : {"tolerance.seed", "error[1].law", "error[1].mean"})
    BOOST_TEST((std::find(keys.begin(), keys.end(), key) != keys.end()), key);
}

BOOST_AUTO_TEST_CASE(wrong_values_are_told_with_file_line_and_remedy) {
  check_refused("boats = 5000", "boats = 12", 2,
                "[tolerance] boats is 12: 100 or more, for shares of fewer say little");
  check_refused("boats = 5000\n", "", 1,
                "[tolerance] has no boats: how many boats to make up, such as 10000");
  check_refused("seed = 17", "seed = 1.5", 3,
                "[tolerance] seed is 1.5: a whole number from 1 to a million");
  check_refused("seed = 17", "sead = 17", 3,
                "unknown key \"sead\" in [tolerance]: did you mean seed?");
  check_refused("\"hull twist\"", "\"hull twsit\"", 10,
                "[[error]] kind is \"hull twsit\": did you mean hull twist?");
  check_refused("\"uniform\"", "\"even\"", 11,
                "[[error]] law is \"even\": one of normal, uniform");
  check_refused("mean = 0.1", "mean = 7", 7,
                "[[error]] mean is 7: per cent, from -5 to 5");
  check_refused("spread = 0.2\n", "", 9,
                "[[error]] has no spread: the standard deviation, or half the width of "
                "a uniform law");
  check_refused("spread = 0.02", "spread = -0.02", 8,
                "[[error]] spread is -0.02: per cent, from 0 to 5");
  check_refused(
      "correlation = 700\n", "", 14,
      "[[error]] has no correlation: how far along the girth it is still much "
      "the same");
  check_refused("correlation = 700", "correlation = 2", 19,
                "[[error]] correlation is 2 mm: 100 mm (3.94 in) or more");
  check_refused("spread = 0.2\n", "spread = 0.2\ncorrelation = 300\n", 14,
                "[[error]] correlation is for hull trim, hull face and lip thickness, "
                "which vary along the girth: leave it out");
}

BOOST_AUTO_TEST_CASE(an_error_had_from_the_record_has_no_numbers_of_its_own) {
  const std::string numbers =
      "law = \"normal\"\nmean = 0.5\nspread = \"1/16 in\"\ncorrelation = 700\n";
  const ToleranceInputs inputs =
      inputs_of(replaced(joint_with_tolerance, numbers, "from_record = true\n"));
  BOOST_TEST(inputs.errors[2].from_record);
  BOOST_TEST(inputs.errors[2].correlation.in_mm() == 0);
  BOOST_TEST(!inputs.errors[0].from_record);
  check_refused(
      "mean = 0.5\nspread = \"1/16 in\"", "from_record = true\nspread = 1", 18,
      "[[error]] spread is had from the record: leave it out, or from_record");
}

BOOST_AUTO_TEST_CASE(a_table_without_the_other_is_refused) {
  check_refused("[tolerance]\nboats = 5000\nseed = 17\n", "", 1,
                "[[error]] stands without [tolerance]: its boats, how many to make up");
  const std::string errors = tolerance_lines.substr(tolerance_lines.find("[[error]]"));
  check_refused(errors, "", 1,
                "[tolerance] has no [[error]]: what goes wrong, and how far");
}

BOOST_AUTO_TEST_CASE(a_joint_without_the_table_has_no_tolerance) {
  const BoatFolder folder;
  folder.write("joint.toml", short_joint_text);
  folder.write("sheer.csv", sheer_text);
  BOOST_TEST(!folder.read()->joint.tolerance.has_value());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
