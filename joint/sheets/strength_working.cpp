#include "joint/sheets/strength_working.h"

#include <fmt/format.h>

#include "joint/documents/wording.h"
#include "joint/reasons/term.h"
#include "joint/sheets/strength_words.h"

namespace sheerlap {
namespace {

constexpr Lettering small{.height_mm = letter_height::least};
constexpr double indent_mm = 5;

std::string value_words(const Reason& step) {
  const std::string unit = figure_unit(step.unit);
  return working_number(step.value) + (unit.empty() ? "" : " " + unit);
}

PageTable given_table(const Explanation& explanation,
                      const Joint& joint,
                      const OriginWords& words_of) {
  PageTable table;
  PageColumn letters;
  letters.heading = {"given"};
  letters.align = Align::Left;
  letters.bold = true;
  PageColumn words = letters;
  words.heading = {"what"};
  words.bold = false;
  words.wraps = true;
  words.stretch = 1;
  PageColumn from = words;
  from.heading = {"where from"};
  table.columns = {letters, words, {{"value"}}, {{"unit"}, Align::Left}, from};
  for (const Reason& step : explanation.steps)
    if (step.is_given())
      table.rows.push_back(
          {{step.letters, step.what, working_number(step.value), figure_unit(step.unit),
            origin_text(step.origin, joint, words_of)}});
  return table;
}

/// Paragraphs of one step, further in than the page.
struct Line {
  std::string words;
  double in_mm = 0;
  bool bold = false;
};

std::vector<Line> lines_of(const Reason& step, const Reason* before) {
  std::vector<Line> lines{
      {fmt::format("{} = {}   {}", step.letters, value_words(step), step.what), 0,
       true}};
  if (step.is_found()) {
    lines.push_back({"found: " + step.found, indent_mm});
    lines.push_back({"accuracy: " + step.accuracy, indent_mm});
  } else {
    lines.push_back({fmt::format("{} = {}", step.letters, step.formula), indent_mm});
    if (step.numbers != step.formula) lines.push_back({"= " + step.numbers, indent_mm});
  }
  const bool as_before =
      before && before->source == step.source && before->validity == step.validity;
  lines.push_back(
      {as_before ? "source and validity: as the line before"
                 : fmt::format("source: {}. Validity: {}", step.source, step.validity),
       indent_mm});
  return lines;
}

void write_step(SheetFlow& flow, const Reason& step, const Reason* before) {
  const auto lines = lines_of(step, before);
  const auto lettering = [](const Line& line) {
    Lettering letters = small;
    letters.bold = line.bold;
    return letters;
  };
  const double width = flow.room().width;
  double height = 0;
  for (const Line& line : lines)
    height +=
        flow.page().paragraph_height(line.words, width - line.in_mm, lettering(line));
  constexpr double after = 1.2;
  flow.need(height + after);
  for (const Line& line : lines)
    flow.take(flow.page().paragraph({flow.room().left + line.in_mm, flow.room().top},
                                    line.words, width - line.in_mm, lettering(line)));
  flow.take(after);
}

}  // namespace

void write_workings(SheetFlow& flow,
                    const Explanations& explanations,
                    const Joint& joint,
                    const OriginWords& words_of) {
  for (const Explanation& explanation : explanations) {
    flow.heading(capitalised(explanation.what));
    flow.paragraph("figure of result.json: " + explanation.figure, small);
    const PageTable given = given_table(explanation, joint, words_of);
    if (!given.rows.empty()) flow.table(given);
    const Reason* before = nullptr;
    for (const Reason& step : explanation.steps) {
      if (step.is_given()) continue;
      write_step(flow, step, before);
      before = &step;
    }
  }
}

}  // namespace sheerlap
