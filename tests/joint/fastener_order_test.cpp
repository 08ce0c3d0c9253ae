#include "joint/fastener_order.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

/// A schedule with so many stations of each length (mm); 0 is none in stock.
Schedule schedule_with(FastenerKind kind,
                       const std::string& size,
                       const std::vector<double>& lengths) {
  FastenerChoice choice;
  choice.kind = kind;
  choice.size = size;
  Schedule schedule;
  schedule.fastener = *fastener(choice);
  for (const double length : lengths) {
    DrillStation station;
    if (length > 0) station.length = Length::mm(length);
    schedule.stations.push_back(station);
  }
  return schedule;
}

OrderRules run_of(std::size_t boats, double spare) {
  OrderRules rules;
  rules.boats = boats;
  rules.spare = spare;
  return rules;
}

BOOST_AUTO_TEST_SUITE(fastener_order_suite)

BOOST_AUTO_TEST_CASE(screws_are_ordered_by_length_with_spares_in_boxes) {
  FastenerChoice choice;
  choice.box = 100;
  choice.box_price = 11;
  const OrderPart part = fastener_order(
      choice, schedule_with(FastenerKind::TappingScrew, "ST4.8", {22, 19, 19, 25, 19}),
      run_of(33, 0.05));
  const struct {
    const char* item;
    double need;
    std::size_t boxes;
    double total;
    const char* working;
  } rows[] = {
      {"tapping screw ST4.8 x 19", 104, 2, 22, "derived: 99 x 1.05 = 103.95"},
      {"tapping screw ST4.8 x 22", 35, 1, 11, "derived: 33 x 1.05 = 34.65"},
      {"tapping screw ST4.8 x 25", 35, 1, 11, "derived: the same"},
  };
  BOOST_TEST_REQUIRE(part.lines.size() == std::size(rows));
  for (std::size_t i = 0; i < std::size(rows); ++i)
    BOOST_TEST_CONTEXT(rows[i].working) {
      BOOST_TEST(part.lines[i].item == rows[i].item);
      BOOST_TEST(part.lines[i].need == rows[i].need);
      BOOST_TEST(part.lines[i].packs == rows[i].boxes);
      BOOST_TEST(*part.lines[i].total == rows[i].total);
    }
}

BOOST_AUTO_TEST_CASE(pieces_spares_and_rounding_sum_to_the_boxes) {
  FastenerChoice choice;
  choice.box = 100;
  const OrderPart part =
      fastener_order(choice, schedule_with(FastenerKind::TappingScrew, "ST4.8", {19}),
                     run_of(40, 0.05));
  BOOST_TEST_REQUIRE(part.allowances.size() == 3u);
  // derived: 40, 5 % of it is 2, 58 more fill the box of 100
  BOOST_TEST(part.allowances[0].amount == 40);
  BOOST_TEST(part.allowances[1].amount == 2);
  BOOST_TEST(part.allowances[2].amount == 58);
  BOOST_TEST(!part.lines[0].total.has_value());
}

BOOST_AUTO_TEST_CASE(a_station_without_a_length_is_not_dropped) {
  const OrderPart part =
      fastener_order({}, schedule_with(FastenerKind::TappingScrew, "ST4.8", {19, 0, 0}),
                     run_of(10, 0));
  BOOST_TEST_REQUIRE(part.lines.size() == 2u);
  BOOST_TEST(part.lines[1].item == "tapping screw ST4.8, of a length not in stock");
  BOOST_TEST(part.lines[1].need == 20);
}

BOOST_AUTO_TEST_CASE(bolts_come_with_their_nuts_and_washers) {
  const OrderPart part = fastener_order(
      {}, schedule_with(FastenerKind::Bolt, "M6", {30, 30}), run_of(10, 0.05));
  BOOST_TEST_REQUIRE(part.lines.size() == 3u);
  BOOST_TEST(part.lines[1].item == "nut M6");
  BOOST_TEST(part.lines[1].need == 21);
  BOOST_TEST(part.lines[2].item == "washer M6");
  BOOST_TEST(part.lines[2].need ==
             42);  // derived: one under the head, one under the nut
}

BOOST_AUTO_TEST_CASE(nuts_and_washers_follow_the_bolts_ordered) {
  // derived: 7 boats with one bolt of each length and 10 % spare: 7.7, so 8 of each,
  // 16 bolts; rounded apart it would be 16 nuts (15.4) and 31 washers (30.8)
  const OrderPart part = fastener_order(
      {}, schedule_with(FastenerKind::Bolt, "M6", {30, 35}), run_of(7, 0.1));
  BOOST_TEST_REQUIRE(part.lines.size() == 4u);
  BOOST_TEST(part.lines[0].need == 8);
  BOOST_TEST(part.lines[1].need == 8);
  BOOST_TEST(part.lines[2].need == 16);
  BOOST_TEST(part.lines[3].need == 32);
  BOOST_TEST(part.lines[3].packs == 32u);
  BOOST_TEST_REQUIRE(part.allowances.size() == 12u);
  BOOST_TEST(part.allowances[9].amount == 28);
  BOOST_TEST(part.allowances[9].basis == "two washers a bolt");
  BOOST_TEST(part.allowances[10].amount == 4);
  BOOST_TEST(part.allowances[11].amount == 0);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
