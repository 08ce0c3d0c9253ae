#include "cli/reading_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <optional>

#include "cli/csv_lines.h"
#include "cli/text_file.h"
#include "joint/nearest_word.h"
#include "joint/quoted_text.h"

namespace sheerlap {
namespace {

constexpr std::size_t most_errors = 100;
constexpr std::size_t largest_reading_file = 4'000'000;
/// No joint is bonded over a wider gap; a reading above it has a wrong unit or point.
const Length widest_gap = Length::mm(100);
constexpr std::string_view header_address = "reading.header";

enum class ReadingColumn { Side, Girth, Mark, Station, GapTop, GapLow, State, Note };
const std::vector<std::string_view> column_names{
    "side", "girth", "mark", "station", "gap_top", "gap_low", "state", "note"};

constexpr std::array places{ReadingColumn::Girth, ReadingColumn::Mark,
                            ReadingColumn::Station};

class ReadingTableReader {
 public:
  explicit ReadingTableReader(LengthUnit unit) : unit_(unit) {}

  ReadingTable read(std::string_view text) {
    text = without_byte_order_mark(text);
    for (std::size_t line = 1; !text.empty(); ++line) {
      const bool closed = csv_.read(take_line(text));
      const auto& cells = csv_.cells();
      const bool blank = std::all_of(cells.begin(), cells.end(),
                                     [](const auto& cell) { return cell.empty(); });
      if (closed && blank) continue;
      if (columns_.empty()) {
        table_.header_line = line;
        where_ = header_address;
        if (!closed) return refused(not_closed);
        if (!read_header()) break;
      } else {
        read_row(line, closed);
      }
    }
    if (table_.errors.empty() && table_.readings.empty()) {
      where_ = header_address;
      return refused(
          "there is no reading in it: a header line such as "
          "side,girth,gap_top,gap_low,state and a line for each reading");
    }
    if (hidden_errors_ > 0)
      table_.errors.push_back(
          {ErrorKind::InvalidInput, table_.errors.back().where,
           fmt::format("{} more things are wrong: mend those above first",
                       hidden_errors_)});
    return std::move(table_);
  }

 private:
  static constexpr const char* not_closed =
      "a quoted cell is not closed on its line: close it, or leave the quotes out";

  ReadingTable refused(std::string message) {
    add_error(std::move(message));
    return std::move(table_);
  }

  void add_error(std::string message) {
    if (table_.errors.size() < most_errors)
      table_.errors.push_back({ErrorKind::InvalidInput, where_, std::move(message)});
    else
      ++hidden_errors_;
  }

  bool has(ReadingColumn column) const {
    return std::find(columns_.begin(), columns_.end(), column) != columns_.end();
  }

  bool read_header() {
    for (const std::string& name : csv_.cells()) {
      const auto found = std::find(column_names.begin(), column_names.end(), name);
      if (found == column_names.end()) {
        add_error(fmt::format("unknown column {}: {}", quoted_text(name),
                              word_hint(name, column_names)));
        continue;
      }
      const auto column = static_cast<ReadingColumn>(found - column_names.begin());
      if (has(column))
        add_error(fmt::format("the column {} stands twice: leave one out", name));
      columns_.push_back(column);
    }
    if (!has(ReadingColumn::Side))
      add_error("there is no column side: starboard, port or transom in each row");
    if (!has(ReadingColumn::State))
      add_error("there is no column state: dry, held or after in each row");
    if (std::none_of(places.begin(), places.end(), [&](auto at) { return has(at); }))
      add_error("there is no column for the place: girth, mark or station");
    if (!has(ReadingColumn::GapTop) && !has(ReadingColumn::GapLow))
      add_error("there is no column for the gap: gap_top, gap_low or both");
    return table_.errors.empty();
  }

  void read_row(std::size_t line, bool closed) {
    where_ = fmt::format("reading[{}]", table_.readings.size());
    table_.lines.push_back(line);
    table_.readings.emplace_back();
    cells_.fill({});
    const auto& cells = csv_.cells();
    if (!closed) return add_error(not_closed);
    if (cells.size() != columns_.size())
      return add_error(
          fmt::format("the row has {} cells and the header {} columns: one cell for "
                      "each column",
                      cells.size(), columns_.size()));
    for (std::size_t i = 0; i < cells.size(); ++i) cell(columns_[i]) = cells[i];
    GivenReading& reading = table_.readings.back();
    read_side(reading);
    read_place(reading);
    read_gaps(reading);
    read_state(reading);
    reading.note = cell(ReadingColumn::Note);
    for (const auto column : {ReadingColumn::Note, ReadingColumn::Station})
      if (has_control_character(cell(column)))
        add_error(fmt::format("{} has a control character: plain text",
                              column_names[static_cast<std::size_t>(column)]));
  }

  std::string& cell(ReadingColumn column) {
    return cells_[static_cast<std::size_t>(column)];
  }

  void read_side(GivenReading& reading) {
    const std::string& word = cell(ReadingColumn::Side);
    for (const SideName side : {SideName::Starboard, SideName::Port, SideName::Transom})
      if (word == side_word(side)) {
        reading.side = side;
        return;
      }
    add_error(fmt::format("side is {}: starboard, port or transom", quoted_text(word)));
  }

  void read_state(GivenReading& reading) {
    const std::string& word = cell(ReadingColumn::State);
    for (const ReadingState state :
         {ReadingState::Dry, ReadingState::Held, ReadingState::After})
      if (word == state_word(state)) {
        reading.state = state;
        return;
      }
    add_error(fmt::format("state is {}: dry, held or after", quoted_text(word)));
  }

  void read_place(GivenReading& reading) {
    std::vector<ReadingColumn> filled;
    for (const ReadingColumn column : places)
      if (!cell(column).empty()) filled.push_back(column);
    if (filled.size() != 1)
      return add_error(
          filled.empty()
              ? "no place is given: a girth on the drill line, a mark or a station"
              : "more than one place is given: a girth, a mark or a station");
    reading.name = cell(filled.front());
    reading.kind = filled.front() == ReadingColumn::Mark      ? PlaceKind::Mark
                   : filled.front() == ReadingColumn::Station ? PlaceKind::Station
                                                              : PlaceKind::Girth;
    if (reading.kind == PlaceKind::Girth)
      if (const auto girth = length("girth", reading.name)) reading.girth = *girth;
  }

  void read_gaps(GivenReading& reading) {
    const std::string& top = cell(ReadingColumn::GapTop);
    const std::string& low = cell(ReadingColumn::GapLow);
    if (top.empty() && low.empty())
      return add_error("no gap is given: gap_top, gap_low or both");
    if (!top.empty()) reading.top = gap("gap_top", top);
    if (!low.empty()) reading.low = gap("gap_low", low);
  }

  std::optional<Length> gap(std::string_view name, const std::string& text) {
    const auto value = length(name, text);
    if (value && *value < Length()) {
      add_error(fmt::format("{} is {}: 0 or more; a gauge reads no interference", name,
                            length_words(*value, unit_)));
      return std::nullopt;
    }
    if (value && *value > widest_gap) {
      add_error(fmt::format("{} is {}: 100 mm at most; is that in mm?", name,
                            length_words(*value, unit_)));
      return std::nullopt;
    }
    return value;
  }

  std::optional<Length> length(std::string_view name, const std::string& text) {
    const auto value = length_from_text(text, unit_);
    if (value) return *value;
    add_error(fmt::format("{} {}", name, value.error().front().message));
    return std::nullopt;
  }

  LengthUnit unit_;
  CsvLines csv_;
  ReadingTable table_;
  std::vector<ReadingColumn> columns_;
  std::array<std::string, 8> cells_;  ///< of the row being read, by column
  std::string where_;                 ///< the row being read
  std::size_t hidden_errors_ = 0;
};

std::size_t line_of(const std::string& where, const ReadingTable& table) {
  std::size_t row = 0;
  const std::size_t open = where.find('[');
  if (open == std::string::npos) return table.header_line;
  std::from_chars(where.data() + open + 1, where.data() + where.size(), row);
  return row < table.lines.size() ? table.lines[row] : table.header_line;
}

}  // namespace

ReadingTable read_reading_table(std::string_view text, LengthUnit unit) {
  return ReadingTableReader(unit).read(text);
}

Errors located(Errors errors, const std::string& file, const ReadingTable& table) {
  std::stable_sort(errors.begin(), errors.end(), [&](const Error& a, const Error& b) {
    return line_of(a.where, table) < line_of(b.where, table);
  });
  for (Error& error : errors)
    error.message =
        fmt::format("{}:{}: {}", file, line_of(error.where, table), error.message);
  return errors;
}

Result<ReadingTable> read_reading_file(const std::filesystem::path& path,
                                       LengthUnit unit) {
  auto text = text_of_file(path, largest_reading_file);
  if (!text) {
    Error& error = text.error().front();
    error.message = fmt::format("{}: {}", path.string(), error.message);
    return tl::unexpected(text.error());
  }
  if (const auto fault = text_fault(*text); fault && !text->empty())
    return invalid_input("", fmt::format("{}:{}: the reading file {}", path.string(),
                                         fault->line, fault->message));
  ReadingTable table = read_reading_table(*text, unit);
  if (!table.errors.empty())
    return tl::unexpected(located(table.errors, path.string(), table));
  return table;
}

}  // namespace sheerlap
