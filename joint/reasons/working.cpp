#include "joint/reasons/working.h"

#include <algorithm>
#include <cassert>

namespace sheerlap {
namespace {

/// Whether a figure of these letters stands in the working already; the same letters
/// for another number would make it unreadable.
bool stands_in(const std::vector<Reason>& steps,
               std::string_view letters,
               double value) {
  const auto found = std::find_if(steps.begin(), steps.end(), [&](const Reason& step) {
    return step.letters == letters;
  });
  if (found == steps.end()) return false;
  assert(found->value == value && "one letter, one number");
  return true;
}

Reason reason_with(const FigureWords& words, double value) {
  Reason reason;
  reason.letters = words.letters;
  reason.what = words.what;
  reason.unit = words.unit;
  reason.value = value;
  reason.source = words.source;
  reason.validity = words.validity;
  return reason;
}

}  // namespace

Term WrittenWorking::kept(Reason reason) {
  Term term = Term::named(reason.letters, reason.value);
  if (!stands_in(steps_, reason.letters, reason.value))
    steps_.push_back(std::move(reason));
  return term;
}

Term WrittenWorking::given(const GivenWords& words, double value, Origin origin) {
  Reason reason;
  reason.letters = words.letters;
  reason.what = words.what;
  reason.unit = words.unit;
  reason.value = value;
  reason.origin = std::move(origin);
  return kept(std::move(reason));
}

Term WrittenWorking::figure(const FigureWords& words, const Term& formula) {
  return written(words, formula.value(), formula.letters(), formula.numbers());
}

Term WrittenWorking::found(const FoundWords& words, double value) {
  Reason reason = reason_with(words.figure, value);
  reason.found = words.how;
  reason.accuracy = words.accuracy;
  return kept(std::move(reason));
}

Term WrittenWorking::written(const FigureWords& words,
                             double value,
                             std::string formula,
                             std::string numbers) {
  Reason reason = reason_with(words, value);
  reason.formula = std::move(formula);
  reason.numbers = std::move(numbers);
  return kept(std::move(reason));
}

}  // namespace sheerlap
