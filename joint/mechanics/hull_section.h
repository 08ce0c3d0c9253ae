#pragma once

#include <cmath>
#include <cstddef>
#include <string>
#include <vector>

#include "geometry/result.h"
#include "joint/reasons/working.h"

namespace sheerlap {

/// Which part of the boat a plate belongs to: the joint lies where one turns into the
/// other.
enum class SectionPart { Hull, Deck };

/// One flat plate of a section across the boat, from one end to the other.
struct SectionPlate {
  double y_1, z_1;  ///< mm, of the first end; z up
  double y_2, z_2;
  double thickness;      ///< mm
  double modulus_ratio;  ///< the plate's modulus over the section's reference modulus
  SectionPart part;
};

/// A section across the boat, as far as bending goes; areas weighted by modulus.
struct SectionProperties {
  double area = 0;          ///< mm2
  double neutral_axis = 0;  ///< z, mm
  double I = 0;             ///< second moment about the neutral axis, mm4
  double Q_deck = 0;        ///< first moment of the deck about it, mm3; > 0 if above
};

namespace hull_section {

inline double length(const SectionPlate& plate) {
  return std::hypot(plate.y_2 - plate.y_1, plate.z_2 - plate.z_1);
}

inline double weighted_area(const SectionPlate& plate) {
  return length(plate) * plate.thickness * plate.modulus_ratio;
}

inline double middle_height(const SectionPlate& plate) {
  return (plate.z_1 + plate.z_2) / 2;
}

inline bool is_sound(const SectionPlate& plate) {
  return length(plate) > 0 && std::isfinite(length(plate)) && plate.thickness > 0 &&
         std::isfinite(plate.thickness) && plate.modulus_ratio > 0 &&
         std::isfinite(plate.modulus_ratio);
}

/// Whether the plates' first and mixed moments about y = 0 vanish, as they do if the
/// starboard half mirrors the port half.
inline bool is_even(const std::vector<SectionPlate>& plates) {
  double first = 0, mixed = 0, size = 0, mixed_size = 0;
  for (const SectionPlate& plate : plates) {
    const double y = (plate.y_1 + plate.y_2) / 2, z = middle_height(plate);
    const double tilt = (plate.y_2 - plate.y_1) * (plate.z_2 - plate.z_1) / 12;
    const double reach = length(plate) + std::abs(y);
    first += weighted_area(plate) * y;
    mixed += weighted_area(plate) * (y * z + tilt);
    size += weighted_area(plate) * reach;
    mixed_size += weighted_area(plate) * reach * (length(plate) + std::abs(z));
  }
  return std::abs(first) <= 1e-9 * size && std::abs(mixed) <= 1e-9 * mixed_size;
}

}  // namespace hull_section

/// The properties of a thin-walled section of plates.
///
/// The thickness of a plate is small beside its length: its own stiffness across itself
/// is left out.
///
/// @param plates  of both sides of the boat, in any order
/// @errors  InvalidInput: no plates; a plate without length, thickness or modulus; a
///          section whose sides do not mirror each other; no deck, or nothing but deck
/// @source  derived: area A, height z and A (z^2 + dz^2/12) of each plate
inline Result<SectionProperties> section_properties(
    const std::vector<SectionPlate>& plates) {
  using namespace hull_section;
  SectionProperties section;
  std::size_t decks = 0;
  for (std::size_t i = 0; i < plates.size(); ++i) {
    if (!is_sound(plates[i]))
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

/// A section under a vertical shear force.
template <class Number>
struct SectionShear {
  Number V;  ///< shear force, N
  Number Q;  ///< first moment of the area beyond the cut about the neutral axis, mm3
  Number I;  ///< second moment of the whole section, mm4
};

/// The shear flow that all cuts together pass on, q_cut.
template <class Working>
auto shear_flow(Working& work, const SectionShear<typename Working::Number>& section) {
  return work.figure({"q_cut", "shear flow through all cuts together", "N/mm",
                      "derived: equilibrium of a slice of the beam",
                      "slender beam, linear, bending only"},
                     section.V * section.Q / section.I);
}

/// The shear flow at either edge of the deck of a symmetric closed section, q_V.
///
/// There is none on the centreline, so the two edges pass on a half each.
/// @param section  Q of the whole deck
template <class Working>
auto edge_shear_flow(Working& work,
                     const SectionShear<typename Working::Number>& section) {
  return work.figure({"q_V", "shear flow along the joint from vertical shear", "N/mm",
                      "derived: equilibrium of a slice of the beam, half at each edge",
                      "symmetric closed section, slender, linear; small boats carry "
                      "more by local loads"},
                     section.V * section.Q / (2 * section.I));
}

}  // namespace sheerlap
