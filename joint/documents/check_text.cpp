#include "joint/documents/check_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "joint/documents/cautions.h"
#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"

namespace sheerlap {
namespace {

std::size_t count_of(const Checks& checks, CheckState state) {
  return static_cast<std::size_t>(
      std::count_if(checks.begin(), checks.end(),
                    [&](const Check& check) { return check.state == state; }));
}

std::string amount(double value, int count, const std::string& unit) {
  return at_most_decimals(value, count) + (unit.empty() ? "" : " " + unit);
}

/// How a check's numbers are shown in the document's unit.
struct Scale {
  double factor = 1;
  std::string unit;
  int decimals = 2;
};

Scale scale_of(const std::string& unit, LengthUnit shown) {
  const double inches_in_mm = Length::mm(1).in_inches();
  if (shown == LengthUnit::Inches && unit == "mm") return {inches_in_mm, "in", 3};
  if (shown == LengthUnit::Inches && unit == "mm2")
    return {inches_in_mm * inches_in_mm, "sq in", 4};
  return {1, unit == "mm2" ? "sq mm" : unit, 2};
}

/// "0.6 mm against 1 mm", lengths in the document's unit; with as many decimals as it
/// takes to tell the two apart.
std::string value_against_limit(const Check& check, const NumberStyle& style) {
  if (!std::isfinite(check.value)) return "beyond all that is carried";
  const Scale scale = scale_of(check.unit, style.unit());
  int count = scale.decimals;
  std::string value, limit;
  do {
    value = amount(check.value * scale.factor, count, scale.unit);
    limit = amount(*check.limit * scale.factor, count, scale.unit);
  } while (value == limit && check.value != *check.limit && ++count < 10);
  return fmt::format("{} against {}", value, limit);
}

std::string check_text(const Check& check, const NumberStyle& style) {
  return fmt::format("{} {}: {}", check.state == CheckState::Fail ? "FAIL" : "WARN",
                     check.id, check_sentence(check, style));
}

}  // namespace

std::string verdict_line(const Checks& checks) {
  const std::size_t failed = count_of(checks, CheckState::Fail);
  const std::size_t warned = count_of(checks, CheckState::Warn);
  const std::string all = counted(checks.size(), "check");
  const std::string warn = fmt::format("{} {}", warned, warned == 1 ? "warns" : "warn");
  if (failed > 0)
    return fmt::format("STOP: {} of {} {}{}; see the list before you cut or drill.",
                       failed, all, failed == 1 ? "fails" : "fail",
                       warned == 0 ? "" : ", " + warn);
  if (warned > 0)
    return fmt::format("LOOK FIRST: none of {} fails, {}; see the list.", all, warn);
  if (checks.empty()) return "GO ON: nothing was found wrong.";
  return fmt::format("GO ON: {} with nothing found wrong.", all);
}

std::string check_sentence(const Check& check, const NumberStyle& style) {
  std::string text = style.sentence(capitalised(check.what));
  if (check.limit) text += ": " + value_against_limit(check, style);
  if (!check.source.empty()) text += fmt::format(" ({})", style.sentence(check.source));
  return text;
}

std::string check_list(const Checks& checks, const NumberStyle& style) {
  std::string text;
  for (const CheckState state : {CheckState::Fail, CheckState::Warn})
    for (const Check& check : checks)
      if (check.state == state)
        text += wrapped(check_text(check, style), text_width, 5);
  return text.empty() ? "" : "Checks that fail or warn\n" + text;
}

std::string default_list(const Joint& joint, const NumberStyle& style) {
  if (joint.defaults.empty()) return "";
  TextTable table;
  table.columns = {
      {{"key"}, Align::Left}, {{"value"}, Align::Left}, {{"why"}, Align::Left}};
  for (const DefaultUsed& used : joint.defaults)
    table.rows.push_back(
        {used.key, style.sentence(used.value), style.sentence(used.why)});
  return "Defaults used, because the joint file does not say\n" + text_of(table);
}

std::string caution_list() {
  std::string text = "Cautions\n";
  for (const std::string& paragraph : cautions())
    text += wrapped("- " + paragraph, text_width, 2);
  return text;
}

}  // namespace sheerlap
