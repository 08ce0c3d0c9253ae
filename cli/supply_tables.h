#pragma once

#include <optional>
#include <vector>

#include "cli/toml_table.h"
#include "joint/joint.h"

namespace sheerlap {

/// [adhesive], if the file has it.
std::optional<Adhesive> read_adhesive(TomlTable& root);

/// Each [[adhesive_option]].
std::vector<Adhesive> read_adhesive_options(TomlTable& root);

/// [shop], if the file has it.
std::optional<Shop> read_shop(TomlTable& root);

/// [order], if the file has it.
std::optional<OrderRules> read_order(TomlTable& root);

}  // namespace sheerlap
