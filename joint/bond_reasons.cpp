#include <fmt/format.h>

#include <utility>

#include "joint/bond_capacity.h"
#include "joint/bond_heat.h"
#include "joint/bond_pass.h"
#include "joint/bond_strength.h"
#include "joint/bond_use.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// The load of one direction, cause by cause.
struct LoadSum {
  const char* letter;     ///< of its causes
  const char* direction;  ///< as the joint file names it
  Term total{0};
  bool is_empty = true;

  void add(const Term& cause) {
    total = is_empty ? cause : total + cause;
    is_empty = false;
  }
};

/// Where the figure of a direction stands: a force has one, a line load one for each.
Origin origin_of(const LoadShare& share, const char* direction) {
  const std::string& address = share.origin.address;
  if (address.empty() || address.ends_with(".force")) return share.origin;
  return Origin::of_file(address + "." + direction);
}

/// The working of the load at a place: what its causes add up to.
Explanation load_reason(const Joint& joint,
                        const JointLoads& loads,
                        const BondPoint& point,
                        const std::string& figure) {
  WrittenWorking work;
  LoadSum q{"q", "along"}, p{"p", "across"}, off{"V", "off"};
  std::size_t number = 0;
  const auto add = [&](LoadSum& sum, double load, const LoadShare& share) {
    if (!(load > 0)) return;
    const std::string letters = fmt::format("{}_{}", sum.letter, number);
    sum.add(work.given({letters, share.what, "N/mm"}, load,
                       origin_of(share, sum.direction)));
  };
  for (const LoadShare& share : loads.shares_at(point.side, point.on_line)) {
    ++number;
    add(q, share.load.along, share);
    add(p, share.load.across, share);
    add(off, share.load.off, share);
  }
  const double heat = heat_flow(joint, loads, point);
  if (heat > 0)
    q.add(work.given({"q_heat", "warm deck", "N/mm"}, heat,
                     Origin::of_joint("worked out above, warm deck")));
  constexpr std::string_view together =
      "causes of one direction taken to act together and the same way: the safe side";
  work.figure(
      {"q", "shear flow along the joint", "N/mm", "derived: causes added", together},
      q.total);
  work.figure({"p", "load across the lap", "N/mm", "derived: causes added", together},
              p.total);
  work.figure({"V_off", "load that pulls the lip away", "N/mm", "derived: causes added",
               together},
              off.total);
  return {figure + ".load", "limit load at this place", work.release()};
}

}  // namespace

std::string place_words(const BondPoint& point) {
  return fmt::format("{}, girth {} along the sheer", side_word(point.side),
                     worded(point.girth));
}

Explanations bond_reasons(const Joint& joint,
                          const JointLoads& loads,
                          const BondPoint& point,
                          const std::string& figure) {
  Explanations reasons;
  if (joint.loads->warmth && heat_flow(joint, loads, point) > 0)
    reasons.push_back({figure + ".heat", "shear flow from the warm deck",
                       heat_reasons(joint, loads, point)});
  reasons.push_back(load_reason(joint, loads, point, figure));
  if (point.mode == BondMode::NoBondLine) return reasons;
  const BondPass pass = governing_pass(joint, point);
  const std::string as =
      fmt::format("worked as two laminates like the {}", pass.lip ? "lip" : "hull");
  const auto capacity = yielded_capacity(joint, point, pass);
  if (capacity) {
    WrittenWorking along, across;
    capacity_along(along, joint, point);
    capacity_across(across, joint, point, pass);
    reasons.push_back({figure + ".capacity_along",
                       "what the bond carries in shear flow along the joint, " + as,
                       along.release()});
    reasons.push_back({figure + ".capacity_across",
                       "what the bond carries in shear across the lap, " + as,
                       across.release()});
  }
  WrittenWorking work;
  const auto stresses = bond_stresses(work, joint, point, pass);
  peel_use(work, joint, stresses);
  laminate_use(work, joint, stresses, pass);
  if (laminate_of(joint, pass).strength.through)
    through_use(work, joint, stresses, pass);
  if (capacity)
    yielded_use(work, joint, point, *capacity);
  else
    elastic_use(work, joint, stresses);
  reasons.push_back({figure + ".utilisation",
                     "peaks across the lap and what they use, " + as, work.release()});
  return reasons;
}

}  // namespace sheerlap
