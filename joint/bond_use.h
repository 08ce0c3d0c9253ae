#pragma once

#include <optional>
#include <vector>

#include "joint/bond_pass.h"

namespace sheerlap {

/// The passes of a point: laminates like the lip's and like the hull's; one if they are
/// alike.
std::vector<BondPass> passes_of(const Joint& joint);

/// Whether the overlap is so long that its middle is unloaded: two and a half lengths
/// over which the shear falls, on either hand of it.
/// @param point  of an even gap
bool middle_unloaded(const Joint& joint, const BondPoint& point);

/// What the bond carries in shear once it yields; none without `plastic_strain`, nor
/// where the gap is a wedge: what a yielding wedge carries is not known here.
std::optional<YieldedCapacity> yielded_capacity(const Joint& joint,
                                                const BondPoint& point,
                                                const BondPass& pass);

/// What is used of each capacity in a pass.
BondUse bond_use(const Joint& joint, const BondPoint& point, const BondPass& pass);

/// The mode that uses most, and how much of it.
struct GoverningUse {
  BondMode mode = BondMode::AdhesiveShear;
  double use = 0;
};
GoverningUse governing(const BondUse& use);

/// The pass whose use is the greatest.
BondPass governing_pass(const Joint& joint, const BondPoint& point);

/// Works a point: its peaks, its utilisation and its mode.
/// @param point  its place, gaps, width and load are read
void judge(const Joint& joint, BondPoint& point);

}  // namespace sheerlap
