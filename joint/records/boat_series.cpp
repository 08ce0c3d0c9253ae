// How boats are read from their store to be listed and charted.
#include <algorithm>
#include <map>
#include <string>
#include <tuple>
#include <utility>

#include "joint/records/boat_store.h"
#include "joint/records/stored_words.h"

namespace sheerlap {
namespace {

/// A place as the table of places has it.
struct StoredPlace {
  SideName side = SideName::Starboard;
  PlaceKind kind = PlaceKind::Girth;
  std::string name;
};

std::optional<Length> length_of(const std::optional<double>& mm) {
  return mm ? std::optional(Length::mm(*mm)) : std::nullopt;
}

Result<std::map<std::int64_t, StoredPlace>> stored_places(const Database& database) {
  auto statement = database.prepare("SELECT place, side, kind, name FROM places");
  if (!statement) return tl::unexpected(statement.error());
  std::map<std::int64_t, StoredPlace> places;
  auto row = statement->step();
  for (; row && *row; row = statement->step())
    places[statement->integer(0)] = {side_of_word(statement->text(1)),
                                     kind_of_word(statement->text(2)),
                                     std::string(statement->text(3))};
  if (!row) return tl::unexpected(row.error());
  return places;
}

/// Title, gap window and boats.
Result<RecordSeries> stored_figures(const Database& database) {
  auto statement = database.prepare(
      "SELECT hull, mean_gap_mm, litres, title, gap_min_mm, gap_max_mm FROM boats "
      "ORDER BY hull");
  if (!statement) return tl::unexpected(statement.error());
  RecordSeries record;
  auto row = statement->step();
  for (; row && *row; row = statement->step()) {
    record.boats.push_back({statement->integer(0), length_of(statement->maybe_real(1)),
                            statement->maybe_real(2)});
    if (record.title.empty()) record.title = statement->text(3);
    record.gap_min = Length::mm(statement->real(4));
    record.gap_max = Length::mm(statement->real(5));
  }
  if (!row) return tl::unexpected(row.error());
  return record;
}

/// Takes in the readings of one place and state, edge by edge.
class SeriesPair {
 public:
  explicit SeriesPair(const StoredPlace& place, ReadingState state) {
    for (GapSeries* edge : {&top_, &low_}) {
      edge->side = place.side;
      edge->kind = place.kind;
      edge->name = place.name;
      edge->state = state;
    }
    low_.low = true;
  }

  void add(std::int64_t hull, const Statement& row, int top, int low, int girth) {
    const auto add_gap = [&](GapSeries& edge, int column) {
      if (row.is_null(column)) return;
      edge.hulls.push_back(hull);
      edge.gaps_mm.push_back(row.real(column));
      edge.girth = Length::mm(row.real(girth));
    };
    add_gap(top_, top);
    add_gap(low_, low);
  }

  void give(std::vector<GapSeries>& series) {
    for (GapSeries* edge : {&top_, &low_})
      if (!edge->gaps_mm.empty()) series.push_back(std::move(*edge));
  }

 private:
  GapSeries top_, low_;
};

Result<std::vector<GapSeries>> stored_series(const Database& database) {
  const auto places = stored_places(database);
  if (!places) return tl::unexpected(places.error());
  // in the order of the table itself, so that nothing is sorted
  auto statement = database.prepare(
      "SELECT place, state, hull, gap_top_mm, gap_low_mm, girth_mm FROM readings "
      "ORDER BY place, state, hull");
  if (!statement) return tl::unexpected(statement.error());
  std::vector<GapSeries> series;
  std::optional<SeriesPair> pair;
  std::pair<std::int64_t, std::string> last;
  auto row = statement->step();
  for (; row && *row; row = statement->step()) {
    const std::int64_t place = statement->integer(0);
    if (!pair || place != last.first || statement->text(1) != last.second) {
      if (pair) pair->give(series);
      const auto known = places->find(place);
      if (known == places->end())
        return unreadable("",
                          "it has a reading at a place that the record does not "
                          "know: the file is damaged, take the last good copy of "
                          "it");
      last = {place, std::string(statement->text(1))};
      pair.emplace(known->second, state_of_word(last.second));
    }
    pair->add(statement->integer(2), *statement, 3, 4, 5);
  }
  if (!row) return tl::unexpected(row.error());
  if (pair) pair->give(series);
  return series;
}

}  // namespace

Result<BoatList> BoatStore::boats() const {
  auto statement = database_->prepare(
      "WITH gaps AS (SELECT hull, count(*) AS readings, "
      "  total(gap_top_mm < gap_min_mm OR gap_top_mm > gap_max_mm) + "
      "  total(gap_low_mm < gap_min_mm OR gap_low_mm > gap_max_mm) AS outside "
      "  FROM readings JOIN boats USING (hull) GROUP BY hull), "
      "wet AS (SELECT hull, count(*) AS leaks FROM leaks GROUP BY hull) "
      "SELECT hull, title, mean_gap_mm, litres, holes, readings, outside, leaks "
      "FROM boats LEFT JOIN gaps USING (hull) LEFT JOIN wet USING (hull) "
      "ORDER BY hull");
  if (!statement) return tl::unexpected(statement.error());
  BoatList list;
  auto row = statement->step();
  for (; row && *row; row = statement->step()) {
    list.title = statement->text(1);
    list.boats.push_back({statement->integer(0), length_of(statement->maybe_real(2)),
                          statement->maybe_real(3), statement->maybe_integer(4),
                          static_cast<std::size_t>(statement->integer(5)),
                          static_cast<std::size_t>(statement->integer(6)),
                          static_cast<std::size_t>(statement->integer(7))});
  }
  if (!row) return tl::unexpected(row.error());
  return list;
}

Result<RecordSeries> BoatStore::series() const {
  // one transaction, so that no boat comes between the two looks; it only reads
  if (const auto begun = database_->run("BEGIN"); !begun)
    return tl::unexpected(begun.error());
  auto record = stored_figures(*database_);
  auto series = stored_series(*database_);
  if (const auto ended = database_->run("COMMIT"); !ended)
    return tl::unexpected(ended.error());
  if (!record) return record;
  if (!series) return tl::unexpected(series.error());
  std::stable_sort(series->begin(), series->end(), [](const auto& a, const auto& b) {
    return std::tuple(a.side, a.girth, a.name, a.state, a.low) <
           std::tuple(b.side, b.girth, b.name, b.state, b.low);
  });
  record->series = std::move(*series);
  return record;
}

}  // namespace sheerlap
