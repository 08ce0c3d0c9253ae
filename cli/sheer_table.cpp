#include "cli/sheer_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <limits>
#include <optional>
#include <string>

#include "cli/csv_lines.h"
#include "cli/text_file.h"
#include "joint/nearest_word.h"
#include "joint/quoted_text.h"

namespace sheerlap {
namespace {

constexpr std::size_t most_errors = 100;

constexpr std::array<std::string_view, 3> point_columns{"x", "y", "z"};

std::vector<std::string_view> column_names() {
  std::vector<std::string_view> names(point_columns.begin(), point_columns.end());
  names.insert(names.end(), {"station", "knuckle"});
  for (const OffsetColumn& column : offset_columns) names.push_back(column.name);
  return names;
}

enum class CellKind { Nothing, Coordinate, Offset, Station, Knuckle };

struct Column {
  CellKind kind = CellKind::Nothing;
  std::size_t index = 0;  ///< into the point, or into `offset_columns`
  std::string name;
};

std::optional<Column> column_named(const std::string& name) {
  if (name.empty()) return Column{};
  if (name == "station") return Column{CellKind::Station, 0, name};
  if (name == "knuckle") return Column{CellKind::Knuckle, 0, name};
  for (std::size_t i = 0; i < point_columns.size(); ++i)
    if (name == point_columns[i]) return Column{CellKind::Coordinate, i, name};
  for (std::size_t i = 0; i < offset_columns.size(); ++i)
    if (name == offset_columns[i].name) return Column{CellKind::Offset, i, name};
  return std::nullopt;
}

class SheerTableReader {
 public:
  explicit SheerTableReader(LengthUnit unit) : unit_(unit) {}

  SheerTable read(std::string_view text) {
    text = without_byte_order_mark(text);
    for (std::size_t line = 1; !text.empty(); ++line) {
      const bool closed = csv_.read(take_line(text));
      const auto& cells = csv_.cells();
      const bool blank = std::all_of(cells.begin(), cells.end(),
                                     [](const auto& cell) { return cell.empty(); });
      if (closed && blank) continue;
      if (columns_.empty()) {
        table_.header_line = line;
        if (!closed) return refused_at("sheer.header", not_closed);
        if (!read_header()) break;
      } else {
        read_row(line, closed);
      }
    }
    if (columns_.empty() && table_.errors.empty())
      return refused_at("sheer.header",
                        "the sheer table is empty: a header line with x,y,z, and a "
                        "line for each point");
    if (hidden_errors_ > 0)
      table_.errors.push_back(
          {ErrorKind::InvalidInput, table_.errors.back().where,
           fmt::format("{} more cells are wrong: mend those above first",
                       hidden_errors_)});
    return std::move(table_);
  }

 private:
  static constexpr const char* not_closed =
      "a quoted cell is not closed on its line: close it, or leave the quotes out";

  SheerTable refused_at(std::string where, std::string message) {
    add_error(std::move(where), std::move(message));
    return std::move(table_);
  }

  void add_error(std::string where, std::string message) {
    if (table_.errors.size() < most_errors)
      table_.errors.push_back(
          {ErrorKind::InvalidInput, std::move(where), std::move(message)});
    else
      ++hidden_errors_;
  }

  /// @returns  whether the rows below it can be read
  bool read_header() {
    const auto& cells = csv_.cells();
    const auto& first = cells.front();
    if (cells.size() == 1 && first.find_first_of(";\t") != std::string::npos) {
      add_error(
          "sheer.header",
          fmt::format("the columns are separated by {}: separate them by commas, "
                      "with a point in the numbers",
                      first.find(';') == std::string::npos ? "tabs" : "semicolons"));
      return false;
    }
    if (length_from_text(first, unit_)) {
      add_error("sheer.header",
                "the first line holds numbers: start with a header line such as x,y,z");
      return false;
    }
    for (const std::string& cell : cells) add_column(cell);
    for (const std::string_view needed : point_columns)
      if (!has_column(needed))
        add_error("sheer.header",
                  fmt::format("the sheer table has no column {}: x, y and z are needed",
                              needed));
    return table_.errors.empty();
  }

  bool has_column(std::string_view name) const {
    return std::any_of(columns_.begin(), columns_.end(),
                       [&](const Column& column) { return column.name == name; });
  }

  void add_column(const std::string& name) {
    const auto column = column_named(name);
    if (!column)
      add_error("sheer.header", fmt::format("unknown column {}: {}", quoted_text(name),
                                            word_hint(name, column_names())));
    else if (!name.empty() && has_column(name))
      add_error("sheer.header",
                fmt::format("the column {} stands twice: leave one out", name));
    else if (column->kind == CellKind::Offset)
      table_.given[column->index] = true;
    columns_.push_back(column.value_or(Column{}));
  }

  void read_row(std::size_t line, bool closed) {
    where_ = fmt::format("sheer.row[{}]", table_.rows.size());
    table_.row_lines.push_back(line);
    table_.rows.emplace_back();
    const auto& cells = csv_.cells();
    if (!closed) return add_error(where_, not_closed);
    const bool ragged =
        cells.size() < columns_.size() ||
        std::any_of(cells.begin() + static_cast<std::ptrdiff_t>(columns_.size()),
                    cells.end(), [](const auto& cell) { return !cell.empty(); });
    if (ragged)
      return add_error(
          where_, fmt::format("the row has {} cells and the header {} columns: one "
                              "cell for each column",
                              cells.size(), columns_.size()));
    for (std::size_t i = 0; i < columns_.size(); ++i)
      read_cell(columns_[i], cells[i], table_.rows.back());
  }

  void read_cell(const Column& column, const std::string& cell, SheerRow& row) {
    switch (column.kind) {
      case CellKind::Coordinate:
        row.point[static_cast<Eigen::Index>(column.index)] =
            length(column.name, cell).in_mm();
        break;
      case CellKind::Offset:
        read_offset(column, cell, row.offsets);
        break;
      case CellKind::Station:
        row.station = cell;
        if (has_control_character(cell))
          add_error(where_, "station has a control character: plain text");
        break;
      case CellKind::Knuckle:
        row.knuckle = cell == "1";
        if (cell != "1" && cell != "0" && !cell.empty())
          add_error(where_, fmt::format("knuckle is {}: 0 or 1", quoted_text(cell)));
        break;
      case CellKind::Nothing:
        if (!cell.empty())
          add_error(where_,
                    fmt::format("{} stands in a column without a name: name it, "
                                "or leave it empty",
                                quoted_text(cell)));
        break;
    }
  }

  void read_offset(const Column& column,
                   const std::string& cell,
                   FlangeOffsets& offsets) {
    const OffsetColumn& offset = offset_columns[column.index];
    const Length value = length(column.name, cell);
    offsets.*offset.value = value;
    if (offset.value == &FlangeOffsets::lap && value <= Length())
      add_error(where_,
                fmt::format("lap is {}: more than 0", length_words(value, unit_)));
  }

  Length length(std::string_view name, const std::string& cell) {
    constexpr Length unread = Length::mm(std::numeric_limits<double>::quiet_NaN());
    if (cell.empty()) {
      add_error(
          where_,
          fmt::format("{} is empty: a length in every row, or no such column", name));
      return unread;
    }
    const auto value = length_from_text(cell, unit_);
    if (value) return *value;
    add_error(where_, fmt::format("{} {}", name, value.error().front().message));
    return unread;
  }

  LengthUnit unit_;
  CsvLines csv_;
  SheerTable table_;
  std::vector<Column> columns_;
  std::string where_;  ///< the row being read
  std::size_t hidden_errors_ = 0;
};

}  // namespace

SheerTable read_sheer_table(std::string_view text, LengthUnit unit) {
  return SheerTableReader(unit).read(text);
}

}  // namespace sheerlap
