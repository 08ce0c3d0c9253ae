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

}  // namespace

Term WrittenWorking::given(const GivenWords& words, double value, Origin origin) {
  Term term = Term::named(std::string(words.letters), value);
  if (stands_in(steps_, words.letters, value)) return term;
  Reason reason;
  reason.letters = words.letters;
  reason.what = words.what;
  reason.unit = words.unit;
  reason.value = value;
  reason.origin = std::move(origin);
  steps_.push_back(std::move(reason));
  return term;
}

Term WrittenWorking::figure(const FigureWords& words, const Term& formula) {
  return written(words, formula.value(), formula.letters(), formula.numbers());
}

Term WrittenWorking::written(const FigureWords& words,
                             double value,
                             std::string formula,
                             std::string numbers) {
  Term term = Term::named(std::string(words.letters), value);
  if (stands_in(steps_, words.letters, value)) return term;
  Reason reason;
  reason.letters = words.letters;
  reason.what = words.what;
  reason.unit = words.unit;
  reason.value = value;
  reason.formula = std::move(formula);
  reason.numbers = std::move(numbers);
  reason.source = words.source;
  reason.validity = words.validity;
  steps_.push_back(std::move(reason));
  return term;
}

}  // namespace sheerlap
