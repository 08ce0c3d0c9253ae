#include "joint/mechanics/wedge_lap.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/mechanics/lap_shear.h"
#include "tests/joint/mechanics/lap_strip.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(wedge_lap_test)

/// The strip's stresses, its second-order error taken off.
StripStresses strip(const WedgeLap<double>& lap) {
  const BarStrip bars = {lap.Ga, lap.eta_1, lap.eta_2, lap.E1t1, lap.E2t2, lap.l, 100};
  const StripStresses coarse = strip_stresses(bars, 500),
                      fine = strip_stresses(bars, 1000);
  return {(4 * fine.tau_1 - coarse.tau_1) / 3, (4 * fine.tau_2 - coarse.tau_2) / 3, 0,
          0};
}

/// The stress at the end 1 of an even bond of the gap there, over the strip's.
double own_gap_over_strip(const WedgeLap<double>& lap) {
  PlainWorking work;
  return end_1_shear(work,
                     ShearLap<double>{lap.Ga, lap.eta_1, lap.E1t1, lap.E2t2, lap.l},
                     {100, 0, 0}) /
         strip(lap).tau_1;
}

BOOST_AUTO_TEST_CASE(an_end_worked_with_its_own_gap_is_not_safe_where_it_is_thin) {
  const struct {
    double Ga, thin, thick, thin_40, thin_50, thick_40, thick_50;
  } rows[] = {
      // pinned: against the strip; the header's table
      {370, 2.1, 3.9, 0.892, 0.925, 1.099, 1.067},
      {370, 1, 8, 0.640, 0.725, 1.394, 1.271},
      {370, 0.5, 5, 0.713, 0.784, 1.276, 1.178},
      {0.4, 2.1, 3.9, 0.723, 0.723, 1.340, 1.340},
      {0.4, 1, 8, 0.298, 0.298, 2.373, 2.371},
      {0.4, 0.5, 5, 0.257, 0.257, 2.552, 2.548},
  };
  for (const auto& row : rows) {
    const auto thin = [&](double l) {
      return own_gap_over_strip({row.Ga, row.thin, row.thick, 48000, 40000, l});
    };
    const auto thick = [&](double l) {
      return own_gap_over_strip({row.Ga, row.thick, row.thin, 40000, 48000, l});
    };
    BOOST_TEST(thin(40) == row.thin_40, tolerance(2e-3));
    BOOST_TEST(thin(50) == row.thin_50, tolerance(2e-3));
    BOOST_TEST(thick(40) == row.thick_40, tolerance(2e-3));
    BOOST_TEST(thick(50) == row.thick_50, tolerance(2e-3));
  }
}

BOOST_AUTO_TEST_CASE(the_wedge_is_safe_and_near_for_laminates_of_6_and_5) {
  for (const double Ga : {370., 0.4})
    for (const auto& [thin, thick] :
         {std::pair{2.1, 3.9}, std::pair{1., 8.}, std::pair{0.5, 5.}})
      for (const double l : {40., 50.})
        for (const auto& [first, second] :
             {std::pair{48000., 40000.}, std::pair{40000., 48000.}}) {
          PlainWorking work;
          const WedgeLap<double> lap = {Ga, thin, thick, first, second, l};
          const StripStresses exact = strip(lap);
          const double at_thin = wedge_end_1_shear(work, lap, 100.) / exact.tau_1;
          const double at_thick = wedge_end_2_shear(work, lap, 100.) / exact.tau_2;
          BOOST_TEST((at_thin >= 1 && at_thin <= (Ga > 1 ? 1.04 : 1.112)));
          BOOST_TEST((at_thick >= 1 && at_thick <= (Ga > 1 ? 1.025 : 1.27)));
          BOOST_TEST(wedge_peak_shear(work, lap, 100.) ==
                         std::max(at_thin * exact.tau_1, at_thick * exact.tau_2),
                     tolerance(1e-14));
        }
}

BOOST_AUTO_TEST_CASE(the_wedge_is_nowhere_below_the_strip) {
  // property: over soft and stiff adhesives, gaps of 1 to 1 .. 1 to 100, unlike
  // adherends; the tolerance is the strip's own for gaps that are nearly even
  for (const double Ga : {0.1, 5., 100., 1600.})
    for (const double thick : {1.01, 2., 8., 100.})
      for (const double l : {10., 50., 200.})
        for (const auto& [first, second] :
             {std::pair{48000., 40000.}, std::pair{40000., 4000.},
              std::pair{4000., 40000.}, std::pair{1e3, 1e6}}) {
          const WedgeLap<double> lap = {Ga, 0.5, 0.5 * thick, first, second, l};
          PlainWorking work;
          const StripStresses exact = strip(lap);
          BOOST_TEST(wedge_end_1_shear(work, lap, 100.) >= exact.tau_1 * (1 - 2e-5));
          BOOST_TEST(wedge_end_2_shear(work, lap, 100.) >= exact.tau_2 * (1 - 2e-5));
        }
}

BOOST_AUTO_TEST_CASE(an_even_gap_is_volkersens_overlap) {
  // property: limit
  for (const double l : {1., 50., 1e5}) {
    PlainWorking work;
    const ShearLap<double> even = {370, 3, 48000, 32000, l};
    const WedgeLap<double> wedge = {370, 3, 3, 48000, 32000, l};
    BOOST_TEST(
        wedge_end_1_shear(work, wedge, 100.) == end_1_shear(work, even, {100, 0, 0}),
        tolerance(1e-12));
    BOOST_TEST(
        wedge_end_2_shear(work, wedge, 100.) == end_2_shear(work, even, {100, 0, 0}),
        tolerance(1e-12));
    BOOST_TEST(wedge_peak_shear(work, wedge, 100.) == peak_shear(work, even, 100.),
               tolerance(1e-12));
  }
}

BOOST_AUTO_TEST_CASE(stresses_are_finite_and_the_same_in_both_workings) {
  for (const double l : {1., 50., 1e5})
    for (const double thin : {1e-3, 3.})
      for (const double ratio : {1e-3, 1e3}) {
        const WedgeLap<double> lap = {1600, thin, 50, 40000, 40000 * ratio, l};
        const WedgeLap<Term> words = {
            Term::named("Ga", lap.Ga),     Term::named("eta_1", thin),
            Term::named("eta_2", 50),      Term::named("E1t1", lap.E1t1),
            Term::named("E2t2", lap.E2t2), Term::named("l", l)};
        PlainWorking work;
        WrittenWorking writing;
        const double peak = wedge_peak_shear(work, lap, 100.);
        BOOST_TEST((std::isfinite(peak) && peak > 100 / l));
        BOOST_TEST(wedge_peak_shear(writing, words, Term(100.)).value() == peak);
        BOOST_TEST(wedge_peak_shear(writing, words, Term(100.), wedge_along).value() ==
                   peak);
      }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
