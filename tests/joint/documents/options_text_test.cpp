#include "joint/documents/options_text.h"

#include <boost/test/unit_test.hpp>

#include "joint/documents/options_json.h"
#include "tests/joint/documents/sample_job.h"

namespace sheerlap {
namespace {

Candidate own() {
  Candidate candidate{"tapping screw ST4.8", "two-part paste"};
  candidate.figures.emplace();
  CandidateFigures& figures = *candidate.figures;
  figures.fasteners = 109;
  figures.bond_use = 0.958;
  figures.worst.emplace();
  figures.worst->mark = "S08";
  figures.worst->governing = FastenerMode::Bearing;
  figures.worst->utilisation = 1.226;
  figures.hull_clear = HullClear{Length::mm(24.2), "S24", 0};
  figures.packs = 7;
  figures.cost.priced = 249.5;
  candidate.ruled_out = {"fasteners alone: use 1.23 at S08, laminate crushed"};
  return candidate;
}

std::string text_of_options(const Candidates& candidates, LengthUnit unit) {
  return options_text(candidates, sample_job().joint, {unit, Length::mm(1)});
}

bool has(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

BOOST_AUTO_TEST_SUITE(options_text_of_a_joint)

BOOST_AUTO_TEST_CASE(a_row_has_every_figure_and_marks_the_own_choice) {
  const std::string text = text_of_options({own()}, LengthUnit::Millimetres);
  // derived: 0.958 and 1.226 to two decimals
  BOOST_TEST(has(text, "1  out    109  0.96"));
  BOOST_TEST(has(text, "1.23  24.2     0"));
  BOOST_TEST(has(text, "249.50  the joint's own: tapping"));
  BOOST_TEST(has(text, "ruled out: fasteners alone: use 1.23 at S08"));
}

BOOST_AUTO_TEST_CASE(what_has_no_price_is_named_and_stands_as_a_plus) {
  Candidate other = own();
  other.own_fastener = false;
  other.fastener = "tapping screw ST5.5";
  other.ruled_out.clear();
  other.figures->cost.unpriced = {"tapping screw ST5.5 x 19"};
  const std::string text = text_of_options({other}, LengthUnit::Millimetres);
  BOOST_TEST(has(text, "249.50 +  tapping screw ST5.5\n"));
  BOOST_TEST(has(text, "no price: tapping screw ST5.5 x 19"));
  BOOST_TEST(!has(text, "ruled out:"));
}

BOOST_AUTO_TEST_CASE(a_choice_that_cannot_be_worked_has_no_figures) {
  Candidate other = own();
  other.own_fastener = false;
  other.fastener = "tapping screw ST8";
  other.figures.reset();
  other.ruled_out = {"no table here has a hole for ST8: give lip_hole"};
  const std::string text = text_of_options({other}, LengthUnit::Millimetres);
  BOOST_TEST(has(text, "-  tapping screw ST8\n"));
  BOOST_TEST(has(text, "ruled out: no table here has a hole for ST8"));
}

BOOST_AUTO_TEST_CASE(inches_are_inches) {
  const std::string text = text_of_options({own()}, LengthUnit::Inches);
  // derived: 24.2 / 25.4 = 0.953
  BOOST_TEST(has(text, "0.95     0"));
  BOOST_TEST(has(text, "Lengths in inches"));
}

BOOST_AUTO_TEST_CASE(json_has_null_for_what_is_not_known) {
  Candidate other = own();
  other.figures->cost.unpriced = {"nut M6"};
  other.figures->worst.reset();
  const Json json = options_json({other}).front();
  BOOST_TEST(json["own"] == true);
  BOOST_TEST(json["workable"] == false);
  BOOST_TEST(json["cost"].is_null());
  BOOST_TEST(json["cost_of_what_is_priced"] == 249.5);
  BOOST_TEST(json["fastener_use"].is_null());
  BOOST_TEST(json["gap_outside"].is_null());
  BOOST_TEST(json["hull_clear"] == 24.2);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
