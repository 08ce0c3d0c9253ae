#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace sheerlap {

/// What to write in place of an unknown word: "did you mean pitch_max?", or all the
/// known words where none is near.
///
/// Near is one slip (a letter too many, too few, wrong or swapped with its neighbour),
/// and one more for every three letters; the nearest is the earlier of two as near.
///
/// @param known  at least one
std::string word_hint(std::string_view word,
                      const std::vector<std::string_view>& known);

}  // namespace sheerlap
