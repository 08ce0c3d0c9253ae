#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "geometry/result.h"
#include "joint/bond_strength.h"
#include "joint/check.h"
#include "joint/clamping.h"
#include "joint/fastener_rows.h"
#include "joint/joint.h"
#include "joint/load_sharing.h"
#include "joint/perimeter.h"
#include "joint/reasons/reason.h"
#include "joint/rule_rows.h"
#include "joint/schedule.h"

namespace sheerlap {

/// What the joint carries against what is asked of it.
struct Strength {
  BondStrength bond;
  FastenerStrengths fasteners;
  BondPoint sharing_place;  ///< of the least gap: where the load is shared out
  LoadSharing sharing;
  Clamping clamping;
  RuleRows rules;
  std::vector<std::string> combination;  ///< how loads are put together, in words
  Explanations reasons;  ///< in the order of a calculation: loads, bond, fasteners ...
  Checks checks;
};

/// The strength of a joint that is laid out and scheduled.
///
/// @param joint  of which `strength_lacks` nothing
/// @errors       of the loads, the rules and the fastener's class
Result<Strength> strength(const Joint& joint,
                          const Perimeter& perimeter,
                          const Layout& layout,
                          const Schedule& schedule);

}  // namespace sheerlap
