#include "cli/stretch_table.h"

namespace sheerlap {

SideChoice read_side(TomlTable& table) {
  constexpr std::array choices{Choice<SideChoice>{"starboard", SideChoice::Starboard},
                               Choice<SideChoice>{"port", SideChoice::Port},
                               Choice<SideChoice>{"both", SideChoice::Both},
                               Choice<SideChoice>{"transom", SideChoice::Transom}};
  return table.choice("side", choices).needed("starboard, port, both or transom");
}

Stretch read_stretch(TomlTable& table) {
  Stretch stretch;
  stretch.side = read_side(table);
  auto from = table.length("from", bounds::from_zero);
  auto to = table.length("to", bounds::from_zero);
  auto x_from = table.length("x_from", bounds::any);
  auto x_to = table.length("x_to", bounds::any);
  const bool by_girth = table.has("from") || table.has("to");
  stretch.by_x = table.has("x_from") || table.has("x_to");
  if (by_girth && stretch.by_x) {
    table.refuse(table.has("x_from") ? "x_from" : "x_to",
                 table.heading() +
                     " is given by girth and by x: from and to, or x_from "
                     "and x_to");
    stretch.from = stretch.to = unread<Length>();
  } else if (stretch.by_x) {
    stretch.from = x_from.needed("the x where it starts");
    stretch.to = x_to.needed("the x where it ends");
  } else {
    stretch.from = from.needed(
        "the running girth on the drill line where it starts, "
        "or x_from and x_to");
    stretch.to = to.needed(
        "the running girth on the drill line where it ends, or "
        "x_from and x_to");
  }
  return stretch;
}

FixedPlace read_place(TomlTable& table) {
  FixedPlace place;
  place.side = read_side(table);
  auto at = table.length("at", bounds::from_zero);
  auto x = table.length("x", bounds::any);
  place.by_x = table.has("x");
  if (place.by_x && table.has("at")) {
    table.refuse("x", "[[place]] is given by girth and by x: at, or x");
    place.at = unread<Length>();
  } else {
    place.at = place.by_x
                   ? x.needed("")
                   : at.needed("the running girth of the hole on the drill line, or x");
  }
  place.what =
      table.text("what").needed("what the hole is for, such as \"lifting eye\"");
  table.refuse_unknown_keys();
  return place;
}

}  // namespace sheerlap
