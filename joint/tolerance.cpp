#include "joint/tolerance.h"

#include <algorithm>
#include <cassert>
#include <optional>
#include <utility>

#include "joint/adhesive_order.h"
#include "joint/boat_runner.h"
#include "joint/order.h"
#include "joint/run_total.h"
#include "joint/tolerance_tally.h"

namespace sheerlap {
namespace {

/// What drives an answer is sought over so many boats or more, if there are; of more
/// boats at least one in 32.
constexpr std::size_t least_swapped = 1000;
constexpr std::size_t seldom = 32;
/// For the variance of the squeeze, a boat that needs more counts as one that needs so
/// many times the greatest limit.
constexpr double squeeze_cap = 2;

std::size_t swap_every(std::size_t boats) {
  std::size_t every = 1;
  while (every < seldom && boats / (2 * every) >= least_swapped) every *= 2;
  return every;
}

double squeeze_cap_mm(const std::vector<Spreader>& spreaders) {
  double most = 0;
  for (const Spreader& spreader : spreaders)
    most = std::max(most, spreader.most.in_mm());
  return squeeze_cap * most;
}

/// The variances of the three answers.
struct VarianceTallies {
  explicit VarianceTallies(std::size_t errors)
      : volume(errors), margin(errors), squeeze(errors) {}
  VarianceTally volume, margin, squeeze;

  VarianceShares shares() const {
    return {volume.boats(), volume.shares(), margin.shares(), squeeze.shares()};
  }
};

void add_block(const BlockOutcome& block,
               ToleranceTally& tally,
               VarianceTallies& variances) {
  for (std::size_t i = 0; i < block.boats; ++i) tally.add(block.outcomes[i]);
  for (std::size_t i = 0; i < block.swapped; ++i) {
    variances.volume.add(block.swaps[i].volume);
    variances.margin.add(block.swaps[i].margin);
    variances.squeeze.add(block.swaps[i].squeeze);
  }
}

/// What is bought for the run if so much is laid in it.
RunBuy buy(const Joint& joint, double laid_ml) {
  const std::size_t boats = joint.order->boats;
  const Volume boat = Volume::ml(laid_ml) / static_cast<double>(boats);
  const AdhesiveAmounts amounts = amounts_of(Volume(), boat, *joint.adhesive);
  const OrderPart part =
      adhesive_order(*joint.adhesive, amounts, boats, guns_of(joint));
  return {Volume::ml(laid_ml), part.lines.at(0).packs, part.lines.at(1).packs};
}

ToleranceRun run_of(const Joint& joint,
                    const AdhesiveAmounts& drawn,
                    const ToleranceTally& tally) {
  ToleranceRun run;
  run.boats = joint.order->boats;
  const auto boats = static_cast<double>(run.boats);
  run.laid_mean = run_mean(tally.laid(), run.boats);
  run.laid_p90 = run_p90(tally.laid(), run.boats);
  run.nominal = buy(joint, boats * drawn.bead.in_ml());
  run.at_p90 = buy(joint, run.laid_p90.value);
  run.at_every_p90 = buy(joint, boats * tally.laid_p90());
  return run;
}

std::vector<LengthMix> mix_of(const Joint& joint,
                              const Schedule& schedule,
                              const ToleranceTally& tally) {
  std::vector<LengthMix> mix;
  const auto& stock = schedule.fastener.lengths;
  for (std::size_t i = 0; i <= stock.size(); ++i) {
    LengthMix one;
    if (i < stock.size()) one.length = stock[i];
    one.nominal = static_cast<std::size_t>(std::count_if(
        schedule.stations.begin(), schedule.stations.end(),
        [&](const DrillStation& hole) { return hole.length == one.length; }));
    const RunningFigures& count = tally.lengths()[i];
    one.in_a_boat = count.mean_estimate();
    if (joint.order) one.run_p90 = run_p90(count, joint.order->boats);
    mix.push_back(one);
  }
  return mix;
}

/// All that boats are made and judged by.
struct ToleranceGround {
  BoatModel model;
  StretchPlan plan;
  std::optional<LengthSteps> lengths;
  double drawn_margin_mm = 0;
};

Result<ToleranceGround> ground_of(const Joint& joint,
                                  const Perimeter& perimeter,
                                  const NominalBoat& nominal) {
  const std::vector<DrillStation> none;
  auto model =
      boat_model(joint, perimeter, nominal.schedule ? nominal.schedule->stations : none,
                 nominal.adhesive.nominal.joint.in_ml());
  if (!model) return tl::unexpected(std::move(model.error()));
  StretchPlan plan = stretch_plan(*model, perimeter);
  SeatedBoat drawn;
  BoatSeating(*model, *joint.adhesive, joint.seating.spreaders)
      .seat(model->gaps, drawn);
  if (nominal.built) add_pattern(*model, perimeter, *nominal.built);
  ToleranceGround ground{std::move(*model), std::move(plan), std::nullopt,
                         drawn.margin_mm};
  if (nominal.schedule) ground.lengths.emplace(nominal.schedule->fastener);
  return ground;
}

}  // namespace

Result<Tolerance> tolerance(const Joint& joint,
                            const Perimeter& perimeter,
                            const NominalBoat& nominal,
                            const ToleranceHooks& hooks) {
  assert(joint.tolerance && joint.adhesive && joint.tolerance->boats > 0);
  const ToleranceInputs& inputs = *joint.tolerance;
  const auto ground = ground_of(joint, perimeter, nominal);
  if (!ground) return tl::unexpected(ground.error());
  const JudgeGround judged{ground->model, ground->plan, *joint.adhesive,
                           joint.seating.spreaders,
                           ground->lengths ? &*ground->lengths : nullptr};
  ToleranceTally tally(*joint.adhesive, nominal.adhesive.nominal,
                       ground->plan.stretches.size(),
                       ground->lengths ? ground->lengths->lengths().size() + 1 : 0);
  VarianceTallies variances(inputs.errors.size());
  run_boats({judged, inputs.seed, inputs.boats, swap_every(inputs.boats),
             squeeze_cap_mm(joint.seating.spreaders)},
            {hooks.threads, hooks.stop, [&](const BlockOutcome& block) {
               add_block(block, tally, variances);
               if (hooks.progress) hooks.progress(tally.boats(), inputs.boats);
             }});

  Tolerance found;
  found.boats = tally.boats();
  found.asked = inputs.boats;
  found.seed = inputs.seed;
  found.stations = ground->model.points.stations.size();
  found.nominal_margin_mm = ground->drawn_margin_mm;
  if (found.boats == 0) return found;
  found.solved_afresh = tally.afresh();
  found.shares = tally.shares();
  found.margin_mean_mm = tally.margin_mean();
  found.margin_mm = tally.margin();
  found.squeeze_mm = tally.squeeze();
  found.stretches = tally.stretches(ground->plan);
  found.adhesive = tally.adhesive();
  if (joint.order) found.run = run_of(joint, nominal.adhesive.nominal, tally);
  if (nominal.schedule) found.lengths = mix_of(joint, *nominal.schedule, tally);
  found.drives = variances.shares();
  return found;
}

}  // namespace sheerlap
