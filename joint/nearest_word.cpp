#include "joint/nearest_word.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>

namespace sheerlap {
namespace {

/// How many slips turn one word into the other: the optimal string alignment
/// distance, row by row.
std::size_t slips(std::string_view from, std::string_view to) {
  std::vector<std::size_t> before_last(to.size() + 1);
  std::vector<std::size_t> last(to.size() + 1);
  for (std::size_t j = 0; j <= to.size(); ++j) last[j] = j;
  for (std::size_t i = 1; i <= from.size(); ++i) {
    std::vector<std::size_t> row(to.size() + 1, i);
    for (std::size_t j = 1; j <= to.size(); ++j) {
      const std::size_t wrong = from[i - 1] == to[j - 1] ? 0 : 1;
      row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + wrong});
      const bool swapped =
          i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1];
      if (swapped) row[j] = std::min(row[j], before_last[j - 2] + 1);
    }
    before_last = std::move(last);
    last = std::move(row);
  }
  return last.back();
}

}  // namespace

std::string word_hint(std::string_view word,
                      const std::vector<std::string_view>& known) {
  assert(!known.empty());
  constexpr std::size_t longest_compared = 100;
  const std::string_view start = word.substr(0, longest_compared);
  const auto nearest = std::min_element(
      known.begin(), known.end(),
      [&](auto a, auto b) { return slips(start, a) < slips(start, b); });
  const std::size_t allowed = std::max(start.size(), nearest->size()) / 3 + 1;
  if (slips(start, *nearest) <= allowed)
    return fmt::format("did you mean {}?", *nearest);
  return fmt::format("one of {}", fmt::join(known, ", "));
}

}  // namespace sheerlap
