#include "joint/adhesive_order.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <vector>

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

Adhesive paste() {
  Adhesive adhesive;
  adhesive.name = "paste";
  adhesive.squeeze_out = 0.10;
  adhesive.waste = 0.05;
  adhesive.pack = Volume::ml(490);
  adhesive.pack_usable = Volume::ml(430);
  adhesive.nozzle_purge = Volume::ml(30);
  adhesive.pack_price = 34;
  adhesive.shelf_life = Duration::days(270);
  return adhesive;
}

/// Derived: 900 in the joint, 1200 laid, 1260 with waste, 4 packs of 400, 1380 in all.
AdhesiveAmounts boat() {
  return amounts_of(Volume::ml(900), Volume::ml(1200), paste());
}

/// A run worked through gun by gun, as a shop would.
struct Worked {
  std::size_t nozzles = 0;
  double short_of_ml = 0;  ///< what could not be laid, for there was no pack left
};

/// A gun with what is left in its open pack.
struct Gun {
  double open_pack = 0;  ///< ml
  bool nozzle_on = false;
};

/// What one gun does on a boat with its open pack, and then with packs from the shelf;
/// what is left of a pack and no more than a nozzle takes is thrown away.
void lay(double& to_lay, Gun& gun, std::size_t& shelf, Worked& worked) {
  const double purge = paste().nozzle_purge.in_ml();
  while (to_lay > 1e-9) {
    if (gun.open_pack <= (gun.nozzle_on ? 0 : purge) + 1e-9) {
      if (shelf == 0) return;
      gun = {paste().pack_usable.in_ml(), false};
      --shelf;
    }
    if (!gun.nozzle_on) {
      gun = {gun.open_pack - purge, true};
      ++worked.nozzles;
    }
    const double laid = std::min(to_lay, gun.open_pack);
    gun.open_pack -= laid;
    to_lay -= laid;
  }
}

/// @param shares  of each boat that the guns lay, in turn; a gun with a pack lays what
///                another has to leave
Worked work_through(const AdhesiveAmounts& amounts,
                    std::size_t boats,
                    const std::vector<double>& shares,
                    std::size_t shelf) {
  Worked worked;
  std::vector<Gun> guns(shares.size());
  for (std::size_t boat = 0; boat < boats; ++boat) {
    double left = 0;
    for (std::size_t gun = 0; gun < guns.size(); ++gun) {
      // each boat is shared out another way
      double to_lay = amounts.bead.in_ml() * (1 + paste().waste) *
                      shares[(gun + boat) % shares.size()];
      lay(to_lay, guns[gun], shelf, worked);
      left += to_lay;
    }
    for (Gun& gun : guns) lay(left, gun, shelf, worked);
    for (Gun& gun : guns) gun.nozzle_on = false;
    worked.short_of_ml += left;
  }
  return worked;
}

BOOST_AUTO_TEST_SUITE(adhesive_order_suite)

BOOST_AUTO_TEST_CASE(packs_are_rounded_up_once_for_the_run) {
  const struct {
    std::size_t boats, guns, packs, nozzles;
    const char* working;
  } rows[] = {
      {1, 1, 4, 4, "derived: 1260 / 400 = 3.15; 1380 / 430 = 3.21"},
      {10, 1, 33, 42, "derived: (12600 + 9 x 30) / 400 = 32.2; 13860 / 430 = 32.2"},
      {10, 2, 33, 51, "derived: (12600 + 18 x 30) / 400 = 32.9; 33 + 18"},
      {27, 1, 87, 113, "derived: (34020 + 26 x 30) / 400 = 87 exactly; 37410 / 430"},
      {120, 1, 387, 506, "derived: (151200 + 119 x 30) / 400 = 386.9; 387 + 119"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.working) {
      const OrderPart part = adhesive_order(paste(), boat(), row.boats, row.guns);
      BOOST_TEST_REQUIRE(part.lines.size() == 2u);
      BOOST_TEST(part.lines[0].packs == row.packs);
      BOOST_TEST(*part.lines[0].total == 34.0 * static_cast<double>(row.packs));
      BOOST_TEST(part.lines[1].item == "mixer nozzle");
      BOOST_TEST(part.lines[1].packs == row.nozzles);
      BOOST_TEST(!part.lines[1].total.has_value());
    }
}

BOOST_AUTO_TEST_CASE(a_run_worked_through_gun_by_gun_never_wants_a_pack_or_a_nozzle) {
  // property: a simulation of the run, however much a boat takes and the guns share it
  const std::vector<std::vector<double>> crews{
      {1}, {0.5, 0.5}, {0.8, 0.2}, {0.34, 0.33, 0.33}, {1, 0}};
  for (const double bead : {90.0, 381.0, 1200.0, 1523.81, 2370.0})
    for (const std::size_t boats : {1u, 2u, 9u, 27u, 120u})
      for (const auto& shares : crews)
        BOOST_TEST_CONTEXT(bead << " ml, " << boats << " boats, " << shares.size()
                                << " guns") {
          const AdhesiveAmounts amounts =
              amounts_of(Volume::ml(bead / 2), Volume::ml(bead), paste());
          const OrderPart part = adhesive_order(paste(), amounts, boats, shares.size());
          const Worked worked =
              work_through(amounts, boats, shares, part.lines[0].packs);
          BOOST_TEST(worked.short_of_ml < 1e-6);
          BOOST_TEST(worked.nozzles <= part.lines[1].packs);
        }
}

BOOST_AUTO_TEST_CASE(part_packs_are_counted_as_they_come_about) {
  // derived: 1260 of 400 a boat leaves 340, 250, 160, 70, 380, 290, 200 and 110 ml
  // after each of eight boats: eight part packs; (11340 + 240) / 400 = 28.95, 29 + 8
  // nozzles, where boat by boat it would be 36
  const OrderPart part = adhesive_order(paste(), boat(), 9, 1);
  BOOST_TEST(part.lines[0].packs == 29u);
  BOOST_TEST(part.lines[1].packs == 37u);
  BOOST_TEST(work_through(boat(), 9, {1}, 29).nozzles == 37u);
  // with a pack less the run cannot be finished
  BOOST_TEST(work_through(boat(), 9, {1}, 28).short_of_ml > 0);
}

BOOST_AUTO_TEST_CASE(every_allowance_is_a_line_of_its_own) {
  const OrderPart part = adhesive_order(paste(), boat(), 10, 1);
  const struct {
    const char* what;
    double amount;  // ml
    const char* working;
  } rows[] = {
      {"joint volume", 9000, "derived: 10 x 900"},
      {"squeeze-out", 900, "derived: 10 %"},
      {"bead rounding", 2100, "derived: 12000 - 9900"},
      {"waste", 600, "derived: 5 % of 12000"},
      {"nozzle purge", 1200, "derived: 40 x 30"},
      {"part packs begun with a fresh nozzle", 60, "derived: 42 - 40, 30 each"},
      {"pack rounding", 330, "derived: 33 x 430 - 13860"},
      {"residue in the packs", 1980, "derived: 33 x 60"},
  };
  BOOST_TEST_REQUIRE(part.allowances.size() == std::size(rows) + 2);
  for (std::size_t i = 0; i < std::size(rows); ++i)
    BOOST_TEST_CONTEXT(rows[i].working) {
      BOOST_TEST(part.allowances[i].item == "paste");
      BOOST_TEST(part.allowances[i].what == rows[i].what);
      BOOST_TEST(part.allowances[i].amount == rows[i].amount, tolerance(1e-10));
    }
  BOOST_TEST(part.allowances[1].basis == "10 % of the joint volume");
}

BOOST_AUTO_TEST_CASE(the_allowances_sum_to_the_need_and_with_rounding_to_the_packs) {
  // property, whatever the run
  for (const std::size_t boats : {1u, 7u, 120u, 999u}) {
    const OrderPart part = adhesive_order(paste(), boat(), boats, 2);
    const OrderLine& line = part.lines[0];
    double sum = 0;
    for (const Allowance& allowance : part.allowances) {
      if (allowance.item != line.item) continue;
      if (allowance.what == "pack rounding") {
        BOOST_TEST(sum == line.need, tolerance(1e-12));
        BOOST_TEST(allowance.amount >= 0);
        BOOST_TEST(allowance.amount < line.pack_size);
      }
      sum += allowance.amount;
    }
    // all that is in the packs, 490 ml each
    BOOST_TEST(sum == static_cast<double>(line.packs) * 490, tolerance(1e-12));
  }
}

BOOST_AUTO_TEST_CASE(a_delivery_is_used_up_before_it_expires) {
  OrderRules rules;
  rules.boats_a_month = 10;
  const struct {
    std::size_t boats, total, packs, deliveries;
    const char* working;  // 270 days at 10 in 30.4375: 88.71 boats
  } rows[] = {
      {120, 386, 284, 2, "derived: 88.71 x 1380 / 430 = 284.7"},
      {88, 283, 283, 1, "derived: the run is over in time"},
      {500, 1605, 284, 6, "derived: 1605 / 284 = 5.65"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.working) {
      rules.boats = row.boats;
      const auto cap = shelf_cap(paste(), boat(), rules, row.total);
      BOOST_TEST_REQUIRE(cap.has_value());
      BOOST_TEST(cap->boats == 10 * 270 / (365.25 / 12), tolerance(1e-12));
      BOOST_TEST(cap->packs == row.packs);
      BOOST_TEST(cap->deliveries == row.deliveries);
    }
}

BOOST_AUTO_TEST_CASE(without_shelf_life_or_rate_there_is_no_cap) {
  OrderRules rules;
  BOOST_TEST(!shelf_cap(paste(), boat(), rules, 10).has_value());
  rules.boats_a_month = 10;
  Adhesive keeps = paste();
  keeps.shelf_life.reset();
  BOOST_TEST(!shelf_cap(keeps, boat(), rules, 10).has_value());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
