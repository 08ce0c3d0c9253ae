#include "joint/boat_places.h"

#include <fmt/format.h>

#include <algorithm>
#include <string>

#include "joint/boat_workings.h"
#include "joint/gap_profile.h"
#include "joint/out_stretches.h"
#include "joint/sheer_places.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// Two places this close are one.
constexpr double same_place_mm = 0.01;

EdgeGap edge_gap(double gap_mm, const GapLimits& limits) {
  PlainWorking work;
  const auto [grind, build_up] = edge_work(work, Length::mm(gap_mm), limits);
  const auto kept = [](double by) { return Length::mm(by > keeps_limit_mm ? by : 0); };
  return {Length::mm(gap_mm), kept(grind), kept(build_up)};
}

PlaceGap place_gap(const Boat& boat,
                   const PerimeterSide& side,
                   const GapProfile& profile,
                   Length girth) {
  const Place place = place_on_sheer(side, girth);
  const double lap = side.sheer.line().face().lap_mm(place);
  PlaceGap found;
  found.side = side.name;
  found.girth = girth;
  found.top = edge_gap(profile.gap_mm(place, 0), boat.limits);
  found.low = edge_gap(profile.gap_mm(place, lap), boat.limits);
  found.known = known_at(boat, side.name, girth);
  return found;
}

/// The name of a place on a side that is named anyway.
std::string short_words(const GapReading& reading) {
  if (reading.kind == PlaceKind::Mark) return reading.name;
  if (reading.kind == PlaceKind::Girth)
    return fmt::format("girth {}", worded(reading.girth));
  return fmt::format("{} {}", kind_word(reading.kind), reading.name);
}

FastenerAt fastener_at(const DrillStation& station, const BoatSurroundings& about) {
  const auto drawn =
      std::find_if(about.drawn.stations.begin(), about.drawn.stations.end(),
                   [&](const DrillStation& one) { return one.mark == station.mark; });
  FastenerAt found;
  if (drawn != about.drawn.stations.end()) found.drawn = drawn->length;
  found.length = station.length;
  found.needed = length_needed(about.schedule.fastener, station.stack);
  return found;
}

}  // namespace

Known known_at(const Boat& boat, SideName side, Length girth) {
  if (std::find(boat.unread.begin(), boat.unread.end(), side) != boat.unread.end())
    return Known::Unread;
  const bool held =
      std::any_of(boat.held.begin(), boat.held.end(), [&](const HeldStretch& stretch) {
        const bool inside = stretch.from <= girth && girth <= stretch.to;
        return stretch.side == side && inside && girth != stretch.reading;
      });
  return held ? Known::Held : Known::Read;
}

std::vector<PlaceGap> boat_places(const Boat& boat, const BoatSurroundings& about) {
  std::vector<PlaceGap> places;
  for (const PerimeterSide& side : about.perimeter.sides) {
    const GapProfile profile(about.perimeter, side);
    const auto first = static_cast<std::ptrdiff_t>(places.size());
    for (const DrillStation& station : about.schedule.stations) {
      if (station.side != side.name) continue;
      places.push_back(place_gap(boat, side, profile, station.girth));
      places.back().place = station.mark;
      places.back().fastener = fastener_at(station, about);
    }
    for (const GapReading& reading : boat.readings) {
      if (reading.side != side.name || reading.state != boat.state) continue;
      const bool there =
          std::any_of(places.begin() + first, places.end(), [&](const PlaceGap& place) {
            return std::abs((place.girth - reading.girth).in_mm()) < same_place_mm;
          });
      if (there) continue;
      places.push_back(place_gap(boat, side, profile, reading.girth));
      places.back().place = short_words(reading);
    }
    std::stable_sort(places.begin() + first, places.end(),
                     [](const auto& a, const auto& b) { return a.girth < b.girth; });
  }
  return places;
}

}  // namespace sheerlap
