#pragma once

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

/// The length of a plate, mm.
double plate_length(const SectionPlate& plate);

/// Whether a plate has a length, a thickness and a modulus.
bool is_plate(const SectionPlate& plate);

/// The properties of a thin-walled section of plates.
///
/// The thickness of a plate is small beside its length: its own stiffness across itself
/// is left out.
///
/// @param plates  of both sides of the boat, in any order
/// @errors  InvalidInput: no plates; a plate without length, thickness or modulus; a
///          section whose sides do not mirror each other; no deck, or nothing but deck
/// @source  derived: area A, height z and A (z^2 + dz^2/12) of each plate
Result<SectionProperties> section_properties(const std::vector<SectionPlate>& plates);

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
