#include "joint/gap_readings.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <set>
#include <tuple>
#include <utility>

#include "joint/nearest_word.h"
#include "joint/quoted_text.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// The name of a place by girth: that in mm, to a hundredth.
std::string girth_name(Length girth) {
  return fmt::format("{}", std::round(girth.in_mm() * 100) / 100);
}

Result<Length> mark_girth(const std::vector<DrillStation>& stations,
                          const GivenReading& given,
                          const std::string& where) {
  std::vector<std::string_view> marks;
  for (const DrillStation& station : stations) {
    if (station.side != given.side) continue;
    if (station.mark == given.name) return station.girth;
    marks.push_back(station.mark);
  }
  if (marks.empty())
    return invalid_input(
        where, fmt::format("the schedule has no mark on {}: give the girth, or a "
                           "station of the sheer table",
                           side_word(given.side)));
  const bool many = marks.size() > 12;
  const std::string known = fmt::format("{} to {}", marks.front(), marks.back());
  return invalid_input(
      where,
      fmt::format("the schedule has no mark {} on {}: {}", quoted_text(given.name),
                  side_word(given.side), many ? known : word_hint(given.name, marks)));
}

/// The places of a side at which a row with the label of a reading stands.
std::vector<Length> label_girths(const Joint& joint,
                                 const Perimeter& perimeter,
                                 const PerimeterSide& side,
                                 const std::string& label) {
  std::vector<Length> girths;
  const SidePath& path = side.sheer.path();
  const std::size_t knots = perimeter.knots.size();
  for (std::size_t k = 0; k <= path.span_count; ++k) {
    const std::size_t steps =
        path.forward ? path.from_knot + k : path.from_knot + 2 * knots - k;
    const SheerKnot& knot = perimeter.knots[steps % knots];
    if (knot.added || joint.sheer.rows[knot.row].station != label) continue;
    girths.push_back(side.drill_line.girth_at_span(k));
  }
  return girths;
}

Result<Length> station_girth(const Joint& joint,
                             const Perimeter& perimeter,
                             const GivenReading& given,
                             const std::string& where) {
  const PerimeterSide* side = perimeter.side(given.side);
  const auto girths = label_girths(joint, perimeter, *side, given.name);
  if (girths.size() == 1) return girths.front();
  if (girths.empty())
    return invalid_input(
        where, fmt::format("no row of the sheer table on {} has the station {}: give "
                           "the girth, or a label that is there",
                           side_word(given.side), quoted_text(given.name)));
  return invalid_input(
      where,
      fmt::format("the station {} stands {} times on {}: give the girth",
                  quoted_text(given.name), girths.size(), side_word(given.side)));
}

Result<Length> girth_of(const Joint& joint,
                        const Perimeter& perimeter,
                        const std::vector<DrillStation>& stations,
                        const GivenReading& given,
                        const std::string& where) {
  if (given.kind == PlaceKind::Girth) return given.girth;
  if (given.kind == PlaceKind::Mark) return mark_girth(stations, given, where);
  if (perimeter.side(given.side) == nullptr) return Length();  // refused with its side
  return station_girth(joint, perimeter, given, where);
}

}  // namespace

std::string state_word(ReadingState state) {
  switch (state) {
    case ReadingState::Dry:
      return "dry";
    case ReadingState::Held:
      return "held";
    case ReadingState::After:
      return "after";
  }
  assert(false);
  return "";
}

std::string kind_word(PlaceKind kind) {
  switch (kind) {
    case PlaceKind::Girth:
      return "girth";
    case PlaceKind::Mark:
      return "mark";
    case PlaceKind::Station:
      return "station";
  }
  assert(false);
  return "";
}

std::string place_words(const GapReading& reading) {
  if (reading.kind == PlaceKind::Girth)
    return fmt::format("girth {} on {}", worded(reading.girth),
                       side_word(reading.side));
  return fmt::format("{} {} on {}", kind_word(reading.kind), reading.name,
                     side_word(reading.side));
}

Result<Length> girth_with_joint(const Perimeter& perimeter,
                                SideName side,
                                Length girth,
                                const std::string& where) {
  const PerimeterSide* line = perimeter.side(side);
  if (line == nullptr)
    return invalid_input(where,
                         fmt::format("this joint has no {} side: name one that it has",
                                     side_word(side)));
  if (!(girth >= Length()) || !(girth <= line->drill_line_length))
    return invalid_input(
        where,
        fmt::format("girth {} is not on {}: its drill line runs from 0 to {}",
                    worded(girth), side_word(side), worded(line->drill_line_length)));
  for (const OpeningSpan& opening : line->openings)
    if (opening.from < girth && girth < opening.to)
      return invalid_input(
          where, fmt::format("girth {} on {} is in the opening {}: there is no joint "
                             "from {} to {}",
                             worded(girth), side_word(side), opening.what,
                             worded(opening.from), worded(opening.to)));
  return girth;
}

Result<std::vector<GapReading>> placed_readings(
    const Joint& joint,
    const Perimeter& perimeter,
    const std::vector<DrillStation>& stations,
    const std::vector<GivenReading>& given) {
  std::vector<GapReading> placed;
  Errors errors;
  std::set<std::tuple<SideName, PlaceKind, std::string, ReadingState>> known;
  for (std::size_t i = 0; i < given.size(); ++i) {
    const GivenReading& reading = given[i];
    const std::string where = fmt::format("reading[{}]", i);
    auto girth = girth_of(joint, perimeter, stations, reading, where);
    if (girth) girth = girth_with_joint(perimeter, reading.side, *girth, where);
    if (!girth) {
      errors.insert(errors.end(), girth.error().begin(), girth.error().end());
      continue;
    }
    const std::string name =
        reading.kind == PlaceKind::Girth ? girth_name(*girth) : reading.name;
    placed.push_back({reading.side, reading.kind, name, *girth, reading.top,
                      reading.low, reading.state, reading.note});
    if (!known.emplace(reading.side, reading.kind, name, reading.state).second)
      errors.push_back(
          {ErrorKind::InvalidInput, where,
           fmt::format("{} is read twice {}: leave one out", place_words(placed.back()),
                       state_word(reading.state))});
  }
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  return placed;
}

ReadingState latest_state(const std::vector<GapReading>& readings) {
  assert(!readings.empty());
  return std::max_element(
             readings.begin(), readings.end(),
             [](const auto& a, const auto& b) { return a.state < b.state; })
      ->state;
}

}  // namespace sheerlap
