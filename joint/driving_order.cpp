#include "joint/driving_order.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace sheerlap {
namespace {

/// A hole and how far along its side it stands.
struct Hole {
  std::size_t station = 0;
  Length along;
};
using Holes = std::vector<Hole>;

/// The holes of a side that are drilled, by girth, and where its stretches start.
struct SideHoles {
  Holes holes;
  std::vector<std::size_t> starts;   ///< the first hole of each stretch
  std::vector<std::size_t> corners;  ///< of those, the ones behind a corner
};

SideHoles side_holes(const PerimeterSide& side, const Schedule& schedule) {
  SideHoles result;
  const auto passes = [&](Length from, Length to, Length place) {
    return place >= from && place < to;
  };
  for (std::size_t i = 0; i < schedule.stations.size(); ++i) {
    const DrillStation& station = schedule.stations[i];
    if (station.side != side.name || !drillable(station)) continue;
    const std::size_t number = result.holes.size();
    const Length before = number == 0 ? Length() : result.holes.back().along;
    const bool corner = std::any_of(side.corners.begin(), side.corners.end(),
                                    [&](const InnerCorner& one) {
                                      return passes(before, station.girth, one.girth);
                                    });
    const bool opening = std::any_of(side.openings.begin(), side.openings.end(),
                                     [&](const OpeningSpan& one) {
                                       return passes(before, station.girth, one.from);
                                     });
    if (number == 0 || corner || opening) result.starts.push_back(number);
    if (number > 0 && corner) result.corners.push_back(number);
    result.holes.push_back({i, station.girth});
  }
  return result;
}

/// The tack holes of a side: the ends of each stretch and evenly between them.
std::set<std::size_t> tacks(const SideHoles& side) {
  std::set<std::size_t> result;
  for (std::size_t i = 0; i < side.starts.size(); ++i) {
    const std::size_t first = side.starts[i];
    const std::size_t last =
        (i + 1 < side.starts.size() ? side.starts[i + 1] : side.holes.size()) - 1;
    const auto spaces = static_cast<double>(last - first);
    const double parts =
        std::max({1.0, std::round(spaces / 5), std::ceil(spaces / double(tack_every))});
    for (double part = 0; part <= parts; ++part)
      result.insert(first +
                    static_cast<std::size_t>(std::round(part * spaces / parts)));
  }
  return result;
}

/// The number of the hole nearest to a girth; of two as near, the first.
/// @param holes  at least one
std::size_t nearest_hole(const Holes& holes, Length there) {
  const auto after = std::lower_bound(
      holes.begin(), holes.end(), there,
      [](const Hole& hole, Length girth) { return hole.along < girth; });
  const auto number = static_cast<std::size_t>(after - holes.begin());
  if (number == 0) return 0;
  if (after == holes.end()) return number - 1;
  return there - holes[number - 1].along <= after->along - there ? number - 1 : number;
}

/// The numbers chosen and, where two are further apart than `tack_every`, more evenly
/// between them.
std::set<std::size_t> filled_in(const std::set<std::size_t>& chosen) {
  std::set<std::size_t> result = chosen;
  for (auto next = chosen.begin(); next != chosen.end(); ++next) {
    if (next == chosen.begin()) continue;
    const std::size_t before = *std::prev(next);
    const std::size_t spaces = *next - before;
    const std::size_t parts = (spaces + tack_every - 1) / tack_every;
    for (std::size_t part = 1; part < parts; ++part)
      result.insert(before + (2 * part * spaces + parts) / (2 * parts));
  }
  return result;
}

/// The tack holes of a side that answer those of the other: the nearest to each, the
/// ends of each stretch, and holes between where a stretch would be left long.
std::set<std::size_t> answering_tacks(const SideHoles& side,
                                      const SideHoles& other,
                                      const std::set<std::size_t>& others) {
  std::set<std::size_t> result;
  for (const std::size_t start : side.starts) {
    result.insert(start);
    if (start > 0) result.insert(start - 1);
  }
  if (side.holes.empty()) return result;
  result.insert(side.holes.size() - 1);
  for (const std::size_t tack : others)
    result.insert(nearest_hole(side.holes, other.holes[tack].along));
  return filled_in(result);
}

/// Tack holes of the transom with those that answer them on its other half.
std::set<std::size_t> mirrored(const SideHoles& transom, std::set<std::size_t> chosen) {
  const auto half = chosen;
  for (const std::size_t tack : half) chosen.insert(transom.holes.size() - 1 - tack);
  return chosen;
}

/// Puts the steps together, each hole once.
class Driving {
 public:
  Driving(const Perimeter& perimeter, const Schedule& schedule)
      : perimeter_(perimeter) {
    for (const SideName name : {SideName::Starboard, SideName::Port, SideName::Transom})
      if (const PerimeterSide* side = perimeter.side(name))
        sides_[index(name)] = side_holes(*side, schedule);
    tacks_[index(SideName::Starboard)] = tacks(holes(SideName::Starboard));
    tacks_[index(SideName::Transom)] =
        mirrored(holes(SideName::Transom), tacks(holes(SideName::Transom)));
    tacks_[index(SideName::Port)] =
        answering_tacks(holes(SideName::Port), holes(SideName::Starboard),
                        tacks_[index(SideName::Starboard)]);
  }

  std::vector<DrivingStep> steps() {
    locate();
    stage_ = DrivingStage::Tack;
    drive_rest(true);
    stage_ = DrivingStage::Fill;
    drive_rest(false);
    return std::move(steps_);
  }

 private:
  static std::size_t index(SideName name) { return static_cast<std::size_t>(name); }
  const SideHoles& holes(SideName name) const { return sides_[index(name)]; }

  void drive(const Holes& together, const std::string& where) {
    DrivingStep step{stage_, where, {}};
    for (const Hole& hole : together)
      if (driven_.insert(hole.station).second) step.stations.push_back(hole.station);
    if (!step.stations.empty()) steps_.push_back(std::move(step));
  }

  /// The first or last holes of starboard and port.
  Holes ends(bool first) const {
    Holes found;
    for (const SideName name : {SideName::Starboard, SideName::Port}) {
      const Holes& all = holes(name).holes;
      if (!all.empty()) found.push_back(first ? all.front() : all.back());
    }
    return found;
  }

  std::string aft_words() const {
    const PerimeterSide* side = perimeter_.side(SideName::Starboard);
    if (side->end == SideEnd::Corner) return "transom corners, on the sides";
    return side->end == SideEnd::Smooth ? "the stern" : "the aft ends of the joint";
  }

  void locate() {
    stage_ = DrivingStage::Locate;
    drive(ends(true), "the bow");
    drive(ends(false), aft_words());
    const Holes& transom = holes(SideName::Transom).holes;
    if (!transom.empty())
      drive({transom.front(), transom.back()}, "transom corners, on the transom");
    for (const bool behind : {false, true}) {
      Holes sides[2];
      for (const SideName name : {SideName::Starboard, SideName::Port})
        for (const std::size_t start : holes(name).corners)
          sides[index(name)].push_back(holes(name).holes[behind ? start : start - 1]);
      pair_off(sides[0], sides[1],
               behind ? "corners, aft of them" : "corners, forward of them");
    }
  }

  /// Drives two lists in pairs, in order along their sides.
  void pair_off(const Holes& one, const Holes& other, const std::string& where) {
    const auto apart = [](const Hole& a, const Hole& b) {
      return std::abs((a.along - b.along).in_mm());
    };
    std::size_t i = 0, k = 0;
    while (i < one.size() && k < other.size()) {
      const double here = apart(one[i], other[k]);
      if (i + 1 < one.size() && apart(one[i + 1], other[k]) < here)
        drive({one[i++]}, where);
      else if (k + 1 < other.size() && apart(one[i], other[k + 1]) < here)
        drive({other[k++]}, where);
      else
        drive({one[i++], other[k++]}, where);
    }
    while (i < one.size()) drive({one[i++]}, where);
    while (k < other.size()) drive({other[k++]}, where);
  }

  /// What is not driven yet of a side; of its tacks only, if asked.
  Holes left_of(SideName name, bool tacks_only) const {
    const SideHoles& side = holes(name);
    const auto& chosen = tacks_[index(name)];
    Holes left;
    for (std::size_t i = 0; i < side.holes.size(); ++i)
      if (!driven_.contains(side.holes[i].station) &&
          (!tacks_only || chosen.contains(i)))
        left.push_back(side.holes[i]);
    return left;
  }

  void drive_rest(bool tacks_only) {
    pair_off(left_of(SideName::Starboard, tacks_only),
             left_of(SideName::Port, tacks_only), "both sides, from the bow aft");
    const PerimeterSide* transom = perimeter_.side(SideName::Transom);
    if (transom == nullptr) return;
    Holes starboard, port;
    for (const Hole& hole : left_of(SideName::Transom, tacks_only)) {
      const Length to_end = transom->drill_line_length - hole.along;
      if (hole.along <= to_end)
        starboard.push_back(hole);
      else
        port.insert(port.begin(), {hole.station, to_end});
    }
    pair_off(starboard, port, "the transom, from its corners inward");
  }

  const Perimeter& perimeter_;
  SideHoles sides_[3];
  std::set<std::size_t> tacks_[3];
  DrivingStage stage_ = DrivingStage::Locate;
  std::set<std::size_t> driven_;
  std::vector<DrivingStep> steps_;
};

}  // namespace

std::vector<DrivingStep> driving_order(const Perimeter& perimeter,
                                       const Schedule& schedule) {
  return Driving(perimeter, schedule).steps();
}

}  // namespace sheerlap
