#include "joint/records/stored_words.h"

namespace sheerlap {

SideName side_of_word(std::string_view word) {
  if (word == "port") return SideName::Port;
  return word == "transom" ? SideName::Transom : SideName::Starboard;
}

PlaceKind kind_of_word(std::string_view word) {
  if (word == "mark") return PlaceKind::Mark;
  return word == "station" ? PlaceKind::Station : PlaceKind::Girth;
}

ReadingState state_of_word(std::string_view word) {
  if (word == "held") return ReadingState::Held;
  return word == "after" ? ReadingState::After : ReadingState::Dry;
}

}  // namespace sheerlap
