#include "joint/bond_outside.h"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <limits>
#include <string>
#include <utility>

#include "joint/bond_use.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

using IsOutside = std::function<bool(const BondPoint&)>;

/// Where it holds, in words; empty if nowhere.
std::string where(const std::vector<BondPoint>& along, const IsOutside& outside) {
  if (std::all_of(along.begin(), along.end(), outside)) return "all round";
  std::string words;
  for (std::size_t i = 0; i < along.size(); ++i) {
    if (!outside(along[i])) continue;
    std::size_t last = i;
    while (last + 1 < along.size() && along[last + 1].side == along[i].side &&
           outside(along[last + 1]))
      ++last;
    const std::string girths = along[i].girth == along[last].girth
                                   ? worded(along[i].girth)
                                   : worded_range(along[i].girth, along[last].girth);
    words += fmt::format("{}{}, girth {}", words.empty() ? "" : "; ",
                         side_word(along[i].side), girths);
    i = last;
  }
  return words;
}

double least_gap(const BondPoint& point) {
  return std::min(point.gap_top, point.gap_low).in_mm();
}

/// How many times the bond is more flexible than a laminate: (eta/Ea)/(t/E), or the
/// same in shear, whichever is less.
double flexibility_ratio(const Joint& joint, const BondPoint& point) {
  const AdhesiveStrength& adhesive = joint.adhesive->strength;
  double ratio = std::numeric_limits<double>::infinity();
  for (const Laminate* laminate : {&joint.hull, &joint.lip}) {
    const double t = laminate->thickness.in_mm();
    ratio = std::min(
        {ratio,
         least_gap(point) / *adhesive.modulus / (t / *laminate->strength.modulus),
         least_gap(point) / *adhesive.shear_modulus /
             (t / *laminate->strength.shear_modulus)});
  }
  return ratio;
}

}  // namespace

std::vector<OutsideValidity> bond_outside(const Joint& joint,
                                          const std::vector<BondPoint>& along) {
  std::vector<OutsideValidity> found;
  const auto add = [&](std::string what, const IsOutside& outside) {
    std::string places = where(along, outside);
    if (!places.empty()) found.push_back({std::move(what), std::move(places)});
  };
  const Adhesive& adhesive = *joint.adhesive;
  const auto has_gap = [](const BondPoint& point) { return least_gap(point) > 0; };
  add("faces that touch or interfere: no bond line there, nothing to work out",
      [&](const BondPoint& point) { return !has_gap(point); });
  add(fmt::format("gap outside the adhesive's window, {}: its strength is not known "
                  "there",
                  worded_range(adhesive.gap_min, adhesive.gap_max)),
      [&](const BondPoint& point) {
        return has_gap(point) &&
               (least_gap(point) < adhesive.gap_min.in_mm() ||
                std::max(point.gap_top, point.gap_low) > adhesive.gap_max);
      });
  add("bond less than 10 times as flexible as the laminates (10 from memory, confirm): "
      "the true peaks are somewhat lower than worked out",
      [&](const BondPoint& point) {
        return has_gap(point) && flexibility_ratio(joint, point) < 10;
      });
  if (joint.adhesive->strength.plastic_strain) {
    add("gap a wedge: what a yielding adhesive carries in one is not known here, so "
        "the "
        "adhesive is worked as one that may not yield",
        [&](const BondPoint& point) { return has_gap(point) && !is_even(point); });
    add("overlap too short for its middle to be unloaded: what a yielding bond carries "
        "in one is not known here, so the adhesive is worked as one that may not yield",
        [&](const BondPoint& point) {
          return has_gap(point) && is_even(point) && !middle_unloaded(joint, point);
        });
  }
  if (joint.loads->warmth)
    found.push_back(
        {"heat: worked for a straight joint with free ends; round corners, "
         "and where a joint ends nowhere, a force stays locked in that is "
         "not judged",
         "all round"});
  if (joint.hull.thickness != joint.lip.thickness ||
      joint.hull.strength.modulus != joint.lip.strength.modulus)
    found.push_back(
        {"laminates unlike each other: the lap across is worked as two like "
         "the hull and as two like the lip, and the worse counts",
         "all round"});
  return found;
}

}  // namespace sheerlap
