#include "tests/joint/example_rule_subject.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>

namespace sheerlap {

RuleSubject example_rule_subject() {
  RuleSubject subject;
  subject.kind = FastenerKind::Bolt;
  subject.diameter = Length::mm(6);
  subject.lip_hole = Length::mm(6.6);
  subject.hull_hole = Length::mm(6.6);
  subject.largest_pitch = {Length::mm(100), "from S01 to S02"};
  subject.smallest_pitch = {Length::mm(90), "from S02 to S03"};
  subject.edge_low = {Length::mm(20), "at S04"};
  subject.edge_top = {Length::mm(20), "at S05"};
  subject.end = {Length::mm(30), "at S06, starboard transom corner"};
  subject.lap = {Length::mm(46), "on starboard"};
  subject.lip_thickness = Length::mm(5);
  subject.hull_thickness = Length::mm(6);
  subject.filling = JointFilling::Adhesive;
  return subject;
}

RuleRow row_named(const RuleRows& rows, const std::string& rule) {
  const auto found = std::find_if(rows.begin(), rows.end(),
                                  [&](const RuleRow& row) { return row.rule == rule; });
  BOOST_TEST_REQUIRE((found != rows.end()), "no rule " + rule);
  return *found;
}

}  // namespace sheerlap
