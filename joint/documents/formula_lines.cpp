#include "joint/documents/formula_lines.h"

#include <algorithm>
#include <optional>

#include "joint/documents/text_table.h"

namespace sheerlap {
namespace {

/// A place at which a line may end.
struct Break {
  std::size_t end = 0;   ///< of the line
  std::size_t next = 0;  ///< where the next line starts
  int depth = 0;         ///< count of brackets it stands in
  bool at_sum = false;   ///< before + or -, which bind less than * and /
};

std::vector<Break> breaks_of(const std::string& formula) {
  std::vector<Break> breaks;
  int depth = 0;
  for (std::size_t at = 0; at < formula.size(); ++at) {
    const char sign = formula[at];
    if (sign == '(') ++depth;
    if (sign == ')') --depth;
    if (sign == ' ' && at > 0)
      breaks.push_back({at, at + 1, depth, true});
    else if ((sign == '*' || sign == '/') && at > 0)
      breaks.push_back({at, at, depth, false});
  }
  // a sign stands at the head of its line, not at the end of the one before
  std::erase_if(breaks, [&](const Break& one) {
    const char before = formula[one.end - 1];
    return one.next > one.end && (before == '+' || before == '-' || before == '=');
  });
  return breaks;
}

/// Whether a line ends better at the first than at the second, an earlier place.
bool as_good(const Break& later, const Break& earlier) {
  if (later.depth != earlier.depth) return later.depth < earlier.depth;
  return later.at_sum || !earlier.at_sum;
}

}  // namespace

std::vector<std::string> formula_lines(const std::string& formula, std::size_t width) {
  std::vector<std::string> lines;
  std::string rest = formula;
  while (width_of(rest) > width) {
    const std::vector<Break> breaks = breaks_of(rest);
    std::optional<Break> best;
    // short lines would take as much to read as brackets broken in the middle
    for (const Break& one : breaks)
      if (one.end <= width && 2 * one.end >= width && (!best || as_good(one, *best)))
        best = one;
    for (const Break& one : breaks)
      if (!best && one.end <= width) best = one;
    if (!best && !breaks.empty()) best = breaks.front();
    if (!best) break;
    lines.push_back(rest.substr(0, best->end));
    rest.erase(0, best->next);
  }
  lines.push_back(rest);
  return lines;
}

}  // namespace sheerlap
