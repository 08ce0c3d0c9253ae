#include "joint/load_sharing.h"

#include <fmt/format.h>

#include <algorithm>

#include "joint/bond_pass.h"
#include "joint/fastener_metal.h"
#include "joint/mechanics/fastener_flexibility.h"
#include "joint/mechanics/load_share.h"

namespace sheerlap {
namespace {

/// Below this shear modulus the bond is a sealant, and the fasteners carry, N/mm2.
/// @source  derived from the load share of usual joints
constexpr double sealant_modulus = 5;

template <class Number>
struct SharingFigures {
  Number C;
  Number C_metal;
  Number share;
  Number metal_share;
};

/// The lap as a pull across it sees it, stretching only.
template <class Working>
ShearLap<typename Working::Number> stretched_lap(Working& work,
                                                 const Joint& joint,
                                                 const BondPoint& place) {
  const auto laminate = [&](const char* E, const char* t, const char* table,
                            const Laminate& of) {
    const std::string name = table;
    return work.given({E, "modulus of the laminate", "N/mm2"}, *of.strength.modulus,
                      Origin::of_file(name + ".modulus")) *
           work.given({t, "thickness of the laminate", "mm"}, of.thickness.in_mm(),
                      Origin::of_file(name + ".thickness"));
  };
  return {
      work.given({"Ga", "shear modulus of the adhesive", "N/mm2"},
                 *joint.adhesive->strength.shear_modulus,
                 Origin::of_file("adhesive.shear_modulus")),
      work.given({"eta", "gap midway across the bond band", "mm"}, place.gap().in_mm(),
                 Origin::of_joint("measured between the faces")),
      laminate("E1", "t1", "hull", joint.hull), laminate("E2", "t2", "lip", joint.lip),
      work.given({"l", "width of the bond band", "mm"}, place.width.in_mm(),
                 Origin::of_joint("measured along the hull face"))};
}

template <class Working>
FastenedPlates<typename Working::Number> plates(Working& work,
                                                const Joint& joint,
                                                const FastenerSpec& spec,
                                                double metal) {
  return {work.given({"d", "diameter of the fastener", "mm"}, spec.diameter.in_mm(),
                     Origin::of_joint("table of the fastener")),
          work.given({"Ef", "modulus of the fastener", "N/mm2"}, metal,
                     joint.fastener.strength.modulus
                         ? Origin::of_file("fastener.modulus")
                         : Origin::of_joint("property class; from memory, confirm")),
          work.given({"t1", "thickness of the laminate", "mm"},
                     joint.hull.thickness.in_mm(), Origin::of_file("hull.thickness")),
          work.given({"E1", "modulus of the laminate", "N/mm2"},
                     *joint.hull.strength.modulus, Origin::of_file("hull.modulus")),
          work.given({"t2", "thickness of the laminate", "mm"},
                     joint.lip.thickness.in_mm(), Origin::of_file("lip.thickness")),
          work.given({"E2", "modulus of the laminate", "N/mm2"},
                     *joint.lip.strength.modulus, Origin::of_file("lip.modulus"))};
}

/// The share with the flexibility for composites.
template <class Working>
auto composite_share(Working& work,
                     const Joint& joint,
                     const FastenerSpec& spec,
                     const BondPoint& place,
                     Length pitch,
                     double metal) {
  const auto C =
      huth_flexibility(work, plates(work, joint, spec, metal), bolted_composite);
  const auto s = work.given({"s", "largest space of the layout", "mm"}, pitch.in_mm(),
                            Origin::of_joint("as in layout"));
  return std::pair{C,
                   fastener_share(work, SharedLap<typename Working::Number>{
                                            stretched_lap(work, joint, place), s, C})};
}

/// The share with the flexibility for metal sheets.
template <class Working>
auto metal_sheet_share(Working& work,
                       const Joint& joint,
                       const FastenerSpec& spec,
                       const BondPoint& place,
                       Length pitch,
                       double metal) {
  const auto C = swift_flexibility(work, plates(work, joint, spec, metal));
  const auto s = work.given({"s", "largest space of the layout", "mm"}, pitch.in_mm(),
                            Origin::of_joint("as in layout"));
  return std::pair{C,
                   fastener_share(work, SharedLap<typename Working::Number>{
                                            stretched_lap(work, joint, place), s, C})};
}

std::string sharing_words(const Joint& joint, double least, double most) {
  if (*joint.adhesive->strength.shear_modulus < sealant_modulus)
    return fmt::format(
        "a sealant: the fasteners carry {:.0f} to {:.0f} % of the load from the start, "
        "so this is a fastened joint with a gasket",
        100 * least, 100 * most);
  return fmt::format(
      "while the bond is whole the fasteners carry {:.1f} to {:.1f} % of the load; in "
      "clearance holes nothing until the clearance is taken up. Bond and fasteners are "
      "never added",
      100 * least, 100 * most);
}

}  // namespace

LoadSharing load_sharing(const Joint& joint,
                         const FastenerSpec& spec,
                         const BondPoint& place,
                         Length pitch) {
  LoadSharing sharing;
  const auto metal = metal_modulus(joint.fastener.strength);
  if (!metal || !(place.gap() > Length()) || !(pitch > Length())) {
    sharing.says = !metal ? "not worked out: [fastener] has neither class nor modulus"
                          : "not worked out: no gap, or no two holes";
    return sharing;
  }
  PlainWorking work;
  std::tie(sharing.flexibility, sharing.share) =
      composite_share(work, joint, spec, place, pitch, *metal);
  std::tie(sharing.metal_flexibility, sharing.metal_share) =
      metal_sheet_share(work, joint, spec, place, pitch, *metal);
  sharing.says = sharing_words(joint, std::min(*sharing.share, *sharing.metal_share),
                               std::max(*sharing.share, *sharing.metal_share));
  return sharing;
}

Explanations load_sharing_reasons(const Joint& joint,
                                  const FastenerSpec& spec,
                                  const BondPoint& place,
                                  Length pitch) {
  const auto metal = metal_modulus(joint.fastener.strength);
  if (!metal || !(place.gap() > Length()) || !(pitch > Length())) return {};
  WrittenWorking composite, sheets;
  composite_share(composite, joint, spec, place, pitch, *metal);
  metal_sheet_share(sheets, joint, spec, place, pitch, *metal);
  return {
      {"strength.share.share",
       "the fasteners' share while the bond is whole, laminates", composite.release()},
      {"strength.share.metal_share",
       "the same with a formula for metal sheets, for the spread", sheets.release()}};
}

}  // namespace sheerlap
