#include "tests/published_table.h"

#include <boost/test/unit_test.hpp>
#include <fstream>
#include <sstream>

#include "tests/places.h"

namespace sheerlap {
namespace {

std::vector<std::string> cells_of(const std::string& line) {
  std::vector<std::string> cells;
  std::istringstream stream(line);
  for (std::string cell; std::getline(stream, cell, ',');) cells.push_back(cell);
  return cells;
}

}  // namespace

std::vector<PublishedRow> published_table(const std::string& file) {
  std::ifstream stream(fixtures_folder() / "published" / file);
  BOOST_TEST_REQUIRE(stream.good(), file);
  std::vector<std::string> heads;
  std::vector<PublishedRow> rows;
  for (std::string line; std::getline(stream, line);) {
    if (line.starts_with("# ")) continue;
    const auto cells = cells_of(line);
    if (heads.empty()) {
      heads = cells;
      continue;
    }
    BOOST_TEST_REQUIRE(cells.size() == heads.size(), file + ": " + line);
    std::map<std::string, std::string> row;
    for (std::size_t i = 0; i < cells.size(); ++i) row[heads[i]] = cells[i];
    rows.emplace_back(std::move(row));
  }
  BOOST_TEST_REQUIRE(!rows.empty(), file);
  return rows;
}

}  // namespace sheerlap
