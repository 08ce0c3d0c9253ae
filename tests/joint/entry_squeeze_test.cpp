#include "joint/entry_squeeze.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"

namespace sheerlap {
namespace {

/// A way down that clashes by 2 on starboard, at a girth of the box's sheer.
EntryPath clash_at(double girth_mm) {
  EntryPath path;
  path.face = {Length::mm(-2), Length::mm(50), Angle(), SideName::Starboard,
               Length::mm(girth_mm)};
  path.squeeze = Length::mm(2);
  return path;
}

Spreader spreader(double x_mm, double most_mm) {
  return {Length::mm(x_mm), Length::mm(most_mm)};
}

BOOST_AUTO_TEST_SUITE(entry_squeeze_suite)

BOOST_AUTO_TEST_CASE(the_spreader_nearest_to_the_clash_is_asked) {
  // derived: the box's side starts 1000 from the bow datum, so girth 3000 is x = 2000
  const Perimeter box = perimeter_of(box_joint(4000, 2000, {}));
  const auto asked = entry_squeeze(
      clash_at(3000), {spreader(900, 9), spreader(2100, 1), spreader(3200, 9)}, box);
  BOOST_TEST_REQUIRE(asked.has_value());
  BOOST_TEST(asked->spreader == 1u);
  BOOST_TEST(asked->needed.in_mm() == 2.0);
  BOOST_TEST(!asked->lets_pass());
  const auto further = entry_squeeze(clash_at(3000), {spreader(900, 2)}, box);
  BOOST_TEST((further && further->lets_pass()));
}

BOOST_AUTO_TEST_CASE(without_clash_help_or_spreader_there_is_no_squeeze) {
  const Perimeter box = perimeter_of(box_joint(4000, 2000, {}));
  EntryPath path = clash_at(3000);
  BOOST_TEST(!entry_squeeze(path, {}, box).has_value());
  path.squeeze = Length();
  BOOST_TEST(!entry_squeeze(path, {spreader(900, 9)}, box).has_value());
  path.squeeze.reset();
  BOOST_TEST(!entry_squeeze(path, {spreader(900, 9)}, box).has_value());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
