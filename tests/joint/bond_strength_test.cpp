#include "joint/bond_strength.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/bond_use.h"
#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"
#include "tests/joint/example_strength.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BondStrength bond_of(const Joint& joint) {
  const Perimeter perimeter = perimeter_of(joint);
  const auto loads = JointLoads::of(joint, perimeter);
  BOOST_TEST_REQUIRE(loads.has_value());
  const auto bond = bond_strength(joint, perimeter, *loads);
  BOOST_TEST_REQUIRE(bond.has_value(), (bond ? "" : bond.error().front().message));
  return *bond;
}

/// A box with upright faces 3 mm apart, 50 mm high.
Joint box_of(double hull_mm, double lip_mm, const JointLoad& load) {
  ExampleFaces faces;
  faces.hull_thickness = hull_mm;
  faces.lip_thickness = lip_mm;
  return with_strength(box_joint(4000, 2000, faces), load);
}

/// The bond midway along starboard's straight side.
BondPoint amidships(const BondStrength& bond) {
  for (const BondPoint& point : bond.along)
    if (point.side == SideName::Starboard && point.girth > Length::mm(2500))
      return point;
  BOOST_FAIL("no place there");
  return bond.worst;
}

BOOST_AUTO_TEST_SUITE(bond_strength_test)

BOOST_AUTO_TEST_CASE(a_pull_across_a_whole_joint_has_the_stresses_of_the_single_lap) {
  // derived: H1b with r squared in a, 7.24181, on a strip of finite elements; peel as
  // in an independent script
  const BondPoint point = amidships(bond_of(box_of(5, 5, {0, 100, 0})));
  BOOST_TEST(point.width.in_mm() == 50, tolerance(1e-9));
  BOOST_TEST(point.gap().in_mm() == 3, tolerance(1e-9));
  BOOST_TEST(point.shear_across == 7.24181, tolerance(5e-6));
  BOOST_TEST(point.peel == 10.2050, tolerance(5e-6));
  BOOST_TEST(point.utilisation == 10.2050 / 6, tolerance(5e-6));
  BOOST_TEST((point.mode == BondMode::AdhesivePeel));
}

BOOST_AUTO_TEST_CASE(a_flow_along_a_whole_joint_has_volkersens_peak) {
  // derived: V4 in an independent script
  const BondPoint point = amidships(bond_of(box_of(6, 4, {30, 0, 0})));
  BOOST_TEST(point.shear_along == 2.36037, tolerance(5e-6));
  BOOST_TEST(point.shear_across == 0);
  BOOST_TEST(point.utilisation == 0.236037, tolerance(5e-6));
}

BOOST_AUTO_TEST_CASE(a_factor_stands_on_the_load) {
  Joint joint = box_of(6, 4, {30, 0, 0});
  joint.loads->factor_bond = 4;
  BOOST_TEST(amidships(bond_of(joint)).utilisation == 4 * 0.236037, tolerance(5e-6));
}

BOOST_AUTO_TEST_CASE(
    unlike_laminates_are_worked_as_two_of_either_and_the_worse_counts) {
  const double thick = amidships(bond_of(box_of(6, 6, {0, 20, 0}))).utilisation;
  const double thin = amidships(bond_of(box_of(4, 4, {0, 20, 0}))).utilisation;
  const double unlike = amidships(bond_of(box_of(6, 4, {0, 20, 0}))).utilisation;
  BOOST_TEST(unlike == std::max(thick, thin), tolerance(1e-12));  // property
  BOOST_TEST(passes_of(box_of(5, 5, {})).size() == 1u);
  BOOST_TEST(passes_of(box_of(6, 4, {})).size() == 2u);
}

BOOST_AUTO_TEST_CASE(faces_that_interfere_have_no_bond_line) {
  ExampleFaces faces;
  faces.lip_low = -1;
  const Joint joint = with_strength(box_joint(4000, 2000, faces), {1, 0, 0});
  const BondStrength bond = bond_of(joint);
  BOOST_TEST((bond.worst.mode == BondMode::NoBondLine));
  BOOST_TEST(std::isinf(bond.worst.utilisation));
  BOOST_TEST_REQUIRE(!bond.outside.empty());
  BOOST_TEST(bond.outside.front().what.starts_with("faces that touch or interfere"));
}

BOOST_AUTO_TEST_CASE(a_wedge_is_not_worked_as_its_mean_gap) {
  ExampleFaces faces;
  faces.lip_top = 1;
  faces.lip_low = 5;
  const Joint joint = with_strength(box_joint(4000, 2000, faces), {10, 10, 0});
  const BondPoint wedge = amidships(bond_of(joint));
  const BondPoint mean = amidships(bond_of(box_of(6, 5, {10, 10, 0})));
  BOOST_TEST(wedge.gap_top.in_mm() < 1.01);
  BOOST_TEST(wedge.gap_low.in_mm() > 4.9);
  BOOST_TEST(wedge.shear_along > mean.shear_along);
  BOOST_TEST(wedge.shear_across > mean.shear_across);
}

BOOST_AUTO_TEST_CASE(the_worst_place_is_found_at_a_load_between_the_rows) {
  // property: a knee of load narrower than the step has its place
  Joint joint = box_of(6, 5, {5, 0, 0});
  joint.loads->stretches.push_back(
      {{SideChoice::Port, Length::mm(2611), Length::mm(2617), false},
       {9, 0, 0},
       "eye"});
  const BondPoint worst = bond_of(joint).worst;
  BOOST_TEST((worst.side == SideName::Port));
  BOOST_TEST(worst.load.along == 14, tolerance(1e-12));
  BOOST_TEST((worst.on_line >= Length::mm(2610) && worst.on_line <= Length::mm(2618)));
}

BOOST_AUTO_TEST_CASE(both_halves_of_a_boat_are_used_alike) {
  const BondStrength bond =
      bond_of(with_strength(circle_joint(1500, 25, {}), {10, 3, 1}));
  std::vector<double> starboard, port;
  for (const BondPoint& point : bond.along)
    (point.side == SideName::Port ? port : starboard).push_back(point.utilisation);
  BOOST_TEST_REQUIRE(starboard.size() == port.size());
  for (std::size_t i = 0; i < port.size(); ++i)  // property: symmetry
    BOOST_TEST(starboard[i] == port[i], tolerance(1e-9));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
