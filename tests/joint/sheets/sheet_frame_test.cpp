#include "joint/sheets/sheet_frame.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/sheets/pdf_file.h"
#include "tests/joint/sheets/read_back.h"

namespace sheerlap {
namespace {

std::string framed(const SheetTitle& title, PageSize size) {
  auto bytes = pdf_bytes({"Frame"}, [&](PdfFile& file) {
    draw_sheet_frame(file.add_page(size), title, {2, 5});
  });
  BOOST_REQUIRE(bytes.has_value());
  return text_of_pdf(*bytes);
}

bool says(const std::string& text, const std::string& words) {
  return text.find(words) != std::string::npos;
}

BOOST_AUTO_TEST_SUITE(sheet_frame)

BOOST_AUTO_TEST_CASE(the_block_names_the_sheet_and_leaves_fields_to_sign) {
  const std::string text = framed({"Demo", "Drill, PORT", "mm", "1:20", std::nullopt},
                                  small_page(Paper::A4));
  for (const char* words : {"Demo", "Drill, PORT", "1:20", "2 of 5", "sheet 2 of 5",
                            "prepared", "checked", "date", "issued", "lengths in"})
    BOOST_TEST(says(text, words), words);
  BOOST_TEST(!says(text, "projection"));
}

BOOST_AUTO_TEST_CASE(a_sheet_without_a_scale_has_no_field_for_one) {
  BOOST_TEST(
      !says(framed({"Demo", "Sheet", "mm", "", {}}, small_page(Paper::A4)), "scale"));
}

BOOST_AUTO_TEST_CASE(the_day_of_issue_is_printed_only_if_it_is_given) {
  const SheetTitle dated{"Demo", "Sheet", "mm", "", "2024-05-01"};
  BOOST_TEST(says(framed(dated, small_page(Paper::A4)), "2024-05-01"));
  BOOST_TEST(
      !says(framed({"Demo", "Sheet", "mm", "", {}}, small_page(Paper::A4)), "20"));
}

BOOST_AUTO_TEST_CASE(a_long_title_is_cut_short_inside_its_field) {
  std::string title;
  for (int word = 0; word < 60; ++word) title += "word" + std::to_string(word) + " ";
  const std::string text =
      framed({title, "Drill, PORT", "mm", "", {}}, small_page(Paper::Letter));
  BOOST_TEST(says(text, "word3"));
  BOOST_TEST(!says(text, "word59"));
  BOOST_TEST(says(text, "\xE2\x80\xA6"));
  BOOST_TEST(says(text, "Drill, PORT"));
}

BOOST_AUTO_TEST_CASE(what_is_left_lies_on_the_sheet_and_clear_of_the_block) {
  const SheetArea small = sheet_area(small_page(Paper::A4));
  // derived: 297 less margins of 10, a block of 20 and 1.2 on both sides
  BOOST_TEST(std::abs(small.body.height - (297 - 20 - 20 - 2.4)) < 1e-9);
  BOOST_TEST(std::abs(small.body.width - (210 - 30 - 2.4)) < 1e-9);
  BOOST_TEST(small.beside.width == 0);
  const SheetArea large = sheet_area(drawing_page(Paper::A4));
  // derived: 420 less margins of 30 and a block of 180
  BOOST_TEST(std::abs(large.beside.width - 210) < 1e-9);
  BOOST_TEST(!large.beside.overlaps(large.body));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
