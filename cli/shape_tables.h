#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "cli/sheer_table.h"
#include "cli/toml_table.h"
#include "joint/joint.h"

namespace sheerlap {

/// [sheer], without the rows that its file holds.
struct SheerSettings {
  std::string file;
  Sheer sheer;
};

SheerSettings read_sheer_settings(TomlTable& root);

/// [lap]: the constants, in the order of `offset_columns`, and the bond band.
struct LapSettings {
  std::array<std::optional<Length>, offset_columns.size()> constants;
  BondBand bond;
};

LapSettings read_lap(TomlTable& root);

/// [hull] or [lip].
Laminate read_laminate(TomlTable& root, std::string_view key);

std::vector<Opening> read_openings(TomlTable& root);

}  // namespace sheerlap
