#include "cli/csv_lines.h"

#include <algorithm>
#include <cassert>

namespace sheerlap {

std::string_view take_line(std::string_view& text) {
  const std::size_t end = std::min(text.find_first_of("\r\n"), text.size());
  const std::string_view line = text.substr(0, end);
  const bool both = text.substr(end).starts_with("\r\n");
  text.remove_prefix(std::min(text.size(), end + (both ? 2 : 1)));
  return line;
}

CsvLines::CsvLines() {
  const int failed = csv_init(&parser_, 0);
  assert(failed == 0);
  static_cast<void>(failed);
}

CsvLines::~CsvLines() { csv_free(&parser_); }

void CsvLines::add_cell(void* text, std::size_t size, void* reader) {
  auto& cells = static_cast<CsvLines*>(reader)->cells_;
  cells.emplace_back(static_cast<const char*>(text), size);
}

bool CsvLines::read(std::string_view line) {
  cells_.clear();
  csv_parse(&parser_, line.data(), line.size(), add_cell, nullptr, this);
  // strict at the end only: a quote within a cell is an inch mark
  csv_set_opts(&parser_, CSV_STRICT | CSV_STRICT_FINI);
  const bool closed = csv_fini(&parser_, add_cell, nullptr, this) == 0;
  csv_set_opts(&parser_, 0);
  if (!closed) csv_fini(&parser_, nullptr, nullptr, nullptr);
  return closed;
}

}  // namespace sheerlap
