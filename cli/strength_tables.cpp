#include "cli/strength_tables.h"

#include <string>
#include <string_view>
#include <vector>

#include "cli/stretch_table.h"
#include "joint/mechanics/deck_pressure.h"

namespace sheerlap {
namespace {

constexpr Bounds ratios{0, 1, false, "from 0 to 1"};
constexpr Bounds glass{0.1, 0.8, false, "the glass by mass, from 0.1 to 0.8"};
constexpr Bounds factors{1, bounds::unbounded, false, "1 or more"};
constexpr const char* memory = "from memory, confirm";

/// The three line loads; none of them is missed.
JointLoad read_joint_load(TomlTable& table) {
  JointLoad load;
  const auto value = [&](std::string_view key) {
    return table.number(key, bounds::from_zero).optional().value_or(0);
  };
  load.along = value("along");
  load.across = value("across");
  load.off = value("off");
  if (table.there() && !table.has("along") && !table.has("across") && !table.has("off"))
    table.refuse("", table.heading() + " has no load: along, across or off, N/mm");
  return load;
}

std::vector<StretchLoad> read_stretch_loads(TomlTable& root) {
  std::vector<StretchLoad> loads;
  for (TomlTable& table : root.tables("load")) {
    StretchLoad load;
    load.stretch = read_stretch(table);
    load.load = read_joint_load(table);
    load.what = table.text("what").needed("what loads it, such as \"mast bulkhead\"");
    table.refuse_unknown_keys();
    loads.push_back(load);
  }
  return loads;
}

std::vector<PlaceLoad> read_point_loads(TomlTable& root) {
  constexpr std::array directions{
      Choice<LoadDirection>{"along", LoadDirection::Along},
      Choice<LoadDirection>{"across", LoadDirection::Across},
      Choice<LoadDirection>{"off", LoadDirection::Off}};
  std::vector<PlaceLoad> loads;
  for (TomlTable& table : root.tables("point_load")) {
    PlaceLoad load;
    load.side = read_side(table);
    auto at = table.length("at", bounds::from_zero);
    auto x = table.length("x", bounds::any);
    load.by_x = table.has("x");
    if (load.by_x && table.has("at"))
      table.refuse("x", "[[point_load]] is given by girth and by x: at, or x");
    load.at = load.by_x ? x.needed("")
                        : at.needed("the running girth on the drill line, or x");
    load.force =
        table.number("force", bounds::from_zero).needed("the force, in newtons");
    load.direction =
        table.choice("direction", directions).needed("along, across or off");
    load.spread = table.length("spread", bounds::above_zero)
                      .needed("the length of joint that shares the force");
    load.what = table.text("what").needed("what pulls there, such as \"bow cleat\"");
    table.refuse_unknown_keys();
    loads.push_back(load);
  }
  return loads;
}

std::vector<SectionPlate> read_plates(TomlTable& root) {
  constexpr std::array parts{Choice<SectionPart>{"deck", SectionPart::Deck},
                             Choice<SectionPart>{"hull", SectionPart::Hull}};
  std::vector<SectionPlate> plates;
  for (TomlTable& table : root.tables("plate")) {
    const auto place = [&](std::string_view key) {
      return table.length(key, bounds::any)
          .needed(
              "an end of the wall in the cross-section: y from the centreline, z up")
          .in_mm();
    };
    SectionPlate plate{};
    plate.y_1 = place("y_from");
    plate.z_1 = place("z_from");
    plate.y_2 = place("y_to");
    plate.z_2 = place("z_to");
    plate.thickness = table.length("thickness", bounds::above_zero)
                          .needed("the wall's thickness")
                          .in_mm();
    plate.part = table.choice("part", parts).needed("deck or hull");
    plate.modulus_ratio =
        table.number("modulus_ratio", bounds::above_zero).optional().value_or(1);
    table.refuse_unknown_keys();
    plates.push_back(plate);
  }
  return plates;
}

std::optional<HullGirder> read_girder(TomlTable& root) {
  TomlTable table = root.table("hull_girder");
  auto plates = read_plates(root);
  if (!table.there()) {
    if (!plates.empty())
      root.refuse("plate", "[[plate]] stands without [hull_girder]: its shear_force");
    return std::nullopt;
  }
  HullGirder girder;
  girder.shear_force = table.number("shear_force", bounds::from_zero)
                           .needed("the vertical shear force in the hull, N");
  girder.torque =
      1000 * table.number("torque", bounds::from_zero).optional().value_or(0);
  girder.plates = std::move(plates);
  if (girder.plates.empty())
    table.refuse("", "[hull_girder] has no [[plate]]: the walls of the cross-section");
  table.refuse_unknown_keys();
  return girder;
}

std::optional<DeckLoad> read_panel(TomlTable& root) {
  constexpr std::array categories{Choice<DesignCategory>{"A", DesignCategory::A},
                                  Choice<DesignCategory>{"B", DesignCategory::B},
                                  Choice<DesignCategory>{"C", DesignCategory::C},
                                  Choice<DesignCategory>{"D", DesignCategory::D}};
  constexpr Bounds shares{0, 1, true, "more than 0, to 1"};
  TomlTable table = root.table("deck_panel");
  if (!table.there()) return std::nullopt;
  DeckLoad panel;
  panel.span = table.length("span", bounds::above_zero)
                   .needed("the short span of the deck panel along the joint");
  panel.length = table.length("length", bounds::above_zero).optional();
  panel.pressure = table.number("pressure", bounds::from_zero).optional();
  auto waterline = table.length("waterline_length", bounds::above_zero);
  auto category = table.choice("category", categories);
  auto displacement = table.number("displacement", bounds::above_zero);
  auto longitudinal = table.number("longitudinal_factor", shares);
  if (!table.has("pressure")) {
    panel.waterline_length =
        waterline.needed("for the deck's pressure; or give the pressure, kN/m2");
    panel.category_factor = category_factor(
        category.needed("the design category, A to D; or give the pressure, kN/m2"));
    panel.displacement_kg =
        displacement.needed("the loaded mass, kg; or give the pressure, kN/m2");
    panel.longitudinal_factor = longitudinal.otherwise(
        1, "1", "the greatest that the small-craft formula has; from memory, confirm");
  }
  table.refuse_unknown_keys();
  return panel;
}

std::optional<DeckWarmth> read_warmth(TomlTable& root) {
  TomlTable table = root.table("deck_warmth");
  if (!table.there()) return std::nullopt;
  DeckWarmth warmth;
  warmth.kelvin = table.number("warmer", bounds::from_zero)
                      .needed("by how much the deck is warmer than the hull, K");
  warmth.deck_width = table.length("deck_width", bounds::above_zero)
                          .needed("the width of deck that pulls together");
  warmth.hull_width = table.length("hull_width", bounds::above_zero)
                          .needed("the width of hull that pulls together");
  table.refuse_unknown_keys();
  return warmth;
}

/// Tables of loads that stand without [loads].
void refuse_stray_loads(TomlTable& root) {
  for (const std::string_view key :
       {"load", "point_load", "hull_girder", "plate", "deck_panel", "deck_warmth"})
    if (root.has(key))
      root.refuse(key,
                  "it stands without [loads]: that gives factor_bond and "
                  "factor_fastener");
}

}  // namespace

LaminateStrength read_laminate_strength(TomlTable& table) {
  const auto value = [&](std::string_view key) {
    return table.number(key, bounds::above_zero).optional();
  };
  LaminateStrength strength;
  strength.modulus = value("modulus");
  strength.shear_modulus = value("shear_modulus");
  strength.poisson = table.number("poisson", ratios).optional();
  strength.tension = value("tension");
  strength.compression = value("compression");
  strength.shear = value("shear");
  strength.interlaminar = value("interlaminar");
  strength.through = value("through");
  strength.bearing = value("bearing");
  strength.bending_ratio = value("bending_ratio");
  strength.expansion = value("expansion");
  strength.glass_fraction = table.number("glass_fraction", glass).optional();
  return strength;
}

AdhesiveStrength read_adhesive_strength(TomlTable& table) {
  const auto value = [&](std::string_view key) {
    return table.number(key, bounds::above_zero).optional();
  };
  AdhesiveStrength strength;
  strength.modulus = value("modulus");
  strength.shear_modulus = value("shear_modulus");
  strength.shear_strength = value("shear_strength");
  strength.peel_strength = value("peel_strength");
  strength.plastic_strain =
      table.number("plastic_strain", bounds::from_zero).optional();
  strength.viscosity = value("viscosity");
  strength.yield_stress = table.number("yield_stress", bounds::from_zero).optional();
  strength.gasket_factor = table.number("gasket_factor", bounds::from_zero).optional();
  return strength;
}

FastenerStrength read_fastener_strength(TomlTable& table) {
  const auto value = [&](std::string_view key) {
    return table.number(key, bounds::above_zero).optional();
  };
  FastenerStrength strength;
  strength.property_class = table.text("class").optional();
  strength.tensile = value("tensile");
  strength.modulus = value("modulus");
  strength.shear_capacity = value("shear_capacity");
  strength.pull_capacity = value("pull_capacity");
  return strength;
}

std::optional<Loads> read_loads(TomlTable& root) {
  TomlTable table = root.table("loads");
  if (!table.there()) {
    refuse_stray_loads(root);
    return std::nullopt;
  }
  Loads loads;
  const bool more = root.has("load") || root.has("point_load") ||
                    root.has("hull_girder") || root.has("deck_panel") ||
                    root.has("deck_warmth");
  const auto load = [&](std::string_view key, std::string_view remedy) {
    auto value = table.number(key, bounds::from_zero);
    return more ? value.optional().value_or(0) : value.needed(remedy);
  };
  loads.along =
      load("along", "the shear flow along the joint, N for each mm; 0 if none");
  loads.across =
      load("across", "the load up or down the lap, N for each mm; 0 if none");
  loads.off = load("off", "the load that pulls the lip away, N for each mm; 0 if none");
  loads.factor_bond =
      table.number("factor_bond", factors).needed("the factor asked of the bond");
  loads.factor_fastener = table.number("factor_fastener", factors)
                              .needed("the factor asked of the fasteners");
  table.refuse_unknown_keys();
  loads.stretches = read_stretch_loads(root);
  loads.points = read_point_loads(root);
  loads.girder = read_girder(root);
  loads.panel = read_panel(root);
  loads.warmth = read_warmth(root);
  return loads;
}

StrengthRules read_strength_rules(TomlTable& root) {
  constexpr std::array edges{Choice<bool>{"free", false}, Choice<bool>{"held", true}};
  TomlTable table = root.table("strength");
  StrengthRules rules;
  const bool wanted = root.has("loads");
  const auto share = [&](std::string_view key, double usual, const char* shown,
                         const char* why) {
    auto value = table.number(key, bounds::share);
    return wanted ? value.otherwise(usual, shown, why)
                  : value.optional().value_or(usual);
  };
  rules.rules = table.texts("rules").optional().value_or(std::vector<std::string>());
  auto held = table.choice("edges", edges);
  rules.edges_held = wanted
                         ? held.otherwise(false, "free", "two long plates free to turn")
                         : held.optional().value_or(false);
  rules.hole_brittleness =
      share("hole_brittleness", rules.hole_brittleness, "0.33", memory);
  rules.thread_grip = share("thread_grip", rules.thread_grip, "0.5", common_practice);
  rules.wet = share("wet", rules.wet, "0.9",
                    "about 10 % lost hot and wet, seen for another laminate");
  rules.gap_change = table.length("gap_change", bounds::above_zero).optional();
  auto speed = table.number("closing_speed", bounds::above_zero);
  rules.closing_speed =
      root.has("loads") && root.has("adhesive")
          ? speed.otherwise(rules.closing_speed, "1 mm/s", common_practice)
          : speed.optional().value_or(rules.closing_speed);
  rules.hull_length = table.length("hull_length", bounds::above_zero).optional();
  table.refuse_unknown_keys();
  return rules;
}

}  // namespace sheerlap
