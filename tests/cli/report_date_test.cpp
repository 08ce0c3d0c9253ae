#include "cli/report_date.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(report_date_suite)

BOOST_AUTO_TEST_CASE(the_date_is_that_of_the_epoch_in_utc) {
  const struct {
    const char* epoch;
    const char* date;
    const char* source;
  } rows[] = {
      {"0", "1970-01-01", "published: POSIX.1-2017, 4.16, the Epoch"},
      {"86399", "1970-01-01", "derived: last second of the day"},
      {"86400", "1970-01-02", "derived: 24 x 3600"},
      {"951782400", "2000-02-29", "derived: 10957 + 59 days; 2000 is a leap year"},
      {"253402300799", "9999-12-31", "derived: the last second before 10000"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.source) {
      const auto date = report_date(row.epoch);
      BOOST_TEST_REQUIRE(date.has_value());
      BOOST_TEST(date->value() == row.date);
    }
}

BOOST_AUTO_TEST_CASE(there_is_no_date_unless_it_is_given) {
  for (const char* epoch : {static_cast<const char*>(nullptr), ""}) {
    const auto date = report_date(epoch);
    BOOST_TEST_REQUIRE(date.has_value());
    BOOST_TEST(!date->has_value());
  }
}

BOOST_AUTO_TEST_CASE(what_is_no_count_of_seconds_is_refused) {
  for (const char* epoch :
       {"-1", "1.5", "now", "12 ", "253402300800", "99999999999999999999"})
    BOOST_TEST(!report_date(epoch).has_value(), epoch);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
