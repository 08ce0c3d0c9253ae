#pragma once

#include <optional>

#include "cli/toml_table.h"
#include "joint/seating_inputs.h"

namespace sheerlap {

/// [entry]: how the lid is turned down; nothing without it, and it comes straight down.
std::optional<TurnedEntry> read_turned_entry(TomlTable& root);

/// [[beam_reading]] and [[spreader]].
SeatingInputs read_seating_inputs(TomlTable& root);

}  // namespace sheerlap
