#pragma once

#include <map>
#include <string>
#include <vector>

#include "joint/layout.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// The perimeter of a joint that is known to have one.
Perimeter perimeter_of(const Joint& joint);

/// A layout with holes at the girths given (mm), side by side.
Layout layout_at(const std::map<SideName, std::vector<double>>& girths_mm);

/// The check with this id; the test fails if there is none.
Check check_named(const Checks& checks, const std::string& id);

}  // namespace sheerlap
