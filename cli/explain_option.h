#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace sheerlap {

/// The option --explain, which may bear the mark of a hole.
struct ExplainOption {
  bool given = false;
  std::size_t times = 0;            ///< how often it is given
  std::optional<std::string> mark;  ///< as it was written
};

/// Takes --explain out of a command line: "--explain", "--explain=S14" or "--explain
/// S14".
///
/// The word behind it is a mark if it looks like one, letters and then digits, or if
/// command and file stand before it; else it is the command or the file.
ExplainOption take_explain(std::vector<std::string>& arguments);

}  // namespace sheerlap
