#include "joint/sheets/led_labels.h"

#include <boost/test/unit_test.hpp>

#include "joint/sheets/pdf_file.h"
#include "tests/joint/sheets/read_back.h"

namespace sheerlap {
namespace {

struct Written {
  std::size_t left_out = 0;
  std::string named;  ///< those left out, each with a comma behind it
  std::string text;
};

Written written(const std::vector<LedLabel>& labels,
                const LabelLines& lines,
                const Box& taken = {}) {
  Written result;
  auto bytes = pdf_bytes({"Labels"}, [&](PdfFile& file) {
    LabelSpace space({0, 0, 210, 297});
    space.take(taken);
    const auto left_out =
        write_led_labels(file.add_page(small_page(Paper::A4)), space, labels, lines);
    result.left_out = left_out.size();
    for (const std::string& words : left_out) result.named += words + ",";
  });
  BOOST_REQUIRE(bytes.has_value());
  result.text = text_of_pdf(*bytes);
  return result;
}

BOOST_AUTO_TEST_SUITE(led_labels)

BOOST_AUTO_TEST_CASE(neighbours_stand_aside_so_that_all_can_be_written) {
  // written one after the other, each centred, the wide one would shut in the others
  const Written result = written({{{50, 100}, "left strap of the hull"},
                                  {{56, 100}, "a wide plate in the middle"},
                                  {{62, 100}, "right"}},
                                 {{90, 86.5, 83}});
  BOOST_TEST(result.left_out == 0U);
  for (const char* words : {"left strap", "a wide plate", "right"})
    BOOST_TEST(result.text.find(words) != std::string::npos, words);
}

BOOST_AUTO_TEST_CASE(what_has_no_room_is_left_out_and_named) {
  const Written result =
      written({{{50, 100}, "one"}, {{50, 100}, "two"}, {{50, 100}, "three"}}, {{90}});
  // derived: of words over one point two can stand on one line, left and right of it
  BOOST_TEST(result.left_out >= 1U);
  BOOST_TEST(result.left_out <= 2U);
  // property: words are written or named, never both
  for (const std::string words : {"one", "two", "three"}) {
    const bool is_named = result.named.find(words + ",") != std::string::npos;
    const bool is_written = result.text.find(words) != std::string::npos;
    BOOST_TEST(is_named != is_written, words);
  }
}

BOOST_AUTO_TEST_CASE(words_and_leaders_keep_clear_of_what_is_there) {
  BOOST_TEST(written({{{50, 100}, "one"}}, {{90}}, {0, 94, 200, 2}).left_out == 1U);
  BOOST_TEST(written({{{50, 100}, "one"}}, {{90}}, {0, 101, 200, 2}).left_out == 0U);
}

BOOST_AUTO_TEST_CASE(very_many_labels_are_written_in_good_time) {
  std::vector<LedLabel> labels;
  labels.reserve(3000);
  for (int k = 0; k < 3000; ++k) labels.push_back({{20 + 0.05 * k, 100}, "crowded"});
  const Written result = written(labels, {{90, 86, 82, 78}});
  BOOST_TEST(result.left_out < 3000U);
  BOOST_TEST(result.text.find("crowded") != std::string::npos);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
