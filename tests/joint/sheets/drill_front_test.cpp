#include "joint/sheets/drill_front.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/example_joint.h"
#include "tests/joint/sheets/read_back.h"

namespace sheerlap {
namespace {

std::string front_of(const Job& job, SideName side, LengthUnit unit) {
  auto bytes = pdf_bytes({"Front"}, [&](PdfFile& file) {
    SheetFlow flow(file, small_page(Paper::A4).turned(), {"Box", "Front", "mm"});
    draw_drill_front(flow, job, side, NumberStyle(unit, Length::mm(1)));
  });
  BOOST_REQUIRE(bytes.has_value());
  return text_of_pdf(*bytes);
}

Job box_job() {
  auto job = work_out(box_joint(4000, 2000, {}), Parts::all());
  BOOST_REQUIRE(job.has_value());
  return *job;
}

bool says(const std::string& text, const std::string& words) {
  return text.find(words) != std::string::npos;
}

BOOST_AUTO_TEST_SUITE(drill_front)

BOOST_AUTO_TEST_CASE(the_front_says_the_surface_the_datum_and_the_cautions) {
  const std::string text = front_of(box_job(), SideName::Port, LengthUnit::Millimetres);
  for (const char* words :
       {"PORT: drilling schedule", "the lip's outer face: the tape lies on it",
        "25 mm below the sheer", "girth 0 at the bow datum", "fine glass dust",
        "How to mark out", "How to drill", "hull number"})
    BOOST_TEST(says(text, words), words);
}

BOOST_AUTO_TEST_CASE(an_inch_shop_reads_inches) {
  const std::string text = front_of(box_job(), SideName::Port, LengthUnit::Inches);
  BOOST_TEST(says(text, "0.984 in below the sheer"));  // derived: 25 / 25.4
  BOOST_TEST(says(text, "girths rounded to 1/16 in"));
}

BOOST_AUTO_TEST_CASE(holes_that_are_not_to_be_drilled_are_named_in_front) {
  Job job = box_job();
  for (DrillStation& station : job.schedule->stations)
    if (station.mark == "P01") station.length.reset();
  BOOST_TEST(
      says(front_of(job, SideName::Port, LengthUnit::Millimetres), "DO NOT DRILL P01"));
  BOOST_TEST(!says(front_of(job, SideName::Starboard, LengthUnit::Millimetres),
                   "DO NOT DRILL"));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
