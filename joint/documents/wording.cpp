#include "joint/documents/wording.h"

#include <fmt/format.h>

#include <cassert>

namespace sheerlap {

std::string word_of(FitVerdict verdict) {
  switch (verdict) {
    case FitVerdict::Good:
      return "good";
    case FitVerdict::Tight:
      return "tight";
    case FitVerdict::Wide:
      return "wide";
    case FitVerdict::Interference:
      return "interference";
  }
  assert(false);
  return "";
}

std::string word_of(SideEnd end) {
  switch (end) {
    case SideEnd::Corner:
      return "corner";
    case SideEnd::Smooth:
      return "smooth";
    case SideEnd::End:
      return "end";
  }
  assert(false);
  return "";
}

std::string word_of(CheckState state) {
  switch (state) {
    case CheckState::Pass:
      return "pass";
    case CheckState::Warn:
      return "warn";
    case CheckState::Fail:
      return "fail";
  }
  assert(false);
  return "";
}

std::string word_of(FirstEnd end) { return end == FirstEnd::Bow ? "bow" : "stern"; }

std::string word_of(FastenerKind kind) {
  switch (kind) {
    case FastenerKind::TappingScrew:
      return "tapping screw";
    case FastenerKind::Bolt:
      return "bolt";
    case FastenerKind::BlindRivet:
      return "blind rivet";
  }
  assert(false);
  return "";
}

std::string counted(std::size_t count, const std::string& noun) {
  return fmt::format("{} {}{}", count, noun, count == 1 ? "" : "s");
}

std::string capitalised(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
    text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

}  // namespace sheerlap
