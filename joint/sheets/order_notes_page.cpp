#include "joint/documents/cautions.h"
#include "joint/documents/check_text.h"
#include "joint/documents/wording.h"
#include "joint/sheets/order_pages.h"

namespace sheerlap {
namespace {

constexpr std::size_t last_column = 2;

/// The paragraphs of a text whose further lines are indented.
std::vector<std::string> paragraphs(const std::string& text) {
  std::vector<std::string> result;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    const std::string line = text.substr(at, end - at);
    const std::size_t first = line.find_first_not_of(' ');
    if (first != std::string::npos && first > 0 && !result.empty())
      result.back() += " " + line.substr(first);
    else if (first != std::string::npos)
      result.push_back(line);
    at = end + 1;
  }
  return result;
}

const char* const reading[] = {
    "Every figure with a formula follows the page Inputs at once. The figures that "
    "were "
    "written with it are the program's own.",
    "Exact: boats, waste, packs, purge, prices, spares, boxes, shelf life, and the "
    "squeeze-outs named on the page Beads. On the safe side: any other squeeze-out.",
    "Not here: the geometry. Another gap, flange offset, bond band, bead size, "
    "fastener "
    "size, length or pitch is a change to the joint file and a new run of the program.",
    "Amounts are rounded where they are shown, not where they are reckoned with; whole "
    "packs, boxes, nozzles and pieces are rounded up. An excess of less than a "
    "thousand "
    "millionth is taken as rounding.",
    "A month has 365.25 / 12 days. The shelf life is reckoned from the day of "
    "delivery.",
};

}  // namespace

void write_notes(BookPage& page, const OrderFigures& figures) {
  page.widths({28, 28, 74});
  std::size_t row =
      write_head(page, figures, last_column, "how to read it, checks and cautions",
                 "What the other pages rest on.");
  const auto section = [&](const char* heading) {
    page.paragraph(row++, last_column, heading, {CellKind::Strong});
  };
  section("How to read this workbook");
  for (const char* words : reading) page.paragraph(row++, last_column, words);
  const auto checks = paragraphs(check_list(figures.job.checks, figures.style));
  if (!checks.empty()) {
    row++;
    section((checks.front() + ", as worked out by the program for " +
             counted(figures.rules().boats, "boat") +
             "; they do not follow the page Inputs")
                .c_str());
    for (std::size_t i = 1; i < checks.size(); ++i)
      page.paragraph(row++, last_column, checks[i]);
  }
  row++;
  section("Cautions");
  for (const std::string& words : cautions()) page.paragraph(row++, last_column, words);
  const auto& defaults = figures.job.joint.defaults;
  if (!defaults.empty()) {
    row++;
    section("Defaults used, because the joint file does not say");
    page.headings(row++, {"key", "value", "why"}, {0, 1, 2});
    for (const DefaultUsed& used : defaults) {
      page.text({row, 0}, used.key, {CellKind::Figure});
      page.text({row, 1}, figures.style.sentence(used.value), {CellKind::Figure});
      page.text({row++, 2}, figures.style.sentence(used.why), {CellKind::Figure});
    }
  }
  page.print({row, last_column}, std::nullopt);
}

}  // namespace sheerlap
