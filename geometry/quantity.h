#pragma once

#include <compare>
#include <numbers>

namespace sheerlap {

/// A number with a unit that cannot be lost: sums, differences and comparisons
/// are between like quantities, and the ratio of two is a plain number.
template <class Derived>
class Quantity {
 public:
  constexpr Quantity() = default;

  constexpr auto operator<=>(const Quantity&) const = default;
  friend constexpr Derived operator+(Derived a, Derived b) {
    return of(a.value_ + b.value_);
  }
  friend constexpr Derived operator-(Derived a, Derived b) {
    return of(a.value_ - b.value_);
  }
  friend constexpr Derived operator-(Derived a) { return of(-a.value_); }
  friend constexpr Derived operator*(Derived a, double factor) {
    return of(a.value_ * factor);
  }
  friend constexpr Derived operator*(double factor, Derived a) { return a * factor; }
  friend constexpr Derived operator/(Derived a, double divisor) {
    return of(a.value_ / divisor);
  }
  friend constexpr double operator/(Derived a, Derived b) {
    return a.value_ / b.value_;
  }
  constexpr Derived& operator+=(Derived other) {
    value_ += other.value_;
    return static_cast<Derived&>(*this);
  }

 protected:
  constexpr explicit Quantity(double value) : value_(value) {}
  double value_ = 0;

 private:
  /// A member, because the friends above may not call what befriends this class only.
  static constexpr Derived of(double value) { return Derived(value); }
};

/// A length; 1 in is 25.4 mm exactly (ISO 31-1, international inch).
class Length : public Quantity<Length> {
 public:
  constexpr Length() = default;
  static constexpr Length mm(double value) { return Length(value); }
  static constexpr Length inches(double value) { return Length(value * 25.4); }
  constexpr double in_mm() const { return value_; }
  constexpr double in_inches() const { return value_ / 25.4; }

 private:
  friend Quantity<Length>;
  constexpr explicit Length(double value) : Quantity(value) {}
};

/// An angle.
class Angle : public Quantity<Angle> {
 public:
  constexpr Angle() = default;
  static constexpr Angle radians(double value) { return Angle(value); }
  static constexpr Angle degrees(double value) {
    return Angle(value * std::numbers::pi / 180);
  }
  constexpr double in_radians() const { return value_; }
  constexpr double in_degrees() const { return value_ * 180 / std::numbers::pi; }

 private:
  friend Quantity<Angle>;
  constexpr explicit Angle(double value) : Quantity(value) {}
};

/// A volume; 1 ml = 1000 mm3.
class Volume : public Quantity<Volume> {
 public:
  constexpr Volume() = default;
  static constexpr Volume ml(double value) { return Volume(value); }
  static constexpr Volume mm3(double value) { return Volume(value / 1000); }
  constexpr double in_ml() const { return value_; }
  constexpr double in_litres() const { return value_ / 1000; }

 private:
  friend Quantity<Volume>;
  constexpr explicit Volume(double value) : Quantity(value) {}
};

/// A stretch of time.
class Duration : public Quantity<Duration> {
 public:
  constexpr Duration() = default;
  static constexpr Duration minutes(double value) { return Duration(value); }
  static constexpr Duration days(double value) { return Duration(value * 24 * 60); }
  constexpr double in_minutes() const { return value_; }
  constexpr double in_days() const { return value_ / (24 * 60); }

 private:
  friend Quantity<Duration>;
  constexpr explicit Duration(double value) : Quantity(value) {}
};

}  // namespace sheerlap
