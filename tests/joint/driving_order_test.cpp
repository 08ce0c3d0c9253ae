#include "joint/driving_order.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <map>

#include "joint/layout.h"
#include "tests/joint/example_boats.h"
#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"

namespace sheerlap {
namespace {

/// A boat with its schedule.
struct Boat {
  std::string name;
  Perimeter perimeter;
  Schedule schedule;

  std::vector<DrivingStep> order() const { return driving_order(perimeter, schedule); }
  const DrillStation& station(std::size_t number) const {
    return schedule.stations[number];
  }
};

Boat boat(const std::string& name, Joint joint) {
  joint.jig.length_max = Length::mm(1300);
  joint.layout.end_max = Length::mm(120);
  Perimeter perimeter = perimeter_of(joint);
  const auto plan = layout(joint, perimeter);
  BOOST_TEST_REQUIRE(plan.has_value());
  auto made = schedule(joint, perimeter, *plan);
  BOOST_TEST_REQUIRE(made.has_value());
  return {name, std::move(perimeter), std::move(*made)};
}

Joint open_boat() {
  auto rows = small_boat();
  rows.resize(10);  // up to the transom corner
  Joint joint = example_joint(rows, {});
  joint.sheer.closed = false;
  return joint;
}

Joint with_openings(SideChoice side) {
  Joint joint = box_joint(4000, 2000, {});
  joint.openings.push_back(
      {{SideChoice::Transom, Length::mm(700), Length::mm(1300)}, "well"});
  joint.openings.push_back({{side, Length::mm(4000), Length::mm(4800)}, "door"});
  return joint;
}

/// A boat with a transom, one whose sides meet aft, one whose joint is open aft, one
/// with corners inside its sides, one with openings.
std::vector<Boat> boats() {
  return {boat("a transom", example_joint(small_boat(), {})),
          boat("none", circle_joint(1500, 25, {})),
          boat("open", open_boat()),
          boat("a bow with corners", box_joint(4000, 2000, {})),
          boat("openings, port", with_openings(SideChoice::Port)),
          boat("openings, starboard", with_openings(SideChoice::Starboard))};
}

/// The marks of steps, from the first on: "S01+P01 S18+P18".
std::string marks(const Boat& boat, std::size_t count) {
  std::string text;
  const auto order = boat.order();
  for (std::size_t i = 0; i < std::min(count, order.size()); ++i) {
    if (i > 0) text += " ";
    for (const std::size_t number : order[i].stations)
      text +=
          (number == order[i].stations.front() ? "" : "+") + boat.station(number).mark;
  }
  return text;
}

BOOST_AUTO_TEST_SUITE(driving_order_suite)

BOOST_AUTO_TEST_CASE(every_drillable_hole_is_driven_once_and_no_other) {
  for (Boat one : boats()) {
    one.schedule.stations[1].length.reset();    // no length serves it
    one.schedule.stations[3].past_hull = true;  // misses the hull
    std::map<std::size_t, int> times;
    for (const DrivingStep& step : one.order()) {
      BOOST_TEST((step.stations.size() == 1 || step.stations.size() == 2));
      for (const std::size_t number : step.stations) ++times[number];
    }
    for (std::size_t i = 0; i < one.schedule.stations.size(); ++i)
      BOOST_TEST(times[i] == (drillable(one.station(i)) ? 1 : 0),
                 one.name << ": " << one.station(i).mark);
  }
}

BOOST_AUTO_TEST_CASE(the_bow_is_first_and_then_the_corners) {
  // derived: by the marks at the sides' ends; common practice, no source
  for (const Boat& one : boats()) {
    const auto order = one.order();
    BOOST_TEST(marks(one, 1) == "S01+P01");
    const std::string& aft = order[1].where;
    const bool transom = one.perimeter.side(SideName::Transom) != nullptr;
    BOOST_TEST(aft == (one.name == "none"   ? "the stern"
                       : one.name == "open" ? "the aft ends of the joint"
                                            : "transom corners, on the sides"));
    if (transom) BOOST_TEST(order[2].where == "transom corners, on the transom");
  }
}

BOOST_AUTO_TEST_CASE(a_corner_within_a_side_is_located_on_both_its_sides) {
  // derived: the box's bow corners are 1000 along each side
  const Boat one = boat("box", box_joint(4000, 2000, {}));
  const Length corner = one.perimeter.side(SideName::Starboard)->corners[0].girth;
  std::vector<Length> located;
  for (const DrivingStep& step : one.order())
    if (step.stage == DrivingStage::Locate && step.where.starts_with("corners"))
      for (const std::size_t number : step.stations)
        located.push_back(one.station(number).girth);
  BOOST_TEST_REQUIRE(located.size() == 4u);
  for (const Length girth : located)
    BOOST_TEST(std::abs((girth - corner).in_mm()) <= 120 + 1e-6);  // end_max
}

BOOST_AUTO_TEST_CASE(stages_follow_each_other_and_go_aft_on_both_sides) {
  for (const Boat& one : boats()) {
    DrivingStage stage = DrivingStage::Locate;
    std::map<SideName, Length> reached;
    for (const DrivingStep& step : one.order()) {
      BOOST_TEST((step.stage >= stage));
      if (step.stage != stage) reached.clear();
      stage = step.stage;
      if (step.where != "both sides, from the bow aft") continue;
      for (const std::size_t number : step.stations) {
        const DrillStation& station = one.station(number);
        BOOST_TEST((station.girth > reached[station.side]));
        reached[station.side] = station.girth;
      }
    }
  }
}

BOOST_AUTO_TEST_CASE(starboard_and_port_are_driven_together) {
  // property: like sides are never one hole apart; sides that differ by an opening stay
  // within the holes that it takes from one of them
  for (const Boat& one : boats()) {
    int apart = 0, most = 0;
    for (const DrivingStep& step : one.order()) {
      for (const std::size_t number : step.stations) {
        const SideName side = one.station(number).side;
        apart += side == SideName::Starboard ? 1 : side == SideName::Port ? -1 : 0;
      }
      most = std::max(most, std::abs(apart));
    }
    const auto on = [&](SideName name) {
      return std::count_if(one.schedule.stations.begin(), one.schedule.stations.end(),
                           [&](const DrillStation& s) { return s.side == name; });
    };
    const auto differ = std::abs(on(SideName::Starboard) - on(SideName::Port));
    BOOST_TEST(most <= differ, one.name << ": " << most << " apart");
  }
}

BOOST_AUTO_TEST_CASE(no_stretch_is_left_long_without_a_tack) {
  // common practice, no source: every fourth to sixth hole
  for (const Boat& one : boats()) {
    std::vector<bool> held(one.schedule.stations.size(), false);
    for (const DrivingStep& step : one.order())
      if (step.stage != DrivingStage::Fill)
        for (const std::size_t number : step.stations) held[number] = true;
    std::size_t loose = 0;
    for (std::size_t i = 0; i < held.size(); ++i) {
      if (i > 0 && one.station(i).side != one.station(i - 1).side) loose = 0;
      loose = held[i] ? 0 : loose + 1;
      BOOST_TEST(loose < tack_every, one.name << ": " << one.station(i).mark);
    }
    const auto tacked = std::count(held.begin(), held.end(), true);
    BOOST_TEST(2 * tacked < static_cast<long>(held.size()), one.name);
  }
}

BOOST_AUTO_TEST_CASE(a_side_opposite_a_long_opening_is_held_like_any_other) {
  // derived: 19 to 40 holes of port with none opposite; common practice, no source, for
  // every sixth
  for (std::size_t bare = 19; bare <= 40; ++bare) {
    const Joint joint = circle_joint(1500, 25, {});
    Boat one{"bare", perimeter_of(joint), {}};
    const auto add = [&](SideName side, std::size_t number) {
      DrillStation station;
      station.side = side;
      station.girth = Length::mm(50 + 100 * static_cast<double>(number));
      station.length = Length::mm(19);
      station.edge_top = Length::mm(20);
      one.schedule.stations.push_back(station);
    };
    add(SideName::Starboard, 0);
    add(SideName::Starboard, bare);
    for (std::size_t i = 0; i <= bare; ++i) add(SideName::Port, i);
    std::vector<bool> held(one.schedule.stations.size(), false);
    for (const DrivingStep& step : one.order())
      if (step.stage != DrivingStage::Fill)
        for (const std::size_t number : step.stations) held[number] = true;
    std::size_t loose = 0;
    for (std::size_t i = 2; i < held.size(); ++i) {
      loose = held[i] ? 0 : loose + 1;
      BOOST_TEST(loose < tack_every, bare << " bare holes, at " << i - 2);
    }
  }
}

BOOST_AUTO_TEST_CASE(the_transom_is_driven_in_pairs_from_its_corners) {
  // derived: by the marks, first with last; a tack has its answer on the other half
  const Boat one = boat("a transom", example_joint(small_boat(), {}));
  const auto count = static_cast<std::size_t>(std::count_if(
      one.schedule.stations.begin(), one.schedule.stations.end(),
      [](const DrillStation& each) { return each.side == SideName::Transom; }));
  const std::size_t first = one.schedule.stations.size() - count;
  BOOST_TEST_REQUIRE(count >= 8u);
  for (const DrivingStep& step : one.order()) {
    if (step.stations.front() < first || step.stations.size() < 2) continue;
    BOOST_TEST(step.stations[0] - first ==
               one.schedule.stations.size() - 1 - step.stations[1]);
  }
}

BOOST_AUTO_TEST_CASE(holes_without_an_opposite_are_driven_alone) {
  // derived: port has a hole more at 260, between those opposite 250 and 350
  const Joint joint = circle_joint(1500, 25, {});
  Boat one{"few", perimeter_of(joint), {}};
  for (const SideName side : {SideName::Starboard, SideName::Port})
    for (const double girth : {50., 150., 250., 260., 350., 450.}) {
      if (side == SideName::Starboard && girth == 260) continue;
      DrillStation station;
      station.side = side;
      station.girth = Length::mm(girth);
      station.mark = (side == SideName::Port ? "P" : "S") + std::to_string(int(girth));
      station.length = Length::mm(19);
      station.edge_top = Length::mm(20);
      one.schedule.stations.push_back(station);
    }
  BOOST_TEST(marks(one, 9) == "S50+P50 S450+P450 S150+P150 S250+P250 P260 S350+P350");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
