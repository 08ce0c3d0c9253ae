#include "cli/fastening_tables.h"

#include <fmt/format.h>

#include "cli/strength_tables.h"
#include "cli/stretch_table.h"

namespace sheerlap {

FastenerChoice read_fastener(TomlTable& root) {
  constexpr std::array kinds{
      Choice<FastenerKind>{"tapping screw", FastenerKind::TappingScrew},
      Choice<FastenerKind>{"bolt", FastenerKind::Bolt},
      Choice<FastenerKind>{"blind rivet", FastenerKind::BlindRivet}};
  constexpr std::array heads{Choice<HeadKind>{"pan", HeadKind::Pan},
                             Choice<HeadKind>{"countersunk", HeadKind::Countersunk}};
  TomlTable table = root.needed_table(
      "fastener", "it gives the fastener's kind, size and drill line");
  FastenerChoice fastener;
  fastener.kind =
      table.choice("kind", kinds).needed("tapping screw, bolt or blind rivet");
  fastener.size = table.text("size").needed("such as \"ST4.8\", \"M6\" or \"#10\"");
  fastener.head =
      table.choice("head", heads).otherwise(HeadKind::Pan, "pan", common_practice);
  fastener.lengths =
      table.lengths("lengths").optional().value_or(std::vector<Length>());
  fastener.line = table.length("line", bounds::above_zero)
                      .needed("the depth of the drill line below the sheer");
  fastener.lip_hole = table.length("lip_hole", bounds::above_zero).optional();
  fastener.hull_pilot = table.length("hull_pilot", bounds::above_zero).optional();
  fastener.box = table.count("box").optional();
  fastener.box_price = table.number("box_price", bounds::from_zero).optional();
  fastener.strength = read_fastener_strength(table);
  table.refuse_unknown_keys();
  return fastener;
}

LayoutRules read_layout(TomlTable& root) {
  TomlTable table = root.needed_table("layout", "it gives pitch_max and pitch_min");
  const LengthUnit unit = table.reading().unit;
  const bool inches = unit == LengthUnit::Inches;
  LayoutRules rules;
  rules.by_strength = table.says("pitch_max", "strength");
  rules.pitch_max = rules.by_strength
                        ? unlimited_pitch
                        : table.length("pitch_max", bounds::above_zero)
                              .needed(
                                  "the largest space from hole to hole, or "
                                  "\"strength\"");
  rules.pitch_min = table.length("pitch_min", bounds::above_zero)
                        .needed("the smallest space from hole to hole");
  auto end_min = table.length("end_min", bounds::from_zero);
  const Length half = rules.pitch_max / 2;
  auto end_max = table.length("end_max", bounds::above_zero);
  rules.end_max =
      rules.by_strength
          ? end_max.needed(
                "the most from a corner to the first hole; pitch_max gives "
                "no length to halve")
          : end_max.otherwise(half, length_words(half, unit),
                              "common practice, no source: half of pitch_max");
  const bool close = rules.end_max < Length::mm(30);
  const Length nearest = close ? rules.end_max : Length::mm(30);
  rules.end_min = end_min.otherwise(
      nearest, close ? length_words(nearest, unit) : "30 mm",
      close ? "common practice, no source: no larger than end_max" : common_practice);
  rules.radius_min = table.length("radius_min", bounds::from_zero)
                         .otherwise(Length::mm(150), "150 mm", common_practice);
  rules.round_to = table.length("round_to", bounds::above_zero)
                       .otherwise(inches ? Length::inches(1. / 16) : Length::mm(1),
                                  inches ? "1/16 in" : "1 mm", common_practice);
  table.refuse_unknown_keys();
  return rules;
}

std::vector<Zone> read_zones(TomlTable& root) {
  std::vector<Zone> zones;
  for (TomlTable& table : root.tables("zone")) {
    Zone zone;
    zone.stretch = read_stretch(table);
    zone.pitch_max = table.length("pitch_max", bounds::above_zero).optional();
    zone.pitch_min = table.length("pitch_min", bounds::above_zero).optional();
    zone.what = table.text("what").optional().value_or("");
    if (!table.has("pitch_max") && !table.has("pitch_min"))
      table.refuse("",
                   "[[zone]] has no limit of its own: pitch_max, pitch_min or both");
    table.refuse_unknown_keys();
    zones.push_back(zone);
  }
  return zones;
}

std::vector<KeepOut> read_keepouts(TomlTable& root) {
  std::vector<KeepOut> keepouts;
  for (TomlTable& table : root.tables("keepout")) {
    KeepOut keepout;
    keepout.stretch = read_stretch(table);
    keepout.clear =
        table.length("clear", bounds::from_zero).optional().value_or(Length());
    keepout.what =
        table.text("what").needed("what stands there, such as \"bow cleat\"");
    table.refuse_unknown_keys();
    keepouts.push_back(keepout);
  }
  return keepouts;
}

std::vector<FixedPlace> read_places(TomlTable& root) {
  std::vector<FixedPlace> places;
  for (TomlTable& table : root.tables("place")) places.push_back(read_place(table));
  return places;
}

JigRules read_jig(TomlTable& root) {
  TomlTable table = root.table("jig");
  JigRules rules;
  rules.length_max = table.length("length_max", bounds::above_zero)
                         .otherwise(Length::mm(1300), "1300 mm", common_practice);
  rules.bush = table.length("bush", bounds::above_zero)
                   .otherwise(Length::mm(8), "8 mm", "from memory, confirm");
  constexpr std::array sides{Choice<PlateSide>{"outer", PlateSide::Outer},
                             Choice<PlateSide>{"lip", PlateSide::Lip}};
  rules.plate = table.length("plate", bounds::from_zero)
                    .otherwise(Length(), "0 mm", "a strip of film or paper");
  rules.marks = table.choice("marks", sides)
                    .otherwise(PlateSide::Outer, "outer", common_practice);
  table.refuse_unknown_keys();
  return rules;
}

}  // namespace sheerlap
