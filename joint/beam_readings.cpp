#include "joint/beam_readings.h"

#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>

#include "joint/nearest_word.h"
#include "joint/quoted_text.h"

namespace sheerlap {
namespace {

/// The x of a reading that is given by a station's label.
Result<Length> station_x(const Sheer& sheer,
                         const std::string& label,
                         const std::string& where) {
  std::vector<std::string_view> labels;
  for (const SheerRow& row : sheer.rows) {
    if (row.station == label) return Length::mm(row.point.x());
    if (!row.station.empty()) labels.push_back(row.station);
  }
  if (labels.empty())
    return invalid_input(where, "the sheer table has no station labels: give x");
  return invalid_input(where,
                       fmt::format("no row of the sheer table has the station "
                                   "{}: {}",
                                   quoted_text(label), word_hint(label, labels)));
}

/// A reading's place, and its address.
struct Placed {
  Length x;
  std::string where;
};

Result<Placed> placed(const BeamReading& reading,
                      const Sheer& sheer,
                      std::size_t index) {
  const std::string address = fmt::format("beam_reading[{}]", index);
  if (reading.x) return Placed{*reading.x, address + ".x"};
  auto x = station_x(sheer, reading.station, address + ".station");
  if (!x) return tl::unexpected(std::move(x.error()));
  return Placed{*x, address + ".station"};
}

Length half_opened(Length beam, Length from) { return (beam - from) / 2; }

}  // namespace

Result<BeamShapes> beam_shapes(const std::vector<BeamReading>& readings,
                               const Sheer& sheer,
                               const Perimeter& perimeter) {
  BeamShapes shapes;
  Errors errors;
  std::vector<HullPush> free, held;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const BeamReading& reading = readings[i];
    const auto place = placed(reading, sheer, i);
    if (!place) {
      errors.insert(errors.end(), place.error().begin(), place.error().end());
      continue;
    }
    BeamMoved moved{place->x, half_opened(reading.free, reading.mould), std::nullopt};
    free.push_back({place->x, moved.free, place->where});
    if (reading.held) {
      moved.held = half_opened(*reading.held, reading.mould);
      held.push_back(
          {place->x, half_opened(*reading.held, reading.free), place->where});
    }
    shapes.readings.push_back(moved);
  }
  auto from_mould = HullMovement::through(perimeter, free);
  if (!from_mould)
    errors.insert(errors.end(), from_mould.error().begin(), from_mould.error().end());
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  shapes.free = std::move(*from_mould);
  if (held.empty()) return shapes;
  auto from_free = HullMovement::through(perimeter, held);
  if (!from_free) return tl::unexpected(std::move(from_free.error()));
  shapes.held = std::move(*from_free);
  return shapes;
}

}  // namespace sheerlap
