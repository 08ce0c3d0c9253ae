#include "joint/range_reason.h"

namespace sheerlap {

void add_range(WrittenWorking& work,
               Explanation& reason,
               const RangeWords& words,
               const Estimate& estimate,
               const std::vector<std::string>& paths) {
  work.found(words.low, estimate.low);
  work.found(words.high, estimate.high);
  work.found(words.value, estimate.value);
  for (const std::string& path : paths) {
    reason.tells.push_back({path + ".value", std::string(words.value.figure.letters)});
    reason.tells.push_back({path + ".low", std::string(words.low.figure.letters)});
    reason.tells.push_back({path + ".high", std::string(words.high.figure.letters)});
  }
}

Explanation range_reason(const RangeWords& words,
                         const std::string& what,
                         const Estimate& estimate,
                         const std::string& figure,
                         const std::vector<std::string>& alike) {
  WrittenWorking work;
  Explanation reason{figure + ".value", what, {}};
  add_range(work, reason, words, estimate, alike);
  reason.steps = work.release();
  return reason;
}

}  // namespace sheerlap
