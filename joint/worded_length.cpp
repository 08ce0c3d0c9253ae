#include "joint/worded_length.h"

#include <fmt/format.h>

namespace sheerlap {
namespace {

std::string number(double value_mm) {
  std::string text = fmt::format("{:.4f}", value_mm);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text == "-0" ? "0" : text;
}

}  // namespace

std::string worded(Length length) { return number(length.in_mm()) + " mm"; }

std::string worded_range(Length from, Length to) {
  return number(from.in_mm()) + " to " + worded(to);
}

}  // namespace sheerlap
