#include "joint/section_bands.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/adhesive.h"
#include "joint/bead_runs.h"
#include "joint/bond_space.h"
#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

/// Short stretches that `bead_runs` joins to their neighbours: 1e-6 mm for each band.
constexpr double joined = 1e-6;

/// A box whose gap grows from 3 to 9 along each side, the bond over its whole lap.
Joint widening_box() {
  Joint joint = box_joint(2000, 1000, {});
  for (const std::size_t row : {2u, 3u}) {
    joint.sheer.rows[row].offsets.lip_top = Length::mm(9);
    joint.sheer.rows[row].offsets.lip_low = Length::mm(9);
  }
  return joint;
}

/// What the beads take that the bands need at a squeeze-out (ml).
double laid_ml(const SectionBands& bands,
               const Adhesive& adhesive,
               Length SectionBand::*column,
               double squeeze_out) {
  double laid_mm3 = 0;
  for (const SectionBand& band : bands.bands)
    laid_mm3 += smallest_beads(adhesive, band.up_to_mm2 * (1 + squeeze_out)).area_mm2 *
                (band.*column).in_mm();
  return laid_mm3 / 1000;
}

/// What `bead_runs` lays at a squeeze-out (ml).
double program_ml(const Joint& joint, double shift_mm, double squeeze_out) {
  const Perimeter perimeter = perimeter_of(joint);
  const RuledFace lip = perimeter.lip->shifted(shift_mm);
  Adhesive adhesive = *joint.adhesive;
  adhesive.squeeze_out = squeeze_out;
  return bead_volume(
             bead_runs(perimeter, bond_space(joint.bond, perimeter, lip), adhesive))
      .in_ml();
}

BOOST_AUTO_TEST_SUITE(section_bands_suite)

BOOST_AUTO_TEST_CASE(a_constant_section_is_one_band_that_a_bead_bounds) {
  // derived: a band of 20 at 3 mm is 60 mm2 on the straight sides of a box; beads of
  // 10 and 12 cover 50 and 72; with 20 % squeezed out 60 is just what 12 covers
  Joint joint = box_joint(2000, 1000, {});
  joint.bond = {Length(), Length::mm(20)};
  joint.adhesive->bead_sizes = {Length::mm(10), Length::mm(12)};
  const SectionBands bands = section_bands(joint, perimeter_of(joint));
  BOOST_TEST(bands.step_percent == 1);
  double nominal = 0;
  for (const SectionBand& band : bands.bands)
    if (band.nominal > Length()) {
      BOOST_TEST(band.up_to_mm2 == 72 / 1.2, tolerance(1e-12));
      nominal += band.nominal.in_mm();
    }
  BOOST_TEST(nominal == perimeter_of(joint).sheer_length.in_mm(), tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(the_bands_take_what_the_runs_take_at_whole_per_cents) {
  // property: the two ways of summing agree, lip as drawn and moved
  Joint joint = widening_box();
  joint.adhesive->squeeze_out = 0.125;
  const SectionBands bands = section_bands(joint, perimeter_of(joint));
  const struct {
    Length SectionBand::*column;
    double shift_mm;
  } lips[] = {
      {&SectionBand::least, -1}, {&SectionBand::nominal, 0}, {&SectionBand::most, 1}};
  for (const auto& lip : lips)
    for (const double squeeze_out : {0.0, 0.01, 0.1, 0.125, 0.15, 0.29, 0.5}) {
      const double runs = program_ml(joint, lip.shift_mm, squeeze_out);
      const double slack = joined * static_cast<double>(bands.bands.size());
      BOOST_TEST(std::abs(laid_ml(bands, *joint.adhesive, lip.column, squeeze_out) -
                          runs) <= slack,
                 "at " << squeeze_out << ": " << runs << " ml");
    }
}

BOOST_AUTO_TEST_CASE(between_whole_per_cents_the_bands_are_on_the_safe_side) {
  // property: no less than the runs take, no more than they take at the next per cent
  const Joint joint = widening_box();
  const SectionBands bands = section_bands(joint, perimeter_of(joint));
  for (const double percent : {0.5, 7.3, 12.9, 33.4}) {
    const double laid =
        laid_ml(bands, *joint.adhesive, &SectionBand::nominal, percent / 100);
    BOOST_TEST(laid > program_ml(joint, 0, percent / 100));
    BOOST_TEST(laid <= program_ml(joint, 0, std::ceil(percent) / 100) + 1e-3);
  }
}

BOOST_AUTO_TEST_CASE(tiny_beads_are_cut_for_their_own_squeeze_out_alone) {
  // derived: a bead of 0.4 covers 0.08 mm2; ten metres of 150 to 450 mm2 have thousands
  Joint joint = widening_box();
  joint.adhesive->bead_sizes = {Length::mm(0.4)};
  const SectionBands bands = section_bands(joint, perimeter_of(joint));
  BOOST_TEST(bands.step_percent == 0);
  const double own = joint.adhesive->squeeze_out;
  BOOST_TEST(laid_ml(bands, *joint.adhesive, &SectionBand::nominal, own) ==
                 program_ml(joint, 0, own),
             tolerance(1e-7));
  BOOST_TEST(laid_ml(bands, *joint.adhesive, &SectionBand::nominal, 0.2) >
             program_ml(joint, 0, 0.2));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
