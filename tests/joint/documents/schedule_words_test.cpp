#include "joint/documents/schedule_words.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/documents/sample_job.h"

namespace sheerlap {
namespace {

NumberStyle mm() { return {LengthUnit::Millimetres, Length::mm(1)}; }

BOOST_AUTO_TEST_SUITE(schedule_words)

BOOST_AUTO_TEST_CASE(the_drill_lines_height_is_up_from_the_edge_as_drawn) {
  Job job = sample_job();
  job.schedule->stations[0].edge_low = Length::mm(18.2);
  // derived: edge_low has the trim tolerance of 2 mm taken off
  BOOST_TEST(up_from_edge(job, SideName::Starboard, mm()) == "20.2 to 22.0 mm");
  BOOST_TEST(up_from_edge(job, SideName::Port, mm()) == "22.0 mm");
  BOOST_TEST(up_from_edge(job, std::nullopt, mm()) == "20.2 to 22.0 mm");
  job.schedule->stations.clear();
  BOOST_TEST(up_from_edge(job, std::nullopt, mm()).empty());
}

BOOST_AUTO_TEST_CASE(marking_out_says_the_surface_the_depth_and_the_rounding) {
  const auto paragraphs = marking_paragraphs(sample_job(), mm());
  BOOST_TEST_REQUIRE(paragraphs.size() == 4U);
  BOOST_TEST(paragraphs[1].find("lip's outer face 28 mm below the sheer") !=
             std::string::npos);
  BOOST_TEST(paragraphs[1].find("rounded to 1 mm") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_space_crosses_an_opening_that_lies_in_it_in_part_at_least) {
  PerimeterSide side;
  side.openings = {{"well", Length::mm(100), Length::mm(200), {}, {}}};
  DrillStation station;
  const struct {
    double girth, pitch;  // mm
    bool across;
  } rows[] = {{220, 50, true}, {250, 200, true}, {250, 50, false}, {100, 50, false}};
  for (const auto& row : rows) {
    station.girth = Length::mm(row.girth);
    station.pitch = Length::mm(row.pitch);
    BOOST_TEST(across_opening(station, side) == row.across);
  }
}

BOOST_AUTO_TEST_CASE(a_girth_to_check_is_rounded_for_the_tape_and_a_chord_is_not) {
  const CheckLine girth{SideName::Port,     "length of the side",
                        "bow datum",        "P02",
                        Length::mm(110.46), "girth on the drill line"};
  CheckLine chord = girth;
  chord.measured = "straight";
  BOOST_TEST(check_figure(girth, mm()) == "110");
  BOOST_TEST(check_figure(chord, mm()) == "110.5");
  BOOST_TEST(check_words(girth, mm()) == "bow datum to P02: length of the side");
}

BOOST_AUTO_TEST_CASE(holes_are_counted_by_the_length_that_serves_them) {
  const Schedule schedule = *sample_job().schedule;
  const auto all = counts_by_length(schedule, std::nullopt);
  // derived: of six holes one, on the transom, has no length
  BOOST_TEST_REQUIRE(all.size() == 2U);
  BOOST_TEST(!all[0].length.has_value());
  BOOST_TEST(all[0].holes == 1U);
  BOOST_TEST(all[1].holes == 5U);
  BOOST_TEST(counts_by_length(schedule, SideName::Port).size() == 1U);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
