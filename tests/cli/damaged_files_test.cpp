#include <boost/test/unit_test.hpp>
#include <fstream>
#include <random>
#include <string>
#include <vector>

#include "cli/joint_file.h"
#include "tests/cli/boat_folder.h"

namespace sheerlap {
namespace {

using Messages = std::vector<std::string>;

ErrorKind kind_of_refusal(const BoatFolder& folder) {
  const auto file = folder.read();
  BOOST_TEST_REQUIRE(!file.has_value());
  return file.error().front().kind;
}

BOOST_AUTO_TEST_SUITE(damaged_files)

BOOST_AUTO_TEST_CASE(a_joint_file_that_cannot_be_read_is_unreadable) {
  const BoatFolder folder;
  check_messages(folder.refusal(),
                 {"joint.toml: cannot be read (No such file or directory): give the "
                  "path of a file"});
  BOOST_TEST((kind_of_refusal(folder) == ErrorKind::Unreadable));
  std::filesystem::create_directory(folder.path() / "joint.toml");
  check_messages(folder.refusal(),
                 {"joint.toml: is a directory: give the path of a file"});
  BOOST_TEST((kind_of_refusal(folder) == ErrorKind::Unreadable));
}

BOOST_AUTO_TEST_CASE(a_sheer_table_that_cannot_be_read_is_unreadable) {
  const BoatFolder folder;
  folder.write("joint.toml", full_joint_text);
  check_messages(folder.refusal(),
                 {"joint.toml:5: sheer.csv cannot be read (No such file or directory): "
                  "give the path of a file"});
  BOOST_TEST((kind_of_refusal(folder) == ErrorKind::Unreadable));
  std::filesystem::create_directory(folder.path() / "sheer.csv");
  check_messages(folder.refusal(),
                 {"joint.toml:5: sheer.csv is a directory: give the path of a file"});
}

BOOST_AUTO_TEST_CASE(a_missing_sheer_table_hides_no_error_of_the_joint_file) {
  const BoatFolder folder;
  folder.write("joint.toml", replaced(full_joint_text, "pitch_min = 40", ""));
  BOOST_TEST(folder.refusal().size() == 2u);
}

BOOST_AUTO_TEST_CASE(a_joint_file_that_is_no_toml_is_refused_with_its_line) {
  const struct {
    std::string text, message;
  } rows[] = {
      {"",
       "joint.toml:1: the joint file is empty: start from what the command new writes"},
      {std::string("title = \"a\"\nx\0y", 15),
       "joint.toml:2: the joint file has a zero byte: save it as UTF-8 text"},
      {"title = \"a\"\n# \xff\n",
       "joint.toml:2: the joint file is not UTF-8: save it as UTF-8 text"},
      {"title = \"a\"\n# \xED\xA0\x80\n",
       "joint.toml:2: the joint file is not UTF-8: save it as UTF-8 text"},
      {"[lap]\ndepth 50\n",
       "joint.toml:2: the file is not TOML 1.0: Error while parsing key-value pair: "
       "expected '=', saw '5'"},
      {"[lap]\ndepth = 50 mm\n",
       "joint.toml:2: the file is not TOML 1.0: Error while parsing key-value pair: "
       "expected a comment or whitespace, saw 'm'"},
      {"[lap]\ndepth = 50\ndepth = 50\n",
       "joint.toml:3: the file is not TOML 1.0: Error while parsing key-value pair: "
       "cannot redefine existing integer 'depth'"},
      {"x,y,z\n0,0,1\n",
       "joint.toml:1: the file is not TOML 1.0: Error while parsing key-value pair: "
       "expected '=', saw ','"},
      {"a = " + std::string(300, '['),
       "joint.toml:1: the file is not TOML 1.0: Error while parsing value: exceeded "
       "maximum nested value depth of 256 (TOML_MAX_NESTED_VALUES)"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.message)
  check_messages(refusal_of(row.text), {row.message});
}

BOOST_AUTO_TEST_CASE(line_ends_and_a_byte_order_mark_change_nothing) {
  std::string text;
  for (const char c : full_joint_text) text += c == '\n' ? "\r\n" : std::string(1, c);
  check_messages(refusal_of("\xEF\xBB\xBF" + text), {});
  check_messages(refusal_of("\xEF\xBB\xBF" + replaced(text, "pitch_min = 40", "p = 4")),
                 {"joint.toml:77: [layout] has no pitch_min: the smallest space from "
                  "hole to hole",
                  "joint.toml:79: unknown key \"p\" in [layout]: one of pitch_max, "
                  "pitch_min, end_min, end_max, radius_min, round_to"});
}

BOOST_AUTO_TEST_CASE(a_joint_file_beyond_all_measure_is_refused_whole) {
  std::string deep = "a";
  for (int i = 0; i < 10001; ++i) deep += ".a";
  check_messages(refusal_of(deep + " = 1\n"),
                 {"joint.toml: has more than 10000 dots: it is no joint file"});
  check_messages(refusal_of(std::string(1'000'001, '#')),
                 {"joint.toml: is too large: at most 1 MB"});
}

BOOST_AUTO_TEST_CASE(a_table_nearly_ten_thousand_deep_is_taken_down_again) {
  std::string deep = "a";
  for (int i = 0; i < 9990; ++i) deep += ".a";
  const Messages messages = refusal_of(deep + " = 1\n" + short_joint_text);
  BOOST_TEST_REQUIRE(messages.size() >= 1u);
  BOOST_TEST(messages.front().starts_with("joint.toml:1: unknown table \"a\": "));
}

BOOST_AUTO_TEST_CASE(a_sheer_table_that_is_no_text_is_refused_with_its_line) {
  check_messages(refusal_of(short_joint_text, ""),
                 {"sheer.csv:1: the sheer table is empty: start from what the command "
                  "new writes"});
  check_messages(refusal_of(short_joint_text, "x,y,z\n0,0,\xff\n"),
                 {"sheer.csv:2: the sheer table is not UTF-8: save it as UTF-8 text"});
  check_messages(
      refusal_of(short_joint_text, std::string("x,y,z\0\n", 7)),
      {"sheer.csv:1: the sheer table has a zero byte: save it as UTF-8 text"});
}

BOOST_AUTO_TEST_CASE(rows_that_make_no_sheer_are_refused_with_their_lines) {
  const struct {
    const char* table;
    const char* message;
  } rows[] = {
      {"x,y,z\n0,0,9\n1500,800,9\n1500,800,9\n4000,0,9\n",
       "sheer.csv:4: the row lies over its neighbour in plan: rows must be apart in x "
       "or y"},
      {"x,y,z\n0,0,9\n", "joint.toml:4: the sheer table has 1 rows: at least 2"},
      {"x,y,z\n0,0,9\n1500,800,9\n2000,0,9\n4000,0,9\n",
       "sheer.csv:4: the half sheer touches the centreline between its ends: y > 0 for "
       "every row but the first and the last"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.table)
  check_messages(refusal_of(short_joint_text, row.table), {row.message});
}

/// A number below `bound` that is the same on every machine.
std::size_t below(std::size_t bound, std::mt19937& random) { return random() % bound; }

std::string mutated(std::string text, std::mt19937& random) {
  static const std::vector<std::string> scraps{"[",
                                               "]",
                                               "[[",
                                               "\"",
                                               "'",
                                               "\"\"\"",
                                               "=",
                                               ",",
                                               "\n",
                                               "\r\n",
                                               "#",
                                               ".",
                                               "-",
                                               "nan",
                                               "inf",
                                               "1e999",
                                               "{",
                                               "}",
                                               "\\u0000",
                                               "\xEF\xBB\xBF",
                                               "\xff",
                                               "0x",
                                               "1979-05-27",
                                               "true",
                                               "3-4-5",
                                               "0/0",
                                               "x",
                                               "9999999999",
                                               std::string(1, '\0')};
  for (std::size_t cuts = 1 + below(4, random); cuts > 0; --cuts) {
    const std::size_t place = below(text.size() + 1, random);
    const std::size_t length = below(12, random);
    switch (below(4, random)) {
      case 0:
        text.erase(place, length);
        break;
      case 1:
        text.insert(place, scraps[below(scraps.size(), random)]);
        break;
      case 2:
        text.insert(place, text.substr(below(text.size() + 1, random), 40));
        break;
      default:
        if (place < text.size()) text[place] = static_cast<char>(below(256, random));
    }
  }
  return text;
}

/// Whether a message starts with FILE:LINE, or with FILE where the whole is refused.
bool has_place(const std::string& message) {
  for (const std::string file : {"joint.toml", "sheer.csv"}) {
    if (!message.starts_with(file + ":")) continue;
    const char next = message.at(file.size() + 1);
    return (next > '0' && next <= '9') || next == ' ';
  }
  return false;
}

BOOST_AUTO_TEST_CASE(no_damage_makes_the_reader_do_else_than_read_or_refuse) {
  std::mt19937 random(20240229);
  const BoatFolder folder;
  std::size_t refused = 0;
  for (int round = 0; round < 2000; ++round) {
    const bool table = round % 3 == 0;
    folder.write("joint.toml",
                 table ? full_joint_text : mutated(full_joint_text, random));
    folder.write("sheer.csv", table ? mutated(sheer_text, random) : sheer_text);
    const Messages messages = folder.refusal();
    refused += messages.empty() ? 0 : 1;
    for (const std::string& message : messages)
      BOOST_REQUIRE_MESSAGE(has_place(message), round << ": " << message);
  }
  // property: damage is mostly noticed, and some of it is harmless
  BOOST_TEST(refused > 1000u);
  BOOST_TEST(refused < 2000u);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
