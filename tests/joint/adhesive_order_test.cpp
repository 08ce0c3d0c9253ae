#include "joint/adhesive_order.h"

#include <boost/test/unit_test.hpp>

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

BOOST_AUTO_TEST_SUITE(adhesive_order_suite)

BOOST_AUTO_TEST_CASE(packs_are_rounded_up_once_for_the_run) {
  const struct {
    std::size_t boats, packs;
    const char* working;
  } rows[] = {
      {1, 4, "derived: 1380 / 430 = 3.21"},
      {10, 33, "derived: 13800 / 430 = 32.1, not 10 x 4"},
      {43, 138, "derived: 59340 / 430 = 138 exactly"},
      {120, 386, "derived: 165600 / 430 = 385.1"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.working) {
      const OrderPart part = adhesive_order(paste(), boat(), row.boats);
      BOOST_TEST_REQUIRE(part.lines.size() == 2u);
      BOOST_TEST(part.lines[0].packs == row.packs);
      BOOST_TEST(*part.lines[0].total == 34.0 * static_cast<double>(row.packs));
      BOOST_TEST(part.lines[1].item == "mixer nozzle");
      BOOST_TEST(part.lines[1].packs == 4 * row.boats);
      BOOST_TEST(!part.lines[1].total.has_value());
    }
}

BOOST_AUTO_TEST_CASE(every_allowance_is_a_line_of_its_own) {
  const OrderPart part = adhesive_order(paste(), boat(), 10);
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
      {"pack rounding", 390, "derived: 33 x 430 - 13800"},
      {"residue in the packs", 1980, "derived: 33 x 60"},
  };
  BOOST_TEST_REQUIRE(part.allowances.size() == std::size(rows) + 1);
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
    const OrderPart part = adhesive_order(paste(), boat(), boats);
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
