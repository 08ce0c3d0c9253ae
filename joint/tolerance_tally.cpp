#include "joint/tolerance_tally.h"

#include <algorithm>

namespace sheerlap {
namespace {

constexpr double margin_step_mm = 0.005;
constexpr double least_margin_mm = -100;
constexpr double squeeze_step_mm = 0.01;
constexpr double greatest_squeeze_mm = 200;
/// Volumes are counted in so many steps of the volume as drawn, at first up to four
/// times it.
constexpr std::size_t volume_steps = 10000;
constexpr std::size_t most_volumes = 4;

FineHistogram up_to(double least, double greatest, double step) {
  return {least, step,
          2 * (static_cast<std::size_t>((greatest - least) / (2 * step)) + 1)};
}

FineHistogram volumes_about(Volume drawn) {
  const double volume = std::max(drawn.in_ml(), 1e-3);
  return {0, volume / static_cast<double>(volume_steps), most_volumes * volume_steps};
}

}  // namespace

AdhesiveAmounts amounts_for(const AdhesiveAmounts& drawn,
                            const Adhesive& adhesive,
                            double volume_ml) {
  const Volume joint = Volume::ml(std::max(0.0, volume_ml));
  const Volume more = (1 + adhesive.squeeze_out) * (joint - drawn.joint);
  return amounts_of(joint, std::max(Volume(), drawn.bead + more), adhesive);
}

ToleranceTally::ToleranceTally(const Adhesive& adhesive,
                               const AdhesiveAmounts& drawn,
                               std::size_t stretches,
                               std::size_t lengths)
    : product_(adhesive),
      drawn_(drawn),
      margins_(up_to(least_margin_mm,
                     (adhesive.gap_max - adhesive.gap_min).in_mm() / 2,
                     margin_step_mm)),
      squeezes_(up_to(0, greatest_squeeze_mm, squeeze_step_mm)),
      volumes_(volumes_about(drawn.joint)),
      boat_volumes_(volumes_about(drawn.boat)),
      stretches_(stretches),
      held_(stretches),
      lengths_(lengths) {}

void ToleranceTally::add_adhesive(double volume_ml) {
  const AdhesiveAmounts amounts = amounts_for(drawn_, product_, volume_ml);
  volume_.add(amounts.joint.in_ml());
  volumes_.add(amounts.joint.in_ml());
  laid_.add(amounts.bead.in_ml());
  boat_volumes_.add(amounts.boat.in_ml());
}

void ToleranceTally::add_stretches(const BoatOutcome& boat) {
  std::fill(held_.begin(), held_.end(), 0.0);
  for (const StretchHold& hold : boat.holds) held_[hold.stretch] += hold.share;
  for (std::size_t i = 0; i < stretches_.size(); ++i) stretches_[i].holds.add(held_[i]);
  for (const std::size_t stretch : boat.tight) ++stretches_[stretch].tight;
  for (const std::size_t stretch : boat.wide) ++stretches_[stretch].wide;
}

void ToleranceTally::add(const BoatOutcome& boat) {
  ++boats_;
  afresh_ += boat.afresh ? 1 : 0;
  ++needs_[static_cast<std::size_t>(boat.need)];
  margin_.add(boat.margin_mm);
  margins_.add(boat.margin_mm);
  if (boat.squeeze_mm > 0) squeezes_.add(boat.squeeze_mm);
  add_adhesive(boat.volume_ml);
  add_stretches(boat);
  for (std::size_t i = 0; i < boat.lengths.size(); ++i)
    lengths_[i].add(static_cast<double>(boat.lengths[i]));
}

SqueezeShares ToleranceTally::shares() const {
  const auto share = [&](std::size_t count) { return share_estimate(count, boats_); };
  const std::size_t unsqueezed = needing(SqueezeNeed::None);
  const std::size_t squeezed = needing(SqueezeNeed::Within);
  return {share(unsqueezed + squeezed), share(unsqueezed), share(squeezed),
          share(needing(SqueezeNeed::Beyond)), share(needing(SqueezeNeed::Never))};
}

std::vector<BlamedStretch> ToleranceTally::stretches(const StretchPlan& plan) const {
  std::vector<BlamedStretch> blamed;
  for (std::size_t i = 0; i < plan.stretches.size(); ++i) {
    const CountedStretch& at = plan.stretches[i];
    blamed.push_back({at.side, at.from, at.to, stretches_[i].holds.mean_estimate(),
                      share_estimate(stretches_[i].tight, boats_),
                      share_estimate(stretches_[i].wide, boats_)});
  }
  return blamed;
}

ToleranceAdhesive ToleranceTally::adhesive() const {
  return {volumes_.deciles(), boat_volumes_.deciles(), volume_.mean_estimate(),
          volume_.deviation_estimate()};
}

std::optional<Deciles> ToleranceTally::squeeze() const {
  if (squeezes_.count() == 0) return std::nullopt;
  return squeezes_.deciles();
}

double ToleranceTally::laid_p90() const {
  return amounts_for(drawn_, product_, volumes_.quantile(0.9).value).bead.in_ml();
}

}  // namespace sheerlap
