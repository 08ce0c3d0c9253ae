#include "cli/sheer_table.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "tests/cli/boat_folder.h"
#include "tests/places.h"

namespace sheerlap {
namespace {

SheerTable table_of(const std::string& text) {
  return read_sheer_table(text, LengthUnit::Millimetres);
}

/// "LINE: message" for each error.
std::vector<std::string> faults_of(const std::string& text) {
  const SheerTable table = table_of(text);
  SourceMap sources{"", "", {{"sheer.header", {true, table.header_line}}}, {}};
  sources.row_lines = table.row_lines;
  std::vector<std::string> messages;
  for (const Error& error : located(table.errors, sources))
    messages.push_back(error.message.substr(1));
  return messages;
}

BOOST_AUTO_TEST_SUITE(sheer_table)

BOOST_AUTO_TEST_CASE(columns_may_stand_in_any_order) {
  const SheerTable table = table_of("knuckle,z,station,x,y\n1,9,bow,-2.5,4\n");
  BOOST_TEST(table.errors.size() == 0u);
  BOOST_TEST_REQUIRE(table.rows.size() == 1u);
  BOOST_TEST(table.rows[0].point.x() == -2.5);
  BOOST_TEST(table.rows[0].point.y() == 4.0);
  BOOST_TEST(table.rows[0].point.z() == 9.0);
  BOOST_TEST(table.rows[0].knuckle);
  BOOST_TEST(table.rows[0].station == "bow");
}

BOOST_AUTO_TEST_CASE(only_columns_that_are_there_count_as_given) {
  const SheerTable table = table_of("x,y,z,lip_low,lap\n1,2,3,4,5\n");
  const std::array<bool, 5> expected{true, false, false, false, true};
  BOOST_TEST((table.given == expected));
  BOOST_TEST(table.rows.at(0).offsets.lip_low.in_mm() == 4.0);
  BOOST_TEST(table.rows.at(0).offsets.lap.in_mm() == 5.0);
}

BOOST_AUTO_TEST_CASE(the_marks_that_spreadsheets_leave_change_nothing) {
  const SheerTable plain = table_of("x,y,z,station\n1,2,3,bow\n4,5,6,1\n");
  for (const char* text : {
           "\xEF\xBB\xBFx,y,z,station\n1,2,3,bow\n4,5,6,1\n",
           "x,y,z,station\r\n1,2,3,bow\r\n4,5,6,1\r\n",
           "x,y,z,station\r1,2,3,bow\r4,5,6,1",
           "x,y,z,station\n\n1,2,3,bow\n  \n4,5,6,1\n,,,\n\n",
           " x , y , z , station \n 1 , 2 , 3 , bow \n4,5,6,1\n",
           "\"x\",\"y\",\"z\",\"station\"\n\"1\",2,3,\"bow\"\n4,5,6,1\n",
           "x,y,z,station,,\n1,2,3,bow,,\n4,5,6,1,,,,\n",
       })
    BOOST_TEST_CONTEXT(text) {
      const SheerTable table = table_of(text);
      BOOST_TEST(table.errors.size() == 0u);
      BOOST_TEST_REQUIRE(table.rows.size() == plain.rows.size());
      for (std::size_t i = 0; i < plain.rows.size(); ++i) {
        BOOST_TEST((table.rows[i].point == plain.rows[i].point));
        BOOST_TEST(table.rows[i].station == plain.rows[i].station);
      }
    }
}

BOOST_AUTO_TEST_CASE(a_quoted_label_keeps_its_commas_and_quotes) {
  const SheerTable table = table_of("x,y,z,station\n1,2,3,\"frame \"\"A\"\", aft\"\n");
  BOOST_TEST(table.rows.at(0).station == "frame \"A\", aft");
}

BOOST_AUTO_TEST_CASE(cells_may_be_feet_and_inches_quoted_or_not) {
  // derived: 27.5 x 25.4 = 698.5; 22.5 x 25.4 = 571.5; 40 x 25.4 = 1016
  const SheerTable table = table_of(
      "x,y,z\n2-3-4,1' 10 1/2\",3' 4\"\n\"2-3-4\",\"1' 10 1/2\"\"\",3 ft 4 in\n");
  BOOST_TEST(table.errors.size() == 0u);
  for (const SheerRow& row : table.rows) {
    BOOST_TEST(row.point.x() == 698.5);
    BOOST_TEST(row.point.y() == 571.5);
    BOOST_TEST(row.point.z() == 1016.0);
  }
}

BOOST_AUTO_TEST_CASE(a_faulty_header_is_refused_with_what_would_be_right) {
  const struct {
    const char* text;
    std::vector<std::string> messages;
  } rows[] = {
      {"\n\n",
       {"1: the sheer table is empty: a header line with x,y,z, and a line for each "
        "point"}},
      {"x,y\n1,2\n", {"1: the sheer table has no column z: x, y and z are needed"}},
      {"\nx,y,z,nuckle\n", {"2: unknown column \"nuckle\": did you mean knuckle?"}},
      {"x,y,z,colour\n",
       {"1: unknown column \"colour\": one of x, y, z, station, knuckle, lap, "
        "hull_top, "
        "hull_low, lip_top, lip_low"}},
      {"X,y,z\n",
       {"1: unknown column \"X\": did you mean x?",
        "1: the sheer table has no column x: x, y and z are needed"}},
      {"x,y,z,y\n", {"1: the column y stands twice: leave one out"}},
      {"x;y;z\n1;2;3\n",
       {"1: the columns are separated by semicolons: separate them by commas, with a "
        "point in the numbers"}},
      {"x\ty\tz\n1\t2\t3\n",
       {"1: the columns are separated by tabs: separate them by commas, with a point "
        "in "
        "the numbers"}},
      {"0,0,900\n1,2,3\n",
       {"1: the first line holds numbers: start with a header line such as x,y,z"}},
      {"x,y,\"z\n1,2,3\n",
       {"1: a quoted cell is not closed on its line: close it, or leave the quotes "
        "out"}},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.text)
  check_messages(faults_of(row.text), row.messages);
}

BOOST_AUTO_TEST_CASE(a_faulty_row_is_refused_with_its_line) {
  const std::string not_a_length =
      " is not a length: write a number, a number with its unit (mm, cm, m, in or ft), "
      "or feet-inches-eighths such as \"3-4-5\"";
  const struct {
    const char* text;
    std::vector<std::string> messages;
  } rows[] = {
      {"x,y,z\n1,2,3\n\n4,5\n",
       {"4: the row has 2 cells and the header 3 columns: one cell for each column"}},
      {"x,y,z\n1,2,3,4\n",
       {"2: the row has 4 cells and the header 3 columns: one cell for each column"}},
      {"x,y,z\n1,two,3\n", {"2: y \"two\"" + not_a_length}},
      {"x,y,z\n1,2,\n", {"2: z is empty: a length in every row, or no such column"}},
      {"x,y,z\nnan,inf,-inf\n",
       {"2: x nan is not a length: a finite number",
        "2: y inf is not a length: a finite number",
        "2: z -inf is not a length: a finite number"}},
      {"x,y,z\n1,2,1e300\n", {"2: z 1e+300 is out of range: at most 1 km either way"}},
      {"x,y,z,knuckle\n1,2,3,yes\n", {"2: knuckle is \"yes\": 0 or 1"}},
      {"x,y,z,lap\n1,2,3,0\n", {"2: lap is 0 mm: more than 0"}},
      {"x,y,z,,station\n1,2,3,4,bow\n",
       {"2: \"4\" stands in a column without a name: name it, or leave it empty"}},
      {"x,y,z,station\n1,2,3,a\x01z\n",
       {"2: station has a control character: plain text"}},
      {"x,y,z,station\n1,2,3,\"open\n4,5,6,closed\n7,8,wide,end\n",
       {"2: a quoted cell is not closed on its line: close it, or leave the quotes out",
        "4: z \"wide\"" + not_a_length}},
      {"x,y,z,hull_low\n1,2,3,2-3-8\n",
       {"2: hull_low \"2-3-8\" has 8 eighths: 0 to 7"}},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.text)
  check_messages(faults_of(row.text), row.messages);
}

BOOST_AUTO_TEST_CASE(
    a_table_of_nothing_but_errors_shows_a_hundred_and_counts_the_rest) {
  std::string text = "x,y,z\n";
  for (int i = 0; i < 50; ++i) text += "a,b,c\n";
  const SheerTable table = table_of(text);
  BOOST_TEST_REQUIRE(table.errors.size() == 101u);
  BOOST_TEST(table.errors.back().message ==
             "50 more cells are wrong: mend those above first");
}

BOOST_AUTO_TEST_CASE(a_published_table_of_offsets_reads_to_its_chord_length) {
  std::ostringstream text;
  text << std::ifstream(fixtures_folder() / "published/row-boat.csv").rdbuf();
  const SheerTable table = table_of(text.str());
  BOOST_TEST_REQUIRE(table.errors.size() == 0u);
  BOOST_TEST_REQUIRE(table.rows.size() == 4u);
  // published: C. H. Clark, Amateur Work vol. 3, 12 ft row boat, read in two copies
  const auto rounding = boost::test_tools::tolerance(1e-14);
  BOOST_TEST(table.rows[2].point.z() == 568.325, rounding);  // 1-10-3
  BOOST_TEST(table.rows[3].point.y() == 419.1, rounding);    // 1-4-4
  double chords = 0;
  for (std::size_t i = 1; i < table.rows.size(); ++i)
    chords += (table.rows[i].point - table.rows[i - 1].point).norm();
  // derived: 36.4314 + 36.0315 + 36.5659 = 109.0288 in
  BOOST_TEST(chords == 2769.33, boost::test_tools::tolerance(0.005 / 2769.33));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
