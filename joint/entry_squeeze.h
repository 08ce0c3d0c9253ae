#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "geometry/quantity.h"
#include "joint/entry_path.h"
#include "joint/joint.h"
#include "joint/perimeter.h"
#include "joint/seating_inputs.h"

namespace sheerlap {

/// The squeeze that lets a lid pass, beside what the spreaders may do.
struct EntrySqueeze {
  Length needed;             ///< of each side, at the worst clash
  std::size_t spreader = 0;  ///< the one nearest to it by x
  Length most;               ///< of that spreader
  Length weakest;            ///< the least that one of the spreaders may do

  /// Other clashes need no more, but may lie at other spreaders: all of them must be
  /// allowed as much.
  bool lets_pass() const { return needed <= weakest; }
};

/// The squeeze of the hull, in its moulded shape, that a way down needs; nothing where
/// nothing clashes, where no squeeze helps, or without a spreader.
std::optional<EntrySqueeze> entry_squeeze(const EntryPath& path,
                                          const std::vector<Spreader>& spreaders,
                                          const Perimeter& perimeter);

/// Whether a lid that clashes coming straight down goes on otherwise: it is turned
/// down, or the hull may be squeezed by as much.
bool other_way_down(const Joint& joint, const Perimeter& perimeter);

}  // namespace sheerlap
