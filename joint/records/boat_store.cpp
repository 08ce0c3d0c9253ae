#include "joint/records/boat_store.h"

#include <fmt/format.h>

#include <array>
#include <cassert>
#include <string>
#include <utility>

#include "joint/records/record_schema.h"
#include "joint/records/stored_faults.h"
#include "joint/records/stored_words.h"

namespace sheerlap {
namespace {

std::optional<double> mm_of(const std::optional<Length>& length) {
  return length ? std::optional(length->in_mm()) : std::nullopt;
}

std::optional<Length> length_of(const std::optional<double>& mm) {
  return mm ? std::optional(Length::mm(*mm)) : std::nullopt;
}

/// The hull number of a boat of another joint, 0 if there is none.
Result<std::int64_t> stranger(const Database& database, const std::string& title) {
  auto statement =
      database.prepare("SELECT hull FROM boats WHERE title <> ? ORDER BY hull LIMIT 1");
  if (!statement) return tl::unexpected(statement.error());
  statement->bind(title);
  const auto row = statement->step();
  if (!row) return tl::unexpected(row.error());
  return *row ? statement->integer(0) : 0;
}

/// The number of a place, which is added if it is not there.
Result<std::int64_t> place_number(const Database& database, const GapReading& reading) {
  auto add = database.prepare(
      "INSERT INTO places (side, kind, name) VALUES (?, ?, ?) ON CONFLICT DO NOTHING");
  if (!add) return tl::unexpected(add.error());
  auto find = database.prepare(
      "SELECT place FROM places WHERE side = ? AND kind = ? AND name = ?");
  if (!find) return tl::unexpected(find.error());
  for (Statement* statement : {&*add, &*find}) {
    statement->bind(side_word(reading.side));
    statement->bind(kind_word(reading.kind));
    statement->bind(reading.name);
  }
  if (const auto added = add->run(); !added) return tl::unexpected(added.error());
  const auto row = find->step();
  if (!row) return tl::unexpected(row.error());
  assert(*row);
  return find->integer(0);
}

}  // namespace

BoatStore::BoatStore(Database database)
    : database_(std::make_unique<Database>(std::move(database))) {}

Result<BoatStore> BoatStore::open(const std::filesystem::path& path,
                                  Database::Missing missing) {
  auto database = Database::open(path, missing);
  if (!database) return tl::unexpected(database.error());
  if (const auto ready = bring_up_to_date(*database); !ready)
    return tl::unexpected(ready.error());
  if (const auto sound = check_stored(*database); !sound)
    return tl::unexpected(sound.error());
  return BoatStore(std::move(*database));
}

Result<BoatRecord> BoatStore::update(
    std::int64_t hull,
    const std::function<Result<BoatRecord>(std::optional<BoatRecord>)>& change) const {
  auto transaction = Transaction::begin(*database_);
  if (!transaction) return tl::unexpected(transaction.error());
  auto there = boat(hull);
  if (!there) return tl::unexpected(there.error());
  auto changed = change(std::move(*there));
  if (!changed) return changed;
  assert(changed->hull == hull);
  const auto other = stranger(*database_, changed->title);
  if (!other) return tl::unexpected(other.error());
  if (*other != 0)
    return invalid_input(
        "",
        fmt::format("hull {} there is of another joint than {}: a record of its own "
                    "for each joint",
                    *other, changed->title));
  if (const auto kept = put(*changed); !kept) return tl::unexpected(kept.error());
  if (const auto kept = transaction->commit(); !kept)
    return tl::unexpected(kept.error());
  return changed;
}

Result<void> BoatStore::put(const BoatRecord& boat) const {
  auto remove = database_->prepare("DELETE FROM boats WHERE hull = ?");
  if (!remove) return tl::unexpected(remove.error());
  remove->bind(boat.hull);
  if (auto removed = remove->run(); !removed) return removed;
  auto add = database_->prepare(
      "INSERT INTO boats (hull, title, gap_min_mm, gap_max_mm, mean_gap_mm, litres, "
      "holes) VALUES (?, ?, ?, ?, ?, ?, ?)");
  if (!add) return tl::unexpected(add.error());
  add->bind(boat.hull);
  add->bind(boat.title);
  add->bind(boat.gap_min.in_mm());
  add->bind(boat.gap_max.in_mm());
  add->bind(mm_of(boat.mean_gap));
  add->bind(boat.litres);
  add->bind(boat.holes);
  if (auto added = add->run(); !added) return added;
  if (auto added = put_readings(boat); !added) return added;
  return put_leaks(boat);
}

Result<void> BoatStore::put_readings(const BoatRecord& boat) const {
  auto add = database_->prepare(
      "INSERT INTO readings (place, state, hull, gap_top_mm, gap_low_mm, girth_mm, "
      "note) VALUES (?, ?, ?, ?, ?, ?, ?)");
  if (!add) return tl::unexpected(add.error());
  for (const GapReading& reading : boat.readings) {
    const auto place = place_number(*database_, reading);
    if (!place) return tl::unexpected(place.error());
    add->bind(*place);
    add->bind(state_word(reading.state));
    add->bind(boat.hull);
    add->bind(mm_of(reading.top));
    add->bind(mm_of(reading.low));
    add->bind(reading.girth.in_mm());
    add->bind(reading.note);
    if (auto added = add->run(); !added) return added;
  }
  return {};
}

Result<void> BoatStore::put_leaks(const BoatRecord& boat) const {
  auto add_leak =
      database_->prepare("INSERT INTO leaks (hull, side, girth_mm) VALUES (?, ?, ?)");
  if (!add_leak) return tl::unexpected(add_leak.error());
  auto add_mark = database_->prepare(
      "INSERT INTO leak_marks (leak, mark, girth_mm, gap_mm, bead_mm, beads, pitch_mm) "
      "VALUES (?, ?, ?, ?, ?, ?, ?)");
  if (!add_mark) return tl::unexpected(add_mark.error());
  for (const Leak& leak : boat.leaks) {
    add_leak->bind(boat.hull);
    add_leak->bind(side_word(leak.side));
    add_leak->bind(leak.girth.in_mm());
    if (auto added = add_leak->run(); !added) return added;
    const auto number = database_->number("SELECT last_insert_rowid()");
    if (!number) return tl::unexpected(number.error());
    for (const LeakMark& mark : leak.marks) {
      add_mark->bind(*number);
      add_mark->bind(mark.mark);
      add_mark->bind(mark.girth.in_mm());
      add_mark->bind(mark.gap.in_mm());
      add_mark->bind(mm_of(mark.bead));
      add_mark->bind(static_cast<std::int64_t>(mark.beads));
      add_mark->bind(mark.pitch.in_mm());
      if (auto added = add_mark->run(); !added) return added;
    }
  }
  return {};
}

Result<std::optional<BoatRecord>> BoatStore::boat(std::int64_t hull) const {
  auto statement = database_->prepare(
      "SELECT title, gap_min_mm, gap_max_mm, mean_gap_mm, litres, holes FROM boats "
      "WHERE hull = ?");
  if (!statement) return tl::unexpected(statement.error());
  statement->bind(hull);
  const auto row = statement->step();
  if (!row) return tl::unexpected(row.error());
  if (!*row) return std::optional<BoatRecord>();
  BoatRecord boat;
  boat.hull = hull;
  boat.title = statement->text(0);
  boat.gap_min = Length::mm(statement->real(1));
  boat.gap_max = Length::mm(statement->real(2));
  boat.mean_gap = length_of(statement->maybe_real(3));
  boat.litres = statement->maybe_real(4);
  boat.holes = statement->maybe_integer(5);
  if (const auto added = add_readings(boat); !added)
    return tl::unexpected(added.error());
  if (const auto added = add_leaks(boat); !added) return tl::unexpected(added.error());
  return boat;
}

Result<void> BoatStore::add_readings(BoatRecord& boat) const {
  auto statement = database_->prepare(
      "SELECT side, kind, name, girth_mm, gap_top_mm, gap_low_mm, state, note "
      "FROM readings JOIN places USING (place) WHERE hull = ? "
      "ORDER BY side = 'transom', side = 'port', girth_mm, kind, state = 'after', "
      "state = 'held'");
  if (!statement) return tl::unexpected(statement.error());
  statement->bind(boat.hull);
  auto row = statement->step();
  for (; row && *row; row = statement->step())
    boat.readings.push_back(
        {side_of_word(statement->text(0)), kind_of_word(statement->text(1)),
         std::string(statement->text(2)), Length::mm(statement->real(3)),
         length_of(statement->maybe_real(4)), length_of(statement->maybe_real(5)),
         state_of_word(statement->text(6)), std::string(statement->text(7))});
  if (!row) return tl::unexpected(row.error());
  return {};
}

Result<void> BoatStore::add_leaks(BoatRecord& boat) const {
  auto statement = database_->prepare(
      "SELECT leak, side, leaks.girth_mm, mark, leak_marks.girth_mm, gap_mm, bead_mm, "
      "beads, pitch_mm FROM leaks LEFT JOIN leak_marks USING (leak) WHERE hull = ? "
      "ORDER BY side = 'transom', side = 'port', leaks.girth_mm, leak_marks.girth_mm");
  if (!statement) return tl::unexpected(statement.error());
  statement->bind(boat.hull);
  std::optional<std::int64_t> last;
  auto row = statement->step();
  for (; row && *row; row = statement->step()) {
    if (last != statement->integer(0))
      boat.leaks.push_back(
          {side_of_word(statement->text(1)), Length::mm(statement->real(2)), {}});
    last = statement->integer(0);
    if (statement->is_null(3)) continue;
    boat.leaks.back().marks.push_back(
        {std::string(statement->text(3)), Length::mm(statement->real(4)),
         Length::mm(statement->real(5)), length_of(statement->maybe_real(6)),
         static_cast<std::size_t>(statement->integer(7)),
         Length::mm(statement->real(8))});
  }
  if (!row) return tl::unexpected(row.error());
  return {};
}

}  // namespace sheerlap
