#include "joint/seating.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

#include "joint/fit_reach.h"
#include "joint/seated_corrections.h"
#include "joint/seating_task.h"
#include "joint/sheer_places.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// A movement this little is none.
double rounded(double moved_mm) { return std::abs(moved_mm) < 1e-7 ? 0 : moved_mm; }

GapAt gap_at(const LapPoint& point, double gap_mm) {
  return {Length::mm(gap_mm), point.side, point.girth, Length::mm(point.depth_mm)};
}

/// The least and the greatest gap; of those that are alike the first.
HullShapeFit shape_fit(const SeatingTask& task, const FoundSeating& found) {
  const auto first = [&](double sign) {
    std::size_t worst = 0;
    for (std::size_t i = 1; i < found.gaps_mm.size(); ++i)
      if (sign * (found.gaps_mm[worst] - found.gaps_mm[i]) > alike_mm) worst = i;
    return gap_at(task.points[worst], found.gaps_mm[worst]);
  };
  return {first(1), first(-1)};
}

/// The gaps of the lid as drawn on the hull in its held shape.
std::optional<FoundSeating> held_gaps(SeatingTask task,
                                      const Perimeter& perimeter,
                                      const HullMovement& held) {
  for (LapPoint& point : task.points) {
    const HullShift more = held.at(*perimeter.side(point.side), point.place);
    point.free.y_mm += more.y_mm;
    point.free.by_u += more.by_u;
    point.squeezed.clear();
  }
  return seating_at(task, LidUnknowns::Zero(first_squeeze));
}

Checks seating_checks(const Seating& seating) {
  const bool kept = seating.fits();
  return {{"fit.seating",
           fmt::format("worst gap inside the gap window, the lid in its best place{}: "
                       "{} on {} at girth {} along the sheer, {} down{}",
                       seating.squeezes.empty() ? "" : " and the hull squeezed",
                       worded(seating.worst.gap), side_word(seating.worst.side),
                       worded(seating.worst.girth), worded(seating.worst.depth),
                       kept ? "" : ": no seating fits"),
           seating.margin.in_mm(), 0, "mm", kept ? CheckState::Pass : CheckState::Fail,
           "the adhesive's data sheet, as the joint file gives it"}};
}

void set_move(Seating& seating, const SeatingTask& task, const FoundSeating& found) {
  const double turned = rounded(found.unknowns[lid_turn]);
  seating.dx = Length::mm(rounded(found.unknowns[lid_aft]));
  seating.dy = Length::mm(rounded(found.unknowns[lid_starboard]));
  seating.turn = Angle::radians(turned / task.datum.reach_mm);
  seating.pivot = task.datum.pivot;
  seating.reach = Length::mm(task.datum.reach_mm);
  const double end = task.datum.reach_mm * std::sin(seating.turn.in_radians());
  seating.at_bow = seating.dy - Length::mm(end);
  seating.at_stern = seating.dy + Length::mm(end);
}

void set_outcome(Seating& seating, const SeatingTask& task, const FoundSeating& found) {
  seating.margin = Length::mm(found.margin_mm);
  seating.worst = gap_at(task.points[found.worst], found.gaps_mm[found.worst]);
  seating.gain_left = Length::mm(found.gain_left_mm);
  seating.seated = shape_fit(task, found);
  for (const SeatingContact& contact : found.contacts)
    seating.contacts.push_back(
        {gap_at(task.points[contact.point], found.gaps_mm[contact.point]),
         contact.tight, contact.price});
}

/// How far a movement takes the sides outward at an x that both of them have: the mean
/// of the two.
Length outward_at(const HullMovement& movement, const Perimeter& perimeter, Length x) {
  Length sum;
  for (const SideName name : {SideName::Starboard, SideName::Port}) {
    const PerimeterSide& side = *perimeter.side(name);
    const auto girth = sheer_girth_at_x(side, x, "");
    assert(girth.has_value());
    const double to_starboard = movement.at(side, side.sheer.place_at(*girth)).y_mm;
    sum += Length::mm(name == SideName::Starboard ? to_starboard : -to_starboard);
  }
  return sum / 2;
}

void set_squeezes(Seating& seating,
                  const SeatingInputs& inputs,
                  const FoundSeating& found,
                  const HullMovement& free,
                  const Perimeter& perimeter) {
  for (std::size_t j = 0; j < inputs.spreaders.size(); ++j) {
    const Spreader& spreader = inputs.spreaders[j];
    const double amount = found.unknowns[first_squeeze + static_cast<Eigen::Index>(j)];
    seating.squeezes.push_back({spreader.x, Length::mm(rounded(amount)), spreader.most,
                                outward_at(free, perimeter, spreader.x),
                                found.limit_prices[j]});
  }
}

/// How far the sides stand from their mould at each reading.
void set_readings(Seating& seating,
                  const BeamShapes& shapes,
                  const Perimeter& perimeter) {
  std::vector<HullPush> pushes;
  for (const Squeeze& squeeze : seating.squeezes)
    pushes.push_back({squeeze.at, -squeeze.amount, ""});
  const auto squeezed = HullMovement::through(perimeter, pushes);
  // the same places as those of the search
  assert(squeezed.has_value());
  for (const BeamMoved& moved : shapes.readings)
    seating.readings.push_back(
        {moved, moved.free + outward_at(*squeezed, perimeter, moved.x)});
}

tl::unexpected<Errors> no_gap() {
  return invalid_input("beam_reading",
                       "no gap can be measured in the hull's shape by these readings: "
                       "the lip face turns "
                       "away from the hull face");
}

}  // namespace

Result<Seating> seating(const Joint& joint,
                        const SeatingInputs& inputs,
                        const Perimeter& perimeter) {
  assert(joint.adhesive);
  const auto shapes = beam_shapes(inputs.readings, joint.sheer, perimeter);
  const auto asked =
      seating_task(joint, inputs, perimeter, shapes ? shapes->free : HullMovement());
  Errors errors;
  if (!shapes)
    errors.insert(errors.end(), shapes.error().begin(), shapes.error().end());
  if (!asked) errors.insert(errors.end(), asked.error().begin(), asked.error().end());
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  const SeatingTask& task = *asked;
  const auto count = first_squeeze + static_cast<Eigen::Index>(inputs.spreaders.size());
  const auto drawn = seating_at(task, LidUnknowns::Zero(count));
  const auto best = best_seating(task);
  if (!drawn || !best) return no_gap();

  Seating seating;
  set_move(seating, task, *best);
  set_outcome(seating, task, *best);
  seating.as_drawn = Length::mm(drawn->margin_mm);
  set_squeezes(seating, inputs, *best, shapes->free, perimeter);
  set_readings(seating, *shapes, perimeter);
  if (!seating.readings.empty()) seating.free = shape_fit(task, *drawn);
  if (shapes->held) {
    const auto held = held_gaps(task, perimeter, *shapes->held);
    if (!held) return no_gap();
    seating.held = shape_fit(task, *held);
  }
  seating.corrections = seated_corrections(perimeter, task, *best);
  seating.checks = seating_checks(seating);
  return seating;
}

}  // namespace sheerlap
