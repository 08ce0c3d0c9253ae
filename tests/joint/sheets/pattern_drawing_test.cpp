#include "joint/sheets/pattern_drawing.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>

#include "joint/sheets/pattern_dxf.h"
#include "joint/sheets/pattern_svg.h"
#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

Job job_of(Joint joint) {
  auto job = work_out(std::move(joint), Parts::all());
  BOOST_TEST_REQUIRE(job.has_value());
  return std::move(*job);
}

PatternDrawing drawing_of(const Joint& joint) {
  return pattern_drawing(job_of(joint), {});
}

bool has(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

BOOST_AUTO_TEST_SUITE(pattern_drawing_suite)

BOOST_AUTO_TEST_CASE(no_pattern_lies_over_another_or_off_the_sheet) {
  const PatternDrawing drawing = drawing_of(example_joint(small_boat(), {}));
  double below = drawing.height_mm;
  for (const PatternLine& line : drawing.lines) {
    double low = drawing.height_mm, high = 0;
    for (const Point2& point : line.points) {
      BOOST_TEST(point.x() >= 0);
      BOOST_TEST(point.x() <= drawing.width_mm);
      low = std::min(low, point.y());
      high = std::max(high, point.y());
    }
    if (line.layer != PatternLayer::Outline) continue;
    BOOST_TEST(high < below);
    below = low;
  }
  BOOST_TEST(below > 0);
}

/// Half of what a line of lettering is wide at the most.
/// @source  derived: in the wider of common sans-serif faces a letter takes 0.6 of its
///          size and a capital is 0.72 high; stroke letters of a drawing program take
///          as much as they are high
double half_width_mm(const PatternText& text) {
  return text.height_mm * static_cast<double>(text.words.size()) / 2;
}

BOOST_AUTO_TEST_CASE(no_word_of_a_short_jig_runs_off_the_sheet) {
  // a box of which every jig is shorter than what is written below it
  Joint joint = box_joint(300, 300, {});
  joint.title = std::string(300, 'm');
  joint.jig.length_max = Length::mm(160);
  const PatternDrawing drawing = drawing_of(joint);
  for (const PatternText& text : drawing.texts) {
    BOOST_TEST(text.at.x() - half_width_mm(text) >= 0, text.words);
    BOOST_TEST(text.at.x() + half_width_mm(text) <= drawing.width_mm, text.words);
    BOOST_TEST(text.at.y() >= 0, text.words);
  }
  BOOST_TEST(drawing.width_mm < 1000);
}

BOOST_AUTO_TEST_CASE(a_plate_is_cut_for_the_bush_and_a_film_for_the_pilot) {
  Joint joint = example_joint(small_boat(), {});
  joint.jig.bush = Length::mm(8);
  joint.fastener.hull_pilot = Length::mm(3.9);
  for (const PatternCircle& circle : drawing_of(joint).circles)
    BOOST_TEST(circle.radius_mm == 3.9 / 2);
  joint.jig.plate = Length::mm(3);
  for (const PatternCircle& circle : drawing_of(joint).circles)
    BOOST_TEST(circle.radius_mm == 4);
}

BOOST_AUTO_TEST_CASE(every_jig_says_its_hand_in_words) {
  const Job job = job_of(example_joint(small_boat(), {}));
  const PatternDrawing drawing = pattern_drawing(job, {});
  for (const JigSegment& jig : job.schedule->jigs) {
    const std::string hand = jig.side == SideName::Starboard ? " STARBOARD"
                             : jig.side == SideName::Port    ? " PORT"
                                                             : " TRANSOM";
    BOOST_TEST(std::any_of(
        drawing.texts.begin(), drawing.texts.end(),
        [&](const PatternText& text) { return text.words == jig.name + hand; }));
  }
}

BOOST_AUTO_TEST_CASE(a_users_title_does_no_harm_in_either_file) {
  Joint joint = example_joint(small_boat(), {});
  joint.title = "</svg><b> 50 % \xc3\xa9 & \n0\nEOF";
  const PatternDrawing drawing = drawing_of(joint);
  const std::string svg = pattern_svg(drawing);
  BOOST_TEST(svg.find("</svg>") == svg.rfind("</svg>"));
  BOOST_TEST(!has(svg, "<b>"));
  const auto dxf = pattern_dxf(drawing);
  BOOST_TEST_REQUIRE(dxf.has_value());
  BOOST_TEST(has(*dxf, "</svg><b> 50 %%% \\U+00E9 &  0 EOF"));
  BOOST_TEST(dxf->find("\nEOF\n") == dxf->size() - 5);
}

BOOST_AUTO_TEST_CASE(the_same_drawing_gives_the_same_bytes) {
  const PatternDrawing drawing = drawing_of(example_joint(small_boat(), {}));
  BOOST_TEST((pattern_dxf(drawing).value() == pattern_dxf(drawing).value()));
  BOOST_TEST((pattern_svg(drawing) == pattern_svg(drawing)));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
