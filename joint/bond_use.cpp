#include "joint/bond_use.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "joint/bond_capacity.h"

namespace sheerlap {

std::vector<BondPass> passes_of(const Joint& joint) {
  const auto alike = [](const Laminate& a, const Laminate& b) {
    return a.thickness == b.thickness && a.strength.modulus == b.strength.modulus &&
           a.strength.poisson == b.strength.poisson &&
           a.strength.bending_ratio == b.strength.bending_ratio &&
           a.strength.interlaminar == b.strength.interlaminar &&
           a.strength.through == b.strength.through;
  };
  std::vector<BondPass> passes{{true}};
  if (!alike(joint.hull, joint.lip)) passes.push_back({false});
  return passes;
}

bool middle_unloaded(const Joint& joint, const BondPoint& point) {
  PlainWorking work;
  const auto lap = lap_along(work, joint, point);
  return shear_lag(work, lap, shear_along) * lap.l / 2 >= 2.5;
}

std::optional<YieldedCapacity> yielded_capacity(const Joint& joint,
                                                const BondPoint& point,
                                                const BondPass& pass) {
  if (!joint.adhesive->strength.plastic_strain || !is_even(point) ||
      !middle_unloaded(joint, point))
    return std::nullopt;
  PlainWorking along, across;
  return YieldedCapacity{capacity_along(along, joint, point),
                         capacity_across(across, joint, point, pass)};
}

BondUse bond_use(const Joint& joint, const BondPoint& point, const BondPass& pass) {
  PlainWorking work;
  const auto stresses = bond_stresses(work, joint, point, pass);
  BondUse use;
  use.adhesive_peel = peel_use(work, joint, stresses);
  use.laminate_shear = laminate_use(work, joint, stresses, pass);
  if (laminate_of(joint, pass).strength.through)
    use.laminate_through = through_use(work, joint, stresses, pass);
  use.adhesive_shear = elastic_use(work, joint, stresses);
  // yielding only lessens it: no need to know by how much where another mode governs
  const double others = std::max(
      {use.adhesive_peel, use.laminate_shear, use.laminate_through.value_or(0)});
  if (use.adhesive_shear > others)
    if (const auto capacity = yielded_capacity(joint, point, pass))
      use.adhesive_shear = yielded_use(work, joint, point, *capacity);
  return use;
}

GoverningUse governing(const BondUse& use) {
  GoverningUse most{BondMode::AdhesiveShear, use.adhesive_shear};
  const auto consider = [&](BondMode mode, double found) {
    if (found > most.use) most = {mode, found};
  };
  consider(BondMode::AdhesivePeel, use.adhesive_peel);
  consider(BondMode::LaminateShear, use.laminate_shear);
  consider(BondMode::LaminateThrough, use.laminate_through.value_or(0));
  return most;
}

BondPass governing_pass(const Joint& joint, const BondPoint& point) {
  const auto passes = passes_of(joint);
  return *std::max_element(passes.begin(), passes.end(),
                           [&](const BondPass& a, const BondPass& b) {
                             return governing(bond_use(joint, point, a)).use <
                                    governing(bond_use(joint, point, b)).use;
                           });
}

void judge(const Joint& joint, BondPoint& point) {
  if (!(std::min(point.gap_top, point.gap_low) > Length())) {
    point.mode = BondMode::NoBondLine;
    point.utilisation = std::numeric_limits<double>::infinity();
    return;
  }
  point.utilisation = 0;
  for (const BondPass& pass : passes_of(joint)) {
    PlainWorking work;
    const auto stresses = bond_stresses(work, joint, point, pass);
    point.shear_along = std::max(point.shear_along, stresses.along);
    point.shear_across = std::max(point.shear_across, stresses.across);
    point.peel = std::max(point.peel, stresses.peel);
    const GoverningUse most = governing(bond_use(joint, point, pass));
    if (most.use < point.utilisation) continue;
    point.utilisation = most.use;
    point.mode = most.mode;
  }
}

}  // namespace sheerlap
