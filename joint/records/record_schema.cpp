#include "joint/records/record_schema.h"

#include <fmt/format.h>

#include <array>
#include <string>

namespace sheerlap {
namespace {

/// What takes a record from each version to the next.
constexpr std::array<const char*, record_version> steps{
    R"(
CREATE TABLE boats (
  hull INTEGER PRIMARY KEY CHECK (hull > 0),
  title TEXT NOT NULL,
  gap_min_mm REAL NOT NULL,
  gap_max_mm REAL NOT NULL,
  mean_gap_mm REAL,
  litres REAL CHECK (litres >= 0),
  holes INTEGER CHECK (holes >= 0)
) STRICT;
CREATE TABLE places (
  place INTEGER PRIMARY KEY,
  side TEXT NOT NULL CHECK (side IN ('starboard', 'port', 'transom')),
  kind TEXT NOT NULL CHECK (kind IN ('girth', 'mark', 'station')),
  name TEXT NOT NULL,
  UNIQUE (side, kind, name)
) STRICT;
CREATE TABLE readings (
  place INTEGER NOT NULL REFERENCES places,
  state TEXT NOT NULL CHECK (state IN ('dry', 'held', 'after')),
  hull INTEGER NOT NULL REFERENCES boats ON DELETE CASCADE,
  gap_top_mm REAL,
  gap_low_mm REAL,
  girth_mm REAL NOT NULL,
  note TEXT NOT NULL DEFAULT '',
  CHECK (gap_top_mm IS NOT NULL OR gap_low_mm IS NOT NULL),
  PRIMARY KEY (place, state, hull)
) STRICT, WITHOUT ROWID;
CREATE INDEX readings_of_boat ON readings (hull);
)",
    R"(
CREATE TABLE leaks (
  leak INTEGER PRIMARY KEY,
  hull INTEGER NOT NULL REFERENCES boats ON DELETE CASCADE,
  side TEXT NOT NULL CHECK (side IN ('starboard', 'port', 'transom')),
  girth_mm REAL NOT NULL,
  UNIQUE (hull, side, girth_mm)
) STRICT;
CREATE TABLE leak_marks (
  leak INTEGER NOT NULL REFERENCES leaks ON DELETE CASCADE,
  mark TEXT NOT NULL,
  girth_mm REAL NOT NULL,
  gap_mm REAL NOT NULL,
  bead_mm REAL,
  beads INTEGER NOT NULL,
  pitch_mm REAL NOT NULL,
  PRIMARY KEY (leak, mark)
) STRICT, WITHOUT ROWID;
)"};

/// The version of a file of ours.
Result<std::int64_t> version_of(const Database& database) {
  const auto application = database.number("PRAGMA application_id");
  if (!application) return application;
  const auto version = database.number("PRAGMA user_version");
  if (!version) return version;
  const auto tables = database.number("SELECT count(*) FROM sqlite_schema");
  if (!tables) return tables;
  const bool empty = *application == 0 && *version == 0 && *tables == 0;
  if (*application != record_application && !empty)
    return unreadable("", "it is no record of boats: name another file");
  if (*version > record_version)
    return unreadable(
        "", fmt::format("a later sheerlap wrote it, in version {}; this one reads up "
                        "to {}: use that one",
                        *version, record_version));
  return version;
}

}  // namespace

Result<void> bring_up_to(const Database& database, std::int64_t version) {
  auto found = version_of(database);
  if (!found) return tl::unexpected(found.error());
  if (*found >= version) return {};
  auto transaction = Transaction::begin(database);
  if (!transaction) return tl::unexpected(transaction.error());
  found = version_of(database);  // another program may have been first
  if (!found) return tl::unexpected(found.error());
  if (*found >= version) return {};
  std::string sql = fmt::format("PRAGMA application_id = {};", record_application);
  for (std::int64_t from = *found; from < version; ++from)
    sql += steps[static_cast<std::size_t>(from)];
  sql += fmt::format("PRAGMA user_version = {};", version);
  if (auto done = database.run(sql); !done) return done;
  return transaction->commit();
}

Result<void> bring_up_to_date(const Database& database) {
  return bring_up_to(database, record_version);
}

}  // namespace sheerlap
