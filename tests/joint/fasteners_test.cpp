#include "joint/fasteners.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

FastenerChoice choice(FastenerKind kind, const std::string& size) {
  FastenerChoice choice;
  choice.kind = kind;
  choice.size = size;
  return choice;
}

FastenerSpec spec_of(const FastenerChoice& choice) {
  const auto spec = fastener(choice);
  BOOST_TEST_REQUIRE(spec.has_value());
  return *spec;
}

Error only_error(const FastenerChoice& choice) {
  const auto spec = fastener(choice);
  BOOST_TEST_REQUIRE(!spec.has_value());
  BOOST_TEST_REQUIRE(spec.error().size() == 1u);
  return spec.error().front();
}

BOOST_AUTO_TEST_SUITE(fasteners)

BOOST_AUTO_TEST_CASE(an_unknown_size_is_refused_with_the_sizes_there_are) {
  const Error screw = only_error(choice(FastenerKind::TappingScrew, "ST5"));
  BOOST_TEST(screw.where == "fastener.size");
  BOOST_TEST(screw.message ==
             "no table here has a tapping screw of size ST5: ST2.2, ST2.9, ST3.5, "
             "ST4.2, ST4.8, ST5.5, ST6.3, ST8, ST9.5, #6, #8, #10, #12, 1/4, 5/16, "
             "3/8");
  const Error rivet = only_error(choice(FastenerKind::BlindRivet, "M6"));
  BOOST_TEST(rivet.message ==
             "no table here has a blind rivet of size M6: 3.2, 4, 4.8, 6.4, 1/8, 5/32, "
             "3/16, 1/4");
}

BOOST_AUTO_TEST_CASE(a_head_that_no_table_has_is_refused) {
  FastenerChoice rivet = choice(FastenerKind::BlindRivet, "4.8");
  rivet.head = HeadKind::Countersunk;
  BOOST_TEST(only_error(rivet).where == "fastener.head");
  FastenerChoice bolt = choice(FastenerKind::Bolt, "M12");
  bolt.head = HeadKind::Countersunk;
  BOOST_TEST(only_error(bolt).where == "fastener.size");
}

BOOST_AUTO_TEST_CASE(the_users_own_holes_stand_in_place_of_the_tables) {
  FastenerChoice own = choice(FastenerKind::TappingScrew, "ST4.8");
  own.lip_hole = Length::mm(5.3);
  own.hull_pilot = Length::mm(3.9);
  const FastenerSpec spec = spec_of(own);
  BOOST_TEST(spec.lip_hole.in_mm() == 5.3);
  BOOST_TEST(spec.hull_pilot->in_mm() == 3.9);
  for (const FastenerValue& value : spec.values)
    if (value.what.find("hole") != std::string::npos && value.what[0] != 'r')
      BOOST_TEST(value.source == "the joint file");
}

BOOST_AUTO_TEST_CASE(a_hole_that_cannot_work_is_refused) {
  FastenerChoice loose = choice(FastenerKind::TappingScrew, "ST4.8");
  loose.hull_pilot = Length::mm(4.62);  // the thread's least, ISO 1478
  BOOST_TEST(only_error(loose).where == "fastener.hull_pilot");
  FastenerChoice tight = choice(FastenerKind::TappingScrew, "ST4.8");
  tight.lip_hole = Length::mm(4.7);
  BOOST_TEST(only_error(tight).where == "fastener.lip_hole");
}

BOOST_AUTO_TEST_CASE(a_size_without_published_holes_needs_the_users_own) {
  const auto bare = fastener(choice(FastenerKind::TappingScrew, "ST8"));
  BOOST_TEST_REQUIRE(!bare.has_value());
  BOOST_TEST(bare.error().size() == 2u);
  FastenerChoice own = choice(FastenerKind::TappingScrew, "ST8");
  own.hull_pilot = Length::mm(7);
  own.lip_hole = Length::mm(9);
  BOOST_TEST(fastener(own).has_value());
}

BOOST_AUTO_TEST_CASE(a_pan_head_gets_a_relief_and_a_countersunk_one_its_own_width) {
  // common practice, no source: relief 1.6 wider than the hole, 0.8 deep
  const FastenerSpec pan = spec_of(choice(FastenerKind::TappingScrew, "ST4.8"));
  BOOST_TEST(pan.countersink.in_mm() == 5.8 + 1.6, tolerance(1e-12));
  BOOST_TEST(pan.countersink_depth.in_mm() == 0.8, tolerance(1e-12));
  FastenerChoice sunk = choice(FastenerKind::Bolt, "M6");
  sunk.head = HeadKind::Countersunk;
  // published: ISO 7046-2, M6: dk 11.3, k 3.3
  BOOST_TEST(spec_of(sunk).countersink.in_mm() == 11.3);
  BOOST_TEST(spec_of(sunk).countersink_depth.in_mm() == 3.3);
}

BOOST_AUTO_TEST_CASE(a_tapping_screw_keeps_its_point_out_of_the_hull) {
  FastenerChoice stock = choice(FastenerKind::TappingScrew, "ST4.8");
  for (const double length : {25., 16., 22., 19.})
    stock.lengths.push_back(Length::mm(length));
  const FastenerSpec spec = spec_of(stock);
  const struct {
    double stack, length;  // mm; derived: the point is 4.3, ISO 1478
  } rows[] = {{11.7, 16}, {11.701, 19}, {14, 19}, {17.7, 22}, {20.7, 25}};
  for (const auto& row : rows) {
    const auto length = serving_length(spec, Length::mm(row.stack));
    BOOST_TEST_REQUIRE(length.has_value());
    BOOST_TEST(length->in_mm() == row.length);
  }
  BOOST_TEST(!serving_length(spec, Length::mm(20.71)).has_value());
  BOOST_TEST(length_needed(spec, Length::mm(20.71)).in_mm() == 25.01, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_rivet_serves_only_the_stacks_in_its_grip) {
  // published: ISO 15981:2002, 4.8: 8 grips 2.5 to 4, 12 grips 6 to 8, 16 grips 8 to 12
  const FastenerSpec spec = spec_of(choice(FastenerKind::BlindRivet, "4.8"));
  BOOST_TEST(serving_length(spec, Length::mm(8))->in_mm() == 12);
  BOOST_TEST(serving_length(spec, Length::mm(8.001))->in_mm() == 16);
  BOOST_TEST(!serving_length(spec, Length::mm(5)).has_value());
  BOOST_TEST(!serving_length(spec, Length::mm(25.1)).has_value());
}

BOOST_AUTO_TEST_CASE(a_rivet_between_two_inch_grips_takes_the_longer) {
  // published: TM 10-5410-221-14, table 4-3: .251 to .312, then .313 to .375 in: a
  // stack of .3125 in lies between two printed ends
  const FastenerSpec spec = spec_of(choice(FastenerKind::BlindRivet, "1/8"));
  BOOST_TEST(serving_length(spec, Length::inches(.3125))->in_inches() == .375,
             tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(only_the_grips_in_stock_serve_and_are_listed) {
  FastenerChoice stock = choice(FastenerKind::BlindRivet, "3/16");
  stock.lengths = {Length::mm(12), Length::mm(16)};
  const FastenerSpec spec = spec_of(stock);
  // published: ISO 15981:2002: 12 grips 6 to 8, 16 grips 8 to 12
  BOOST_TEST(spec.grips.size() == 2u);
  BOOST_TEST(!serving_length(spec, Length::mm(5)).has_value());
  BOOST_TEST(serving_length(spec, Length::mm(11))->in_mm() == 16);
  std::size_t listed = 0;
  for (const FastenerValue& value : spec.values)
    listed += value.what.starts_with("greatest grip") ? 1 : 0;
  BOOST_TEST(listed == 2u);
}

BOOST_AUTO_TEST_CASE(a_rivet_length_without_a_known_grip_is_refused) {
  FastenerChoice stock = choice(FastenerKind::BlindRivet, "4.8");
  stock.lengths = {Length::mm(14)};
  const Error error = only_error(stock);
  BOOST_TEST(error.where == "fastener.lengths");
  BOOST_TEST(error.message ==
             "no table here has the grip of a 4.8 blind rivet of 14 mm: 8, 12, 16, 20, "
             "25, 30 mm");
}

BOOST_AUTO_TEST_CASE(a_fastener_is_bought_by_kind_size_and_length) {
  const FastenerSpec spec = spec_of(choice(FastenerKind::TappingScrew, "ST4.8"));
  BOOST_TEST(fastener_name(spec, Length::mm(19)) == "tapping screw ST4.8 x 19");
  BOOST_TEST(fastener_name(spec, Length::mm(9.5)) == "tapping screw ST4.8 x 9.5");
  const FastenerSpec inch = spec_of(choice(FastenerKind::Bolt, "1/4"));
  BOOST_TEST(fastener_name(inch, Length::inches(1.25)) == "bolt 1/4 x 1-1/4 in");
  BOOST_TEST(fastener_name(inch, Length::inches(2)) == "bolt 1/4 x 2 in");
  BOOST_TEST(fastener_name(inch, Length::inches(0.875)) == "bolt 1/4 x 7/8 in");
  BOOST_TEST(fastener_name(inch, Length::mm(30)) == "bolt 1/4 x 30");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
