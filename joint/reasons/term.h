#pragma once

#include <algorithm>
#include <cmath>
#include <string>

namespace sheerlap {

/// A number that carries the working it came from: the formula in letters, and the same
/// with the numbers put in. Formulas written once for `double` and `Term` alike so give
/// a value and the working that leads to it, and the two cannot differ.
///
///     const Term E = Term::named("E", 8000), t = Term::named("t", 5);
///     sqrt(E * t / 2).letters()   // "sqrt(E*t/2)"
///     sqrt(E * t / 2).numbers()   // "sqrt(8000*5/2)"
///
/// The text is plain infix arithmetic: + - * / ^, brackets, and the functions below.
class Term {
 public:
  /// A number that stands in the formula itself.
  Term(double value);  // NOLINT: 2 * E is to read as it does in the source
  /// A quantity by its letters.
  static Term named(const std::string& letters, double value);

  double value() const { return value_; }
  const std::string& letters() const { return letters_; }
  const std::string& numbers() const { return numbers_; }

  friend Term operator-(const Term& term);
  friend Term operator+(const Term& left, const Term& right);
  friend Term operator-(const Term& left, const Term& right);
  friend Term operator*(const Term& left, const Term& right);
  friend Term operator/(const Term& left, const Term& right);
  /// A power; `power(x, 0.25)` reads "x^0.25".
  friend Term power(const Term& base, double exponent);
  /// A power of two, "2^x".
  friend Term exp2(const Term& x);
  /// A function by its name: "name(a, b)".
  /// @param second  null for a function of one argument
  friend Term applied(const std::string& name,
                      double value,
                      const Term& first,
                      const Term* second);

 private:
  /// How tightly the outermost sign binds.
  enum class Binding { Sum, Product, Sign, Power, Whole };
  Term(double value, std::string letters, std::string numbers, Binding binding);
  /// The texts in brackets if they bind less tightly than asked.
  Term bracketed(Binding least) const;
  static Term joined(double value,
                     const Term& left,
                     const std::string& sign,
                     const Term& right,
                     Binding binding);

  double value_;
  std::string letters_;
  std::string numbers_;
  Binding binding_ = Binding::Whole;
};

Term sqrt(const Term& x);
Term exp(const Term& x);
Term exp2(const Term& x);
/// The natural logarithm, written "ln(x)".
Term log(const Term& x);
Term sin(const Term& x);
Term cos(const Term& x);
Term tan(const Term& x);
Term tanh(const Term& x);
Term abs(const Term& x);
Term ceil(const Term& x);
Term floor(const Term& x);
Term round(const Term& x);
Term min(const Term& left, const Term& right);
Term max(const Term& left, const Term& right);
/// 1/tanh(x).
Term coth(const Term& x);
/// 1/cosh(x): 0 where cosh(x) is beyond all numbers.
Term sech(const Term& x);
/// 1/sinh(x): 0 where sinh(x) is beyond all numbers.
Term csch(const Term& x);

/// The same for plain numbers, so that a formula finds them either way.
using std::abs;
using std::ceil;
using std::cos;
using std::exp;
using std::exp2;
using std::floor;
using std::log;
using std::round;
using std::sin;
using std::sqrt;
using std::tan;
using std::tanh;
inline double min(double left, double right) { return std::min(left, right); }
inline double max(double left, double right) { return std::max(left, right); }
double power(double base, double exponent);
double coth(double x);
double sech(double x);
double csch(double x);

/// The plain number of either kind, for comparisons.
inline double value_of(double number) { return number; }
inline double value_of(const Term& term) { return term.value(); }

/// A number as the working shows it: six significant digits.
std::string working_number(double value);

}  // namespace sheerlap
