#include "joint/documents/text_table.h"

#include <algorithm>
#include <cassert>
#include <cstdint>
#include <numeric>
#include <string_view>

#include "joint/documents/printable.h"

namespace sheerlap {
namespace {

constexpr std::size_t between_columns = 2;
constexpr std::size_t least_last_column = 24;
constexpr std::size_t least_column = 12;

bool continues_character(char byte) {
  return (static_cast<std::uint8_t>(byte) & 0xC0U) == 0x80U;
}

/// The bytes that the first `count` characters take.
std::size_t bytes_of(std::string_view text, std::size_t count) {
  std::size_t at = 0;
  while (at < text.size()) {
    if (!continues_character(text[at]) && count-- == 0) break;
    ++at;
  }
  return at;
}

std::vector<std::string> words_of(const std::string& text) {
  std::vector<std::string> words;
  std::size_t at = 0;
  while ((at = text.find_first_not_of(' ', at)) != std::string::npos) {
    const std::size_t end = std::min(text.find(' ', at), text.size());
    words.push_back(text.substr(at, end - at));
    at = end;
  }
  return words;
}

std::vector<std::string> wrapped_lines(const std::string& text, std::size_t width) {
  assert(width > 0);
  std::vector<std::string> lines;
  std::string line;
  for (std::string word : words_of(text)) {
    if (!line.empty() && width_of(line) + 1 + width_of(word) > width) {
      lines.push_back(line);
      line.clear();
    }
    while (width_of(word) > width) {
      lines.push_back(word.substr(0, bytes_of(word, width)));
      word.erase(0, lines.back().size());
    }
    if (!line.empty()) line += ' ';
    line += word;
  }
  if (!line.empty() || lines.empty()) lines.push_back(line);
  return lines;
}

std::string without_end_blanks(std::string line) {
  line.erase(line.find_last_not_of(' ') + 1);
  return line;
}

std::string padded(const std::string& cell, std::size_t width, Align align) {
  const std::string fill(width - std::min(width, width_of(cell)), ' ');
  return align == Align::Left ? cell + fill : fill + cell;
}

std::vector<std::size_t> widths_of(const TextTable& table) {
  std::vector<std::size_t> widths(table.columns.size(), 0);
  const auto widen = [&](std::size_t column, const std::string& cell) {
    widths[column] = std::max(widths[column], width_of(cell));
  };
  for (std::size_t column = 0; column < widths.size(); ++column) {
    for (const std::string& line : table.columns[column].heading) widen(column, line);
    for (const auto& row : table.rows) widen(column, row[column]);
  }
  return widths;
}

std::size_t total_of(const std::vector<std::size_t>& widths) {
  return std::accumulate(widths.begin(), widths.end(),
                         between_columns * (widths.size() - 1));
}

/// Narrows the left-aligned columns, the widest first, until the table is no wider than
/// a line may be; a left-aligned last column then takes what is left of a usual line.
void narrow(const TextTable& table, std::vector<std::size_t>& widths) {
  const std::size_t last = widths.size() - 1;
  const bool last_wraps = table.columns[last].align == Align::Left;
  const std::size_t own = widths[last];
  if (last_wraps) widths[last] = std::min(own, least_last_column);
  while (total_of(widths) > widest_line) {
    std::size_t widest = widths.size();
    for (std::size_t column = 0; column < widths.size(); ++column)
      if (table.columns[column].align == Align::Left && widths[column] > least_column &&
          (widest == widths.size() || widths[column] > widths[widest]))
        widest = column;
    if (widest == widths.size()) break;
    --widths[widest];
  }
  if (!last_wraps || widths[last] >= own) return;
  const std::size_t total = total_of(widths);
  const std::size_t limit = total <= text_width ? text_width : widest_line;
  widths[last] += std::min(own - widths[last], limit - std::min(limit, total));
}

TextTable with_printable_cells(TextTable table) {
  for (auto& row : table.rows)
    for (std::string& cell : row) cell = printable(cell);
  return table;
}

using CellLines = std::vector<std::vector<std::string>>;

/// One row of cells, each of one or more lines.
std::string row_text(const TextTable& table,
                     const std::vector<std::size_t>& widths,
                     const CellLines& cells,
                     bool at_foot) {
  std::size_t height = 1;
  for (const auto& cell : cells) height = std::max(height, cell.size());
  std::string text;
  for (std::size_t line = 0; line < height; ++line) {
    std::string joined;
    for (std::size_t column = 0; column < cells.size(); ++column) {
      const auto& cell = cells[column];
      const std::size_t skipped = at_foot ? height - cell.size() : 0;
      const bool shown = line >= skipped && line - skipped < cell.size();
      if (column > 0) joined.append(between_columns, ' ');
      joined += padded(shown ? cell[line - skipped] : "", widths[column],
                       table.columns[column].align);
    }
    text += without_end_blanks(joined) + "\n";
  }
  return text;
}

}  // namespace

std::size_t width_of(const std::string& text) {
  return text.size() - static_cast<std::size_t>(std::count_if(text.begin(), text.end(),
                                                              continues_character));
}

std::string text_of(const TextTable& given) {
  const TextTable table = with_printable_cells(given);
  std::vector<std::size_t> widths = widths_of(table);
  narrow(table, widths);
  CellLines heading;
  CellLines rule;
  for (std::size_t column = 0; column < widths.size(); ++column) {
    heading.push_back(table.columns[column].heading);
    rule.push_back({std::string(widths[column], '-')});
  }
  std::string text = row_text(table, widths, heading, true);
  text += row_text(table, widths, rule, true);
  for (const auto& row : table.rows) {
    assert(row.size() == widths.size());
    CellLines cells;
    for (std::size_t column = 0; column < widths.size(); ++column) {
      if (width_of(row[column]) <= widths[column])
        cells.push_back({row[column]});
      else
        cells.push_back(wrapped_lines(row[column], widths[column]));
    }
    text += row_text(table, widths, cells, false);
  }
  return text;
}

std::string wrapped(const std::string& text, std::size_t width, std::size_t indent) {
  assert(width > indent);
  const std::string margin(indent, ' ');
  std::string result;
  for (const std::string& line : wrapped_lines(printable(text), width - indent))
    result += (result.empty() ? "" : margin) + line + "\n";
  return result;
}

}  // namespace sheerlap
