#include "joint/boat_job.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <set>
#include <string>
#include <utility>

#include "joint/bead_changes.h"
#include "joint/boat_acceptance.h"
#include "joint/boat_checks.h"
#include "joint/boat_perimeter.h"
#include "joint/job_on_perimeter.h"
#include "joint/job_reasons.h"
#include "joint/strength_needs.h"

namespace sheerlap {
namespace {

/// What of the drawing a boat is held against: its holes always, and with them the
/// marks that readings may be named by.
Parts drawn_parts(const Parts& parts) {
  Parts drawn = parts;
  drawn.strength = false;
  drawn.schedule = true;
  return drawn;
}

/// The state that is answered for.
Result<ReadingState> state_of(const std::vector<GapReading>& readings,
                              const std::optional<ReadingState>& asked) {
  if (!asked) return latest_state(readings);
  std::string others;
  for (const ReadingState state :
       {ReadingState::Dry, ReadingState::Held, ReadingState::After}) {
    const bool read =
        std::any_of(readings.begin(), readings.end(),
                    [&](const GapReading& one) { return one.state == state; });
    if (read && state == *asked) return state;
    if (read) others += (others.empty() ? "" : ", ") + state_word(state);
  }
  return invalid_input("readings",
                       fmt::format("no reading has the state {}: there is {}",
                                   state_word(*asked), others));
}

/// What the readings say of the gap, and where they say nothing.
void add_corrections(Boat& boat, const Perimeter& drawn) {
  const ReadingsGap gap(drawn, boat.readings, boat.state);
  boat.corrections = gap.all_corrections();
  boat.held = gap.held();
  boat.unread = gap.unread();
}

/// Faults of a boat's parts as faults of its readings: as drawn there were none.
Errors of_readings(Errors errors) {
  for (Error& error : errors) {
    error.where = "readings";
    error.message = "with the hull where these gaps put it: " + error.message;
  }
  return errors;
}

/// The boat as far as it is known before its own parts are.
Result<Boat> read_boat(const Job& drawn, const BoatReadings& readings) {
  Boat boat;
  const auto limits = gap_limits(drawn.joint);
  if (!limits) return tl::unexpected(limits.error());
  auto placed = placed_readings(drawn.joint, drawn.perimeter, drawn.schedule->stations,
                                readings.given);
  if (!placed) return tl::unexpected(placed.error());
  const auto state = state_of(*placed, readings.state);
  if (!state) return tl::unexpected(state.error());
  boat.file = readings.file;
  boat.state = *state;
  boat.readings = std::move(*placed);
  boat.limits = *limits;
  add_corrections(boat, drawn.perimeter);
  return boat;
}

/// Adds what follows from the boat's own parts.
void complete(Boat& boat, const Job& job, const Schedule& schedule, Job drawn) {
  const BoatSurroundings about{job.perimeter, schedule, *drawn.schedule};
  boat.places = boat_places(boat, about);
  boat.out = non_conformances(boat, about);
  if (job.adhesive)
    boat.beads = bead_changes(drawn.adhesive->beads, job.adhesive->beads);
  boat.drawn = {std::move(drawn.fit), std::move(drawn.adhesive),
                std::move(drawn.schedule)};
  boat.checks = boat_checks(boat);
}

/// Takes out how the lid goes on, and its checks: of a boat that is glued there is
/// nothing left to lower, move or squeeze.
void leave_lid_on(Job& job) {
  if (!job.going_on) return;
  std::set<std::string> ids{"fit.entry"};
  for (const Check& check : job.going_on->checks) ids.insert(check.id);
  std::erase_if(job.checks, [&](const Check& check) { return ids.contains(check.id); });
  job.going_on.reset();
}

}  // namespace

Result<Job> work_out_boat(const Joint& joint,
                          const Parts& parts,
                          const BoatReadings& readings) {
  assert(!parts.order && !parts.leave_out && !readings.given.empty());
  if (parts.strength)
    if (Errors lacks = strength_lacks(joint); !lacks.empty())
      return tl::unexpected(std::move(lacks));
  auto drawn = work_out(joint, drawn_parts(parts));
  if (!drawn) return drawn;
  auto boat = read_boat(*drawn, readings);
  if (!boat) return tl::unexpected(boat.error());
  const auto perimeter =
      boat_perimeter(drawn->joint, drawn->perimeter, boat->corrections);
  if (!perimeter) return tl::unexpected(of_readings(perimeter.error()));
  auto job = work_out_on(joint, *perimeter, *drawn->layout, parts);
  if (!job) return tl::unexpected(of_readings(job.error()));
  auto holes = job->schedule ? Result<Schedule>(*job->schedule)
                             : schedule(job->joint, job->perimeter, *drawn->layout);
  if (!holes) return tl::unexpected(of_readings(holes.error()));
  complete(*boat, *job, *holes, std::move(*drawn));
  if (boat->state == ReadingState::After) leave_lid_on(*job);
  job->checks.insert(job->checks.begin(), boat->checks.begin(), boat->checks.end());
  job->boat = std::move(*boat);
  job->reasons = reasons_of(*job);
  return job;
}

}  // namespace sheerlap
