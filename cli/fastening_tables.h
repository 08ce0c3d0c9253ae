#pragma once

#include <vector>

#include "cli/toml_table.h"
#include "joint/joint.h"

namespace sheerlap {

/// [fastener].
FastenerChoice read_fastener(TomlTable& root);

/// [layout].
LayoutRules read_layout(TomlTable& root);

/// Each [[zone]].
std::vector<Zone> read_zones(TomlTable& root);

/// Each [[keepout]].
std::vector<KeepOut> read_keepouts(TomlTable& root);

/// Each [[place]].
std::vector<FixedPlace> read_places(TomlTable& root);

/// [jig].
JigRules read_jig(TomlTable& root);

}  // namespace sheerlap
