#include "joint/sheets/strength_tables.h"

#include <fmt/format.h>

#include <algorithm>

#include "joint/documents/check_text.h"
#include "joint/documents/wording.h"
#include "joint/sheets/strength_words.h"

namespace sheerlap {
namespace {

PageColumn number(std::vector<std::string> heading) { return {std::move(heading)}; }

PageColumn words(std::vector<std::string> heading, double stretch) {
  PageColumn column;
  column.heading = std::move(heading);
  column.align = Align::Left;
  column.wraps = true;
  column.stretch = stretch;
  return column;
}

/// A mark or a use, which the eye looks for.
PageColumn bold(PageColumn column) {
  column.bold = true;
  return column;
}

PageRow banner(SideName side) {
  return {{capitalised(side_word(side))}, RowLook::Banner};
}

std::string force(const std::optional<double>& value) {
  return value ? decimals(*value, 0) : "-";
}

/// "1.226 !": over 1.
std::string marked_use(double use) { return use_words(use) + (use <= 1 ? "" : " !"); }

PageRow hole_row(const FastenerRow& row, const NumberStyle& style) {
  return {{row.mark, style.running(row.girth), style.span(row.tributary),
           force(row.load), force(row.pull), force(row.shank), force(row.bearing),
           force(row.shear_out), force(row.net_tension), force(row.shank_pull),
           force(row.pull_through), force(row.pull_out), marked_use(row.utilisation),
           mode_words(row.governing)}};
}

PageRow station_row(const BondPoint& point, const NumberStyle& style) {
  return {{style.running(point.girth), style.gap(point.gap_top),
           style.gap(point.gap_low), style.span(point.width),
           decimals(point.load.along, 2), decimals(point.load.across, 2),
           decimals(point.load.off, 2), decimals(point.shear_along, 2),
           decimals(point.shear_across, 2), decimals(point.peel, 2),
           marked_use(point.utilisation), mode_words(point.mode)}};
}

std::string state_of(const Check& check) {
  if (check.state == CheckState::Pass) return "PASS";
  return check.state == CheckState::Warn ? "WARN" : "FAIL";
}

/// Notes by their numbers, each once.
class NoteNumbers {
 public:
  std::string of(const std::vector<std::string>& notes, const NumberStyle& style) {
    std::string cell;
    for (const std::string& raw : notes) {
      const std::string note = style.sentence(raw);
      auto at = std::find(notes_.begin(), notes_.end(), note);
      if (at == notes_.end()) at = notes_.insert(at, note);
      cell += fmt::format("{}{}", cell.empty() ? "" : ", ", at - notes_.begin() + 1);
    }
    return cell;
  }
  std::vector<std::string> release() { return std::move(notes_); }

 private:
  std::vector<std::string> notes_;
};

}  // namespace

PageTable station_table(const Job& job, const NumberStyle& style) {
  PageTable table;
  table.columns = {bold(number({"girth", "on the", "sheer"})),
                   number({"gap", "upper", "edge"}),
                   number({"gap", "lower", "edge"}),
                   number({"width", "of", "band"}),
                   number({"load", "along", "N/mm"}),
                   number({"load", "across", "N/mm"}),
                   number({"load", "off", "N/mm"}),
                   number({"shear", "along", "N/mm2"}),
                   number({"shear", "across", "N/mm2"}),
                   number({"peel", "", "N/mm2"}),
                   bold(number({"use", "of 1"})),
                   words({"what gives first"}, 1)};
  const auto& points = job.strength->bond.stations;
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (i == 0 || points[i].side != points[i - 1].side)
      table.rows.push_back(banner(points[i].side));
    table.rows.push_back(station_row(points[i], style));
  }
  return table;
}

PageTable hole_use_table(const Job& job, const NumberStyle& style) {
  PageTable table;
  table.columns = {bold(words({"mark"}, 0)),
                   number({"girth", "drill", "line"}),
                   number({"carries", "length"}),
                   number({"shear", "on it"}),
                   number({"pull", "on it"}),
                   number({"metal", "in", "shear"}),
                   number({"lami-", "nate", "crushed"}),
                   number({"lami-", "nate", "sheared"}),
                   number({"lami-", "nate", "torn"}),
                   number({"metal", "in", "pull"}),
                   number({"head", "pulled", "through"}),
                   number({"thread", "pulled", "out"}),
                   bold(number({"use", "of 1"})),
                   words({"what gives first"}, 1)};
  table.columns.front().wraps = false;
  const auto& rows = job.strength->fasteners.rows;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (i == 0 || rows[i].side != rows[i - 1].side)
      table.rows.push_back(banner(rows[i].side));
    table.rows.push_back(hole_row(rows[i], style));
  }
  return table;
}

std::pair<PageTable, std::vector<std::string>> rule_table(const Job& job,
                                                          const NumberStyle& style) {
  PageTable table;
  table.columns = {bold(words({"state"}, 0)),
                   words({"what it asks"}, 1),
                   number({"asks", style.unit_name()}),
                   words({"what the joint has"}, 1),
                   number({"has", style.unit_name()}),
                   number({"margin", style.unit_name()}),
                   words({"source, and how", "surely known"}, 1),
                   words({"notes"}, 0)};
  table.columns.front().wraps = false;
  NoteNumbers numbers;
  for (const RuleRow& row : job.strength->rules) {
    const RuleCells cells = rule_cells(row, style);
    table.rows.push_back(
        {{cells.state, cells.asks_words, cells.asks, cells.has_words, cells.has,
          cells.margin, cells.source, numbers.of(row.notes, style)}});
  }
  return {std::move(table), numbers.release()};
}

PageTable strength_check_table(const Job& job, const NumberStyle& style) {
  PageTable table;
  PageColumn state = bold(words({"state"}, 0));
  state.wraps = false;
  table.columns = {state, words({"check"}, 1)};
  for (const Check& check : strength_checks(job)) {
    table.rows.push_back({{state_of(check), check_sentence(check, style)}});
  }
  return table;
}

}  // namespace sheerlap
