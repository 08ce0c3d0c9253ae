#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/tolerance_answers.h"

namespace sheerlap {

/// "hull shrinkage", "lip thickness" ..., as the joint file has it.
std::string word_of(ProcessErrorKind kind);

/// "normal" or "uniform".
std::string word_of(ErrorLaw law);

/// In which of the three an error is given: per cent, degrees or a length.
enum class ErrorUnit { PerCent, Degrees, Length };
ErrorUnit unit_of(ProcessErrorKind kind);

/// A mean or a spread with its unit: "0.15 %", "0.1 degrees", "1.5 mm".
std::string error_amount(ProcessErrorKind kind,
                         double amount,
                         const NumberStyle& style);

/// How figures of made-up boats are written: each with as many decimals as its sample
/// can tell.
class SampleStyle {
 public:
  explicit SampleStyle(std::size_t boats) : share_decimals_(boats < 40000 ? 1 : 2) {}

  /// A share as boats in a hundred.
  std::string share(double value) const;
  /// "92.4 to 93.5".
  std::string share_range(const Estimate& share) const;
  /// How far the true share may be from it, the longer way.
  std::string share_reach(const Estimate& share) const;

 private:
  int share_decimals_;
};

}  // namespace sheerlap
