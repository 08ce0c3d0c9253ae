#include "joint/records/boat_merge.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <functional>
#include <utility>

namespace sheerlap {
namespace {

bool same_place(const GapReading& a, const GapReading& b) {
  return a.side == b.side && a.kind == b.kind && a.name == b.name && a.state == b.state;
}

bool same_leak(const Leak& a, const Leak& b) {
  return a.side == b.side && std::abs((a.girth - b.girth).in_mm()) < 0.01;
}

/// Adds to `kept` what it does not have.
template <class T>
void add_new(std::vector<T>& kept,
             const std::vector<T>& more,
             bool (*same)(const T&, const T&),
             const std::function<void(std::size_t)>& refuse) {
  const std::size_t before = kept.size();
  for (std::size_t i = 0; i < more.size(); ++i) {
    const auto end = kept.begin() + static_cast<std::ptrdiff_t>(before);
    if (std::any_of(kept.begin(), end,
                    [&](const T& one) { return same(one, more[i]); }))
      refuse(i);
    else
      kept.push_back(more[i]);
  }
}

/// Adds a figure of the boat.
template <class T>
void add_figure(std::optional<T>& kept,
                const std::optional<T>& more,
                std::int64_t hull,
                const std::string& name,
                Errors& errors) {
  if (kept && more)
    errors.push_back({ErrorKind::InvalidInput, name,
                      fmt::format("hull {} has {} {} already: leave --{} out", hull,
                                  *kept, name, name)});
  if (more) kept = more;
}

}  // namespace

Result<BoatRecord> with_more(std::optional<BoatRecord> there, const BoatRecord& more) {
  if (!there) return more;
  BoatRecord boat = std::move(*there);
  assert(boat.hull == more.hull);
  Errors errors;
  const auto refuse = [&](std::string where, std::string message) {
    errors.push_back({ErrorKind::InvalidInput, std::move(where), std::move(message)});
  };
  boat.title = more.title;
  boat.gap_min = more.gap_min;
  boat.gap_max = more.gap_max;
  add_figure(boat.litres, more.litres, more.hull, "litres", errors);
  add_figure(boat.holes, more.holes, more.hull, "holes", errors);
  add_new<GapReading>(boat.readings, more.readings, same_place, [&](std::size_t i) {
    refuse(
        fmt::format("reading[{}]", i),
        fmt::format("hull {} has {} {} already: leave the row out", more.hull,
                    place_words(more.readings[i]), state_word(more.readings[i].state)));
  });
  add_new<Leak>(boat.leaks, more.leaks, same_leak, [&](std::size_t i) {
    refuse(fmt::format("leak[{}]", i),
           fmt::format("hull {} has this leak already: leave it out", more.hull));
  });
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  return boat;
}

std::string window_word(const BoatRecord& boat, const std::optional<Length>& gap) {
  if (!gap) return "";
  if (*gap < boat.gap_min) return "tight";
  return *gap > boat.gap_max ? "wide" : "";
}

std::size_t gaps_outside(const BoatRecord& boat) {
  if (boat.readings.empty()) return 0;
  const ReadingState latest = latest_state(boat.readings);
  std::size_t outside = 0;
  for (const GapReading& reading : boat.readings) {
    if (reading.state != latest) continue;
    for (const auto& gap : {reading.top, reading.low})
      if (!window_word(boat, gap).empty()) ++outside;
  }
  return outside;
}

}  // namespace sheerlap
