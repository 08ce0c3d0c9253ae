#pragma once

#include <map>
#include <string>
#include <vector>

namespace sheerlap {

/// A row of a published table: its cells by the heads of their columns.
class PublishedRow {
 public:
  PublishedRow(std::map<std::string, std::string> cells) : cells_(std::move(cells)) {}
  std::string text(const std::string& column) const { return cells_.at(column); }
  double number(const std::string& column) const { return std::stod(text(column)); }

 private:
  std::map<std::string, std::string> cells_;
};

/// The rows of fixtures/published/`file`; its lines of source start with "# ".
std::vector<PublishedRow> published_table(const std::string& file);

}  // namespace sheerlap
