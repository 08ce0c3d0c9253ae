#include "joint/hole_story.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <utility>

#include "joint/bond_places.h"
#include "joint/bond_use.h"
#include "joint/hole_reasons.h"
#include "joint/limit_zones.h"
#include "joint/rule_subject.h"
#include "joint/strength_pitch.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// Girths and spaces closer than this are the same, mm.
constexpr double same_mm = 1e-6;

/// A tape's step, beside the layout's own.
constexpr Length far_step = Length::mm(10);

/// A hole with all that its place is judged by.
struct HoleGround {
  const Job& job;
  std::size_t hole;
  SideObstacles named;
  LayoutStretch stretch;
  std::optional<JointLoads> loads;  ///< with a strength
  std::vector<const PublishedRule*> chosen;

  const DrillStation& station() const { return job.schedule->stations[hole]; }
};

/// The stretch of a side on which a hole stands, with every limit it was laid out by.
LayoutStretch stretch_of(const Joint& joint,
                         const Perimeter& perimeter,
                         const DrillStation& station,
                         std::vector<LayoutStretch> stretches) {
  for (LayoutStretch& stretch : stretches) {
    if (station.girth.in_mm() < stretch.problem.from_mm - same_mm ||
        station.girth.in_mm() > stretch.problem.to_mm + same_mm)
      continue;
    if (!joint.layout.by_strength) return std::move(stretch);
    const auto limits = strength_pitch(joint, perimeter);
    assert(limits);
    hold_limits(stretch, limits_of(station.side, *limits));
    hold_ends(stretch, end_limits_of(station.side, *limits));
    return std::move(stretch);
  }
  assert(false);
  return {};
}

HoleGround ground_of(const Job& job, std::size_t hole) {
  HoleGround ground{job, hole, {}, {}, {}, {}};
  const DrillStation& station = ground.station();
  // what the layout was made on has no faults
  auto side =
      layout_ground(job.joint, job.perimeter, *job.perimeter.side(station.side));
  assert(side);
  ground.named = std::move(side->named);
  ground.stretch =
      stretch_of(job.joint, job.perimeter, station, std::move(side->stretches));
  if (job.strength) {
    auto loads = JointLoads::of(job.joint, job.perimeter);
    assert(loads);
    ground.loads = std::move(*loads);
  }
  auto chosen = chosen_rules(job.joint.strength.rules, "strength.rules");
  if (chosen) ground.chosen = std::move(*chosen);
  return ground;
}

/// The keep-outs and bends that a girth lies within, and a given place it has left.
std::vector<std::string> stands_in(const HoleGround& ground, Length girth) {
  std::vector<std::string> words;
  for (const Obstacle& obstacle : ground.named.obstacles) {
    if ((girth - obstacle.from).in_mm() <= same_mm ||
        (obstacle.to - girth).in_mm() <= same_mm)
      continue;
    const std::string name = obstacle.what.empty() ? "keep-out" : obstacle.what;
    const auto between =
        fmt::format("girth {}", worded_range(obstacle.from, obstacle.to));
    words.push_back(
        obstacle.bend ? fmt::format("in a bend under the least radius, {}", between)
        : obstacle.clear > Length()
            ? fmt::format("in the keep-out {}, {} with its clearance", name, between)
            : fmt::format("in the keep-out {}, {}", name, between));
  }
  const Length own = ground.station().girth;
  for (const NamedPlace& place : ground.named.places)
    if (std::abs((place.at - own).in_mm()) <= same_mm &&
        std::abs((place.at - girth).in_mm()) > same_mm)
      words.push_back("off its given place" +
                      (place.what.empty() ? "" : ", " + place.what));
  return words;
}

bool of_a_hole(RuleQuantity quantity) {
  return quantity == RuleQuantity::GreatestPitch ||
         quantity == RuleQuantity::LeastPitch ||
         quantity == RuleQuantity::LeastEdgeDistance ||
         quantity == RuleQuantity::LeastEndDistance;
}

/// The rules put to one hole alone.
RuleRows rules_at(const HoleGround& ground, const HoleAt& at) {
  const Job& job = ground.job;
  Schedule alone;
  alone.fastener = job.schedule->fastener;
  alone.stations = {at.station};
  RuleSubject subject = rule_subject(job.joint, job.perimeter, alone);
  subject.vessel_length = job.joint.strength.hull_length;
  // by itself it would seem to have but its own mirror image beside it
  subject.largest_pitch.reset();
  subject.smallest_pitch.reset();
  for (const HoleSpace* space : {&at.before, &at.after}) {
    if (!space->to_hole) continue;
    const PlacedLength placed{space->space, "to " + space->to};
    if (!subject.largest_pitch || placed.length > subject.largest_pitch->length)
      subject.largest_pitch = placed;
    if (!subject.smallest_pitch || placed.length < subject.smallest_pitch->length)
      subject.smallest_pitch = placed;
  }
  RuleRows rows = rule_rows(subject, ground.chosen);
  std::erase_if(rows, [](const RuleRow& row) {
    const bool judged = row.state == RuleState::Pass || row.state == RuleState::Warn ||
                        row.state == RuleState::Fail;
    return !judged || !of_a_hole(row.quantity);
  });
  return rows;
}

std::optional<Length> reserve_of(const FastenerSpec& spec,
                                 const DrillStation& station) {
  if (!station.length) return std::nullopt;
  if (spec.kind != FastenerKind::BlindRivet)
    return *station.length - length_needed(spec, station.stack);
  for (const Grip& grip : spec.grips)
    if (grip.length == *station.length) return grip.greatest - station.stack;
  return std::nullopt;
}

/// The hole at the place of `station`, the others as they are.
HoleAt hole_at(const HoleGround& ground, DrillStation station) {
  const Job& job = ground.job;
  std::vector<DrillStation> stations = job.schedule->stations;
  stations[ground.hole] = station;
  HoleAt at;
  at.station = std::move(station);
  const Length girth = at.station.girth;
  auto spaces = hole_spaces(job.perimeter, stations, ground.hole, ground.stretch);
  at.before = std::move(spaces.before);
  at.after = std::move(spaces.after);
  at.stands_in = stands_in(ground, girth);
  at.rules = rules_at(ground, at);
  at.reserve = reserve_of(job.schedule->fastener, at.station);
  if (!ground.loads) return at;
  at.alone = fastener_row(
      job.joint, job.schedule->fastener, at.station,
      hole_neighbours(job.perimeter, stations, ground.hole, *ground.loads));
  at.bond = bond_place(job.joint, job.perimeter, *job.perimeter.side(at.station.side),
                       *ground.loads, girth);
  if (at.bond) judge(job.joint, *at.bond);
  return at;
}

std::string way_words(SideName side, Length by) {
  const bool on = by > Length();
  if (side == SideName::Transom) return on ? "to port" : "to starboard";
  return on ? "aft" : "forward";
}

/// Why a hole cannot stand at a girth; empty if it can.
std::string no_place(const HoleGround& ground, const HoleAt& here, Length girth) {
  const SpacingProblem& problem = ground.stretch.problem;
  if (girth.in_mm() < problem.from_mm - same_mm)
    return "past " + ground.stretch.start_name;
  if (girth.in_mm() > problem.to_mm + same_mm) return "past " + ground.stretch.end_name;
  const Length moved = girth - here.station.girth;
  const HoleSpace& beside = moved > Length() ? here.after : here.before;
  const Length way = moved > Length() ? moved : -moved;
  if (beside.to_hole && way >= beside.space) return "on or past " + beside.to;
  return "";
}

HoleMove move_of(const HoleGround& ground, const HoleAt& here, Length by) {
  HoleMove move;
  move.by = by;
  move.way = way_words(here.station.side, by);
  const Length girth = here.station.girth + by;
  move.why_not = no_place(ground, here, girth);
  if (!move.why_not.empty()) return move;
  Layout layout;
  LayoutSide side;
  side.name = here.station.side;
  side.girths = {girth};
  side.because = {here.station.because};
  layout.sides = {std::move(side)};
  auto made = drill_stations(ground.job.joint, ground.job.perimeter, layout,
                             ground.job.schedule->fastener);
  if (!made) {
    move.why_not = made.error().front().message;
    return move;
  }
  made->front().mark = here.station.mark;
  move.at = hole_at(ground, std::move(made->front()));
  return move;
}

std::string space_hold(const HoleSpace& space) {
  const auto at = [](Length one, Length other) {
    return std::abs((one - other).in_mm()) <= same_mm;
  };
  const std::string by = space.whose.empty() ? "" : ", by " + space.whose;
  const std::string start =
      fmt::format("{} to {}", space.to_hole ? "the space" : "the distance", space.to);
  if (space.over())
    return fmt::format("{}, {}, is over the {} allowed{}", start, worded(space.space),
                       worded(space.greatest), by);
  if (space.under())
    return fmt::format("{}, {}, is under the {} that are least", start,
                       worded(space.space), worded(space.least));
  if (at(space.space, space.greatest))
    return fmt::format("{} is the most allowed, {}{}", start, worded(space.space), by);
  if (at(space.space, space.least))
    return fmt::format("{} is the least allowed, {}", start, worded(space.space));
  return "";
}

/// The limits that a hole stands up to.
std::vector<std::string> held_by(const HoleGround& ground, const HoleAt& here) {
  std::vector<std::string> words;
  if (const auto hold = hold_at(here.station.girth, ground.named, ground.stretch))
    words.push_back(hold->because);
  for (const HoleSpace* space : {&here.before, &here.after})
    if (std::string hold = space_hold(*space); !hold.empty())
      words.push_back(std::move(hold));
  return words;
}

std::optional<Length> longer(const FastenerSpec& spec, const DrillStation& station) {
  if (!station.length) return std::nullopt;
  const auto next =
      std::upper_bound(spec.lengths.begin(), spec.lengths.end(), *station.length);
  return next == spec.lengths.end() ? std::nullopt : std::optional(*next);
}

}  // namespace

std::optional<HoleStory> hole_story(const Job& job, const std::string& mark) {
  assert(job.schedule);
  const auto& stations = job.schedule->stations;
  const auto found =
      std::find_if(stations.begin(), stations.end(),
                   [&](const DrillStation& station) { return station.mark == mark; });
  if (found == stations.end()) return std::nullopt;
  const HoleGround ground =
      ground_of(job, static_cast<std::size_t>(found - stations.begin()));
  HoleStory story;
  story.here = hole_at(ground, *found);
  story.held_by = held_by(ground, story.here);
  story.next_length = longer(job.schedule->fastener, *found);
  const Length step = job.joint.layout.round_to;
  std::vector<Length> moves{-far_step, -step, step, far_step};
  if (step == far_step) moves = {-step, step};
  for (const Length by : moves) story.moves.push_back(move_of(ground, story.here, by));
  return story;
}

}  // namespace sheerlap
