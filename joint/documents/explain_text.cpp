#include "joint/documents/explain_text.h"

#include <fmt/format.h>

#include <cmath>
#include <map>
#include <vector>

#include "joint/documents/formula_lines.h"
#include "joint/documents/printable.h"
#include "joint/documents/text_table.h"
#include "joint/reasons/term.h"

namespace sheerlap {
namespace {

constexpr std::size_t margin = 4;

std::string with_unit(double value, const std::string& unit) {
  const std::string number =
      std::isfinite(value) ? working_number(value) : "beyond all numbers";
  return unit == "1" ? number : number + " " + unit;
}

std::string indented(const std::string& text, std::size_t indent) {
  const std::string blanks(indent, ' ');
  return blanks + wrapped(text, text_width, indent);
}

/// The numbers a working starts from.
std::string given_table(const std::vector<Reason>& steps,
                        const Joint& joint,
                        const OriginWords& words_of) {
  TextTable table;
  table.columns = {{{"given"}, Align::Left},
                   {{"value"}},
                   {{"unit"}, Align::Left},
                   {{"what, and where from"}, Align::Left}};
  for (const Reason& step : steps) {
    if (!step.is_given()) continue;
    table.rows.push_back(
        {step.letters, working_number(step.value), step.unit == "1" ? "" : step.unit,
         fmt::format("{} [{}]", step.what, origin_text(step.origin, joint, words_of))});
  }
  return table.rows.empty() ? "" : text_of(table);
}

/// "tau = " and the formula, its further lines set in below it.
std::string formula_text(const std::string& lead, const std::string& formula) {
  const std::size_t indent = margin + width_of(lead);
  // a lead as long as half the line leaves its formula the next one
  const bool below = 2 * indent > text_width;
  const std::size_t column = below ? 2 * margin : indent;
  std::string text = std::string(margin, ' ') + lead;
  if (below) text += "\n" + std::string(column, ' ');
  const auto lines = formula_lines(printable(formula), text_width - column);
  for (const std::string& line : lines)
    text += (&line == &lines.front() ? "" : std::string(column, ' ')) + line + "\n";
  return text;
}

/// The formula in letters, in numbers, and its value. An equation that was solved
/// stands below its root.
std::string working_text(const Reason& step) {
  constexpr std::string_view such_that = "such that ";
  const std::string value = with_unit(step.value, step.unit);
  const std::string lead = step.letters + " = ";
  const std::string under(step.letters.size() + 1, ' ');
  if (step.formula.starts_with(such_that))
    return formula_text("", lead + value) +
           formula_text(std::string(such_that), step.formula.substr(such_that.size())) +
           formula_text("     that is ", step.numbers);
  if (step.is_found())
    return formula_text(lead, value) + indented("found: " + step.found, 2 * margin) +
           indented("accuracy: " + step.accuracy, 2 * margin);
  std::string text = formula_text(lead, step.formula);
  if (step.numbers != step.formula && step.numbers != working_number(step.value))
    text += formula_text(under + "= ", step.numbers);
  return text + formula_text(under + "= ", value);
}

/// What makes one step the same as another.
std::string identity(const Reason& step) {
  return fmt::format("{}\n{}\n{}\n{}\n{}\n{}", step.letters, step.formula, step.numbers,
                     step.found, working_number(step.value), step.what);
}

/// The blocks of one report, and what was said in those before.
class Blocks {
 public:
  Blocks(const Joint& joint, const OriginWords& words_of)
      : joint_(joint), words_of_(words_of) {}

  std::string block(const Explanation& one) {
    ++number_;
    said_here_.clear();
    std::string text =
        wrapped(fmt::format("R{}: {}", number_, one.what), text_width, 4);
    text += indented("in the result: " + one.figure, margin);
    if (const std::string table = given_table(one.steps, joint_, words_of_);
        !table.empty())
      text += "\n" + table;
    for (const Reason& step : one.steps)
      if (!step.is_given()) text += "\n" + figure(step);
    return text;
  }

 private:
  std::string figure(const Reason& step) {
    const auto [worked, is_new] = worked_.emplace(identity(step), number_);
    if (!is_new)
      return formula_text(step.letters + " = ",
                          with_unit(step.value, step.unit) +
                              fmt::format(", worked in R{}", worked->second)) +
             indented(step.what, 2 * margin);
    return working_text(step) + indented(step.what, 2 * margin) + reasons(step);
  }

  /// Source and validity; those of a figure above are only named.
  std::string reasons(const Reason& step) {
    const auto [said, is_new] =
        said_here_.emplace(step.source + "\n" + step.validity, step.letters);
    if (!is_new)
      return indented("source and validity: as for " + said->second, 2 * margin);
    return indented("source: " + step.source, 2 * margin) +
           indented("valid for: " + step.validity, 2 * margin);
  }

  const Joint& joint_;
  const OriginWords& words_of_;
  std::size_t number_ = 0;
  std::map<std::string, std::size_t> worked_;     ///< the block of each figure
  std::map<std::string, std::string> said_here_;  ///< letters by source and validity
};

}  // namespace

std::string explain_text(const Explanations& explanations,
                         const Joint& joint,
                         const OriginWords& words_of) {
  if (explanations.empty()) return "";
  std::string text =
      "Reasons\n" +
      wrapped(
          "How the figures come about, to be worked again with a calculator. Each "
          "block first lists the numbers it is given and where they are from, then "
          "each "
          "formula in its source's letters, the same with the numbers put in, and the "
          "value. Numbers are shown to six digits and worked with all they have. "
          "Everything is in N, mm and N/mm2 unless its unit says otherwise; ^ is a "
          "power, ln the natural logarithm, coth, sech and csch are 1/tanh, 1/cosh and "
          "1/sinh.");
  Blocks blocks(joint, words_of);
  for (const Explanation& one : explanations) text += "\n" + blocks.block(one);
  return text;
}

}  // namespace sheerlap
