#pragma once

#include <string>
#include <vector>

#include "joint/reasons/working.h"

namespace sheerlap {

/// The explanation of a figure that has no formula.
/// @param figure  its place in the result
/// @param paths   of the numbers that are found in the same way, its own among them
inline Explanation found_reason(const FoundWords& words,
                                double value,
                                const std::string& figure,
                                const std::vector<std::string>& paths) {
  WrittenWorking work;
  work.found(words, value);
  Explanation reason{figure, std::string(words.figure.what), work.release()};
  for (const std::string& path : paths)
    reason.tells.push_back({path, std::string(words.figure.letters)});
  return reason;
}

}  // namespace sheerlap
