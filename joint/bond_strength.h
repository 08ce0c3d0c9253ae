#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "geometry/result.h"
#include "joint/joint.h"
#include "joint/joint_loads.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// What gives first in the bond.
enum class BondMode {
  AdhesiveShear,
  AdhesivePeel,
  LaminateShear,    ///< between the plies next to the bond
  LaminateThrough,  ///< through the thickness of the laminate next to the bond
  NoBondLine        ///< the faces touch or interfere: there is nothing to work out
};

/// The bond at one place of the sheer.
struct BondPoint {
  SideName side = SideName::Starboard;
  Length girth;             ///< along the sheer
  Length on_line;           ///< the same place's girth on the drill line
  Length gap_top;           ///< at the upper edge of the bond band
  Length gap_low;           ///< at its lower edge
  Length width;             ///< of the bond band, along the hull face
  JointLoad load;           ///< limit load with what heat adds, N/mm
  double shear_along = 0;   ///< peak across the lap at the limit load, N/mm2
  double shear_across = 0;  ///< the same
  double peel = 0;          ///< the same
  double utilisation = 0;   ///< load x factor / capacity; infinite without a bond line
  BondMode mode = BondMode::AdhesiveShear;

  /// Midway across the band.
  Length gap() const { return (gap_top + gap_low) / 2; }
};

/// A limit of a formula that the joint does not keep.
struct OutsideValidity {
  std::string what;   ///< what the formula asks and what the joint has
  std::string where;  ///< "all round", "starboard, girth 2310 to 2480"
};

struct BondStrength {
  BondPoint worst;
  std::vector<BondPoint> stations;  ///< the rows of the sheer table
  std::vector<BondPoint> along;     ///< all that were worked, by side and girth
  std::vector<OutsideValidity> outside;
};

/// The bond all round: at the rows of the table, at every jump of the load, and between
/// them no further apart than 50 mm.
///
/// Each place is worked with its own gaps, as a wedge where the two edges of the band
/// differ. A pull across is worked as on a lap of two laminates like the hull and of
/// two like the lip; the worse counts.
///
/// @param joint  with adhesive, loads and all that `strength_lacks` asks for
/// @errors       a face that the other cannot be measured against
Result<BondStrength> bond_strength(const Joint& joint,
                                   const Perimeter& perimeter,
                                   const JointLoads& loads);

/// The working of one place: how each of its figures comes about.
/// @param figure  the place in the result it explains: "strength.bond.worst"
Explanations bond_reasons(const Joint& joint,
                          const JointLoads& loads,
                          const BondPoint& point,
                          const std::string& figure);

/// "starboard, girth 2310.5 mm along the sheer".
std::string place_words(const BondPoint& point);

/// "adhesive in shear", "adhesive in peel", "laminate between its plies", "laminate
/// through its thickness", "no bond line".
std::string mode_words(BondMode mode);

}  // namespace sheerlap
