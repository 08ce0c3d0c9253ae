#include "joint/mechanics/hull_section.h"

#include <cmath>
#include <cstddef>
#include <string>

namespace sheerlap {
namespace {

double weighted_area(const SectionPlate& plate) {
  return plate_length(plate) * plate.thickness * plate.modulus_ratio;
}

double middle_height(const SectionPlate& plate) { return (plate.z_1 + plate.z_2) / 2; }

/// Whether the plates' first and mixed moments about y = 0 vanish, as they do if the
/// starboard half mirrors the port half.
bool is_even(const std::vector<SectionPlate>& plates) {
  double first = 0, mixed = 0, size = 0, mixed_size = 0;
  for (const SectionPlate& plate : plates) {
    const double y = (plate.y_1 + plate.y_2) / 2, z = middle_height(plate);
    const double tilt = (plate.y_2 - plate.y_1) * (plate.z_2 - plate.z_1) / 12;
    const double reach = plate_length(plate) + std::abs(y);
    first += weighted_area(plate) * y;
    mixed += weighted_area(plate) * (y * z + tilt);
    size += weighted_area(plate) * reach;
    mixed_size += weighted_area(plate) * reach * (plate_length(plate) + std::abs(z));
  }
  return std::abs(first) <= 1e-9 * size && std::abs(mixed) <= 1e-9 * mixed_size;
}

}  // namespace

double plate_length(const SectionPlate& plate) {
  return std::hypot(plate.y_2 - plate.y_1, plate.z_2 - plate.z_1);
}

bool is_plate(const SectionPlate& plate) {
  return plate_length(plate) > 0 && std::isfinite(plate_length(plate)) &&
         plate.thickness > 0 && std::isfinite(plate.thickness) &&
         plate.modulus_ratio > 0 && std::isfinite(plate.modulus_ratio);
}

Result<SectionProperties> section_properties(const std::vector<SectionPlate>& plates) {
  SectionProperties section;
  std::size_t decks = 0;
  for (std::size_t i = 0; i < plates.size(); ++i) {
    if (!is_plate(plates[i]))
      return invalid_input("plate[" + std::to_string(i) + "]",
                           "not a plate: a length, a thickness and a modulus above 0");
    section.area += weighted_area(plates[i]);
    section.neutral_axis += weighted_area(plates[i]) * middle_height(plates[i]);
    if (plates[i].part == SectionPart::Deck) ++decks;
  }
  if (decks == 0 || decks == plates.size())
    return invalid_input("plate",
                         "no joint in the section: plates of deck and of hull");
  if (!is_even(plates))
    return invalid_input("plate", "sides differ: the mirror image of each plate, too");
  section.neutral_axis /= section.area;
  for (const SectionPlate& plate : plates) {
    const double height = middle_height(plate) - section.neutral_axis;
    const double rise = plate.z_2 - plate.z_1;
    section.I += weighted_area(plate) * (height * height + rise * rise / 12);
    if (plate.part == SectionPart::Deck)
      section.Q_deck += weighted_area(plate) * height;
  }
  return section;
}

}  // namespace sheerlap
