#pragma once

#include <string_view>
#include <utility>
#include <vector>

#include "joint/reasons/reason.h"
#include "joint/reasons/term.h"

namespace sheerlap {

/// The two sides of an equation that a solver has met.
template <class Number>
struct Equation {
  Number left;
  Number right;
};

/// A calculation of which only the numbers are wanted.
///
/// A formula is a template on its working, so that one text gives both the number and
/// its reason:
///
///     template <class Working>
///     typename Working::Number shear_lag(Working& work, const Lap<Number>& lap) {
///       return work.figure({"lam", "...", "1/mm", "source", "validity"},
///                          sqrt(lap.Ga / lap.eta * (1 / lap.Et_1 + 1 / lap.Et_2)));
///     }
class PlainWorking {
 public:
  using Number = double;

  Number given(const GivenWords&, double value, const Origin&) { return value; }
  Number sought(std::string_view, double value) { return value; }
  Number figure(const FigureWords&, Number value) { return value; }
  Number found(const FoundWords&, double value) { return value; }
  /// @param equation  a function of the root, called for its text alone
  template <class Function>
  Number solved(const FigureWords&, double root, const Function&) {
    return root;
  }
};

/// A calculation that is written down as it is made.
class WrittenWorking {
 public:
  using Number = Term;

  /// A number the calculation starts from.
  Number given(const GivenWords& words, double value, Origin origin);
  /// A number that stands in formulas before the line that gives it, by `solved`.
  Number sought(std::string_view letters, double value) {
    return Term::named(std::string(letters), value);
  }
  /// A figure by its formula.
  Number figure(const FigureWords& words, const Number& formula);
  /// A figure that was measured on the faces or searched for.
  Number found(const FoundWords& words, double value);
  /// A figure that meets an equation.
  template <class Function>
  Number solved(const FigureWords& words, double root, const Function& equation) {
    const Term term = Term::named(std::string(words.letters), root);
    const Equation<Term> met = equation(term);
    return written(words, root,
                   "such that " + met.left.letters() + " = " + met.right.letters(),
                   met.left.numbers() + " = " + met.right.numbers());
  }

  const std::vector<Reason>& steps() const { return steps_; }
  std::vector<Reason> release() { return std::move(steps_); }

 private:
  Number written(const FigureWords& words,
                 double value,
                 std::string formula,
                 std::string numbers);
  Number kept(Reason reason);

  std::vector<Reason> steps_;  ///< each letter once
};

}  // namespace sheerlap
