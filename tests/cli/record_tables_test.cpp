#include "cli/record_tables.h"

#include <boost/test/unit_test.hpp>
#include <string>

#include "tests/cli/boat_folder.h"

namespace sheerlap {
namespace {

ReadingLimits limits_of(const std::string& table) {
  const BoatFolder folder;
  folder.write("joint.toml", full_joint_text + table);
  folder.write("sheer.csv", sheer_text);
  const auto file = folder.read();
  BOOST_REQUIRE_MESSAGE(file.has_value(), file.error().front().message);
  return file->joint.reading_limits;
}

BOOST_AUTO_TEST_SUITE(record_tables)

BOOST_AUTO_TEST_CASE(the_limits_of_readings_are_read_as_written) {
  const ReadingLimits limits =
      limits_of("[readings]\ngap_min = 1.5\ngap_max = \"1/4 in\"\nstep = 2\n");
  BOOST_TEST(limits.gap_min->in_mm() == 1.5);
  BOOST_TEST(limits.gap_max->in_mm() == 6.35);
  BOOST_TEST(limits.step->in_mm() == 2.0);
}

BOOST_AUTO_TEST_CASE(what_is_not_given_has_no_default) {
  for (const char* table : {"", "[readings]\n"}) {
    const ReadingLimits limits = limits_of(table);
    BOOST_TEST(!limits.gap_min.has_value());
    BOOST_TEST(!limits.gap_max.has_value());
    BOOST_TEST(!limits.step.has_value());
  }
}

BOOST_AUTO_TEST_CASE(limits_out_of_range_are_refused) {
  for (const char* line : {"step = 0", "gap_min = -1", "gap_max = 0"}) {
    const auto messages =
        refusal_of(full_joint_text + "[readings]\n" + std::string(line) + "\n");
    BOOST_TEST_REQUIRE(messages.size() == 1U, line);
    BOOST_TEST(messages.front().find("[readings] ") != std::string::npos,
               messages.front());
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
