#include "cli/seating_tables.h"

#include <array>
#include <vector>

namespace sheerlap {
namespace {

/// The place of a beam reading, by x or by a station's label.
void read_place_of(TomlTable& table, BeamReading& reading) {
  auto x = table.length("x", bounds::any);
  auto station = table.text("station");
  reading.station = station.optional().value_or("");
  if (table.has("station") && table.has("x"))
    table.refuse("x", "[[beam_reading]] is given by station and by x: station, or x");
  if (table.has("station")) return;
  reading.x = x.needed("the x where it is read, or station");
}

std::vector<BeamReading> read_beam_readings(TomlTable& root) {
  std::vector<BeamReading> readings;
  for (TomlTable& table : root.tables("beam_reading")) {
    BeamReading reading;
    read_place_of(table, reading);
    reading.mould = table.length("mould", bounds::above_zero)
                        .needed("the beam over the hull's top edge in the mould");
    reading.free = table.length("free", bounds::above_zero)
                       .needed("the beam there out of the mould, nothing holding it");
    reading.held = table.length("held", bounds::above_zero).optional();
    table.refuse_unknown_keys();
    readings.push_back(reading);
  }
  return readings;
}

std::vector<Spreader> read_spreaders(TomlTable& root) {
  std::vector<Spreader> spreaders;
  for (TomlTable& table : root.tables("spreader")) {
    Spreader spreader;
    spreader.x = table.length("x", bounds::any).needed("the x where it stands");
    spreader.most =
        table.length("most", bounds::above_zero)
            .needed("how far each side may be forced there, in or out, at the most");
    table.refuse_unknown_keys();
    spreaders.push_back(spreader);
  }
  return spreaders;
}

}  // namespace

std::optional<TurnedEntry> read_turned_entry(TomlTable& root) {
  constexpr std::array ends{Choice<FirstEnd>{"bow", FirstEnd::Bow},
                            Choice<FirstEnd>{"stern", FirstEnd::Stern}};
  constexpr Bounds angles{0, 45, true, "more than 0 and at most 45 degrees"};
  TomlTable table = root.table("entry");
  if (!table.there()) return std::nullopt;
  TurnedEntry entry;
  entry.first = table.choice("first", ends)
                    .needed("bow or stern: the end that is set home first");
  entry.angle = Angle::degrees(
      table.number("angle", angles)
          .needed("the lid's angle to its seat, in degrees, as the other end comes "
                  "down"));
  table.refuse_unknown_keys();
  return entry;
}

SeatingInputs read_seating_inputs(TomlTable& root) {
  return {read_beam_readings(root), read_spreaders(root)};
}

}  // namespace sheerlap
