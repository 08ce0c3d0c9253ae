#include "joint/sheets/page_table.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numeric>

#include "joint/sheets/pdf_file.h"
#include "tests/joint/sheets/read_back.h"

namespace sheerlap {
namespace {

void on_a_page(const std::function<void(Page&)>& draw) {
  BOOST_REQUIRE(pdf_bytes({"Table"}, [&](PdfFile& file) {
                  draw(file.add_page(small_page(Paper::A4)));
                }).has_value());
}

PageTable small_table() {
  PageTable table;
  table.columns = {
      {{"mark"}, Align::Left}, {{"girth", "on it"}}, {{"why"}, Align::Left}};
  table.columns[2].wraps = true;
  table.columns[2].stretch = 1;
  table.rows = {{{"jig one"}, RowLook::Banner},
                {{"S01", "70", "an end"}},
                {{"S02", "170", "an equal space"}},
                {{"jig two"}, RowLook::Banner},
                {{"S03", "270", "an equal space"}}};
  table.least_row_mm = 6;
  return table;
}

double sum(const std::vector<double>& values) {
  return std::accumulate(values.begin(), values.end(), 0.0);
}

BOOST_AUTO_TEST_SUITE(page_tables)

BOOST_AUTO_TEST_CASE(what_is_left_of_the_width_goes_to_the_columns_that_stretch) {
  on_a_page([](Page& page) {
    const PageTable table = small_table();
    const PlacedTable wide(page, table, 150), wider(page, table, 160);
    BOOST_TEST(std::abs(sum(wide.widths_mm()) - 150) < 1e-9);
    BOOST_TEST(wide.widths_mm()[0] == wider.widths_mm()[0]);
    BOOST_TEST(std::abs(wider.widths_mm()[2] - wide.widths_mm()[2] - 10) < 1e-9);
  });
}

BOOST_AUTO_TEST_CASE(a_column_is_wide_enough_for_its_cells_and_its_heading) {
  on_a_page([](Page& page) {
    const PageTable table = small_table();
    const PlacedTable placed(page, table, 150);
    const Lettering bold{.height_mm = table.letter_mm, .bold = true};
    BOOST_TEST(placed.widths_mm()[0] > page.width_of("mark", bold));
    BOOST_TEST(placed.widths_mm()[1] > page.width_of("girth", bold));
  });
}

BOOST_AUTO_TEST_CASE(in_a_narrow_table_the_wrapped_column_gives_way_and_its_row_grows) {
  on_a_page([](Page& page) {
    PageTable table = small_table();
    table.rows[1].cells[2] = "25 mm clear of the stem fitting, and some words more";
    const PlacedTable wide(page, table, 150), narrow(page, table, 50);
    BOOST_TEST(narrow.widths_mm()[0] == wide.widths_mm()[0]);
    BOOST_TEST(std::abs(sum(narrow.widths_mm()) - 50) < 1e-9);
    BOOST_TEST(wide.row_mm(1) == 6);
    BOOST_TEST(narrow.row_mm(1) > 6);
    BOOST_TEST(narrow.row_mm(2) == 6);
  });
}

BOOST_AUTO_TEST_CASE(no_figure_is_cut_short_in_a_table_that_is_far_too_wide) {
  PageTable table;
  table.rows = {{{}}};
  for (int column = 0; column < 18; ++column) {
    table.columns.push_back({{"head"}});
    table.rows[0].cells.push_back(std::to_string(12345670 + column));
  }
  auto bytes = pdf_bytes({"Wide"}, [&](PdfFile& file) {
    Page& page = file.add_page(small_page(Paper::A4));
    const PlacedTable placed(page, table, 170);
    BOOST_TEST(std::abs(sum(placed.widths_mm()) - 170) < 1e-9);
    placed.draw(page, {20, 20}, 0, 1);
  });
  BOOST_REQUIRE(bytes.has_value());
  const std::string text = text_of_pdf(*bytes);
  for (const std::string& cell : table.rows[0].cells)
    BOOST_TEST(text.find(cell) != std::string::npos, cell);
}

BOOST_AUTO_TEST_CASE(a_cell_is_not_cut_short_where_a_wrapped_one_gives_way_to_it) {
  // property: whatever the width, the widths sum up to it but for rounding
  for (double width = 50; width < 60; width += 0.37) {
    PageTable table = small_table();
    table.rows[1].cells[2] = std::string(300, 'W');
    auto bytes = pdf_bytes({"Narrow"}, [&](PdfFile& file) {
      Page& page = file.add_page(small_page(Paper::A4));
      PlacedTable(page, table, width).draw(page, {20, 20}, 0, 5);
    });
    BOOST_REQUIRE(bytes.has_value());
    BOOST_TEST(text_of_pdf(*bytes).find("\xE2\x80\xA6") == std::string::npos);
  }
}

BOOST_AUTO_TEST_CASE(rows_are_taken_whole_and_a_banner_stays_with_its_row) {
  on_a_page([](Page& page) {
    const PageTable table = small_table();
    const PlacedTable placed(page, table, 150);
    const double head = placed.heading_mm();
    // derived: rows of 6 mm
    BOOST_TEST(placed.rows_in(head + 30, 0) == 5U);
    BOOST_TEST(placed.rows_in(head + 29.9, 0) == 3U);  // not the banner alone
    BOOST_TEST(placed.rows_in(head + 17.9, 0) == 2U);
    BOOST_TEST(placed.rows_in(head + 12, 3) == 2U);
    BOOST_TEST(placed.rows_in(0, 1) == 1U);  // one at least, or there would be no end
  });
}

BOOST_AUTO_TEST_CASE(a_drawn_table_says_its_headings_banners_and_cells) {
  auto bytes = pdf_bytes({"Table"}, [](PdfFile& file) {
    Page& page = file.add_page(small_page(Paper::A4));
    const PageTable table = small_table();
    const PlacedTable placed(page, table, 150);
    const double taken = placed.draw(page, {20, 20}, 0, 3);
    BOOST_TEST(std::abs(taken - placed.heading_mm() - 18) < 1e-9);
  });
  BOOST_REQUIRE(bytes.has_value());
  const std::string text = text_of_pdf(*bytes);
  for (const char* word : {"mark", "girth", "on it", "jig one", "S02", "170", "an end"})
    BOOST_TEST(text.find(word) != std::string::npos, word);
  BOOST_TEST(text.find("S03") == std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_table_of_a_document_keeps_its_columns_and_its_rows) {
  const PageTable table = page_table(
      {{{{"a", "b"}, Align::Right}, {{"why"}, Align::Left}}, {{"1", "x"}, {"2", "y"}}});
  BOOST_TEST(table.columns.size() == 2U);
  BOOST_TEST(table.columns[0].heading.size() == 2U);
  BOOST_TEST(!table.columns[0].wraps);
  BOOST_TEST(table.columns[1].wraps);
  BOOST_TEST_REQUIRE(table.rows.size() == 2U);
  BOOST_TEST(table.rows[1].cells[1] == "y");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
