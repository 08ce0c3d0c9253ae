#include "joint/candidates.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <tuple>
#include <utility>

#include "joint/candidate_faults.h"
#include "joint/fastener_sizes.h"
#include "joint/fasteners.h"
#include "joint/job_on_perimeter.h"

namespace sheerlap {
namespace {

/// A gap this little outside its window is taken to lie within it, as in `fit`.
constexpr double keeps_mm = 1e-9;

/// The parts that a candidate is judged by.
Parts candidate_parts() {
  Parts parts;
  parts.fit = parts.order = parts.strength = true;
  return parts;
}

/// The joint with another size of fastener; what belongs to its own size is taken off.
Joint with_size(const Joint& joint, const std::string& size) {
  Joint other = joint;
  FastenerChoice& fastener = other.fastener;
  fastener.size = size;
  fastener.lengths.clear();
  fastener.lip_hole.reset();
  fastener.hull_pilot.reset();
  fastener.box.reset();
  fastener.box_price.reset();
  fastener.strength.shear_capacity.reset();
  fastener.strength.pull_capacity.reset();
  return other;
}

/// Whether two names stand for one size, as "#14" and "1/4" do.
bool one_size(const FastenerChoice& own, const std::string& size) {
  if (own.size == size) return true;
  const auto bare = [&](const std::string& name) {
    FastenerChoice choice;
    choice.kind = own.kind;
    choice.head = own.head;
    choice.size = name;
    return fastener(choice);
  };
  const auto named = bare(own.size), listed = bare(size);
  if (!named || !listed) return false;
  const auto has = [&](const FastenerValue& value) {
    const auto same = [&](const FastenerValue& one) {
      return one.what == value.what && one.value == value.value &&
             one.source == value.source;
    };
    return std::any_of(named->values.begin(), named->values.end(), same);
  };
  // under its other name a size has the same values, and where that name is from
  return std::all_of(listed->values.begin(), listed->values.end(), has);
}

GapOutside gap_outside(const Fit& fit, const Adhesive& adhesive) {
  const Length under = adhesive.gap_min - fit.least.gap;
  const Length over = fit.greatest.gap - adhesive.gap_max;
  const bool wide = over > under;
  const GapAt& at = wide ? fit.greatest : fit.least;
  const Length by = wide ? over : under;
  return {by.in_mm() > keeps_mm ? by : Length(), at.gap, wide, at.side, at.girth};
}

std::optional<HullClear> hull_clear(const Schedule& schedule) {
  std::optional<HullClear> clear;
  std::size_t missing = 0;
  for (const DrillStation& station : schedule.stations) {
    const Length least =
        station.edge_top - station.hull_pilot.value_or(station.lip_hole) / 2;
    if (misses_hull(station)) ++missing;
    if (!clear || least < clear->least) clear = HullClear{least, station.mark, 0};
  }
  if (clear) clear->missing = missing;
  return clear;
}

CandidateCost cost_of(const Order& order) {
  CandidateCost cost;
  for (const OrderLine& line : order.lines)
    if (!line.total) cost.unpriced.push_back(line.item);
  cost.priced = order.per_boat.value_or(0);
  return cost;
}

CandidateFigures figures_of(const Job& job) {
  CandidateFigures figures;
  figures.fasteners = job.layout->count;
  figures.bond_use = job.strength->bond.worst.utilisation;
  figures.bond_mode = job.strength->bond.worst.mode;
  const FastenerStrengths& fasteners = job.strength->fasteners;
  if (!fasteners.rows.empty()) figures.worst = fasteners.rows[fasteners.worst];
  figures.hull_clear = hull_clear(*job.schedule);
  figures.outside = gap_outside(*job.fit, *job.joint.adhesive);
  figures.packs = job.adhesive->nominal.packs;
  figures.nozzles = job.adhesive->nominal.nozzles;
  figures.cost = cost_of(*job.order);
  return figures;
}

/// The candidate that a joint is, worked on the perimeter all of them have.
Candidate worked(Candidate candidate, Joint joint, const Perimeter& perimeter) {
  if (!joint.order) joint.order.emplace();
  const auto job = work_out_on(std::move(joint), perimeter, candidate_parts());
  if (!job) {
    for (const Error& error : job.error()) candidate.ruled_out.push_back(error.message);
    return candidate;
  }
  candidate.figures = figures_of(*job);
  candidate.ruled_out = candidate_faults(*job, candidate.figures->outside);
  candidate.notes = job->strength->fasteners.left_out;
  return candidate;
}

std::string named(const FastenerChoice& choice, const std::string& size) {
  FastenerSpec spec;
  spec.kind = choice.kind;
  spec.size = size;
  return fastener_name(spec);
}

/// What the sorting goes by.
std::tuple<bool, bool, double, double> standing(const Candidate& candidate) {
  const auto last = std::numeric_limits<double>::infinity();
  const auto& figures = candidate.figures;
  const bool known = figures && figures->cost.known();
  const double use = figures ? figures->use() : last;
  return {!candidate.workable(), !known, known ? figures->cost.priced : last,
          std::isnan(use) ? last : use};
}

}  // namespace

double CandidateFigures::use() const {
  return std::max(bond_use, worst ? worst->utilisation : 0);
}

Candidates candidates(const Job& job) {
  assert(job.strength);
  const Joint& joint = job.joint;
  const Candidate own{named(joint.fastener, joint.fastener.size), joint.adhesive->name};
  Candidates all{worked(own, joint, job.perimeter)};
  for (const FastenerSize& size : fastener_sizes(joint.fastener.kind)) {
    if (one_size(joint.fastener, size.size)) continue;
    Candidate other = own;
    other.own_fastener = false;
    other.fastener = named(joint.fastener, size.size);
    all.push_back(worked(other, with_size(joint, size.size), job.perimeter));
  }
  for (const Adhesive& adhesive : joint.adhesive_options) {
    Candidate other = own;
    other.own_adhesive = false;
    other.adhesive = adhesive.name;
    Joint with_it = joint;
    with_it.adhesive = adhesive;
    all.push_back(worked(other, std::move(with_it), job.perimeter));
  }
  std::stable_sort(all.begin(), all.end(), [](const auto& one, const auto& other) {
    return standing(one) < standing(other);
  });
  return all;
}

}  // namespace sheerlap
