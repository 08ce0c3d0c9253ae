#pragma once

#include <filesystem>
#include <vector>

#include "geometry/result.h"

namespace sheerlap {

/// Writes a joint file with its sheer table, to start from: all of them or none.
///
/// The folder is made if it is missing. No file that is there is written over.
///
/// @returns  the files written, "joint.toml" first
/// @errors   Unreadable: a file is there already, or cannot be written
Result<std::vector<std::filesystem::path>> write_new_joint(
    const std::filesystem::path& folder);

}  // namespace sheerlap
