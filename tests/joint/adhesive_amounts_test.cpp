#include "joint/adhesive_amounts.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

Adhesive paste() {
  Adhesive adhesive;
  adhesive.waste = 0.05;
  adhesive.pack = Volume::ml(490);
  adhesive.pack_usable = Volume::ml(430);
  adhesive.nozzle_purge = Volume::ml(30);
  return adhesive;
}

BOOST_AUTO_TEST_SUITE(adhesive_amounts)

BOOST_AUTO_TEST_CASE(packs_are_rounded_up_once_and_each_has_a_nozzle) {
  const struct {
    double bead;  // ml
    std::size_t packs;
    double boat;  // ml
    const char* working;
  } rows[] = {
      {1200, 4, 1380, "derived: 1260 / 400 = 3.15; 1260 + 4 x 30"},
      {1600 / 1.05, 4, 1720, "derived: 1600 / 400 = 4 exactly, no fifth"},
      {1600.1 / 1.05, 5, 1750.1, "derived: 0.1 ml over opens a fifth"},
      {10, 1, 40.5, "derived: 10.5 + 30"},
      {0, 1, 30, "derived: at least one nozzle, which is purged"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.working) {
      const AdhesiveAmounts amounts =
          amounts_of(Volume::ml(900), Volume::ml(row.bead), paste());
      BOOST_TEST(amounts.packs == row.packs);
      BOOST_TEST(amounts.nozzles == row.packs);
      BOOST_TEST(amounts.boat.in_ml() == row.boat, tolerance(1e-12));
      BOOST_TEST(amounts.joint.in_ml() == 900);
      BOOST_TEST(!amounts.mass_kg.has_value());
    }
}

BOOST_AUTO_TEST_CASE(the_packs_of_a_boat_hold_what_the_boat_takes) {
  // property, whatever the bead
  for (double bead = 1; bead < 9000; bead += 37.7) {
    const AdhesiveAmounts amounts = amounts_of(Volume(), Volume::ml(bead), paste());
    const double there = static_cast<double>(amounts.packs) * 430;
    BOOST_TEST(there >= amounts.boat.in_ml() - 1e-6);
    BOOST_TEST(there - 400 < amounts.boat.in_ml());
  }
}

BOOST_AUTO_TEST_CASE(mass_goes_by_density) {
  Adhesive adhesive = paste();
  adhesive.density = 1.2;
  // derived: 1380 ml at 1.2 g/ml
  BOOST_TEST(*amounts_of(Volume(), Volume::ml(1200), adhesive).mass_kg == 1.656,
             tolerance(1e-12));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
