#include "joint/documents/fastener_use_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <vector>

#include "joint/documents/bond_text.h"
#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"

namespace sheerlap {
namespace {

/// A way in which a hole gives.
struct ModeColumn {
  FastenerMode mode;
  std::optional<double> FastenerRow::*capacity;
  std::vector<std::string> heading;
  const char* word;  ///< in the column of what gives first
};

const std::array<ModeColumn, 7>& mode_columns() {
  static const std::array<ModeColumn, 7> columns{
      {{FastenerMode::Shank, &FastenerRow::shank, {"metal", "sheared"}, "metal"},
       {FastenerMode::ShankPull,
        &FastenerRow::shank_pull,
        {"metal", "torn"},
        "metal torn"},
       {FastenerMode::Bearing, &FastenerRow::bearing, {"", "crushed"}, "crushed"},
       {FastenerMode::ShearOut,
        &FastenerRow::shear_out,
        {"sheared", "out"},
        "sheared out"},
       {FastenerMode::NetTension,
        &FastenerRow::net_tension,
        {"torn", "across"},
        "torn across"},
       {FastenerMode::PullThrough,
        &FastenerRow::pull_through,
        {"head", "through"},
        "head through"},
       {FastenerMode::PullOut,
        &FastenerRow::pull_out,
        {"thread", "out"},
        "thread out"}}};
  return columns;
}

std::string newtons(const std::optional<double>& force) {
  return force ? decimals(*force, 0) : "-";
}

/// Whether a capacity is the same at all holes, to the newton.
bool is_same(const std::vector<FastenerRow>& all, const ModeColumn& column) {
  return std::all_of(all.begin(), all.end(), [&](const FastenerRow& row) {
    return newtons(row.*column.capacity) == newtons(all.front().*column.capacity);
  });
}

std::string word_of(FastenerMode mode) {
  for (const ModeColumn& column : mode_columns())
    if (column.mode == mode) return column.word;
  return "";
}

std::string marks_over(const std::vector<FastenerRow>& rows) {
  std::string text;
  std::size_t count = 0;
  for (const FastenerRow& row : rows) {
    if (!(row.utilisation > 1)) continue;
    text += (text.empty() ? "" : ", ") + row.mark;
    ++count;
  }
  if (count == 0)
    return fmt::format("None of {} uses more than 1.", counted(rows.size(), "hole"));
  return fmt::format("{} of {} {} more than 1: {}.", count,
                     counted(rows.size(), "hole"), count == 1 ? "uses" : "use", text);
}

std::string heading(const Job& job, const NumberStyle& style) {
  const FastenerStrengths& fasteners = job.strength->fasteners;
  const FastenerRow& worst = fasteners.rows[fasteners.worst];
  return wrapped(fmt::format(
             "The bond taken as gone, each hole carries the load of its own length of "
             "joint. Worst hole: {} on {}, girth {} on the drill line: {}, use {}; {} "
             "N in shear and {} N in pull at the limit load. {}",
             worst.mark, side_word(worst.side), style.running(worst.girth),
             mode_words(worst.governing), use_text(worst.utilisation),
             decimals(worst.load, 0), decimals(worst.pull, 0),
             marks_over(fasteners.rows))) +
         "\n" +
         wrapped(fmt::format(
             "Carries is the length of joint that the hole carries, half of the space "
             "on either side and all of the way to a corner, an opening or an end, in "
             "{}. Load is the shear on the fastener and pull the load along it at the "
             "limit load; then what each mode carries before factors, the lesser of "
             "lip and hull, hot and wet; all in N. Crushed, sheared out to the edge "
             "and torn across the hole are the laminate's. Use is with shear and pull "
             "together and the factor {}. Look: OVER uses more than 1, high 0.9 or "
             "more; * is the worst hole.",
             style.unit_name(), at_most_decimals(job.joint.loads->factor_fastener, 3)));
}

/// "The same at every hole: fastener sheared 3881 N, ..."; empty if nothing is.
std::string same_everywhere(const std::vector<FastenerRow>& all) {
  std::string text;
  if (all.size() < 2) return text;
  for (const ModeColumn& column : mode_columns()) {
    if (!(all.front().*column.capacity) || !is_same(all, column)) continue;
    text += fmt::format("{} {} {} N", text.empty() ? "" : ",", mode_words(column.mode),
                        newtons(all.front().*column.capacity));
  }
  return text.empty() ? "" : "The same at every hole:" + text + ".";
}

/// A capacity that is the same at every hole has no column.
TextTable fastener_use_table(const std::vector<FastenerRow>& all,
                             const std::vector<const FastenerRow*>& rows,
                             const std::string& worst,
                             const NumberStyle& style) {
  TextTable table;
  table.columns = {
      {{"mark"}, Align::Left}, {{"girth"}}, {{"carries"}}, {{"load"}}, {{"pull"}}};
  std::vector<const ModeColumn*> shown;
  for (const ModeColumn& column : mode_columns()) {
    if (all.size() > 1 && is_same(all, column)) continue;
    shown.push_back(&column);
    table.columns.push_back({column.heading});
  }
  for (const char* last : {"gives first", "use", "look"})
    table.columns.push_back({{last}, last[0] == 'u' ? Align::Right : Align::Left});
  for (const FastenerRow* row : rows) {
    std::vector<std::string> cells{row->mark, style.running(row->girth),
                                   style.span(row->tributary), decimals(row->load, 0),
                                   decimals(row->pull, 0)};
    for (const ModeColumn* column : shown)
      cells.push_back(newtons(row->*column->capacity));
    std::string look = use_flag(row->utilisation);
    if (row->mark == worst) look += "*";
    cells.push_back(word_of(row->governing));
    cells.push_back(use_text(row->utilisation));
    cells.push_back(look);
    table.rows.push_back(std::move(cells));
  }
  return table;
}

}  // namespace

std::string fastener_use_text(const Job& job, const NumberStyle& style) {
  const FastenerStrengths& fasteners = job.strength->fasteners;
  std::string text = "The fasteners alone\n";
  if (fasteners.rows.empty()) return text + "There are no holes.\n";
  text += heading(job, style);
  if (const std::string same = same_everywhere(fasteners.rows); !same.empty())
    text += "\n" + wrapped(same);
  const std::string& worst = fasteners.rows[fasteners.worst].mark;
  for (const PerimeterSide& side : job.perimeter.sides) {
    std::vector<const FastenerRow*> rows;
    for (const FastenerRow& row : fasteners.rows)
      if (row.side == side.name) rows.push_back(&row);
    if (rows.empty()) continue;
    text += fmt::format("\n{}: the fasteners alone, hole by hole\n",
                        capitalised(side_word(side.name))) +
            text_of(fastener_use_table(fasteners.rows, rows, worst, style));
  }
  return text;
}

}  // namespace sheerlap
