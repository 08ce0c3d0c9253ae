#include "cli/explain_option.h"

#include <algorithm>
#include <string_view>

namespace sheerlap {
namespace {

constexpr std::string_view flag = "--explain";

bool is_letter(char sign) {
  return (sign >= 'A' && sign <= 'Z') || (sign >= 'a' && sign <= 'z');
}

bool is_digit(char sign) { return sign >= '0' && sign <= '9'; }

/// "S14", "p3", "T001": letters and then digits.
bool looks_like_mark(std::string_view word) {
  const auto digits = std::find_if_not(word.begin(), word.end(), is_letter);
  return digits != word.begin() && digits != word.end() &&
         std::all_of(digits, word.end(), is_digit);
}

bool takes_value(std::string_view word) {
  return word == "--out" || word == "--units" || word == "--paper" ||
         word == "--readings" || word == "--state";
}

}  // namespace

ExplainOption take_explain(std::vector<std::string>& arguments) {
  ExplainOption found;
  std::vector<std::string> rest;
  std::size_t places = 0;  // of command and file, that are filled
  bool is_value = false;
  for (std::size_t i = 0; i < arguments.size(); ++i) {
    const std::string& word = arguments[i];
    if (word == "--") {
      rest.insert(rest.end(), arguments.begin() + static_cast<std::ptrdiff_t>(i),
                  arguments.end());
      break;
    }
    const bool with_mark = word.starts_with("--explain=");
    if (is_value || (word != flag && !with_mark)) {
      if (!is_value && !word.starts_with("-")) ++places;
      is_value = !is_value && takes_value(word);
      rest.push_back(word);
      continue;
    }
    found.given = true;
    ++found.times;
    if (with_mark) found.mark = word.substr(flag.size() + 1);
    if (with_mark || i + 1 == arguments.size()) continue;
    const std::string& next = arguments[i + 1];
    if (next.starts_with("-") || !(looks_like_mark(next) || places >= 2)) continue;
    found.mark = next;
    ++i;
  }
  arguments = std::move(rest);
  return found;
}

}  // namespace sheerlap
