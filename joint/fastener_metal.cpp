#include "joint/fastener_metal.h"

#include <fmt/format.h>

#include "joint/strength_classes.h"

namespace sheerlap {

Result<std::optional<MetalStrength>> metal_strength(const FastenerStrength& strength) {
  if (strength.tensile)
    return MetalStrength{*strength.tensile, Origin::of_file("fastener.tensile")};
  if (!strength.property_class) return std::nullopt;
  const auto found = strength_class(*strength.property_class, "fastener.class");
  if (!found) return tl::unexpected(found.error());
  return MetalStrength{found->tensile.mpa, Origin::of_joint(fmt::format(
                                               "property class {}: {}", found->name,
                                               found->tensile.source))};
}

std::optional<double> metal_modulus(const FastenerStrength& strength) {
  if (strength.modulus) return strength.modulus;
  if (!strength.property_class) return std::nullopt;
  const auto found = strength_class(*strength.property_class, "fastener.class");
  if (!found) return std::nullopt;
  return found->modulus.mpa;
}

std::vector<std::string> modes_left_out(const Joint& joint, const FastenerSpec& spec) {
  const FastenerStrength& own = joint.fastener.strength;
  std::vector<std::string> left_out{
      "bending of the fastener across the gap, and the turning of a lap in single "
      "shear, which may take 10 to 30 % off (common practice, no source)",
      "shear-out along the joint to an opening or a corner: end distances stand among "
      "the rules"};
  if (joint.loads && joint.loads->warmth)
    left_out.push_back(
        "heat on the fasteners: with the bond gone, or a soft sealant in its place, "
        "the "
        "warm deck slides on the hull near the joint's free ends, and they feel it");
  if (joint.loads && joint.loads->panel)
    left_out.push_back(
        "of the deck's pressure: what holds a panel's corners down, and the moment of "
        "an edge that cannot turn, p*b^2/12, which pulls at the bond");
  const bool metal = own.tensile || own.property_class;
  const char* remedy = spec.tensile_mm2 ? "[fastener] has neither class nor tensile"
                                        : "no area of a rivet's shank is known here";
  if (!own.shear_capacity && !(metal && spec.tensile_mm2))
    left_out.push_back(fmt::format(
        "the fastener itself in shear: {}; or give shear_capacity, N", remedy));
  if (!own.pull_capacity && !(metal && spec.tensile_mm2))
    left_out.push_back(fmt::format(
        "the fastener itself in tension: {}; or give pull_capacity, N", remedy));
  if (spec.kind == FastenerKind::TappingScrew)
    left_out.push_back(
        "a thread that bears on the laminate: crushing is worked as under a plain "
        "shank");
  if (spec.kind == FastenerKind::BlindRivet)
    left_out.push_back(
        "the rivet's blind head pulled through the hull: its size is not known here; "
        "pull_capacity is to cover it");
  return left_out;
}

}  // namespace sheerlap
