#include "cli/supply_tables.h"

#include "cli/strength_tables.h"

namespace sheerlap {
namespace {

constexpr Bounds temperatures{-30, 80, false, "degrees C, from -30 to 80"};

void read_working_time(TomlTable& table, Adhesive& adhesive) {
  const auto minutes = table.number("working_time", bounds::above_zero).optional();
  auto at = table.number("working_time_at", temperatures);
  if (minutes) {
    adhesive.working_time = Duration::minutes(*minutes);
    adhesive.working_time_at = at.otherwise(
        23, "23 degrees C", "common practice, no source: data sheets state it there");
  } else if (const auto temperature = at.optional()) {
    adhesive.working_time_at = *temperature;
  }
  if (const auto days = table.number("shelf_life", bounds::above_zero).optional())
    adhesive.shelf_life = Duration::days(*days);
}

void read_packs(TomlTable& table, Adhesive& adhesive) {
  adhesive.pack =
      Volume::ml(table.number("pack", bounds::above_zero).needed("the ml in one pack"));
  adhesive.pack_usable = Volume::ml(table.number("pack_usable", bounds::above_zero)
                                        .needed("the ml that come out of a pack"));
  adhesive.nozzle_purge = Volume::ml(table.number("nozzle_purge", bounds::from_zero)
                                         .needed("the ml lost at each fresh nozzle"));
  adhesive.pack_price = table.number("pack_price", bounds::from_zero).optional();
  adhesive.nozzle_price = table.number("nozzle_price", bounds::from_zero).optional();
  adhesive.density = table.number("density", bounds::above_zero).optional();
}

/// An adhesive, the joint's own or one to be compared with it.
Adhesive adhesive_of(TomlTable& table) {
  constexpr std::array shapes{Choice<BeadShape>{"triangle", BeadShape::Triangle},
                              Choice<BeadShape>{"round", BeadShape::Round}};
  Adhesive adhesive;
  adhesive.name =
      table.text("name").otherwise("adhesive", "adhesive", "a name to call it by");
  adhesive.gap_min = table.length("gap_min", bounds::from_zero)
                         .needed("the smallest gap on the product's data sheet");
  adhesive.gap_max = table.length("gap_max", bounds::above_zero)
                         .needed("the largest gap on the product's data sheet");
  adhesive.squeeze_out = table.number("squeeze_out", bounds::share)
                             .otherwise(0.10, "0.10", common_practice);
  adhesive.waste =
      table.number("waste", bounds::share).otherwise(0.05, "0.05", common_practice);
  adhesive.bead_shape =
      table.choice("bead_shape", shapes)
          .otherwise(BeadShape::Triangle, "triangle", common_practice);
  adhesive.bead_sizes =
      table.lengths("bead_sizes").needed("the bead sizes that the nozzles lay");
  read_packs(table, adhesive);
  read_working_time(table, adhesive);
  adhesive.strength = read_adhesive_strength(table);
  table.refuse_unknown_keys();
  return adhesive;
}

}  // namespace

std::optional<Adhesive> read_adhesive(TomlTable& root) {
  TomlTable table = root.table("adhesive");
  if (!table.there()) return std::nullopt;
  return adhesive_of(table);
}

std::vector<Adhesive> read_adhesive_options(TomlTable& root) {
  std::vector<Adhesive> options;
  for (TomlTable& table : root.tables("adhesive_option"))
    options.push_back(adhesive_of(table));
  return options;
}

std::optional<Shop> read_shop(TomlTable& root) {
  TomlTable table = root.table("shop");
  if (!table.there()) return std::nullopt;
  Shop shop;
  shop.temperature =
      table.number("temperature", temperatures).needed("degrees C in the shop");
  shop.guns =
      static_cast<int>(table.count("guns").needed("how many guns lay adhesive"));
  shop.gun_rate =
      table.number("gun_rate", bounds::above_zero).needed("ml a minute from each gun");
  shop.pack_change =
      Duration::minutes(table.number("pack_change_minutes", bounds::from_zero)
                            .otherwise(1, "1 minute", common_practice));
  shop.seat = Duration::minutes(table.number("seat_minutes", bounds::from_zero)
                                    .needed("minutes to lower and seat the deck"));
  shop.screw_rate = table.number("screw_rate", bounds::above_zero)
                        .needed("fasteners a minute from each driver");
  shop.drivers =
      static_cast<int>(table.count("drivers").needed("how many drivers work at once"));
  table.refuse_unknown_keys();
  return shop;
}

std::optional<OrderRules> read_order(TomlTable& root) {
  TomlTable table = root.table("order");
  if (!table.there()) return std::nullopt;
  OrderRules rules;
  rules.boats = table.count("boats").needed("how many boats the order is for");
  rules.boats_a_month = table.number("boats_a_month", bounds::above_zero).optional();
  rules.spare =
      table.number("spare", bounds::share).otherwise(0.05, "0.05", common_practice);
  table.refuse_unknown_keys();
  return rules;
}

}  // namespace sheerlap
