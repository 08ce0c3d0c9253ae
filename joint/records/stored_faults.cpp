#include "joint/records/stored_faults.h"

#include <fmt/format.h>

#include <array>

namespace sheerlap {
namespace {

/// A fault and the rows that have it: those of which the condition is not known to
/// hold. An infinite number is beyond every bound; a number that is none is kept as
/// NULL.
struct StoredFault {
  const char* words;
  const char* hulls;  ///< selects the hull of each row at fault
};

constexpr std::array faults{
    StoredFault{"a boat with a number that cannot be true",
                "SELECT hull FROM boats WHERE NOT (hull > 0 "
                "AND abs(gap_min_mm) < 1e6 AND abs(gap_max_mm) < 1e6 "
                "AND abs(coalesce(mean_gap_mm, 0)) < 1e6 "
                "AND coalesce(litres, 0) BETWEEN 0 AND 1e6 "
                "AND coalesce(holes, 0) BETWEEN 0 AND 999999999)"},
    StoredFault{"a reading at a place that the record does not know",
                "SELECT hull FROM readings WHERE place NOT IN "
                "(SELECT place FROM places WHERE "
                "side IN ('starboard', 'port', 'transom') "
                "AND kind IN ('girth', 'mark', 'station'))"},
    StoredFault{"a reading whose numbers cannot be true",
                "SELECT hull FROM readings WHERE NOT (abs(girth_mm) < 1e6 "
                "AND coalesce(gap_top_mm, gap_low_mm) IS NOT NULL "
                "AND abs(coalesce(gap_top_mm, 0)) < 1e6 "
                "AND abs(coalesce(gap_low_mm, 0)) < 1e6 "
                "AND state IN ('dry', 'held', 'after'))"},
    StoredFault{"readings of a boat that is not there",
                "SELECT hull FROM readings WHERE hull NOT IN (SELECT hull FROM boats)"},
    StoredFault{"a leak that cannot be true",
                "SELECT hull FROM leaks WHERE NOT (abs(girth_mm) < 1e6 "
                "AND side IN ('starboard', 'port', 'transom') "
                "AND hull IN (SELECT hull FROM boats))"},
    StoredFault{"a leak's mark whose numbers cannot be true",
                "SELECT hull FROM leak_marks JOIN leaks USING (leak) WHERE NOT "
                "(abs(leak_marks.girth_mm) < 1e6 AND abs(gap_mm) < 1e6 "
                "AND abs(coalesce(bead_mm, 0)) < 1e6 AND abs(pitch_mm) < 1e6 "
                "AND beads BETWEEN 0 AND 1000000)"}};

}  // namespace

Result<void> check_stored(const Database& database) {
  for (const StoredFault& fault : faults) {
    auto statement = database.prepare(fmt::format("{} LIMIT 1", fault.hulls));
    if (!statement) return tl::unexpected(statement.error());
    const auto row = statement->step();
    if (!row) return tl::unexpected(row.error());
    if (*row)
      return unreadable(
          "", fmt::format("it has {} (hull {}): the file is damaged, take the last "
                          "good copy of it",
                          fault.words, statement->integer(0)));
  }
  return {};
}

}  // namespace sheerlap
