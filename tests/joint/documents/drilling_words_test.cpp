#include "joint/documents/drilling_words.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/documents/sample_job.h"

namespace sheerlap {
namespace {

NumberStyle mm() { return {LengthUnit::Millimetres, Length::mm(1)}; }

bool says(const std::string& text, const std::string& words) {
  return text.find(words) != std::string::npos;
}

BOOST_AUTO_TEST_SUITE(drilling_words)

BOOST_AUTO_TEST_CASE(bits_keep_the_unit_of_the_fasteners_size) {
  FastenerSpec spec;
  const NumberStyle inches(LengthUnit::Inches, Length::inches(1.0 / 16));
  spec.size = "ST4.8";
  BOOST_TEST(tool_style(spec, inches).unit_name() == "mm");
  for (const char* size : {"#10", "1/4"}) {
    spec.size = size;
    BOOST_TEST(tool_style(spec, inches).unit_name() == "in");
  }
}

BOOST_AUTO_TEST_CASE(a_pilot_goes_through_both_and_the_lips_bit_through_the_lip_only) {
  Job job = sample_job();
  const std::string two = order_of_work(job, mm());
  BOOST_TEST(says(two, "3.9 mm pilot bit"));
  BOOST_TEST(says(two, "open the lip only, with the 5.3 mm bit"));
  job.schedule->fastener.hull_pilot.reset();
  BOOST_TEST(says(order_of_work(job, mm()), "in one go with the 5.3 mm bit"));
}

BOOST_AUTO_TEST_CASE(holes_without_a_fastener_are_named_on_their_own_side_only) {
  const Schedule schedule = *sample_job().schedule;
  BOOST_TEST(says(not_to_drill(schedule, std::nullopt), "DO NOT DRILL T02"));
  BOOST_TEST(says(not_to_drill(schedule, SideName::Transom), "T02"));
  BOOST_TEST(not_to_drill(schedule, SideName::Port).empty());
}

BOOST_AUTO_TEST_CASE(a_pan_head_gets_a_relief_and_a_countersunk_one_its_cone) {
  Job job = sample_job();
  BOOST_TEST(says(stack_words(job, mm()), "Chamfer is the width of a relief"));
  job.schedule->fastener.head = HeadKind::Countersunk;
  BOOST_TEST(
      says(stack_words(job, mm()), "Countersink is its width on the lip, 0.8 mm"));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
