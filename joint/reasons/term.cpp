#include "joint/reasons/term.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerlap {

Term::Term(double value)
    : value_(value),
      letters_(working_number(value)),
      numbers_(letters_),
      binding_(value < 0 ? Binding::Sign : Binding::Whole) {}

Term::Term(double value, std::string letters, std::string numbers, Binding binding)
    : value_(value),
      letters_(std::move(letters)),
      numbers_(std::move(numbers)),
      binding_(binding) {}

Term Term::named(const std::string& letters, double value) {
  const std::string number = working_number(value);
  return {value, letters, value < 0 ? "(" + number + ")" : number, Binding::Whole};
}

Term Term::bracketed(Binding least) const {
  if (binding_ >= least) return *this;
  return {value_, "(" + letters_ + ")", "(" + numbers_ + ")", Binding::Whole};
}

Term Term::joined(double value,
                  const Term& left,
                  const std::string& sign,
                  const Term& right,
                  Binding binding) {
  return {value, left.letters_ + sign + right.letters_,
          left.numbers_ + sign + right.numbers_, binding};
}

Term operator-(const Term& term) {
  const Term whole = term.bracketed(Term::Binding::Power);
  return {-term.value_, "-" + whole.letters_, "-" + whole.numbers_,
          Term::Binding::Sign};
}

Term operator+(const Term& left, const Term& right) {
  using B = Term::Binding;
  return Term::joined(left.value_ + right.value_, left.bracketed(B::Sum), " + ",
                      right.bracketed(B::Product), B::Sum);
}

Term operator-(const Term& left, const Term& right) {
  using B = Term::Binding;
  return Term::joined(left.value_ - right.value_, left.bracketed(B::Sum), " - ",
                      right.bracketed(B::Product), B::Sum);
}

Term operator*(const Term& left, const Term& right) {
  using B = Term::Binding;
  return Term::joined(left.value_ * right.value_, left.bracketed(B::Product), "*",
                      right.bracketed(B::Power), B::Product);
}

Term operator/(const Term& left, const Term& right) {
  using B = Term::Binding;
  return Term::joined(left.value_ / right.value_, left.bracketed(B::Product), "/",
                      right.bracketed(B::Power), B::Product);
}

Term power(const Term& base, double exponent) {
  using B = Term::Binding;
  return Term::joined(power(base.value_, exponent), base.bracketed(B::Whole), "^",
                      Term(exponent).bracketed(B::Whole), B::Power);
}

Term exp2(const Term& x) {
  using B = Term::Binding;
  return Term::joined(std::exp2(x.value_), Term(2), "^", x.bracketed(B::Whole),
                      B::Power);
}

Term applied(const std::string& name,
             double value,
             const Term& first,
             const Term* second) {
  const auto text = [&](const std::string& one, const std::string& other) {
    return name + "(" + one + (second ? ", " + other : "") + ")";
  };
  return {value, text(first.letters_, second ? second->letters_ : ""),
          text(first.numbers_, second ? second->numbers_ : ""), Term::Binding::Whole};
}

Term sqrt(const Term& x) { return applied("sqrt", std::sqrt(x.value()), x, nullptr); }
Term exp(const Term& x) { return applied("exp", std::exp(x.value()), x, nullptr); }
Term log(const Term& x) { return applied("ln", std::log(x.value()), x, nullptr); }
Term sin(const Term& x) { return applied("sin", std::sin(x.value()), x, nullptr); }
Term cos(const Term& x) { return applied("cos", std::cos(x.value()), x, nullptr); }
Term tan(const Term& x) { return applied("tan", std::tan(x.value()), x, nullptr); }
Term tanh(const Term& x) { return applied("tanh", std::tanh(x.value()), x, nullptr); }
Term abs(const Term& x) { return applied("abs", std::abs(x.value()), x, nullptr); }
Term ceil(const Term& x) { return applied("ceil", std::ceil(x.value()), x, nullptr); }
Term floor(const Term& x) {
  return applied("floor", std::floor(x.value()), x, nullptr);
}
Term round(const Term& x) {
  return applied("round", std::round(x.value()), x, nullptr);
}
Term coth(const Term& x) { return applied("coth", coth(x.value()), x, nullptr); }
Term sech(const Term& x) { return applied("sech", sech(x.value()), x, nullptr); }
Term csch(const Term& x) { return applied("csch", csch(x.value()), x, nullptr); }

Term min(const Term& left, const Term& right) {
  return applied("min", std::min(left.value(), right.value()), left, &right);
}

Term max(const Term& left, const Term& right) {
  return applied("max", std::max(left.value(), right.value()), left, &right);
}

double power(double base, double exponent) { return std::pow(base, exponent); }
double coth(double x) { return 1 / std::tanh(x); }
double sech(double x) { return 1 / std::cosh(x); }
double csch(double x) { return 1 / std::sinh(x); }

std::string working_number(double value) { return fmt::format("{:.6g}", value); }

}  // namespace sheerlap
