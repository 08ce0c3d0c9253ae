#include "joint/order.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

/// The order for a box with four fasteners and prices for all but the nozzles.
Joint priced_box() {
  Joint joint = box_joint(2000, 1000, {});
  joint.adhesive->pack_price = 34;
  joint.fastener.box = 100;
  joint.fastener.box_price = 11;
  joint.order = OrderRules{10, std::nullopt, 0.05};
  return joint;
}

Order order_of(const Joint& joint) {
  const Perimeter perimeter = perimeter_of(joint);
  const auto made = schedule(
      joint, perimeter,
      layout_at({{SideName::Starboard, {600, 700}}, {SideName::Port, {600, 700}}}));
  BOOST_TEST_REQUIRE(made.has_value());
  const auto adhesive = adhesive_plan(joint, perimeter, made->stations.size());
  BOOST_TEST_REQUIRE(adhesive.has_value());
  return order(joint, *adhesive, *made);
}

BOOST_AUTO_TEST_SUITE(order_suite)

BOOST_AUTO_TEST_CASE(an_order_adds_up_what_has_a_price_and_names_what_has_none) {
  const Order made = order_of(priced_box());
  // derived: 13860 ml for the run (see the adhesive's tests), / 430: 33 packs at 34;
  // 4 x 10 x 1.05 = 42 screws, one box at 11
  BOOST_TEST_REQUIRE(made.total.has_value());
  BOOST_TEST(*made.total == 33 * 34 + 11, tolerance(1e-12));
  BOOST_TEST(*made.per_boat == (33 * 34 + 11) / 10., tolerance(1e-12));
  BOOST_TEST(check_named(made.checks, "order.prices").what ==
             "the total is without mixer nozzle: no price is given");
}

BOOST_AUTO_TEST_CASE(an_order_with_every_price_has_no_gap_to_name) {
  Joint joint = priced_box();
  joint.adhesive->nozzle_price = 2.4;
  const Order made = order_of(joint);
  BOOST_TEST(made.checks.empty());
  BOOST_TEST(*made.total == 33 * 34 + 42 * 2.4 + 11, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(an_order_without_prices_has_no_total) {
  Joint joint = box_joint(2000, 1000, {});
  joint.order = OrderRules{10, std::nullopt, 0.05};
  const Order made = order_of(joint);
  BOOST_TEST(!made.total.has_value());
  BOOST_TEST(!made.per_boat.has_value());
  BOOST_TEST(made.checks.empty());
}

BOOST_AUTO_TEST_CASE(a_run_longer_than_the_shelf_life_comes_in_deliveries) {
  Joint joint = priced_box();
  joint.adhesive->shelf_life = Duration::days(270);
  joint.order->boats = 120;
  joint.order->boats_a_month = 10;
  const Order made = order_of(joint);
  BOOST_TEST_REQUIRE(made.shelf.has_value());
  // derived: 88.71 boats in 270 days use 284.7 of 387 packs
  BOOST_TEST(made.shelf->packs == 284u);
  BOOST_TEST(made.shelf->deliveries == 2u);
  const Check check = check_named(made.checks, "order.shelf_life");
  BOOST_TEST((check.state == CheckState::Warn));
  BOOST_TEST(check.what ==
             "the run's adhesive bought at once would expire before it is used up: 2 "
             "deliveries of at "
             "most 284 packs");
  joint.order->boats = 80;
  BOOST_TEST((check_named(order_of(joint).checks, "order.shelf_life").state ==
              CheckState::Pass));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
