#include "cli/new_joint.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <filesystem>
#include <string>
#include <vector>

#include "joint/fit.h"
#include "joint/perimeter.h"
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

void check_none_fails(const Checks& checks) {
  for (const Check& check : checks)
    BOOST_TEST((check.state != CheckState::Fail), check.id << ": " << check.what);
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
  BOOST_TEST(file->joint.loads.has_value());
  BOOST_TEST(file->joint.shop.has_value());
  BOOST_TEST(file->joint.order.has_value());
}

BOOST_AUTO_TEST_CASE(a_new_joint_is_fair_and_fits) {
  const BoatFolder folder;
  BOOST_TEST_REQUIRE(write_new_joint(folder.path()).has_value());
  const auto file = folder.read();
  BOOST_TEST_REQUIRE(file.has_value());
  const auto round = perimeter(file->joint);
  BOOST_TEST_REQUIRE(round.has_value());
  BOOST_TEST(round->checks.size() == 0u);  // each would be a warning of fairness
  BOOST_TEST(round->sides.size() == 3u);
  const auto fitted = fit(file->joint, *round);
  BOOST_TEST_REQUIRE(fitted.has_value());
  check_none_fails(fitted->checks);
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
