#pragma once

#include "cli/toml_table.h"
#include "joint/joint.h"

namespace sheerlap {

/// The side that a table names.
SideChoice read_side(TomlTable& table);

/// The side and the stretch of it that a table names, by from and to or by x_from and
/// x_to.
Stretch read_stretch(TomlTable& table);

/// A [[place]], by at or by x.
FixedPlace read_place(TomlTable& table);

}  // namespace sheerlap
