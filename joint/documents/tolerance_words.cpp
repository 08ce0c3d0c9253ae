#include "joint/documents/tolerance_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>

namespace sheerlap {

std::string word_of(ProcessErrorKind kind) {
  switch (kind) {
    case ProcessErrorKind::HullShrinkage:
      return "hull shrinkage";
    case ProcessErrorKind::LidShrinkage:
      return "lid shrinkage";
    case ProcessErrorKind::HullOpening:
      return "hull opening";
    case ProcessErrorKind::HullTwist:
      return "hull twist";
    case ProcessErrorKind::HullTrim:
      return "hull trim";
    case ProcessErrorKind::HullFace:
      return "hull face";
    case ProcessErrorKind::LipThickness:
      return "lip thickness";
  }
  assert(false);
  return "";
}

std::string word_of(ErrorLaw law) {
  return law == ErrorLaw::Normal ? "normal" : "uniform";
}

ErrorUnit unit_of(ProcessErrorKind kind) {
  switch (kind) {
    case ProcessErrorKind::HullShrinkage:
    case ProcessErrorKind::LidShrinkage:
      return ErrorUnit::PerCent;
    case ProcessErrorKind::HullTwist:
      return ErrorUnit::Degrees;
    case ProcessErrorKind::HullOpening:
    case ProcessErrorKind::HullTrim:
    case ProcessErrorKind::HullFace:
    case ProcessErrorKind::LipThickness:
      break;
  }
  return ErrorUnit::Length;
}

std::string error_amount(ProcessErrorKind kind,
                         double amount,
                         const NumberStyle& style) {
  switch (unit_of(kind)) {
    case ErrorUnit::PerCent:
      return at_most_decimals(100 * amount, 4) + " %";
    case ErrorUnit::Degrees:
      return at_most_decimals(amount, 3) + " degrees";
    case ErrorUnit::Length:
      break;
  }
  return style.size_with_unit(Length::mm(amount));
}

std::string SampleStyle::share(double value) const {
  return decimals(100 * value, share_decimals_);
}

std::string SampleStyle::share_range(const Estimate& share) const {
  return fmt::format("{} to {}", this->share(share.low), this->share(share.high));
}

std::string SampleStyle::share_reach(const Estimate& share) const {
  return this->share(std::max(share.high - share.value, share.value - share.low));
}

}  // namespace sheerlap
