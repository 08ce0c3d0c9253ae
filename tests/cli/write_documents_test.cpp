#include "cli/write_documents.h"

#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <boost/test/unit_test.hpp>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <map>

#include "cli/folder_change.h"

namespace sheerlap {
namespace {

namespace fs = std::filesystem;

/// A folder of its own for each test, removed at the end.
struct TemporaryFolder {
  TemporaryFolder() {
    std::string name = (fs::temp_directory_path() / "sheerlap-test-XXXXXX").string();
    BOOST_TEST_REQUIRE(::mkdtemp(name.data()) != nullptr);
    path = name;
  }
  ~TemporaryFolder() { fs::remove_all(path); }
  fs::path path;
};

void put(const fs::path& file, const std::string& text) {
  std::ofstream(file, std::ios::binary) << text;
}

/// Every file of a folder with its content.
std::map<std::string, std::string> files_in(const fs::path& folder) {
  std::map<std::string, std::string> files;
  for (const auto& entry : fs::directory_iterator(folder)) {
    if (!entry.is_regular_file()) continue;
    std::ifstream stream(entry.path(), std::ios::binary);
    files[entry.path().filename().string()] = {std::istreambuf_iterator<char>(stream),
                                               {}};
  }
  return files;
}

using Files = std::map<std::string, std::string>;

const std::string ours = "{\n  \"format\": \"sheerlap/1\"";
const std::vector<Document> two{{"summary.txt", "all is well\n"},
                                {"result.json", ours}};

BOOST_FIXTURE_TEST_SUITE(write_documents_suite, TemporaryFolder)

BOOST_AUTO_TEST_CASE(documents_are_written_into_a_folder_that_is_made_for_them) {
  const fs::path folder = path / "a" / "b";
  BOOST_TEST(write_documents(folder, two).has_value());
  BOOST_TEST((files_in(folder) ==
              Files{{"summary.txt", "all is well\n"}, {"result.json", ours}}));
}

BOOST_AUTO_TEST_CASE(documents_replace_their_own_and_leave_other_files_alone) {
  put(path / "summary.txt", "old");
  put(path / "notes.txt", "mine");
  put(path / ".sheerlap-notes", "mine too");
  BOOST_TEST(write_documents(path, two).has_value());
  BOOST_TEST((files_in(path) == Files{{"summary.txt", "all is well\n"},
                                      {"result.json", ours},
                                      {"notes.txt", "mine"},
                                      {".sheerlap-notes", "mine too"}}));
}

BOOST_AUTO_TEST_CASE(documents_of_an_earlier_run_that_no_longer_apply_go) {
  put(path / "result.json", ours);
  put(path / "schedule-transom.csv", "stale");
  BOOST_TEST(write_documents(path, two).has_value());
  BOOST_TEST(!fs::exists(path / "schedule-transom.csv"));
}

BOOST_AUTO_TEST_CASE(a_file_of_a_documents_name_stays_where_no_run_was_before) {
  put(path / "schedule-transom.csv", "mine");
  BOOST_TEST(write_documents(path, two).has_value());
  BOOST_TEST(files_in(path).at("schedule-transom.csv") == "mine");
}

BOOST_AUTO_TEST_CASE(what_a_killed_run_left_is_taken_away) {
  put(path / ".sheerlap-new-order.csv", "half");
  put(path / ".sheerlap-old-summary.txt", "old");
  BOOST_TEST(write_documents(path, two).has_value());
  BOOST_TEST(files_in(path).size() == 2);
}

BOOST_AUTO_TEST_CASE(nothing_is_changed_if_a_document_cannot_be_written) {
  put(path / "summary.txt", "old");
  fs::create_directory(path / "result.json");
  const auto written = write_documents(path, two);
  BOOST_TEST_REQUIRE(!written.has_value());
  BOOST_TEST((written.error()[0].kind == ErrorKind::Unreadable));
  BOOST_TEST(
      written.error()[0].message ==
      (path / "result.json").string() +
          ": stands in the way and is no file: File exists: give a folder that can "
          "be written with --out");
  BOOST_TEST((files_in(path) == Files{{"summary.txt", "old"}}));
}

BOOST_AUTO_TEST_CASE(a_folder_that_was_made_goes_again_if_nothing_comes_of_it) {
  const fs::path folder = path / "a" / "b";
  // a name with a slash can be no file of the folder
  BOOST_TEST(
      !write_documents(folder, {{"summary.txt", "x"}, {"no/such", "x"}}).has_value());
  BOOST_TEST(!fs::exists(path / "a"));
}

BOOST_AUTO_TEST_CASE(changes_already_in_place_are_undone_if_a_later_one_fails) {
  put(path / "a", "old a");
  auto change = FolderChange::begin(path);
  BOOST_TEST_REQUIRE(change.has_value());
  for (const char* name : {"a", "b", "c"})
    BOOST_TEST(change->add(name, "new").has_value());
  // somebody puts a folder in the way between writing and renaming
  fs::create_directory(path / "c");
  BOOST_TEST(!change->commit().has_value());
  { const FolderChange gone = std::move(*change); }
  BOOST_TEST((files_in(path) == Files{{"a", "old a"}}));
}

BOOST_AUTO_TEST_CASE(a_change_that_is_not_committed_leaves_nothing) {
  {
    auto change = FolderChange::begin(path);
    BOOST_TEST_REQUIRE(change.has_value());
    BOOST_TEST(change->add("a", "new").has_value());
    BOOST_TEST(files_in(path).contains(".sheerlap-new-a"));
  }
  BOOST_TEST(files_in(path).empty());
}

BOOST_AUTO_TEST_CASE(two_runs_do_not_write_into_one_folder_at_once) {
  const auto first = FolderChange::begin(path);
  BOOST_TEST_REQUIRE(first.has_value());
  const auto second = write_documents(path, two);
  BOOST_TEST_REQUIRE(!second.has_value());
  BOOST_TEST(second.error()[0].message.find("another run is writing here") !=
             std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_file_is_no_folder) {
  put(path / "file", "mine");
  const auto written = write_documents(path / "file", two);
  BOOST_TEST_REQUIRE(!written.has_value());
  BOOST_TEST(files_in(path).at("file") == "mine");
}

BOOST_AUTO_TEST_CASE(a_link_is_replaced_and_not_followed) {
  put(path / "elsewhere", "mine");
  fs::create_symlink("elsewhere", path / "summary.txt");
  BOOST_TEST(write_documents(path, two).has_value());
  BOOST_TEST(files_in(path).at("elsewhere") == "mine");
  BOOST_TEST(!fs::is_symlink(path / "summary.txt"));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
