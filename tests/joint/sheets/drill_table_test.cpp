#include "joint/sheets/drill_table.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>

#include "tests/joint/documents/sample_job.h"

namespace sheerlap {
namespace {

NumberStyle mm() { return {LengthUnit::Millimetres, Length::mm(1)}; }

/// The texts of the rows that run over the whole table.
std::vector<std::string> spanning(const PageTable& table) {
  std::vector<std::string> texts;
  for (const PageRow& row : table.rows)
    if (row.cells.size() == 1) texts.push_back(row.cells[0]);
  return texts;
}

/// A sample with one jig a side.
Job job_with_jigs() {
  Job job = sample_job();
  job.schedule->jigs = {{"S1", SideName::Starboard, 0, 1},
                        {"P1", SideName::Port, 2, 3},
                        {"T1", SideName::Transom, 4, 5}};
  for (std::size_t k = 0; k < 6; ++k)
    job.schedule->stations[k].jig = job.schedule->jigs[k / 2].name;
  return job;
}

BOOST_AUTO_TEST_SUITE(drill_tables)

BOOST_AUTO_TEST_CASE(a_hole_has_its_mark_its_girth_and_blanks_to_fill_in) {
  const PageTable table = drill_table(job_with_jigs(), SideName::Port, mm());
  BOOST_TEST_REQUIRE(table.rows.size() == 3U);
  const auto& cells = table.rows[1].cells;
  BOOST_TEST(cells.size() == table.columns.size());
  BOOST_TEST(cells[0] == "P01");
  BOOST_TEST(cells[1] == "76");    // derived: 75.5 rounded half away from zero to 1 mm
  BOOST_TEST(cells[9] == "22.0");  // derived: edge_low 20 and its trim of 2 put back
  BOOST_TEST(cells[cells.size() - 2].empty());
  BOOST_TEST(cells.back().empty());
  BOOST_TEST((table.rows[1].look == RowLook::Plain));
}

BOOST_AUTO_TEST_CASE(a_jig_starts_with_what_it_is_and_how_it_is_laid_out) {
  const auto texts = spanning(drill_table(job_with_jigs(), SideName::Port, mm()));
  BOOST_TEST_REQUIRE(texts.size() == 1U);
  BOOST_TEST(
      texts[0] ==
      "JIG P1: P01 to P02, 2 holes; girth 91 from first hole to last, piece 107; "
      "lay it out from the bow datum: girth 76 to P01");
}

BOOST_AUTO_TEST_CASE(a_shared_hole_stands_once_with_the_jig_that_drills_it) {
  Job job = job_with_jigs();
  job.schedule->jigs = {{"P1", SideName::Port, 2, 2}, {"P2", SideName::Port, 2, 3}};
  job.schedule->stations[3].jig = "P2";
  const PageTable table = drill_table(job, SideName::Port, mm());
  const auto texts = spanning(table);
  BOOST_TEST_REQUIRE(texts.size() == 2U);
  BOOST_TEST(texts[1].find("index: pin it through P01, which P1 drilled") !=
             std::string::npos);
  BOOST_TEST(std::count_if(table.rows.begin(), table.rows.end(),
                           [](const auto& row) { return row.cells[0] == "P01"; }) == 1);
}

BOOST_AUTO_TEST_CASE(a_space_over_its_limit_stands_between_its_holes) {
  Job job = job_with_jigs();
  job.layout->sides[0].bridged = {{Length::mm(75.5), Length::mm(166), Length::mm(90.5),
                                   Length::mm(80), "the bow cleat"}};
  const PageTable table = drill_table(job, SideName::Starboard, mm());
  BOOST_TEST_REQUIRE(table.rows.size() == 4U);
  BOOST_TEST(table.rows[1].cells[0] == "S01");
  BOOST_TEST((table.rows[2].look == RowLook::Warning));
  BOOST_TEST(
      table.rows[2].cells[0] ==
      "SPACE OF 90.5 mm, over its limit of 80 mm, at girth 76 to 166: bridges the "
      "bow cleat. Put no hole in it.");
  BOOST_TEST(table.rows[3].cells[0] == "S02");
}

BOOST_AUTO_TEST_CASE(openings_and_corners_stand_where_they_are) {
  Job job = job_with_jigs();
  PerimeterSide& side = job.perimeter.sides[0];
  side.openings = {{"gate", Length::mm(500), Length::mm(900), {}, {}}};
  side.corners = {{Length::mm(100), {}}};
  const auto texts = spanning(drill_table(job, SideName::Starboard, mm()));
  // the sample's own bridge, at 615, is last but one
  BOOST_TEST_REQUIRE(texts.size() == 4U);
  BOOST_TEST(texts[1] == "CORNER at girth 100");
  BOOST_TEST(texts[2] == "NO JOINT at girth 500 to 900: gate");
}

BOOST_AUTO_TEST_CASE(a_hole_that_is_not_to_be_drilled_is_barred_and_says_so) {
  const PageTable table = drill_table(job_with_jigs(), SideName::Transom, mm());
  BOOST_TEST_REQUIRE(table.rows.size() == 4U);
  BOOST_TEST(table.rows[2].cells[0] ==
             "T02: DO NOT DRILL: no fastener in stock serves its stack of 14.00 mm");
  BOOST_TEST((table.rows[2].look == RowLook::Warning));
  BOOST_TEST((table.rows[3].look == RowLook::Barred));
  BOOST_TEST(table.rows[3].cells[15] == "no");
  BOOST_TEST(table.rows[3].cells[16] == "no");
}

BOOST_AUTO_TEST_CASE(of_equal_spaces_the_first_says_between_what_they_are) {
  BOOST_TEST(short_reason("equal space 1 of 6 between the stem and the bow cleat") ==
             "equal space 1 of 6 between the stem and the bow cleat");
  BOOST_TEST(short_reason("equal space 2 of 6 between the stem and the bow cleat") ==
             "equal space 2 of 6");
  BOOST_TEST(short_reason("fixed: eye between two frames") ==
             "fixed: eye between two frames");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
