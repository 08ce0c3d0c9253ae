#pragma once

#include <filesystem>

#include "cli/source_map.h"
#include "geometry/result.h"
#include "joint/joint.h"
#include "joint/length_text.h"
#include "joint/wanted_share.h"

namespace sheerlap {

/// A joint as its files give it.
struct JointFile {
  Joint joint;
  LengthUnit unit = LengthUnit::Millimetres;  ///< of the file's bare numbers
  SourceMap sources;   ///< for `located`: errors that are found in the joint later
  WantedShare wanted;  ///< of the boats that `tolerance` makes up
};

/// Reads a joint file (TOML 1.0) and the sheer table that it names.
///
/// @param path  a sheer table with a relative name lies beside it
/// @errors  all that can be found in one run, by file and line, with "FILE:LINE: "
///          before the message. Unreadable: a file that cannot be read; InvalidInput:
///          all else
Result<JointFile> read_joint_file(const std::filesystem::path& path);

}  // namespace sheerlap
