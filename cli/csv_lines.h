#pragma once

#include <csv.h>

#include <string>
#include <string_view>
#include <vector>

namespace sheerlap {

/// Takes the next line off a text; lines end as on any machine.
std::string_view take_line(std::string_view& text);

/// Splits the lines of a CSV file (RFC 4180) into cells, each line for itself, so that
/// one with an open quote spoils no other.
class CsvLines {
 public:
  CsvLines();
  ~CsvLines();
  CsvLines(const CsvLines&) = delete;
  CsvLines& operator=(const CsvLines&) = delete;

  /// Reads one line, without its end; the cells are in `cells()` until the next.
  ///
  /// @returns  false if a quoted cell is not closed on the line
  bool read(std::string_view line);

  /// Without the spaces about them, unless quoted.
  const std::vector<std::string>& cells() const { return cells_; }

 private:
  static void add_cell(void* text, std::size_t size, void* reader);

  csv_parser parser_{};
  std::vector<std::string> cells_;
};

}  // namespace sheerlap
