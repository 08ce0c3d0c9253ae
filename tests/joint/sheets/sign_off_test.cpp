#include "joint/sheets/sign_off.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/sheets/read_back.h"

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(sign_off)

BOOST_AUTO_TEST_CASE(the_count_and_the_names_to_sign_by_stand_on_the_sheet) {
  auto bytes = pdf_bytes({"Sign"}, [](PdfFile& file) {
    SheetFlow flow(file, small_page(Paper::A4), {"Boat", "Sign", "mm"});
    const double before = flow.room().height;
    draw_hole_count(flow, 47, 3);
    draw_signatures(flow, {"drilled by", "checked by, date"});
    // derived: two rows of 12 mm with 2 mm below each
    BOOST_TEST(before - flow.room().height == 28, boost::test_tools::tolerance(1e-12));
  });
  BOOST_REQUIRE(bytes.has_value());
  const std::string text = text_of_pdf(*bytes);
  for (const char* words :
       {"holes drilled", "fasteners issued", "fasteners left", "holes by the schedule",
        "47, 3 more not drilled", "drilled by", "checked by, date"})
    BOOST_TEST(text.find(words) != std::string::npos, words);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
