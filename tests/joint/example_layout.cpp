#include "tests/joint/example_layout.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>

namespace sheerlap {

Perimeter perimeter_of(const Joint& joint) {
  auto result = perimeter(joint);
  BOOST_TEST_REQUIRE(result.has_value(),
                     (result ? "" : result.error().front().message));
  return std::move(*result);
}

Layout layout_at(const std::map<SideName, std::vector<double>>& girths_mm) {
  Layout layout;
  for (const auto& [name, girths] : girths_mm) {
    LayoutSide side;
    side.name = name;
    for (std::size_t i = 0; i < girths.size(); ++i) {
      side.girths.push_back(Length::mm(girths[i]));
      side.because.emplace_back("by hand");
      if (i > 0)
        side.largest_pitch =
            std::max(side.largest_pitch, side.girths[i] - side.girths[i - 1]);
    }
    layout.count += girths.size();
    layout.largest_pitch = std::max(layout.largest_pitch, side.largest_pitch);
    layout.sides.push_back(std::move(side));
  }
  return layout;
}

Check check_named(const Checks& checks, const std::string& id) {
  const auto found = std::find_if(checks.begin(), checks.end(),
                                  [&](const Check& check) { return check.id == id; });
  BOOST_TEST_REQUIRE((found != checks.end()), "no check " + id);
  return *found;
}

}  // namespace sheerlap
