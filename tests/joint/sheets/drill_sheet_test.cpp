#include "joint/sheets/drill_sheet.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/example_joint.h"
#include "tests/joint/sheets/read_back.h"

namespace sheerlap {
namespace {

Job box_job(bool schedule) {
  Parts parts;
  parts.layout = true;
  parts.schedule = schedule;
  auto job = work_out(box_joint(4000, 2000, {}), parts);
  BOOST_REQUIRE(job.has_value());
  return *job;
}

std::string sheet_of(const Job& job, SideName side, const SheetStyle& style = {}) {
  auto bytes = drill_sheet(job, side, style);
  BOOST_REQUIRE(bytes.has_value());
  return *bytes;
}

bool says(const std::string& text, const std::string& words) {
  return text.find(words) != std::string::npos;
}

BOOST_AUTO_TEST_SUITE(drill_sheets)

BOOST_AUTO_TEST_CASE(a_side_has_a_sheet_if_there_is_a_schedule) {
  const Job scheduled = box_job(true);
  for (const PerimeterSide& side : scheduled.perimeter.sides)
    BOOST_TEST(has_drill_sheet(scheduled, side.name));
  BOOST_TEST(!has_drill_sheet(box_job(false), SideName::Port));
  Job without = scheduled;
  std::erase_if(without.perimeter.sides,
                [](const auto& side) { return side.name == SideName::Transom; });
  BOOST_TEST(!has_drill_sheet(without, SideName::Transom));
}

BOOST_AUTO_TEST_CASE(a_sheet_says_in_words_which_side_it_is_and_which_it_is_not) {
  const Job job = box_job(true);
  BOOST_TEST(
      says(text_of_pdf(sheet_of(job, SideName::Port)), "the same as starboard's"));
  BOOST_TEST(
      says(text_of_pdf(sheet_of(job, SideName::Starboard)), "This is STARBOARD"));
  BOOST_TEST(!says(text_of_pdf(sheet_of(job, SideName::Starboard)), "PORT"));
}

BOOST_AUTO_TEST_CASE(corners_inside_a_side_stand_on_its_sheet) {
  // the box has one at the bow, 1000 mm of sheer from the centreline
  BOOST_TEST(
      says(text_of_pdf(sheet_of(box_job(true), SideName::Port)), "CORNER at girth"));
}

BOOST_AUTO_TEST_CASE(the_same_job_gives_the_same_sheet_and_a_date_only_if_given) {
  const Job job = box_job(true);
  const std::string once = sheet_of(job, SideName::Port);
  BOOST_TEST((once == sheet_of(job, SideName::Port)));
  SheetStyle dated;
  dated.report.date = "2024-05-01";
  BOOST_TEST(says(text_of_pdf(sheet_of(job, SideName::Port, dated)), "2024-05-01"));
  BOOST_TEST(!says(text_of_pdf(once), "2024"));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
