#include "joint/sheets/sheet_flow.h"

#include <fmt/format.h>

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/sheets/read_back.h"

namespace sheerlap {
namespace {

std::size_t count_of(const std::string& text, const std::string& word) {
  std::size_t count = 0;
  for (std::size_t at = text.find(word); at != std::string::npos;
       at = text.find(word, at + 1))
    ++count;
  return count;
}

/// A table of so many rows on as many sheets as it needs.
std::string flowed(std::size_t rows) {
  PageTable table;
  table.columns = {{{"heading"}, Align::Left}};
  for (std::size_t row = 0; row < rows; ++row)
    table.rows.push_back({{fmt::format("row-{}-", row)}});
  table.least_row_mm = 7;
  auto bytes = pdf_bytes({"Flow"}, [&](PdfFile& file) {
    SheetFlow flow(file, small_page(Paper::A4), {"Boat", "Schedule", "mm", "", {}});
    flow.heading("first words");
    flow.table(table);
    flow.paragraph("last words");
  });
  BOOST_REQUIRE(bytes.has_value());
  return text_of_pdf(*bytes);
}

BOOST_AUTO_TEST_SUITE(sheet_flow)

BOOST_AUTO_TEST_CASE(no_row_is_lost_or_told_twice_over_many_sheets) {
  const std::string text = flowed(100);
  for (std::size_t row = 0; row < 100; ++row)
    BOOST_TEST(count_of(text, fmt::format("row-{}-", row)) == 1U);
  BOOST_TEST(text.find("last words") > text.find("row-99-"));
}

BOOST_AUTO_TEST_CASE(each_sheet_has_the_tables_heading_and_its_number) {
  const std::string text = flowed(100);
  // derived: (297 - 40 - about 10) / 7 = 35 rows a sheet, so three
  BOOST_TEST(count_of(text, "heading") == 3U);
  for (const char* number : {"sheet 1 of 3", "sheet 2 of 3", "sheet 3 of 3"})
    BOOST_TEST(count_of(text, number) == 1U);
  BOOST_TEST(count_of(flowed(3), "sheet 1 of 1") == 1U);
}

BOOST_AUTO_TEST_CASE(what_does_not_fit_goes_to_a_fresh_sheet_once) {
  auto bytes = pdf_bytes({"Need"}, [](PdfFile& file) {
    SheetFlow flow(file, small_page(Paper::A4), {"Boat", "Sheet", "mm", "", {}});
    flow.need(1000);  // fresh: nothing would be won
    BOOST_TEST(file.page_number() == 1U);
    const double whole = flow.room().height;
    flow.take(whole - 20);
    BOOST_TEST(std::abs(flow.room().height - 20) < 1e-9);
    flow.need(20);
    BOOST_TEST(file.page_number() == 1U);
    flow.need(21);
    BOOST_TEST(file.page_number() == 2U);
    BOOST_TEST(flow.room().height == whole);
  });
  BOOST_TEST(bytes.has_value());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
