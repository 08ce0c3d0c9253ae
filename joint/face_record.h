#pragma once

#include <optional>
#include <vector>

#include "joint/field_estimate.h"
#include "joint/gap_readings.h"
#include "joint/joint.h"
#include "joint/perimeter.h"
#include "joint/tolerance_inputs.h"

namespace sheerlap {

/// What the gap readings of boats built say of the hull's face: how far it lies outward
/// of the drawing, its spread and its correlation length, as an error of the kind
/// `HullFace` has them. What all boats have at a place, the mould's shape, is not of
/// the spread.
///
/// Each place counts once, by the mean of its two edges. Where the lid happened to lie,
/// and how far the hull was open amidships, is taken out boat by boat: lid
/// fore-and-aft, athwartships and turned, the hull opened. A lip that is thicker and a
/// hull that is fuller look alike in a gap; all of it is put on the hull's face.
///
/// @param boats  the readings of each, at their places; those of other states are left
///               out
/// @returns   nothing if the readings are too few
/// @errors  at "sheer.row[N]": a place at which no gap can be measured
Result<std::optional<FieldEstimate>> face_from_record(
    const Joint& joint,
    const Perimeter& perimeter,
    const std::vector<std::vector<GapReading>>& boats,
    ReadingState state);

/// The inputs with the numbers of the record put into the error that is to have them:
/// spread and correlation length of the hull's face about what every boat has, which
/// is left to the pattern and so has no mean here.
///
/// Where the readings stand too far apart to tell the correlation length, the error's
/// own is kept, and its spread is what varies from place to place, noise and all. Boats
/// alike to a thousandth of a mm have no spread, and any length does.
///
/// @errors  at "error[N].from_record": an error of another kind, which gap
///          readings do not tell, or a second one; at "error[N].correlation":
///          neither the record nor the error tells it
Result<ToleranceInputs> with_record(ToleranceInputs inputs, const FieldEstimate& face);

}  // namespace sheerlap
