#include "tests/joint/told_numbers.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>

namespace sheerlap {
namespace {

using Json = nlohmann::ordered_json;
using Path = std::vector<std::string>;

Path split(const std::string& path) {
  Path parts{""};
  for (const char letter : path)
    if (letter == '.')
      parts.emplace_back();
    else
      parts.back() += letter;
  return parts;
}

std::string joined(const Path& parts) {
  std::string path;
  for (const std::string& part : parts) path += (path.empty() ? "" : ".") + part;
  return path;
}

/// Whether a path is one that another stands for; "*" is any member of a list.
bool stands_for(const Path& any, const Path& path) {
  if (any.size() != path.size()) return false;
  for (std::size_t i = 0; i < any.size(); ++i)
    if (any[i] != "*" && any[i] != path[i]) return false;
  return true;
}

/// Every number of a result, by its path.
void take_numbers(const Json& value, Path& path, std::vector<Path>& found) {
  if (value.is_number()) found.push_back(path);
  if (!value.is_structured()) return;
  std::size_t index = 0;
  for (const auto& [key, member] : value.items()) {
    path.push_back(value.is_array() ? std::to_string(index++) : key);
    take_numbers(member, path, found);
    path.pop_back();
  }
}

/// A member of a result, where a list's may also be named by its name or its mark;
/// null if there is none.
const Json* member_at(const Json& result, const Path& path) {
  const Json* at = &result;
  for (const std::string& part : path) {
    if (at->is_object()) {
      if (!at->contains(part)) return nullptr;
      at = &(*at)[part];
      continue;
    }
    const Json* next = nullptr;
    for (std::size_t i = 0; i < at->size(); ++i) {
      const Json& one = (*at)[i];
      const bool named = one.is_object() && (one.value("name", "") == part ||
                                             one.value("mark", "") == part);
      if (named || std::to_string(i) == part) next = &one;
    }
    if (next == nullptr) return nullptr;
    at = next;
  }
  return at;
}

/// The place a reason tells of by name, if one of its paths is a place.
Path place_told(const Explanation& reason, const Told& told) {
  const Path any = split(told.path);
  if (told.path.find('*') == std::string::npos) return any;
  const Path figure = split(reason.figure);
  return stands_for(any, figure) ? figure : Path();
}

}  // namespace

std::set<std::string> untold_numbers(const Json& result,
                                     const Explanations& reasons,
                                     const std::vector<std::string>& echoes) {
  std::vector<Path> numbers, told;
  Path path;
  take_numbers(result, path, numbers);
  for (const Explanation& reason : reasons)
    for (const Told& one : reason.tells) told.push_back(split(one.path));
  for (const std::string& echo : echoes) told.push_back(split(echo));
  std::set<std::string> lost;
  for (Path& number : numbers) {
    const bool known = std::any_of(told.begin(), told.end(), [&](const Path& any) {
      return stands_for(any, number);
    });
    if (known) continue;
    for (std::string& part : number)
      if (part.find_first_not_of("0123456789") == std::string::npos) part = "*";
    lost.insert(joined(number));
  }
  return lost;
}

const Reason* line_of(const Explanation& reason, const std::string& letters) {
  for (const Reason& step : reason.steps)
    if (step.letters == letters) return &step;
  return nullptr;
}

std::size_t compare_told(const Json& result, const Explanations& reasons) {
  std::size_t compared = 0;
  for (const Explanation& reason : reasons)
    for (const Told& told : reason.tells) BOOST_TEST_CONTEXT(reason.figure) {
        const Reason* line = line_of(reason, told.letters);
        BOOST_TEST_REQUIRE(line != nullptr);
        const Path place = place_told(reason, told);
        if (place.empty()) continue;
        const Json* number = member_at(result, place);
        BOOST_TEST_REQUIRE((number != nullptr && number->is_number()));
        // the result has all digits; a rounding may differ
        BOOST_TEST(std::abs(number->get<double>() - line->value) <=
                   1e-9 * std::max(1.0, std::abs(line->value)));
        ++compared;
      }
  return compared;
}

}  // namespace sheerlap
