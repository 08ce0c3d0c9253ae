#pragma once

#include <cstddef>
#include <optional>

#include "cli/toml_table.h"
#include "joint/tolerance_inputs.h"
#include "joint/wanted_share.h"

namespace sheerlap {

/// Of fewer boats, what 10 and 90 in a hundred stay below has hardly a range.
inline constexpr std::size_t fewest_boats = 100;

/// [tolerance] with each [[error]], if the file has it.
/// @param wanted  set if the file has [tolerance]
std::optional<ToleranceInputs> read_tolerance(TomlTable& root, WantedShare& wanted);

}  // namespace sheerlap
