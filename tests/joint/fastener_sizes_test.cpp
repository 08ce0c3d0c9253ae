#include "joint/fastener_sizes.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/fasteners.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

constexpr FastenerKind kinds[] = {FastenerKind::TappingScrew, FastenerKind::Bolt,
                                  FastenerKind::BlindRivet};
constexpr HeadKind heads[] = {HeadKind::Pan, HeadKind::Countersunk};

FastenerChoice choice(FastenerKind kind, const std::string& size, HeadKind head) {
  FastenerChoice choice;
  choice.kind = kind;
  choice.size = size;
  choice.head = head;
  return choice;
}

FastenerSize size_named(FastenerKind kind, const std::string& name) {
  const auto sizes = fastener_sizes(kind);
  const auto found = std::find_if(sizes.begin(), sizes.end(),
                                  [&](const auto& size) { return size.size == name; });
  BOOST_TEST_REQUIRE((found != sizes.end()), "no size " + name);
  return *found;
}

bool has_head(const FastenerSize& size, HeadKind head) {
  return std::find(size.heads.begin(), size.heads.end(), head) != size.heads.end();
}

void check_complete(const FastenerSpec& spec) {
  BOOST_TEST(spec.diameter.in_mm() >= spec.diameter_min.in_mm());
  BOOST_TEST(spec.diameter_min.in_mm() >= spec.core.in_mm());
  BOOST_TEST(spec.core.in_mm() > 0);
  BOOST_TEST(spec.lip_hole.in_mm() >= spec.diameter.in_mm());
  BOOST_TEST(spec.head_diameter.in_mm() > spec.lip_hole.in_mm());
  BOOST_TEST(spec.countersink.in_mm() > spec.lip_hole.in_mm());
  BOOST_TEST(spec.countersink_depth.in_mm() > 0);
  BOOST_TEST(!spec.lengths.empty());
  BOOST_TEST(std::is_sorted(spec.lengths.begin(), spec.lengths.end()));
  BOOST_TEST(!spec.values.empty());
  for (const FastenerValue& value : spec.values) BOOST_TEST_CONTEXT(value.what) {
      BOOST_TEST(value.value.in_mm() > 0);
      BOOST_TEST(!value.source.empty());
    }
  const bool rivet = spec.kind == FastenerKind::BlindRivet;
  BOOST_TEST(spec.grips.empty() == !rivet);
  BOOST_TEST(spec.tensile_mm2.has_value() == !rivet);
  BOOST_TEST((spec.thread_pitch.in_mm() > 0) == !rivet);
  BOOST_TEST((spec.beyond_stack.in_mm() > 0) == !rivet);
  BOOST_TEST(spec.hull_pilot.has_value() == (spec.kind == FastenerKind::TappingScrew));
  if (spec.hull_pilot) {
    BOOST_TEST(spec.hull_pilot->in_mm() > spec.core.in_mm());
    BOOST_TEST(spec.hull_pilot->in_mm() < spec.diameter_min.in_mm());
  }
}

BOOST_AUTO_TEST_SUITE(fastener_sizes_)

BOOST_AUTO_TEST_CASE(every_size_is_a_whole_fastener_or_a_clear_error) {
  for (const FastenerKind kind : kinds)
    for (const FastenerSize& size : fastener_sizes(kind))
      for (const HeadKind head : heads) BOOST_TEST_CONTEXT(size.what) {
          const auto spec = fastener(choice(kind, size.size, head));
          const bool expected = has_head(size, head) && !size.needs_own_holes;
          BOOST_TEST_REQUIRE(spec.has_value() == expected);
          if (expected) {
            BOOST_TEST(spec->size == size.size);
            BOOST_TEST(spec->diameter.in_mm() == size.diameter.in_mm());
            check_complete(*spec);
            continue;
          }
          BOOST_TEST(!spec.error().empty());
          for (const Error& error : spec.error()) {
            BOOST_TEST(error.where.starts_with("fastener."));
            BOOST_TEST(error.message.find(": ") != std::string::npos);
          }
        }
}

BOOST_AUTO_TEST_CASE(a_size_that_needs_its_own_holes_is_whole_with_them) {
  std::size_t needy = 0;
  for (const FastenerKind kind : kinds)
    for (const FastenerSize& size : fastener_sizes(kind)) {
      if (!size.needs_own_holes) continue;
      ++needy;
      for (const HeadKind head : size.heads) BOOST_TEST_CONTEXT(size.what) {
          FastenerChoice own = choice(kind, size.size, head);
          own.lip_hole = 1.1 * size.diameter;
          own.hull_pilot = 0.88 * size.diameter;
          const auto spec = fastener(own);
          BOOST_TEST_REQUIRE(spec.has_value());
          check_complete(*spec);
        }
    }
  // the hole tables stop before ST8 and ST9.5
  BOOST_TEST(needy == 2u);
  BOOST_TEST(size_named(FastenerKind::TappingScrew, "ST8").needs_own_holes);
  BOOST_TEST(size_named(FastenerKind::TappingScrew, "ST9.5").needs_own_holes);
}

BOOST_AUTO_TEST_CASE(the_name_of_a_size_is_not_its_diameter) {
  // published: ISO 1478 (retyped table): ST5.5 is 5.46 over the thread, ST6.3 is 6.25
  BOOST_TEST(size_named(FastenerKind::TappingScrew, "ST5.5").what ==
             "tapping screw ST5.5, 5.46 mm over the thread");
  BOOST_TEST(size_named(FastenerKind::TappingScrew, "ST6.3").diameter.in_mm() == 6.25);
  BOOST_TEST(size_named(FastenerKind::BlindRivet, "3/16").what ==
             "blind rivet 3/16, 4.7625 mm in diameter");
}

BOOST_AUTO_TEST_CASE(a_numbered_bolt_grows_by_thirteen_thousandths_a_number) {
  // derived: 0.060 + 0.013 n in; published: #10 is 4.826 mm, #12 is 5.486 mm (a
  // supplier's table), within the last digit
  const struct {
    const char* size;
    double number, printed;  // printed: mm
  } rows[] = {{"#10", 10, 4.826}, {"#12", 12, 5.486}};
  for (const auto& row : rows) {
    const Length diameter = size_named(FastenerKind::Bolt, row.size).diameter;
    BOOST_TEST(diameter.in_inches() == 0.060 + 0.013 * row.number, tolerance(1e-12));
    BOOST_TEST(std::abs(diameter.in_mm() - row.printed) <= 0.0005);
  }
}

BOOST_AUTO_TEST_CASE(sizes_ascend_metric_first) {
  for (const FastenerKind kind : kinds) {
    const auto sizes = fastener_sizes(kind);
    std::size_t falls = 0;
    for (std::size_t i = 1; i < sizes.size(); ++i)
      falls += sizes[i].diameter < sizes[i - 1].diameter ? 1 : 0;
    BOOST_TEST(falls == 1u);  // from the largest metric size to the first inch one
  }
}

BOOST_AUTO_TEST_CASE(no_countersunk_rivet_is_known) {
  for (const FastenerSize& size : fastener_sizes(FastenerKind::BlindRivet))
    BOOST_TEST(!has_head(size, HeadKind::Countersunk));
  BOOST_TEST(has_head(size_named(FastenerKind::Bolt, "M6"), HeadKind::Countersunk));
  BOOST_TEST(!has_head(size_named(FastenerKind::Bolt, "M12"), HeadKind::Countersunk));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
