#include "tests/joint/mechanics/lap_strip.h"

#include <boost/math/special_functions/bessel.hpp>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/mechanics/lap_shear.h"
#include "joint/mechanics/single_lap.h"
#include "tests/joint/mechanics/example_laps.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(lap_strip_test)

/// Laminates of 6 and 4 mm under load and heat.
const ShearLap<double> unequal_lap = {370, 3, 48000, 32000, 50};
const ShearLoad<double> warm = {100, 1e-4, 3e-4};

StripStresses bars(std::size_t elements) {
  return strip_stresses(BarStrip{370, 3, 3, 48000, 32000, 50, 100, 1e-4, 3e-4},
                        elements);
}

BOOST_AUTO_TEST_CASE(two_bars_on_a_layer_come_to_volkersens_stresses) {
  // derived: finite elements, an independent route; second order, so that halving the
  // elements leaves a quarter of the error
  PlainWorking work;
  const double end_1 = end_1_shear(work, unequal_lap, warm);
  const double end_2 = end_2_shear(work, unequal_lap, warm);
  const StripStresses coarse = bars(80), fine = bars(160);
  BOOST_TEST((coarse.tau_1 - end_1) / (fine.tau_1 - end_1) == 4, tolerance(0.01));
  BOOST_TEST((coarse.tau_2 - end_2) / (fine.tau_2 - end_2) == 4, tolerance(0.01));
  BOOST_TEST((4 * fine.tau_1 - coarse.tau_1) / 3 == end_1, tolerance(1e-6));
  BOOST_TEST((4 * fine.tau_2 - coarse.tau_2) / 3 == end_2, tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(two_bars_on_a_wedge_come_to_its_exact_stresses) {
  // derived: slide'' = kappa slide/eta with eta linear has the solutions
  // sqrt(eta) I1(z) and sqrt(eta) K1(z), z = 2 sqrt(kappa eta)/slope; the strains
  // between the bars at both ends give their shares
  using boost::math::cyl_bessel_i, boost::math::cyl_bessel_k;
  const double kappa = 370 * (1 / 48000. + 1 / 40000.), slope = 7 / 50.;
  const double thin = 2 * std::sqrt(kappa) / slope, thick = thin * std::sqrt(8.);
  const double across = cyl_bessel_i(0, thick) * cyl_bessel_k(0, thin) -
                        cyl_bessel_i(0, thin) * cyl_bessel_k(0, thick);
  const double own = thin * (cyl_bessel_i(0, thick) * cyl_bessel_k(1, thin) +
                             cyl_bessel_k(0, thick) * cyl_bessel_i(1, thin));
  const double exact =
      370 * 100 * (own / 48000 + 1 / 40000.) / (2 * kappa / slope * across);
  const BarStrip strip = {370, 1, 8, 48000, 40000, 50, 100};
  const double coarse = strip_stresses(strip, 400).tau_1;
  const double fine = strip_stresses(strip, 800).tau_1;
  BOOST_TEST((coarse - exact) / (fine - exact) == 4, tolerance(0.01));
  BOOST_TEST((4 * fine - coarse) / 3 == exact, tolerance(1e-7));
}

/// A lap in balance: moments and shears at its edges hold the pull's eccentricity.
BeamStrip balanced(const SingleLap<double>& lap,
                   double P,
                   double k,
                   double strain_arm) {
  PlainWorking work;
  const double force_arm = (lap.t + lap.eta) / 2, M = k * P * force_arm;
  return {lap.Ga,
          lap.Ea,
          lap.eta,
          lap.eta,
          lap.E * lap.t,
          edge_loads(work, lap, P, EdgeMoment::Turning).D,
          lap.l,
          force_arm,
          strain_arm,
          P,
          M,
          (2 * P * force_arm - 2 * M) / lap.l};
}

BOOST_AUTO_TEST_CASE(two_beams_on_a_layer_come_to_the_shear_of_the_single_lap) {
  // derived: finite elements with the same arms, the layer's force at mid-bond and its
  // strain that of the faces; second order
  for (const EdgeMoment edge : {EdgeMoment::Turning, EdgeMoment::Held}) {
    PlainWorking work;
    const double k = edge_loads(work, paste_lap(), 100., edge).k;
    const double exact = single_lap_shear(work, paste_lap(), 100., edge);
    const BeamStrip strip = balanced(paste_lap(), 100, k, paste_lap().t / 2);
    const double coarse = strip_stresses(strip, 40).tau_2;
    const double fine = strip_stresses(strip, 80).tau_2;
    BOOST_TEST((coarse - exact) / (fine - exact) == 4, tolerance(0.01));
    BOOST_TEST((4 * fine - coarse) / 3 == exact, tolerance(1e-5));
  }
}

BOOST_AUTO_TEST_CASE(the_turning_of_the_lap_itself_adds_to_its_shear) {
  // derived: with the lap's own slope in the bond's strain the strain's arm is that of
  // the force, and the formula has r^2 for r: 7.24181 for 6.30030, 15 % more
  PlainWorking work;
  auto lap = paste_lap();
  const double faces = single_lap_shear(work, lap, 100., EdgeMoment::Turning);
  lap.strain = BondStrain::WithSlope;
  const double k = edge_loads(work, lap, 100., EdgeMoment::Turning).k;
  const double bend = 3 * (1 - 0.3 * 0.3) * 1.6 * 1.6;
  const double om = std::sqrt(2 * 370 / (8000. * 5 * 3) * (1 + bend));
  const double whole = bend / (1 + bend) * (1 - k) * 2 +
                       370 / om * 100 / 120000 * (1 + bend * k) / std::tanh(om * 25);
  const BeamStrip strip = balanced(lap, 100, k, (lap.t + lap.eta) / 2);
  const double coarse = strip_stresses(strip, 100).tau_2;
  const double fine = strip_stresses(strip, 200).tau_2;
  BOOST_TEST((4 * fine - coarse) / 3 == whole, tolerance(1e-5));
  BOOST_TEST(single_lap_shear(work, lap, 100., EdgeMoment::Turning) == whole,
             tolerance(1e-12));
  BOOST_TEST(whole / faces == 1.15, tolerance(1e-3));
}

BOOST_AUTO_TEST_CASE(the_exact_shear_is_that_of_the_strip_for_thick_and_thin_bonds) {
  // derived: finite elements with both arms at mid-bond
  for (const double eta : {0.5, 3., 10.})
    for (const EdgeMoment edge : {EdgeMoment::Turning, EdgeMoment::Held}) {
      PlainWorking work;
      SingleLap<double> lap = paste_lap();
      lap.eta = eta;
      lap.strain = BondStrain::WithSlope;
      const double k = edge_loads(work, lap, 100., edge).k;
      const BeamStrip strip = balanced(lap, 100, k, (lap.t + eta) / 2);
      const double coarse = strip_stresses(strip, 100).tau_2;
      const double fine = strip_stresses(strip, 200).tau_2;
      BOOST_TEST((4 * fine - coarse) / 3 == single_lap_shear(work, lap, 100., edge),
                 tolerance(1e-4));
    }
}

/// The closed form's peel for any moment and shear: that of the single lap, with the
/// shear in place of the part that V_off has in a long lap.
double closed_peel(const SingleLap<double>& lap, double D, double M, double V) {
  const double chi = std::pow(lap.Ea / (2 * D * lap.eta), 0.25), X2 = chi * lap.l;
  const double ends = std::sinh(X2) + std::sin(X2);
  return chi * chi * M * (std::sinh(X2) - std::sin(X2)) / ends +
         chi * V * (std::cosh(X2) + std::cos(X2)) / ends;
}

BOOST_AUTO_TEST_CASE(two_beams_on_a_layer_come_to_the_peel_of_the_single_lap) {
  // derived: finite elements, fourth order: halving leaves a sixteenth of the error;
  // from a long lap (X = 5.2) to a short one (X = 1)
  for (const double Ea : {1000., 20., 1.2}) {
    SingleLap<double> lap = paste_lap();
    lap.Ea = Ea;
    const BeamStrip strip = balanced(lap, 100, 0.5, lap.t / 2);
    const double exact = closed_peel(lap, strip.D, strip.M, strip.V);
    const double coarse = strip_stresses(strip, 20).sig_2;
    const double fine = strip_stresses(strip, 40).sig_2;
    BOOST_TEST((coarse - exact) / (fine - exact) == 16, tolerance(0.1));
    BOOST_TEST(fine == exact, tolerance(2e-5));
    BOOST_TEST(strip_stresses(strip, 40).sig_1 == fine, tolerance(1e-6));
  }
}

BOOST_AUTO_TEST_CASE(the_single_lap_has_that_closed_form) {
  for (const double l : {12., 50.}) {
    SingleLap<double> lap = paste_lap();
    lap.l = l;
    PlainWorking work;
    const auto edge = edge_loads(work, lap, 100., EdgeMoment::Turning);
    const double M0 = edge.k * 100 * 4;
    BOOST_TEST(single_lap_peel(work, lap, 100., 0., EdgeMoment::Turning) ==
                   closed_peel(lap, edge.D, M0, edge.xi * M0),
               tolerance(1e-12));
  }
}

double strip_pulled_away(const SingleLap<double>& lap) {
  BeamStrip strip = balanced(lap, 0, 0, lap.t / 2);
  strip.V = 10;
  return strip_stresses(strip, 200).sig_2;
}

BOOST_AUTO_TEST_CASE(a_lip_pulled_away_from_a_held_hull_has_the_peel_of_the_formula) {
  // derived: finite elements of the lip loaded at its root and the hull held beyond the
  // far end; soft adhesives, where the moment over the lap counts
  PlainWorking work;
  for (const double Ea : {1.2, 3., 5.})
    for (const double l : {25., 50.}) {
      SingleLap<double> lap = paste_lap();
      lap.Ea = Ea;
      lap.l = l;
      const double closed = single_lap_peel(work, lap, 0., 10., EdgeMoment::Turning);
      BOOST_TEST(strip_pulled_away(lap) == closed, tolerance(1e-4));
    }
}

BOOST_AUTO_TEST_CASE(a_moment_that_would_relieve_the_lip_is_not_counted_on) {
  // derived: as above; where the moment relieves, the formula stands above the strip
  PlainWorking work;
  for (const double Ea : {20., 100., 1000.}) {
    SingleLap<double> lap = paste_lap();
    lap.Ea = Ea;
    const double closed = single_lap_peel(work, lap, 0., 10., EdgeMoment::Turning);
    BOOST_TEST(closed > strip_pulled_away(lap));
    BOOST_TEST(closed < 1.3 * strip_pulled_away(lap));
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
