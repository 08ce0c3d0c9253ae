#include "joint/mechanics/hull_section.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/mechanics/line_load.h"
#include "tests/published_table.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(hull_section_test)

constexpr auto hull = SectionPart::Hull, deck = SectionPart::Deck;

/// A boat as a box 2500 wide and 1100 deep: bottom 10, sides 6, deck 5 mm.
///
/// @param cut  height at which the sides turn from hull into deck
std::vector<SectionPlate> box_boat(double cut = 1100) {
  std::vector<SectionPlate> plates{{-1250, 0, 1250, 0, 10, 1, hull},
                                   {1250, 0, 1250, cut, 6, 1, hull},
                                   {1250, 1100, -1250, 1100, 5, 1, deck},
                                   {-1250, cut, -1250, 0, 6, 1, hull}};
  if (cut < 1100) {
    plates.push_back({1250, cut, 1250, 1100, 6, 1, deck});
    plates.push_back({-1250, cut, -1250, 1100, 6, 1, deck});
  }
  return plates;
}

BOOST_AUTO_TEST_CASE(the_flow_in_a_box_girder_is_the_published_one) {
  // published: R. C. Hibbeler, Mechanics of Materials, problem of a box girder under
  // V = 18 kN: 13.033 and 9.437 kN/m. Outer 145 x 300, walls 10, flanges inside at
  // 105 and 145 from the axis
  const double I = 145 * std::pow(300., 3) / 12 - 125 * std::pow(280., 3) / 12 +
                   2 * (125 * 1000. / 12 + 1250 * 105 * 105);
  BOOST_TEST(I == 1.25167e8, tolerance(3e-6));
  PlainWorking work;
  BOOST_TEST(std::abs(edge_shear_flow(work, {18000, 1250. * 145, I}) - 13.033) <=
             0.002);
  BOOST_TEST(std::abs(edge_shear_flow(work, {18000, 1250. * 105, I}) - 9.437) <= 0.002);
}

BOOST_AUTO_TEST_CASE(nailed_boxes_have_the_published_pitch_and_strength) {
  PlainWorking work;
  for (const auto& row : published_table("nailed_boxes.csv")) {
    BOOST_TEST_CONTEXT(row.text("problem")) {
      const double height = row.number("height"), inner = row.number("inner_height");
      const double I = (row.number("width") * std::pow(height, 3) -
                        row.number("inner_width") * std::pow(inner, 3)) /
                       12;
      const double Q =
          row.number("flange_width") * (height - inner) / 2 * (height + inner) / 4;
      const bool pitch_asked = row.text("asked") == "pitch";
      const double V = pitch_asked ? row.number("shear") : 1;
      const double flow = shear_flow(work, {V, Q, I});
      // pitch: two nails to the pitch; shear: the flow of 1 N goes up into it
      const double found = pitch_asked
                               ? strength_pitch(work, flow, row.number("nail"), 2)
                               : 2 * row.number("nail") / row.number("pitch") / flow;
      BOOST_TEST(std::abs(found - row.number(row.text("asked"))) <=
                 row.number("within"));
    }
  }
}

BOOST_AUTO_TEST_CASE(a_nailed_box_of_known_section_has_the_worked_figures) {
  // derived: I = (260 x 310^3 - 160 x 260^3)/12, Q = 260 x 25 x 142.5, V = 24 I/Q
  PlainWorking work;
  const double I = 411.125e6, Q = 926250;
  BOOST_TEST(shear_flow(work, {10652.6, Q, I}) == 24, tolerance(3e-6));
}

BOOST_AUTO_TEST_CASE(the_flow_in_a_girders_flange_grows_by_150_each_metre) {
  // published: D. Johnson, Advanced Structural Mechanics (2000), ex 2.4, page 85:
  // V = 2000 kN, I = 0.2 m4, flange 20 mm at 0.75 m: q = 150 x kN/m
  PlainWorking work;
  for (const double x : {0.5, 1.0, 2.0})  // m
    BOOST_TEST(shear_flow(work, {2e6, 20 * 1000 * x * 750, 0.2e12}) == 150 * x,
               tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_boat_as_a_box_has_the_worked_section_and_flow) {
  // derived: areas 25000, 12500 and 13200 at 0, 1100 and 550; rounded to six digits
  const auto section = section_properties(box_boat());
  BOOST_TEST_REQUIRE(section.has_value());
  BOOST_TEST(section->area == 50700, tolerance(1e-12));
  BOOST_TEST(section->neutral_axis == 414.398, tolerance(2e-6));
  BOOST_TEST(section->I == 1.17425e10, tolerance(3e-6));
  PlainWorking work;
  const double q = edge_shear_flow(work, {20000, section->Q_deck, section->I});
  BOOST_TEST(q == 7.29830, tolerance(2e-6));
  BOOST_TEST(fastener_load(work, q, 150) == 1094.74, tolerance(5e-6));
  BOOST_TEST(mean_bond_stress(work, q, 50) == 0.145966, tolerance(3e-6));
}

BOOST_AUTO_TEST_CASE(the_flow_down_the_sides_adds_up_to_the_shear_force) {
  // property: both sides' flow over their height is V; Simpson's rule, exact for the
  // flow's parabola
  PlainWorking work;
  double force = 0;
  const int count = 10;
  for (int i = 0; i <= count; ++i) {
    const double height = 1 + 1098. * i / count;
    const auto section = section_properties(box_boat(height));
    BOOST_TEST_REQUIRE(section.has_value());
    const double weight = i == 0 || i == count ? 1 : i % 2 == 1 ? 4 : 2;
    force += 2 * weight * 1098. / count / 3 *
             edge_shear_flow(work, {20000, section->Q_deck, section->I});
  }
  // the outer mm at bottom and deck carry the edges' flow, to within its change in it
  const auto at = [&](double height) {
    const auto section = section_properties(box_boat(height));
    return edge_shear_flow(work, {20000, section->Q_deck, section->I});
  };
  force += 2 * (at(0.5) + at(1099.5));
  BOOST_TEST(force == 20000, tolerance(1e-7));
}

BOOST_AUTO_TEST_CASE(a_sloping_side_counts_by_its_height) {
  // derived: a plate of length 500 rising 300: area 500 t, own part 500 t 300^2/12
  const auto section = section_properties({{0, 0, 400, 300, 2, 1, hull},
                                           {0, 0, -400, 300, 2, 1, hull},
                                           {400, 300, -400, 300, 1, 1, deck}});
  BOOST_TEST_REQUIRE(section.has_value());
  const double NA = (2000. * 150 + 800 * 300) / 2800;
  BOOST_TEST(section->neutral_axis == NA, tolerance(1e-12));
  BOOST_TEST(section->I == 2000 * (7500 + (150 - NA) * (150 - NA)) +
                               800 * (300 - NA) * (300 - NA),
             tolerance(1e-12));
  BOOST_TEST(section->Q_deck == 800 * (300 - NA), tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_stiffer_plate_counts_as_a_thicker_one) {
  // property
  auto stiff = box_boat(), thick = box_boat();
  stiff[2].modulus_ratio = 2.5;
  thick[2].thickness = 12.5;
  const auto one = section_properties(stiff), other = section_properties(thick);
  BOOST_TEST_REQUIRE((one.has_value() && other.has_value()));
  BOOST_TEST(one->I == other->I, tolerance(1e-14));
  BOOST_TEST(one->Q_deck == other->Q_deck, tolerance(1e-14));
}

BOOST_AUTO_TEST_CASE(raising_the_whole_section_changes_nothing_but_its_height) {
  // property
  auto raised = box_boat();
  for (SectionPlate& plate : raised) plate.z_1 += 5000, plate.z_2 += 5000;
  const auto one = section_properties(box_boat()), other = section_properties(raised);
  BOOST_TEST_REQUIRE((one.has_value() && other.has_value()));
  BOOST_TEST(other->neutral_axis == one->neutral_axis + 5000, tolerance(1e-12));
  BOOST_TEST(other->I == one->I, tolerance(1e-10));
  BOOST_TEST(other->Q_deck == one->Q_deck, tolerance(1e-10));
}

BOOST_AUTO_TEST_CASE(a_section_that_cannot_be_worked_is_refused) {
  auto lopsided = box_boat();
  lopsided[1].thickness = 8;
  auto twisted = box_boat();
  twisted[0] = {-1250, 0, 1250, 50, 10, 1, hull};
  auto thin = box_boat();
  thin[3].thickness = 0;
  auto all_hull = box_boat();
  all_hull[2].part = hull;
  auto nowhere = box_boat();
  nowhere[1].z_2 = std::nan("");
  const struct {
    std::vector<SectionPlate> plates;
    const char *where, *message;
  } rows[] = {
      {{}, "plate", "no joint in the section: plates of deck and of hull"},
      {all_hull, "plate", "no joint in the section: plates of deck and of hull"},
      {lopsided, "plate", "sides differ: the mirror image of each plate, too"},
      {twisted, "plate", "sides differ: the mirror image of each plate, too"},
      {thin, "plate[3]", "not a plate: a length, a thickness and a modulus above 0"},
      {nowhere, "plate[1]", "not a plate: a length, a thickness and a modulus above 0"},
  };
  for (const auto& row : rows) {
    const auto section = section_properties(row.plates);
    BOOST_TEST_REQUIRE(!section.has_value());
    BOOST_TEST(section.error().front().where == row.where);
    BOOST_TEST(section.error().front().message == row.message);
  }
}

BOOST_AUTO_TEST_CASE(a_working_on_paper_gives_the_numbers_of_the_plain_one) {
  WrittenWorking work;
  PlainWorking plain;
  BOOST_TEST(shear_flow(work, {20000., 8.5e6, 1.2e10}).value() ==
             shear_flow(plain, {20000, 8.5e6, 1.2e10}));
  BOOST_TEST(edge_shear_flow(work, {20000., 8.5e6, 1.2e10}).value() ==
             edge_shear_flow(plain, {20000, 8.5e6, 1.2e10}));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
