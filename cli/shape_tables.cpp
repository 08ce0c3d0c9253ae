#include "cli/shape_tables.h"

#include "cli/strength_tables.h"
#include "cli/stretch_table.h"

namespace sheerlap {

SheerSettings read_sheer_settings(TomlTable& root) {
  constexpr std::array curves{Choice<CurveKind>{"spline", CurveKind::Spline},
                              Choice<CurveKind>{"chords", CurveKind::Chords}};
  constexpr Bounds angles{0, 170, true, "more than 0 and at most 170 degrees"};
  TomlTable table = root.needed_table("sheer", "it names the file of the sheer table");
  SheerSettings settings;
  Sheer& sheer = settings.sheer;
  settings.file = table.text("file").needed("the name of the sheer table's CSV file");
  sheer.half = table.flag("half").otherwise(
      true, "true", "common practice, no source: a table gives one half of the boat");
  sheer.closed = table.flag("closed").otherwise(
      true, "true", "common practice, no source: the joint runs all the way round");
  sheer.curve = table.choice("curve", curves)
                    .otherwise(CurveKind::Spline, "spline",
                               "common practice, no source: a sheer is fair between "
                               "its corners");
  sheer.knuckle_angle =
      Angle::degrees(table.number("knuckle_angle", angles)
                         .otherwise(30, "30 degrees", common_practice));
  table.refuse_unknown_keys();
  return settings;
}

LapSettings read_lap(TomlTable& root) {
  TomlTable table = root.table("lap");
  LapSettings settings;
  for (std::size_t i = 0; i < offset_columns.size(); ++i) {
    const std::string_view key = offset_columns[i].constant;
    const Bounds bounds = key == "depth" ? bounds::above_zero : bounds::any;
    const auto value = table.length(key, bounds).optional();
    if (value || table.has(key))
      settings.constants[i] = value.value_or(unread<Length>());
  }
  settings.bond.from = table.length("bond_from", bounds::from_zero).optional();
  settings.bond.to = table.length("bond_to", bounds::above_zero).optional();
  if (root.has("adhesive")) {
    const char* why = "common practice, no source: the whole lap is filled";
    if (!table.has("bond_from")) table.use_default("bond_from", "0", why);
    if (!table.has("bond_to")) table.use_default("bond_to", "the lap's depth", why);
  }
  table.refuse_unknown_keys();
  return settings;
}

Laminate read_laminate(TomlTable& root, std::string_view key) {
  TomlTable table =
      root.needed_table(key, "it gives the thickness of the laminate in the lap");
  Laminate laminate;
  laminate.thickness = table.length("thickness", bounds::above_zero)
                           .needed("the thickness of the laminate in the lap");
  laminate.trim = table.length("trim", bounds::from_zero)
                      .otherwise(Length::mm(2), "2 mm", common_practice);
  laminate.strength = read_laminate_strength(table);
  table.refuse_unknown_keys();
  return laminate;
}

std::vector<Opening> read_openings(TomlTable& root) {
  std::vector<Opening> openings;
  for (TomlTable& table : root.tables("opening")) {
    const Stretch stretch = read_stretch(table);
    openings.push_back(
        {stretch, table.text("what").needed("what it is, such as \"outboard well\"")});
    table.refuse_unknown_keys();
  }
  return openings;
}

}  // namespace sheerlap
