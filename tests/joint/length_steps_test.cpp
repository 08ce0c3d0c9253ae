#include "joint/length_steps.h"

#include <boost/test/unit_test.hpp>

#include "joint/joint.h"

namespace sheerlap {
namespace {

FastenerSpec spec_of(FastenerKind kind,
                     const std::string& size,
                     const std::vector<double>& lengths) {
  FastenerChoice choice;
  choice.kind = kind;
  choice.size = size;
  for (const double length : lengths) choice.lengths.push_back(Length::mm(length));
  auto spec = fastener(choice);
  BOOST_TEST_REQUIRE(spec.has_value());
  return std::move(*spec);
}

BOOST_AUTO_TEST_SUITE(length_steps_suite)

BOOST_AUTO_TEST_CASE(the_length_is_the_one_that_serves_the_stack) {
  // property: as the table of the fastener has it, for every stack
  for (const FastenerSpec& spec :
       {spec_of(FastenerKind::TappingScrew, "ST4.8", {16, 19, 22, 25}),
        spec_of(FastenerKind::Bolt, "M6", {20, 25, 30}),
        spec_of(FastenerKind::BlindRivet, "3/16", {12, 16})}) {
    const LengthSteps steps(spec);
    int served = 0;
    for (int i = 0; i <= 4000; ++i) {
      const Length stack = Length::mm(0.01 * i);
      const auto length = serving_length(spec, stack);
      const std::size_t at = steps.serving(stack.in_mm());
      BOOST_TEST_REQUIRE(at <= spec.lengths.size());
      BOOST_TEST(length.has_value() == (at < spec.lengths.size()));
      if (length && at < spec.lengths.size()) BOOST_TEST((*length == spec.lengths[at]));
      served += length.has_value();
    }
    BOOST_TEST(served > 100);
    BOOST_TEST(served < 4000);
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
