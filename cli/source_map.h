#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/result.h"

namespace sheerlap {

/// A line of one of the files that a joint is read from.
struct SourceLine {
  bool in_table = false;  ///< of the sheer table, else of the joint file
  std::size_t line = 1;   ///< counted from 1; 0 means the file as a whole
};

/// Where each value of a joint stands, by the addresses that errors use:
/// "layout.pitch_max", "keepout[2].to", "sheer.row[7]".
struct SourceMap {
  std::string joint_file;   ///< as the user named it
  std::string sheer_table;  ///< as messages name it
  std::map<std::string, SourceLine, std::less<>> lines;
  std::vector<std::size_t> row_lines;  ///< of the sheer table's rows
};

/// The line of an address, or of the nearest value that it belongs to, or the first
/// of the joint file.
SourceLine source_line(const SourceMap& sources, std::string_view address);

/// "yours: joint.toml:31", where a value of the user's stands; "not given in
/// joint.toml" for one that he left out.
std::string origin_words(const SourceMap& sources, std::string_view address);

/// The errors with "FILE:LINE: " before their messages, by file and line, no two
/// alike.
Errors located(Errors errors, const SourceMap& sources);

}  // namespace sheerlap
