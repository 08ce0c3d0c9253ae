#include "joint/boat_acceptance.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "joint/mark_ranges.h"
#include "joint/out_stretches.h"
#include "joint/sheer_places.h"

namespace sheerlap {
namespace {

/// A difference this little over the step keeps it.
constexpr double keeps_mm = 1e-6;

using Openings = std::vector<OpeningSpan>;

NonConformance gap_out(const OutStretch& stretch,
                       OutKind kind,
                       SideName side,
                       const Boat& boat) {
  NonConformance out;
  out.kind = kind;
  out.side = side;
  out.from = stretch.from;
  out.to = stretch.to;
  out.at = stretch.at;
  out.depth = stretch.depth;
  out.value = stretch.worst;
  out.limit = kind == OutKind::Tight ? boat.limits.gap_min : boat.limits.gap_max;
  out.known = known_at(boat, side, stretch.at);
  return out;
}

/// The readings of the boat's state on a side, by girth.
std::vector<GapReading> readings_on(const Boat& boat, SideName side) {
  std::vector<GapReading> readings;
  for (const GapReading& reading : boat.readings)
    if (reading.side == side && reading.state == boat.state)
      readings.push_back(reading);
  std::stable_sort(readings.begin(), readings.end(),
                   [](const auto& a, const auto& b) { return a.girth < b.girth; });
  return readings;
}

/// How much two readings of an edge differ; nothing if one of them was not read.
std::optional<Length> difference(const std::optional<Length>& one,
                                 const std::optional<Length>& other) {
  if (!one || !other) return std::nullopt;
  return Length::mm(std::abs((*one - *other).in_mm()));
}

bool opening_between(const Openings& openings, Length from, Length to) {
  return std::any_of(openings.begin(), openings.end(), [&](const OpeningSpan& opening) {
    return from <= opening.from && opening.to <= to;
  });
}

void add_steps(std::vector<NonConformance>& all,
               const Boat& boat,
               const PerimeterSide& side) {
  if (!boat.limits.step) return;
  const auto readings = readings_on(boat, side.name);
  for (std::size_t i = 1; i < readings.size(); ++i) {
    const GapReading& from = readings[i - 1];
    const GapReading& to = readings[i];
    if (opening_between(side.openings, from.girth, to.girth)) continue;
    const auto top = difference(from.top, to.top);
    const auto low = difference(from.low, to.low);
    const Length most = std::max(top.value_or(Length()), low.value_or(Length()));
    if (!((most - *boat.limits.step).in_mm() > keeps_mm)) continue;
    NonConformance out;
    out.kind = OutKind::Step;
    out.side = side.name;
    out.from = from.girth;
    out.to = out.at = to.girth;
    if (!top || most > *top)
      out.depth =
          Length::mm(side.sheer.line().face().lap_mm(place_on_sheer(side, to.girth)));
    out.value = most;
    out.limit = *boat.limits.step;
    all.push_back(out);
  }
}

/// The longest there is in stock.
Length longest(const FastenerSpec& spec) {
  if (!spec.grips.empty()) return spec.grips.back().length;
  return spec.lengths.empty() ? Length() : spec.lengths.back();
}

void add_unserved(std::vector<NonConformance>& all,
                  const Boat& boat,
                  SideName side,
                  const FastenerSpec& spec) {
  bool goes_on = false;
  for (const PlaceGap& place : boat.places) {
    if (place.side != side || !place.fastener) continue;
    if (place.fastener->length) {
      goes_on = false;
      continue;
    }
    if (!goes_on) {
      NonConformance out;
      out.kind = OutKind::NoFastener;
      out.side = side;
      out.from = place.girth;
      out.limit = longest(spec);
      all.push_back(out);
    }
    NonConformance& out = all.back();
    if (!goes_on || place.fastener->needed > out.value) {
      out.value = place.fastener->needed;
      out.at = place.girth;
      out.known = place.known;
    }
    out.to = place.girth;
    goes_on = true;
  }
}

/// Whether a hole of a stretch takes another fastener than drawn, or has none.
bool changes_fastener(const Boat& boat, const NonConformance& out) {
  return std::any_of(boat.places.begin(), boat.places.end(), [&](const PlaceGap& at) {
    return at.side == out.side && at.fastener && out.from <= at.girth &&
           at.girth <= out.to && at.fastener->length != at.fastener->drawn;
  });
}

/// What is open, that which can be undone first. A boat that is glued is not seated,
/// ground or shimmed any more.
std::vector<Disposition> dispositions(const Boat& boat, const NonConformance& out) {
  const bool glued = boat.state == ReadingState::After;
  std::vector<Disposition> open;
  if (!glued) open.push_back(Disposition::SeatAgain);
  if (out.known != Known::Read || out.kind == OutKind::Step)
    open.push_back(Disposition::ReadAgain);
  if (!glued) {
    if (out.kind == OutKind::NoFastener ||
        (out.kind == OutKind::Wide && changes_fastener(boat, out)))
      open.push_back(Disposition::LongerFastener);
    if (out.kind != OutKind::Tight) open.push_back(Disposition::BuildUp);
    if (out.kind == OutKind::Tight || out.kind == OutKind::Step)
      open.push_back(Disposition::Grind);
  }
  open.push_back(Disposition::Ask);
  return open;
}

std::string marks_in(const NonConformance& out, const Schedule& schedule) {
  return mark_ranges(schedule.stations, [&](const DrillStation& station) {
    return station.side == out.side && out.from <= station.girth &&
           station.girth <= out.to;
  });
}

}  // namespace

Result<GapLimits> gap_limits(const Joint& joint) {
  const ReadingLimits& own = joint.reading_limits;
  if (!joint.adhesive && !(own.gap_min && own.gap_max))
    return invalid_input("adhesive",
                         "[adhesive] is missing: the gaps of a boat are held against "
                         "its gap_min and gap_max, or those of [readings]");
  GapLimits limits;
  limits.gap_min = own.gap_min ? *own.gap_min : joint.adhesive->gap_min;
  limits.gap_max = own.gap_max ? *own.gap_max : joint.adhesive->gap_max;
  limits.min_address = own.gap_min ? "readings.gap_min" : "adhesive.gap_min";
  limits.max_address = own.gap_max ? "readings.gap_max" : "adhesive.gap_max";
  limits.step = own.step;
  return limits;
}

std::vector<NonConformance> non_conformances(const Boat& boat,
                                             const BoatSurroundings& about) {
  std::vector<NonConformance> all;
  for (const PerimeterSide& side : about.perimeter.sides) {
    std::vector<NonConformance> of_side;
    for (const OutStretch& stretch :
         stretches_below(about.perimeter, side, boat.limits.gap_min))
      of_side.push_back(gap_out(stretch, OutKind::Tight, side.name, boat));
    for (const OutStretch& stretch :
         stretches_above(about.perimeter, side, boat.limits.gap_max))
      of_side.push_back(gap_out(stretch, OutKind::Wide, side.name, boat));
    add_steps(of_side, boat, side);
    add_unserved(of_side, boat, side.name, about.schedule.fastener);
    std::stable_sort(of_side.begin(), of_side.end(),
                     [](const auto& a, const auto& b) { return a.from < b.from; });
    for (NonConformance& out : of_side) {
      out.number = all.size() + 1;
      out.marks = marks_in(out, about.schedule);
      out.open = dispositions(boat, out);
      all.push_back(std::move(out));
    }
  }
  return all;
}

}  // namespace sheerlap
