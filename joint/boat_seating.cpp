#include "joint/boat_seating.h"

#include <cassert>
#include <utility>

#include "joint/seating_search.h"

namespace sheerlap {
namespace {

using Eigen::Index;

/// A margin short by no more than this is rounding, mm.
constexpr double keeps_mm = 1e-9;

/// The programme in the first `unknowns` of them.
WindowProgramme programme_of(const BoatModel& model,
                             const Adhesive& adhesive,
                             const std::vector<Spreader>& spreaders,
                             Index unknowns) {
  WindowProgramme programme;
  programme.slopes = model.unknowns.gaps.leftCols(unknowns);
  programme.least = adhesive.gap_min.in_mm();
  programme.greatest = adhesive.gap_max.in_mm();
  programme.most = Eigen::VectorXd::Constant(unknowns, furthest_mm);
  for (Index k = first_squeeze; k < unknowns; ++k)
    programme.most[k] =
        spreaders[static_cast<std::size_t>(k - first_squeeze)].most.in_mm();
  programme.price = seating_prices(unknowns);
  return programme;
}

}  // namespace

BoatSeating::BoatSeating(const BoatModel& model,
                         const Adhesive& adhesive,
                         const std::vector<Spreader>& spreaders)
    : best_(programme_of(model, adhesive, spreaders, model.unknowns.gaps.cols()),
            model.gaps) {
  if (spreaders.empty()) return;
  unsqueezed_.emplace(programme_of(model, adhesive, spreaders, first_squeeze),
                      model.gaps);
  WindowProgramme reach =
      programme_of(model, adhesive, spreaders, model.unknowns.gaps.cols());
  reach.aim = WindowAim::Reach;
  reach.reaching = static_cast<Index>(spreaders.size());
  reach_.emplace(std::move(reach), model.gaps);
}

void BoatSeating::add_need(const Eigen::Ref<const Eigen::VectorXd>& gaps,
                           SeatedBoat& boat) {
  const bool fits = boat.margin_mm >= -keeps_mm;
  boat.squeeze_mm = 0;
  boat.joined = boat.best;
  if (!reach_) {
    boat.need = fits ? SqueezeNeed::None : SqueezeNeed::Never;
    return;
  }
  if (fits) {
    const WindowOptimum& unsqueezed = unsqueezed_->solve(gaps);
    boat.afresh = boat.afresh || unsqueezed.afresh;
    boat.need = SqueezeNeed::None;
    if (unsqueezed.aim >= -keeps_mm) {
      boat.joined.setZero();
      boat.joined.head(first_squeeze) = unsqueezed.at;
      return;
    }
  }
  const WindowOptimum& reach = reach_->solve(gaps);
  boat.afresh = boat.afresh || reach.afresh;
  // a boat that fits within the limits is never beyond them, whatever the rounding
  boat.need = fits             ? SqueezeNeed::Within
              : reach.possible ? SqueezeNeed::Beyond
                               : SqueezeNeed::Never;
  if (!reach.possible) return;
  if (fits) boat.joined = reach.at;
  boat.squeeze_mm =
      reach.at.tail(reach.at.size() - first_squeeze).lpNorm<Eigen::Infinity>();
}

void BoatSeating::seat(const Eigen::Ref<const Eigen::VectorXd>& gaps,
                       SeatedBoat& boat) {
  const WindowOptimum& best = best_.solve(gaps);
  // the margin may be as far below 0 as it takes
  assert(best.possible);
  boat.margin_mm = best.aim;
  boat.best = best.at;
  boat.contacts = best.contacts;
  boat.afresh = best.afresh;
  add_need(gaps, boat);
}

}  // namespace sheerlap
