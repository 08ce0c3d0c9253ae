#include "joint/documents/seated_text.h"

#include <boost/test/unit_test.hpp>
#include <string>

#include "tests/joint/documents/sample_job.h"

namespace sheerlap {
namespace {

const NumberStyle style(LengthUnit::Millimetres, Length::mm(1));

/// The row of a table that starts with some words, its spaces made one.
std::string row(const std::string& text, const std::string& start) {
  const auto from = text.find("\n" + start);
  if (from == std::string::npos) return "";
  std::string found = text.substr(from + 1, text.find('\n', from + 1) - from - 1);
  for (auto two = found.find("  "); two != std::string::npos; two = found.find("  "))
    found.erase(two, 1);
  return found;
}

BOOST_AUTO_TEST_SUITE(seated_text_suite)

BOOST_AUTO_TEST_CASE(each_row_has_what_is_drawn_and_what_follows) {
  const std::string text = seated_text(sample_job(), style);
  BOOST_TEST(row(text, "girth inside") == "girth inside the window 9000 9000 mm");
  BOOST_TEST(row(text, "tight") == "tight 200 0 mm");
  BOOST_TEST(row(text, "adhesive in") == "adhesive in the joint 1200 1300 ml");
}

BOOST_AUTO_TEST_CASE(a_length_that_one_of_them_lacks_stands_with_none) {
  const std::string text = seated_text(sample_job(), style);
  BOOST_TEST(row(text, "fasteners of 19 mm") == "fasteners of 19 mm 80 70");
  BOOST_TEST(row(text, "fasteners of 22 mm") == "fasteners of 22 mm 0 11");
  BOOST_TEST(row(text, "no length") == "no length in stock serves 1 0");
}

BOOST_AUTO_TEST_CASE(where_nothing_is_known_to_follow_nothing_is_said) {
  Job job = sample_job();
  job.going_on->seated.reset();
  BOOST_TEST(seated_text(job, style) == "");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
