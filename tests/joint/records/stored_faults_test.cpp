#include "joint/records/stored_faults.h"

#include <boost/test/unit_test.hpp>

#include "joint/records/boat_store.h"
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

struct RecordFolder : TestFolder {
  fs::path file = path() / "boats.db";
};

BOOST_FIXTURE_TEST_SUITE(stored_faults, RecordFolder)

BOOST_AUTO_TEST_CASE(a_record_with_what_cannot_be_true_is_refused) {
  const std::string remedy =
      " (hull 1): the file is damaged, take the last good copy of it";
  const struct {
    std::string harm, words;
  } rows[]{
      {"DELETE FROM places WHERE place = 1",
       "it has a reading at a place that the record does not know"},
      {"UPDATE readings SET gap_top_mm = 9e999 WHERE state = 'dry'",
       "it has a reading whose numbers cannot be true"},
      {"UPDATE readings SET girth_mm = -9e999",
       "it has a reading whose numbers cannot be true"},
      {"DELETE FROM boats", "it has readings of a boat that is not there"},
      {"UPDATE boats SET gap_max_mm = 9e999",
       "it has a boat with a number that cannot be true"},
      {"UPDATE boats SET litres = 9e999",
       "it has a boat with a number that cannot be true"},
      {"UPDATE leaks SET girth_mm = 9e999", "it has a leak that cannot be true"},
      {"UPDATE leak_marks SET pitch_mm = 9e999",
       "it has a leak's mark whose numbers cannot be true"},
      {"PRAGMA ignore_check_constraints = 1; UPDATE places SET side = 'left'",
       "it has a reading at a place that the record does not know"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.harm) {
      fs::remove(file);
      BOOST_TEST(add_boat(opened(file), example_boat_record(1)).has_value());
      by_sqlite3(file, row.harm);
      const auto store = BoatStore::open(file, Database::Missing::Refuse);
      BOOST_TEST_REQUIRE(!store.has_value());
      BOOST_TEST(store.error().front().message == row.words + remedy);
      BOOST_TEST((store.error().front().kind == ErrorKind::Unreadable));
    }
}

BOOST_AUTO_TEST_CASE(a_boat_whose_readings_were_taken_out_is_in_order) {
  BOOST_TEST(add_boat(opened(file), example_boat_record(1)).has_value());
  by_sqlite3(file, "DELETE FROM readings");
  const auto boat = opened(file).boat(1);
  BOOST_TEST_REQUIRE(boat.has_value());
  BOOST_TEST((*boat)->readings.empty());
  BOOST_TEST((*boat)->mean_gap.has_value());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
