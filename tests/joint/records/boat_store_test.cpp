#include "joint/records/boat_store.h"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <boost/test/unit_test.hpp>
#include <csignal>
#include <fstream>

#include "joint/records/record_schema.h"
#include "tests/cli/program.h"
#include "tests/joint/records/example_boat_record.h"

namespace sheerlap {
namespace {

namespace fs = std::filesystem;

/// What another program says of the file.
std::string by_sqlite3(const fs::path& file, const std::string& sql) {
  RunOptions options;
  options.program = "sqlite3";
  const Outcome run = run_program({file.string(), sql}, options);
  BOOST_TEST(run.status == 0, run.err);
  return run.out;
}

BoatStore opened(const fs::path& file) {
  auto store = BoatStore::open(file, Database::Missing::Make);
  BOOST_TEST_REQUIRE(store.has_value(), store.error().front().message);
  return std::move(*store);
}

Result<BoatRecord> add_boat(const BoatStore& store, const BoatRecord& boat) {
  return store.update(boat.hull, [&](const auto&) { return Result<BoatRecord>(boat); });
}

/// A child process that does something and ends.
template <class Work>
pid_t forked(Work work) {
  const pid_t child = ::fork();
  BOOST_TEST_REQUIRE(child >= 0);
  if (child != 0) return child;
  ::_exit(work() ? 0 : 1);
}

int ended(pid_t child) {
  int state = 0;
  BOOST_TEST_REQUIRE(::waitpid(child, &state, 0) == child);
  return WIFEXITED(state) ? WEXITSTATUS(state) : 128 + WTERMSIG(state);
}

/// Adds boats from `first` on, and tells each that is confirmed; until it is killed.
bool add_for_ever(const fs::path& file, int confirmed, std::int64_t first) {
  auto store = BoatStore::open(file, Database::Missing::Make);
  for (std::int64_t hull = first; store; ++hull) {
    if (!add_boat(*store, example_boat_record(hull))) return false;
    if (::write(confirmed, &hull, sizeof hull) != sizeof hull) return false;
  }
  return false;
}

struct RecordFolder : TestFolder {
  fs::path file = path() / "boats.db";
};

BOOST_FIXTURE_TEST_SUITE(boat_store, RecordFolder)

BOOST_AUTO_TEST_CASE(a_boat_comes_back_as_it_was_put) {
  const BoatStore store = opened(file);
  BOOST_TEST(!store.boat(12)->has_value());
  BOOST_TEST(add_boat(store, example_boat_record(12)).has_value());
  const auto boat = opened(file).boat(12);
  BOOST_TEST_REQUIRE(boat.has_value());
  BOOST_TEST_REQUIRE(boat->has_value());
  check_alike(**boat, example_boat_record(12));
}

BOOST_AUTO_TEST_CASE(a_boat_is_replaced_whole) {
  const BoatStore store = opened(file);
  BOOST_TEST(add_boat(store, example_boat_record(12)).has_value());
  BoatRecord less = example_boat_record(12);
  less.leaks.clear();
  less.readings.resize(1);
  BOOST_TEST(add_boat(store, less).has_value());
  check_alike(**store.boat(12), less);
  BOOST_TEST(by_sqlite3(file, "SELECT count(*) FROM leak_marks") == "0\n");
}

BOOST_AUTO_TEST_CASE(a_change_that_is_refused_leaves_the_record_as_it_was) {
  const BoatStore store = opened(file);
  BOOST_TEST(add_boat(store, example_boat_record(12)).has_value());
  const auto refused = store.update(
      12, [](const auto&) -> Result<BoatRecord> { return invalid_input("", "no"); });
  BOOST_TEST_REQUIRE(!refused.has_value());
  BOOST_TEST(refused.error().front().message == "no");
  check_alike(**store.boat(12), example_boat_record(12));
}

BOOST_AUTO_TEST_CASE(a_record_holds_boats_of_one_joint) {
  const BoatStore store = opened(file);
  BOOST_TEST(add_boat(store, example_boat_record(12)).has_value());
  BoatRecord other = example_boat_record(13);
  other.title = "Another";
  const auto refused = add_boat(store, other);
  BOOST_TEST_REQUIRE(!refused.has_value());
  BOOST_TEST(refused.error().front().message ==
             "hull 12 there is of another joint than Another: a record of its own for "
             "each joint");
  BOOST_TEST(!store.boat(13)->has_value());
}

BOOST_AUTO_TEST_CASE(boats_are_listed_by_number_with_what_they_have) {
  const BoatStore store = opened(file);
  for (const std::int64_t hull : {9, 100, 12})
    BOOST_TEST(add_boat(store, example_boat_record(hull)).has_value());
  const auto list = store.boats();
  BOOST_TEST_REQUIRE(list.has_value());
  BOOST_TEST(list->title == "Example");
  BOOST_TEST_REQUIRE(list->boats.size() == 3U);
  BOOST_TEST(list->boats[1].hull == 12);
  BOOST_TEST(list->boats[2].hull == 100);
  BOOST_TEST(list->boats[0].readings == 3U);
  BOOST_TEST(list->boats[0].outside == 1U);  // derived: 0.5 is below 1
  BOOST_TEST(list->boats[0].leaks == 1U);
}

BOOST_AUTO_TEST_CASE(series_are_by_place_state_and_edge_in_the_order_of_the_boats) {
  const BoatStore store = opened(file);
  for (const std::int64_t hull : {30, 10, 20}) {
    BoatRecord boat = example_boat_record(hull);
    boat.readings[0].top = Length::mm(static_cast<double>(hull) / 10);
    BOOST_TEST(add_boat(store, boat).has_value());
  }
  const auto record = store.series();
  BOOST_TEST_REQUIRE(record.has_value());
  // derived: station 9 dry top and low, after top; girth 1200 dry low
  BOOST_TEST_REQUIRE(record->series.size() == 4U);
  const GapSeries& first = record->series.front();
  BOOST_TEST((first.side == SideName::Starboard && first.name == "9" && !first.low));
  BOOST_TEST((first.hulls == std::vector<std::int64_t>{10, 20, 30}));
  BOOST_TEST((first.gaps_mm == std::vector<double>{1, 2, 3}));
  BOOST_TEST((record->series[1].low && record->series[1].state == ReadingState::Dry));
  BOOST_TEST((record->series[2].state == ReadingState::After));
  BOOST_TEST((record->series[3].side == SideName::Port));
  BOOST_TEST(record->boats.size() == 3U);
}

BOOST_AUTO_TEST_CASE(another_program_reads_the_file_and_finds_it_sound) {
  BOOST_TEST(add_boat(opened(file), example_boat_record(12)).has_value());
  BOOST_TEST(by_sqlite3(file,
                        "PRAGMA integrity_check; PRAGMA foreign_key_check;"
                        "PRAGMA user_version; PRAGMA journal_mode;") ==
             "ok\n2\ndelete\n");
  BOOST_TEST(by_sqlite3(file,
                        "SELECT hull, side, name, state, gap_top_mm, gap_low_mm "
                        "FROM readings JOIN places USING (place) "
                        "ORDER BY side, state DESC") ==
             "12|port|1200|dry||0.5\n12|starboard|9|dry|2.5|4.1\n"
             "12|starboard|9|after|2.4|\n");
}

BOOST_AUTO_TEST_CASE(an_empty_file_is_version_0_and_is_brought_up) {
  std::ofstream(file).close();
  BOOST_TEST(opened(file).boats()->boats.empty());
  BOOST_TEST(by_sqlite3(file, "PRAGMA user_version") == "2\n");
}

BOOST_AUTO_TEST_CASE(a_record_of_version_1_keeps_its_boats_and_gains_leaks) {
  {
    auto database = Database::open(file, Database::Missing::Make);
    BOOST_TEST_REQUIRE(database.has_value());
    BOOST_TEST(bring_up_to(*database, 1).has_value());
  }
  BOOST_TEST(by_sqlite3(file,
                        "PRAGMA user_version; SELECT name FROM sqlite_schema "
                        "WHERE type = 'table' ORDER BY name") ==
             "1\nboats\nplaces\nreadings\n");
  by_sqlite3(file,
             "INSERT INTO boats VALUES (7, 'Example', 1, 8, 3.1, 2.2, 109);"
             "INSERT INTO places VALUES (1, 'port', 'mark', 'P04');"
             "INSERT INTO readings VALUES (1, 'held', 7, 2.5, NULL, 480, 'old')");
  const BoatStore store = opened(file);
  const auto boat = store.boat(7);
  BOOST_TEST_REQUIRE(boat.has_value());
  BOOST_TEST_REQUIRE(boat->has_value());
  BOOST_TEST((*boat)->litres.value() == 2.2);
  BOOST_TEST_REQUIRE((*boat)->readings.size() == 1U);
  BOOST_TEST((*boat)->readings[0].note == "old");
  BOOST_TEST((*boat)->leaks.empty());
  BoatRecord more = **boat;
  more.leaks = example_boat_record(7).leaks;
  BOOST_TEST(add_boat(store, more).has_value());
  check_alike(**store.boat(7), more);
}

BOOST_AUTO_TEST_CASE(what_is_no_record_is_refused_and_left_alone) {
  const struct {
    const char* make;
    const char* message;
  } rows[] = {
      {"CREATE TABLE boats (hull)", "it is no record of boats: name another file"},
      {"PRAGMA user_version = 1", "it is no record of boats: name another file"},
      {"PRAGMA application_id = 1397247056; PRAGMA user_version = 9; CREATE TABLE t "
       "(a)",
       "a later sheerlap wrote it, in version 9; this one reads up to 2: use that one"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.make) {
      fs::remove(file);
      by_sqlite3(file, row.make);
      const std::string before = files_under(path()).at("boats.db");
      const auto store = BoatStore::open(file, Database::Missing::Make);
      BOOST_TEST_REQUIRE(!store.has_value());
      BOOST_TEST(store.error().front().message == row.message);
      BOOST_TEST((store.error().front().kind == ErrorKind::Unreadable));
      BOOST_TEST((files_under(path()).at("boats.db") == before));
    }
}

BOOST_AUTO_TEST_CASE(a_file_that_is_no_database_or_is_not_there_is_refused) {
  // SQLite alone would take the second for an empty file and write over it
  for (const std::string& text : {std::string(5000, 'x'), std::string("x")}) {
    TestFolder::put("boats.db", text);
    const auto no_database = BoatStore::open(file, Database::Missing::Make);
    BOOST_TEST_REQUIRE(!no_database.has_value());
    BOOST_TEST(no_database.error().front().message ==
               "it is no record of boats: name another file");
    BOOST_TEST(files_under(path()).at("boats.db") == text);
  }
  TestFolder::put("boats.db", "");
  const auto empty = BoatStore::open(file, Database::Missing::Refuse);
  BOOST_TEST_REQUIRE(!empty.has_value());
  BOOST_TEST(empty.error().front().message == "is empty: record add makes it a record");
  BOOST_TEST(fs::file_size(file) == 0U);
  fs::remove(file);
  const auto none = BoatStore::open(file, Database::Missing::Refuse);
  BOOST_TEST_REQUIRE(!none.has_value());
  BOOST_TEST(none.error().front().message ==
             "there is no such record: record add makes it");
  BOOST_TEST(!fs::exists(file));
}

BOOST_AUTO_TEST_CASE(four_at_once_lose_nothing) {
  std::vector<pid_t> children;
  for (std::int64_t terminal = 0; terminal < 4; ++terminal)
    children.push_back(forked([&] {
      for (std::int64_t i = 1; i <= 15; ++i) {
        // each opens the record anew, the first of them makes it
        auto store = BoatStore::open(file, Database::Missing::Make);
        if (!store || !add_boat(*store, example_boat_record(100 * terminal + i)))
          return false;
      }
      return true;
    }));
  for (const pid_t child : children) BOOST_TEST(ended(child) == 0);
  const BoatStore store = opened(file);
  const auto list = store.boats();
  BOOST_TEST_REQUIRE(list.has_value());
  BOOST_TEST(list->boats.size() == 60U);
  for (const BoatLine& boat : list->boats) BOOST_TEST(boat.readings == 3U);
  BOOST_TEST(by_sqlite3(file, "PRAGMA integrity_check") == "ok\n");
}

BOOST_AUTO_TEST_CASE(a_killed_program_loses_nothing_that_was_confirmed) {
  std::int64_t first = 1;
  for (int round = 0; round < 12; ++round) {
    int ends[2];
    BOOST_TEST_REQUIRE(::pipe(ends) == 0);
    const pid_t child = forked([&] { return add_for_ever(file, ends[1], first); });
    ::close(ends[1]);
    ::usleep(static_cast<useconds_t>(20'000 + 3'700 * round));
    ::kill(child, SIGKILL);
    BOOST_TEST(ended(child) == 128 + SIGKILL);
    std::int64_t confirmed = first - 1;
    while (::read(ends[0], &confirmed, sizeof confirmed) == sizeof confirmed) continue;
    ::close(ends[0]);
    const BoatStore store = opened(file);
    const auto list = store.boats();
    BOOST_TEST_REQUIRE(list.has_value());
    const auto kept = static_cast<std::int64_t>(list->boats.size());
    // the last one may have been kept and not yet told
    BOOST_TEST(kept >= confirmed);
    BOOST_TEST(kept <= confirmed + 1);
    for (std::int64_t hull = first; hull <= kept; ++hull)
      check_alike(**store.boat(hull), example_boat_record(hull));
    first = kept + 1;
  }
  BOOST_TEST(first > 5);  // something was added at all
  BOOST_TEST(by_sqlite3(file, "PRAGMA integrity_check") == "ok\n");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
