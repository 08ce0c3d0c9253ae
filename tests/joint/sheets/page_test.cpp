#include "joint/sheets/page.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/sheets/pdf_file.h"
#include "tests/joint/sheets/read_back.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

/// Draws one A4 page.
std::string drawn(const std::function<void(Page&)>& draw) {
  auto bytes = pdf_bytes(
      {"Page"}, [&](PdfFile& file) { draw(file.add_page(small_page(Paper::A4))); });
  BOOST_REQUIRE(bytes.has_value());
  return *bytes;
}

/// Where the words of a page stand, in mm.
struct WordBox {
  double left, right;
};
WordBox word_box(const std::string& pdf, const std::string& word) {
  const std::string said = read_back(pdf, {"pdftotext", "-bbox", "PDF", "-"});
  const std::size_t end = said.find(">" + word + "</word>");
  BOOST_REQUIRE(end != std::string::npos);
  const std::string line = said.substr(said.rfind("<word", end), 200);
  const auto value = [&](const std::string& name) {
    return std::stod(line.substr(line.find(name) + name.size() + 2)) * 25.4 / 72;
  };
  return {value("xMin"), value("xMax")};
}

BOOST_AUTO_TEST_SUITE(page)

BOOST_AUTO_TEST_CASE(a_line_is_as_long_on_the_sheet_as_it_was_asked_for) {
  const auto lines = lines_of_pdf(drawn([](Page& page) {
    page.line({20, 30}, {120, 30});
    page.line({40.5, 50.25}, {40.5, 150.25});
  }));
  BOOST_TEST_REQUIRE(lines.size() == 2U);
  // the file holds 1/256 of a point, 0.0014 mm, at each end
  const double near = 0.002;
  BOOST_TEST(std::abs(lines[0].from_x - 20) < near);
  BOOST_TEST(std::abs(lines[0].from_y - 30) < near);
  BOOST_TEST(std::abs(lines[0].to_x - 120) < near);
  BOOST_TEST(std::abs(lines[1].from_y - 50.25) < near);
  BOOST_TEST(std::abs(lines[1].to_y - 150.25) < near);
}

BOOST_AUTO_TEST_CASE(words_are_as_wide_for_their_height_at_every_height) {
  drawn([](Page& page) {
    const std::string words = "S01 girth 1234-5/8, \xC3\x85ngstr\xC3\xB6m";
    const double small = page.width_of(words, {.height_mm = 1.8});
    const double large = page.width_of(words, {.height_mm = 180});
    // property; a glyph's advance is kept to 1/1024 mm, and there are 28 of them
    BOOST_TEST(std::abs(large / 100 - small) < 28.0 / 1024);
  });
}

BOOST_AUTO_TEST_CASE(words_are_as_wide_in_the_file_as_they_were_measured) {
  double measured = 0;
  const std::string pdf = drawn([&](Page& page) {
    measured = page.width_of("mmmmmmmmiiiiiiii", {.height_mm = 3.5});
    page.text({30, 40}, "mmmmmmmmiiiiiiii", {.height_mm = 3.5});
  });
  const WordBox box = word_box(pdf, "mmmmmmmmiiiiiiii");
  BOOST_TEST(std::abs(box.left - 30) < 0.01);
  // derived: a file gives the widths of its 16 letters in whole thousandths of an em,
  // which is 3.5 mm x 2048 / 1493
  BOOST_TEST(std::abs(box.right - box.left - measured) < 16 * 4.8011 / 1000);
}

BOOST_AUTO_TEST_CASE(the_height_of_lettering_is_that_of_its_capitals) {
  drawn([](Page& page) {
    // published: DejaVu Sans, table OS/2 and hmtx of DejaVuSans.ttf 2.37: capitals 1493
    // units high, an H 1540 units wide, of 2048 an em
    BOOST_TEST(page.width_of("H", {.height_mm = 1493}) == 1540, tolerance(1e-3));
  });
}

BOOST_AUTO_TEST_CASE(words_stand_on_the_point_they_are_given) {
  const std::string pdf = drawn([](Page& page) {
    page.text({100, 40}, "centred", {.across = Across::Centre});
    page.text({100, 60}, "right", {.across = Across::Right});
  });
  const WordBox centred = word_box(pdf, "centred");
  BOOST_TEST(std::abs((centred.left + centred.right) / 2 - 100) < 0.02);
  BOOST_TEST(std::abs(word_box(pdf, "right").right - 100) < 0.02);
}

BOOST_AUTO_TEST_CASE(fitted_words_shrink_first_and_are_cut_short_after) {
  const std::string pdf = drawn([](Page& page) {
    page.fitted({20, 40}, "abcdefghijklmnop", 100, {.height_mm = 3.5});
    page.fitted({20, 60}, "bcdefghijklmnopq", 28, {.height_mm = 2.5});
    page.fitted({20, 80}, "cdefghijklmnopqr", 12, {.height_mm = 3.5});
  });
  const std::string text = text_of_pdf(pdf);
  BOOST_TEST(text.find("abcdefghijklmnop") != std::string::npos);
  BOOST_TEST(text.find("bcdefghijklmnopq\n") != std::string::npos);
  BOOST_TEST(text.find("cdefghijklmnopqr\n") == std::string::npos);
  BOOST_TEST(text.find("\xE2\x80\xA6") != std::string::npos);  // the ellipsis
  const WordBox shrunk = word_box(pdf, "bcdefghijklmnopq");
  BOOST_TEST(shrunk.right - shrunk.left <= 28.01);
  BOOST_TEST(shrunk.right - shrunk.left > 27.8);
}

BOOST_AUTO_TEST_CASE(a_paragraph_takes_a_pitch_for_every_line) {
  drawn([](Page& page) {
    const Lettering lettering{.height_mm = 2.5};
    const double pitch = 1.6 * 2.5;  // derived: line_pitch times the height
    BOOST_TEST(page.paragraph_height("one", 100, lettering) == pitch);
    const double wide = page.width_of("one two", lettering);
    BOOST_TEST(page.paragraph_height("one two", wide + 0.1, lettering) == pitch);
    BOOST_TEST(page.paragraph_height("one two", wide - 0.1, lettering) == 2 * pitch);
    BOOST_TEST(page.paragraph({20, 20}, "one two", wide - 0.1, lettering) == 2 * pitch);
  });
}

BOOST_AUTO_TEST_CASE(words_too_long_for_their_lines_end_in_an_ellipsis) {
  const std::string text = text_of_pdf(drawn([](Page& page) {
    page.fitted_lines({20, 40}, "first second third fourth fifth sixth", 20, 2);
  }));
  BOOST_TEST(text.find("first") != std::string::npos);
  BOOST_TEST(text.find("sixth") == std::string::npos);
  BOOST_TEST(text.find("\xE2\x80\xA6") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(words_that_are_no_text_are_made_printable) {
  const std::string text = text_of_pdf(drawn([](Page& page) {
    page.text({20, 40},
              "bad\xFF"
              "byte\x07"
              "bell");
  }));
  BOOST_TEST(text.find("bad?byte bell") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_hatch_keeps_its_spacing_and_its_slope) {
  const auto lines = lines_of_pdf(drawn([](Page& page) {
    page.hatch({{40, 40}, {80, 40}, {80, 80}, {40, 80}}, {.spacing_mm = 5});
  }));
  BOOST_TEST_REQUIRE(lines.size() >= 8U);
  double before = 0;
  for (const DrawnLine& line : lines) {
    // derived: at 45 degrees x + y is constant along a line, and steps by 5 sqrt 2
    const double sum = line.from_x + line.from_y;
    BOOST_TEST(std::abs(line.to_x + line.to_y - sum) < 0.01);
    if (&line != &lines.front())
      BOOST_TEST(std::abs(sum - before - 5 * std::sqrt(2)) < 0.01);
    before = sum;
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
