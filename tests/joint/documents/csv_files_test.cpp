#include "joint/documents/csv_files.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/documents/sample_job.h"

namespace sheerlap {
namespace {

std::string line_of(const std::string& text, std::size_t number) {
  std::size_t at = 0;
  for (; number > 0; --number) at = text.find("\r\n", at) + 2;
  return text.substr(at, text.find("\r\n", at) - at);
}

BOOST_AUTO_TEST_SUITE(csv_files)

BOOST_AUTO_TEST_CASE(fields_are_quoted_where_they_have_to_be) {
  // published: RFC 4180, 2: rules 1, 6 and 7
  BOOST_TEST(csv_record({"a", "b"}) == "a,b\r\n");
  BOOST_TEST(csv_record({"a,b", "c\"d", "e\nf", "g\rh"}) ==
             "\"a,b\",\"c\"\"d\",\"e\nf\",\"g\rh\"\r\n");
  BOOST_TEST(csv_record({"", "", ""}) == ",,\r\n");
}

BOOST_AUTO_TEST_CASE(a_sides_schedule_has_its_own_holes_with_lengths_in_full) {
  const std::string text =
      schedule_csv(*sample_job().schedule, SideName::Port, LengthUnit::Millimetres);
  BOOST_TEST(
      line_of(text, 0) ==
      "mark,side,jig,girth_mm,hull_girth_mm,jig_girth_mm,pitch_mm,chord_mm,x_mm,y_mm,"
      "z_mm,edge_low_mm,edge_top_mm,gap_mm,stack_mm,length_mm,lip_hole_mm,"
      "hull_pilot_mm,countersink_mm,drill_depth_mm,tilt_deg,skew_deg,ax,ay,az,"
      "because,next_jig,lip_depth_mm");
  BOOST_TEST(
      line_of(text, 1) ==
      "P01,port,S1,75.500,67.500,0.000,90.500,,0.333,-614.250,1123.000,20.000,26.000,"
      "3.000,14.000,19.000,5.300,3.900,7.000,17.000,0.000,0.000,0.000000,1.000000,"
      "0.000000,25 mm clear of the stem fitting,,6.500");
  BOOST_TEST(line_of(text, 2).substr(0, 4) == "P02,");
  BOOST_TEST(line_of(text, 3).empty());
}

BOOST_AUTO_TEST_CASE(a_hole_that_is_not_to_be_drilled_has_no_depths) {
  const std::string text =
      schedule_csv(*sample_job().schedule, SideName::Transom, LengthUnit::Millimetres);
  BOOST_TEST(line_of(text, 2).find(",7.000,,0.000,") != std::string::npos);
  BOOST_TEST(line_of(text, 2).ends_with(",,"));
}

BOOST_AUTO_TEST_CASE(inches_change_the_heads_and_the_lengths) {
  const std::string text = fit_csv(*sample_job().fit, LengthUnit::Inches);
  // derived: 100 / 25.4 = 3.93701, 1.25 / 25.4 = 0.04921, -2.5 / 25.4 = -0.09843,
  // 1180 / 25.4 = 46.45669, 50 / 25.4 = 1.96850, gaps 0.08268, 0.11811, 0.15354
  BOOST_TEST(text ==
             "station,side,girth_in,x_in,y_in,z_in,lap_in,gap_top_in,gap_middle_in,"
             "gap_low_in\r\n"
             "\"bow, upper\",port,3.9370,0.0492,-0.0984,46.4567,1.9685,0.0827,0.1181,"
             "0.1535\r\n");
}

BOOST_AUTO_TEST_CASE(an_order_leaves_prices_that_are_not_known_empty) {
  Adhesive paste;
  paste.pack = Volume::ml(490);
  BOOST_TEST(order_csv(*sample_job().order, paste) ==
             "item,need,unit,pack_size,packs,price,total,sold_as\r\n"
             "two-part paste,270,packs,1,270,34.00,9180.00,490\r\n"
             "ST4.8 x 19 mm tapping screw,630,pieces,100,7,,,100\r\n");
}

BOOST_AUTO_TEST_CASE(allowances_name_the_item_they_belong_to) {
  BOOST_TEST(allowances_csv(*sample_job().order) ==
             "item,allowance,amount,unit,basis\r\n"
             "two-part paste,squeeze-out,24000,ml,10 % of the joint volume\r\n"
             "tapping screw ST4.8 x 19,box rounding,48,pieces,"
             "\"up to whole boxes of 100, once for the run\"\r\n");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
