#include "joint/readings_gap.h"

#include <algorithm>
#include <cassert>

#include "joint/sheer_places.h"

namespace sheerlap {
namespace {

constexpr double section_step_mm = 10;
/// A gauge is wider than this: readings nearer together are of one place (common
/// practice, no source).
constexpr Length one_place = Length::mm(5);

struct EdgeCorrection {
  Length top, low;
};

/// The correction at a girth: straight between readings, beyond them that of the
/// nearest.
EdgeCorrection correction_at(const std::vector<GapCorrection>& corrections,
                             Length girth) {
  if (corrections.empty()) return {};
  const auto after = std::upper_bound(
      corrections.begin(), corrections.end(), girth,
      [](Length at, const GapCorrection& correction) { return at < correction.girth; });
  if (after == corrections.begin()) return {after->top, after->low};
  const GapCorrection& from = *(after - 1);
  if (after == corrections.end()) return {from.top, from.low};
  const double share = (girth - from.girth) / (after->girth - from.girth);
  return {from.top + share * (after->top - from.top),
          from.low + share * (after->low - from.low)};
}

/// Of two readings of one place, by mark and by girth say, the mean.
void merge_same_places(std::vector<GapCorrection>& corrections) {
  std::vector<GapCorrection> merged;
  std::size_t alike = 0;
  for (const GapCorrection& next : corrections) {
    const bool same = !merged.empty() && next.girth - merged.back().girth < one_place;
    alike = same ? alike + 1 : 1;
    if (!same) {
      merged.push_back(next);
      continue;
    }
    GapCorrection& kept = merged.back();
    kept.readings.insert(kept.readings.end(), next.readings.begin(),
                         next.readings.end());
    const double share = 1 / static_cast<double>(alike);
    kept.top = kept.top + share * (next.top - kept.top);
    kept.low = kept.low + share * (next.low - kept.low);
    kept.one_edge = kept.one_edge && next.one_edge;
  }
  corrections = std::move(merged);
}

}  // namespace

ReadingsGap::ReadingsGap(const Perimeter& perimeter,
                         const std::vector<GapReading>& readings,
                         ReadingState state)
    : perimeter_(perimeter) {
  for (const PerimeterSide& side : perimeter.sides)
    sides_.push_back({&side, GapProfile(perimeter, side), {}});
  for (Side& side : sides_) {
    for (std::size_t i = 0; i < readings.size(); ++i) {
      const GapReading& reading = readings[i];
      if (reading.side != side.side->name || reading.state != state) continue;
      assert(reading.top || reading.low);
      const auto off = [&](const std::optional<Length>& gap, bool low) {
        return *gap - nominal(side, reading.girth, low);
      };
      const bool both = reading.top && reading.low;
      const Length top = reading.top ? off(reading.top, false) : off(reading.low, true);
      const Length low = reading.low ? off(reading.low, true) : top;
      side.corrections.push_back(
          {reading.girth, top, low, !both, place_words(reading), {i}});
    }
    std::stable_sort(side.corrections.begin(), side.corrections.end(),
                     [](const auto& a, const auto& b) { return a.girth < b.girth; });
    merge_same_places(side.corrections);
  }
  join(true);
  join(false);
}

void ReadingsGap::join(bool at_start) {
  std::vector<Side*> meeting;
  for (Side& side : sides_) {
    const SideEnd end = at_start ? side.side->start : side.side->end;
    if (end == SideEnd::Smooth && !side.corrections.empty()) meeting.push_back(&side);
  }
  if (meeting.size() != 2) return;
  const auto nearest = [&](const Side& side) -> const GapCorrection& {
    return at_start ? side.corrections.front() : side.corrections.back();
  };
  const auto away = [&](const Side& side) {
    const Length girth = nearest(side).girth;
    return at_start ? girth : side.side->drill_line_length - girth;
  };
  const Length one = away(*meeting[0]);
  const Length other = away(*meeting[1]);
  if (one == Length() && other == Length()) return;
  const double share = one / (one + other);
  const GapCorrection a = nearest(*meeting[0]);
  const GapCorrection b = nearest(*meeting[1]);
  GapCorrection middle{Length(),
                       a.top + share * (b.top - a.top),
                       a.low + share * (b.low - a.low),
                       a.one_edge || b.one_edge,
                       "on the centreline, between " + a.place + " and " + b.place,
                       a.readings,
                       true};
  middle.readings.insert(middle.readings.end(), b.readings.begin(), b.readings.end());
  for (Side* side : meeting) {
    if (away(*side) == Length()) continue;
    middle.girth = at_start ? Length() : side->side->drill_line_length;
    auto& corrections = side->corrections;
    corrections.insert(at_start ? corrections.begin() : corrections.end(), middle);
  }
}

const ReadingsGap::Side& ReadingsGap::named(SideName name) const {
  const auto found = std::find_if(sides_.begin(), sides_.end(), [&](const Side& side) {
    return side.side->name == name;
  });
  assert(found != sides_.end());
  return *found;
}

Length ReadingsGap::nominal(const Side& side, Length girth, bool low) {
  const Place place = place_on_sheer(*side.side, girth);
  const double lap = side.side->sheer.line().face().lap_mm(place);
  return Length::mm(side.profile.gap_mm(place, low ? lap : 0));
}

Length ReadingsGap::gap(SideName name, Length girth, Length depth) const {
  const Side& side = named(name);
  const Place place = place_on_sheer(*side.side, girth);
  const auto [top, low] = correction_at(side.corrections, girth);
  const double share = depth.in_mm() / perimeter_.hull->lap_mm(place);
  return Length::mm(side.profile.gap_mm(place, depth.in_mm())) + top +
         share * (low - top);
}

Length ReadingsGap::mean() const {
  double area = 0;
  double length = 0;
  for (const Side& side : sides_) {
    const auto sections = side.profile.sections(section_step_mm);
    const auto value = [&](const GapSection& section) {
      const Length girth = drill_girth(*side.side, section.place);
      const auto [top, low] = correction_at(side.corrections, girth);
      return (section.top_mm + section.low_mm + top.in_mm() + low.in_mm()) / 2;
    };
    for (std::size_t i = 0; i + 1 < sections.size(); ++i) {
      if (sections[i].strand != sections[i + 1].strand) continue;
      const double step = sections[i + 1].girth_mm - sections[i].girth_mm;
      area += step * (value(sections[i]) + value(sections[i + 1])) / 2;
      length += step;
    }
  }
  assert(length > 0);
  return Length::mm(area / length);
}

const std::vector<GapCorrection>& ReadingsGap::corrections(SideName side) const {
  return named(side).corrections;
}

std::vector<SideCorrections> ReadingsGap::all_corrections() const {
  std::vector<SideCorrections> all;
  for (const Side& side : sides_) all.push_back({side.side->name, side.corrections});
  return all;
}

std::vector<HeldStretch> ReadingsGap::held() const {
  std::vector<HeldStretch> stretches;
  for (const Side& side : sides_) {
    if (side.corrections.empty()) continue;
    const Length first = side.corrections.front().girth;
    const Length last = side.corrections.back().girth;
    const Length end = side.side->drill_line_length;
    if (first > Length())
      stretches.push_back({side.side->name, Length(), first, first});
    if (last < end) stretches.push_back({side.side->name, last, end, last});
  }
  return stretches;
}

std::vector<SideName> ReadingsGap::unread() const {
  std::vector<SideName> names;
  for (const Side& side : sides_)
    if (side.corrections.empty()) names.push_back(side.side->name);
  return names;
}

}  // namespace sheerlap
