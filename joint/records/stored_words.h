#pragma once

#include <string_view>

#include "joint/gap_readings.h"

namespace sheerlap {

/// What the words of a record's tables stand for; the tables allow no others.
SideName side_of_word(std::string_view word);
PlaceKind kind_of_word(std::string_view word);
ReadingState state_of_word(std::string_view word);

}  // namespace sheerlap
