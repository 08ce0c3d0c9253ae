#pragma once

#include <string>

#include "geometry/quantity.h"
#include "joint/length_text.h"

namespace sheerlap {

/// A number with a fixed count of decimals and never a negative zero.
std::string decimals(double value, int count);

/// A number with at most `count` decimals, zeros at the end left off.
std::string at_most_decimals(double value, int count);

/// A price as it is given, with two decimals at least.
std::string price_text(double amount);

/// How lengths are written for people, in one unit throughout a document.
///
/// Running dimensions are rounded to a step a tape has: in mm a multiple of 0.1 mm, in
/// inches a half, quarter ... 64th; anything else that `round_to` asks for gives way to
/// 1 mm or 1/16 in. All roundings are to the nearest, halves away from zero.
class NumberStyle {
 public:
  /// @param round_to  > 0; the joint file's `layout.round_to`
  NumberStyle(LengthUnit unit, Length round_to);

  LengthUnit unit() const { return unit_; }
  /// "mm" or "in".
  std::string unit_name() const;
  /// The same for a sentence: "mm" or "inches".
  std::string unit_words() const;
  /// The step of running dimensions: "1 mm", "1/16 in".
  std::string step_name() const;

  /// A running dimension: "1235", or "48-5/8" (inches, fraction reduced).
  std::string running(Length length) const;
  /// A pitch, chord, coordinate or edge distance: 0.1 mm or 0.01 in.
  std::string span(Length length) const;
  std::string span_step() const;
  /// A gap or thickness: 0.01 mm or 0.001 in.
  std::string gap(Length length) const;
  std::string gap_step() const;
  /// The size of a bought or set thing: up to 2 decimals of mm or 3 of an inch.
  std::string size(Length length) const;
  /// A `size` with its unit.
  std::string size_with_unit(Length length) const;
  /// A sentence with its lengths rounded for the reader and in this unit: "12.5 mm" and
  /// "20 to 30 mm", as the parts of a job word them (see `worded`).
  ///
  /// Behind the word "girth" a length is a `running` dimension. Any other that is as
  /// round as people give them, to 0.01 mm, or to 0.001 or 1/16 in, stands as it is; of
  /// the rest those under 10 mm are rounded as a `size`, longer ones as a `span`.
  std::string sentence(const std::string& text) const;
  /// A length in full, for other programs to read: 0.001 mm or 0.0001 in.
  std::string full(Length length) const;

 private:
  double in_unit(Length length) const;
  std::string in_sentence(Length length) const;

  LengthUnit unit_;
  double step_;  ///< of running dimensions, in `unit_`
};

}  // namespace sheerlap
