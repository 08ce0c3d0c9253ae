#include "joint/documents/origin_words.h"

namespace sheerlap {

std::string origin_text(const Origin& origin,
                        const Joint& joint,
                        const OriginWords& words_of) {
  if (origin.address.empty()) return origin.words;
  for (const DefaultUsed& used : joint.defaults)
    if (used.key == origin.address) return "default: " + used.why;
  return words_of ? words_of(origin.address) : "yours: " + origin.address;
}

}  // namespace sheerlap
