#pragma once

#include <optional>

#include "cli/toml_table.h"
#include "joint/joint.h"

namespace sheerlap {

/// The keys of [hull] and [lip] that only the strength needs.
LaminateStrength read_laminate_strength(TomlTable& table);

/// The keys of an adhesive that only the strength needs.
AdhesiveStrength read_adhesive_strength(TomlTable& table);

/// The keys of [fastener] that only the strength needs.
FastenerStrength read_fastener_strength(TomlTable& table);

/// [loads] with [[load]], [[point_load]], [hull_girder], [[plate]], [deck_panel] and
/// [deck_warmth], if the file has [loads].
std::optional<Loads> read_loads(TomlTable& root);

/// [strength]; its defaults are put on record if the file has [loads].
StrengthRules read_strength_rules(TomlTable& root);

}  // namespace sheerlap
