#include "joint/sheets/pdf_file.h"

#include <boost/test/unit_test.hpp>
#include <sstream>

#include "tests/joint/sheets/read_back.h"

namespace sheerlap {
namespace {

std::string drawn(const PdfInfo& info, const std::function<void(PdfFile&)>& draw) {
  auto bytes = pdf_bytes(info, draw);
  BOOST_REQUIRE(bytes.has_value());
  return *bytes;
}

void one_of_each(PdfFile& file) {
  const PageSize sizes[] = {small_page(Paper::A4), drawing_page(Paper::A4),
                            small_page(Paper::Letter), drawing_page(Paper::Letter)};
  for (const PageSize& size : sizes) {
    Page& page = file.add_page(size);
    page.text({20, 20}, "sheet " + std::to_string(file.page_number()) + " of " +
                            std::to_string(file.page_count()));
    page.text({20, 30}, "bold", {.bold = true});
  }
}

BOOST_AUTO_TEST_SUITE(pdf_file)

BOOST_AUTO_TEST_CASE(pages_are_as_large_as_they_were_asked_for) {
  const std::string said = read_back(drawn({"Sizes"}, one_of_each),
                                     {"pdfinfo", "-f", "1", "-l", "4", "PDF"});
  // derived: mm x 72 / 25.4; 210 x 297, 420 x 297, 215.9 x 279.4, 431.8 x 279.4
  BOOST_TEST(said.find("Page    1 size:  595.276 x 841.89 pts") != std::string::npos);
  BOOST_TEST(said.find("Page    2 size:  1190.55 x 841.89 pts") != std::string::npos);
  BOOST_TEST(said.find("Page    3 size:  612 x 792 pts") != std::string::npos);
  BOOST_TEST(said.find("Page    4 size:  1224 x 792 pts") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(each_page_knows_its_number_and_how_many_there_are) {
  const std::string text = text_of_pdf(drawn({"Numbers"}, one_of_each));
  for (int number = 1; number <= 4; ++number)
    BOOST_TEST(text.find("sheet " + std::to_string(number) + " of 4") !=
               std::string::npos);
}

BOOST_AUTO_TEST_CASE(every_font_is_embedded_as_a_subset) {
  const std::string fonts =
      read_back(drawn({"Fonts"}, one_of_each), {"pdffonts", "PDF"});
  std::istringstream lines(fonts);
  std::string line;
  std::getline(lines, line);
  // the columns emb, sub and uni, under their headings
  const std::size_t embedded = line.find("emb");
  std::getline(lines, line);
  int count = 0;
  while (std::getline(lines, line)) {
    BOOST_TEST(line.substr(embedded, 11) == "yes yes yes");
    BOOST_TEST(line.find("DejaVuSans") != std::string::npos);
    ++count;
  }
  BOOST_TEST(count >= 2);  // plain and bold
}

BOOST_AUTO_TEST_CASE(the_same_drawing_gives_the_same_bytes) {
  BOOST_TEST(drawn({"Same"}, one_of_each) == drawn({"Same"}, one_of_each));
  BOOST_TEST(drawn({"Same"}, one_of_each) != drawn({"Other"}, one_of_each));
}

BOOST_AUTO_TEST_CASE(a_file_has_the_date_it_is_given_and_no_other) {
  BOOST_TEST(drawn({"No date"}, one_of_each).find("Date") == std::string::npos);
  const std::string said = read_back(drawn({"Date", "2024-05-01"}, one_of_each),
                                     {"pdfinfo", "-isodates", "PDF"});
  BOOST_TEST(said.find("CreationDate:    2024-05-01") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(
    the_title_is_kept_with_its_letters_and_without_control_characters) {
  const std::string said =
      read_back(drawn({"B\xC3\xB6rte\x1B[2J"}, one_of_each), {"pdfinfo", "PDF"});
  BOOST_TEST(said.find("Title:           B\xC3\xB6rte [2J") != std::string::npos);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
