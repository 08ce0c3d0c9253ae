#include "cli/new_joint.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <filesystem>
#include <string>
#include <vector>

#include "joint/job.h"
#include "tests/cli/boat_folder.h"

namespace sheerlap {
namespace {

/// The names of what a folder holds.
std::vector<std::string> names_in(const std::filesystem::path& folder) {
  std::vector<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator(folder))
    names.push_back(entry.path().filename().string());
  std::sort(names.begin(), names.end());
  return names;
}

std::vector<std::string> refusal_by(const std::filesystem::path& folder) {
  const auto paths = write_new_joint(folder);
  BOOST_TEST_REQUIRE(!paths.has_value());
  std::vector<std::string> messages;
  for (const Error& error : paths.error()) {
    BOOST_TEST((error.kind == ErrorKind::Unreadable));
    messages.push_back(error.message);
  }
  return messages;
}

BOOST_AUTO_TEST_SUITE(new_joint)

BOOST_AUTO_TEST_CASE(a_new_joint_reads_and_uses_no_default) {
  const BoatFolder folder;
  const auto paths = write_new_joint(folder.path() / "boats" / "new");
  BOOST_TEST_REQUIRE(paths.has_value());
  BOOST_TEST_REQUIRE(paths->size() == 2u);
  const auto file = read_joint_file(paths->front());
  BOOST_REQUIRE_MESSAGE(file.has_value(), file.error().front().message);
  BOOST_TEST(file->joint.defaults.size() == 0u);
  BOOST_TEST(file->joint.sheer.rows.size() == 23u);
  BOOST_TEST(file->joint.adhesive.has_value());
  BOOST_TEST(!file->joint.loads.has_value());  // they stand behind #: for the user
  BOOST_TEST(!file->joint.tolerance.has_value());
  BOOST_TEST(file->joint.shop.has_value());
  BOOST_TEST(file->joint.order.has_value());
}

BOOST_AUTO_TEST_CASE(what_a_new_joint_holds_back_is_right_too) {
  const BoatFolder folder;
  BOOST_TEST_REQUIRE(write_new_joint(folder.path()).has_value());
  std::string text = folder.text("joint.toml");
  for (std::size_t at = 0; (at = text.find("#: ", at)) != std::string::npos;)
    text.erase(at, 3);
  folder.write("joint.toml", text);
  const auto file = folder.read();
  BOOST_REQUIRE_MESSAGE(file.has_value(), file.error().front().message);
  const auto job = work_out(file->joint, Parts::all());
  BOOST_REQUIRE_MESSAGE(job.has_value(), job.error().front().message);
  BOOST_TEST_REQUIRE(job->strength.has_value());
  BOOST_TEST(job->strength->fasteners.rows.size() == job->layout->count);
  BOOST_TEST_REQUIRE(job->going_on.has_value());
  BOOST_TEST(job->going_on->turned.has_value());
  BOOST_TEST(job->going_on->seating.readings.size() == 1u);
  BOOST_TEST(job->going_on->seating.squeezes.size() == 1u);
  BOOST_TEST_REQUIRE(file->joint.tolerance.has_value());
  BOOST_TEST(file->joint.tolerance->errors.size() == 4u);
}

BOOST_AUTO_TEST_CASE(a_new_joint_is_fair_and_no_check_of_it_fails) {
  const BoatFolder folder;
  BOOST_TEST_REQUIRE(write_new_joint(folder.path()).has_value());
  const auto file = folder.read();
  BOOST_TEST_REQUIRE(file.has_value());
  const auto job = work_out(file->joint, Parts::all());
  BOOST_REQUIRE_MESSAGE(job.has_value(), job.error().front().message);
  BOOST_TEST(job->perimeter.checks.size() == 0u);  // each would warn of a false hollow
  BOOST_TEST(job->perimeter.sides.size() == 3u);
  BOOST_TEST(job->schedule.has_value());
  BOOST_TEST(job->order.has_value());
  for (const Check& check : job->checks) {
    BOOST_TEST(check.id != "fastener.pilot");  // its pilot is the shop's own
  }
  for (const Check& check : job->checks)
    BOOST_TEST((check.state != CheckState::Fail), check.id << ": " << check.what);
}

BOOST_AUTO_TEST_CASE(a_file_that_is_there_is_named_and_nothing_is_written) {
  const BoatFolder folder;
  folder.write("sheer.csv", "mine\n");
  check_messages(refusal_by(folder.path()),
                 {(folder.path() / "sheer.csv").string() +
                  " is there already: give another folder, or move it away"});
  BOOST_TEST(folder.text("sheer.csv") == "mine\n");
  check_messages(names_in(folder.path()), {"sheer.csv"});
  folder.write("joint.toml", "mine\n");
  BOOST_TEST(refusal_by(folder.path()).size() == 2u);
}

BOOST_AUTO_TEST_CASE(a_link_that_leads_nowhere_is_not_written_through) {
  const BoatFolder folder;
  std::filesystem::create_symlink(folder.path() / "elsewhere",
                                  folder.path() / "joint.toml");
  BOOST_TEST(refusal_by(folder.path()).size() == 1u);
  check_messages(names_in(folder.path()), {"joint.toml"});
}

BOOST_AUTO_TEST_CASE(a_file_where_the_folder_belongs_is_refused) {
  const BoatFolder folder;
  folder.write("boat", "a file\n");
  check_messages(refusal_by(folder.path() / "boat"),
                 {(folder.path() / "boat").string() +
                  " cannot be written (Not a directory): give a folder that can be "
                  "written in"});
}

BOOST_AUTO_TEST_CASE(what_cannot_be_finished_is_taken_away_again) {
  const BoatFolder folder;
  // a folder in the second temporary file's place
  std::filesystem::create_directory(folder.path() / ".sheerlap-new-sheer.csv");
  BOOST_TEST(refusal_by(folder.path()).size() == 1u);
  check_messages(names_in(folder.path()), {".sheerlap-new-sheer.csv"});
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
