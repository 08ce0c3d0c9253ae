#pragma once

#include <optional>
#include <vector>

#include "geometry/quantity.h"
#include "geometry/result.h"
#include "joint/beam_readings.h"
#include "joint/check.h"
#include "joint/fit.h"
#include "joint/joint.h"
#include "joint/perimeter.h"
#include "joint/readings_gap.h"
#include "joint/seating_inputs.h"

namespace sheerlap {

/// The squeeze of each side at one spreader.
struct Squeeze {
  Length at;      ///< x
  Length amount;  ///< inward, of each side; negative: spread
  Length most;    ///< its limit, in or out
  /// What brings the free hull there to where it was in the mould.
  Length to_mould;
  /// Of margin, for each mm that the limit was further; 0 within it.
  double limit_price = 0;
};

/// A gap that no seating can better without making another worse.
struct HoldingGap {
  GapAt at;
  bool tight = true;  ///< as little as the margin lets it be, else as much
  double price = 0;   ///< of margin, for each mm that this gap alone was better
};

/// How far each side stands from where it was in the mould, outward.
struct SeatedReading {
  BeamMoved moved;
  Length seated;  ///< with the squeeze of the best seating
};

/// The hull in one shape under the lid as drawn.
struct HullShapeFit {
  GapAt least;
  GapAt greatest;
};

/// The best place for the lid on the box.
struct Seating {
  Length dx;        ///< of the lid's pivot, aft
  Length dy;        ///< to starboard
  Angle turn;       ///< about z: the bow to port, the stern to starboard
  Point2 pivot;     ///< half the boat's length, on the centreline
  Length reach;     ///< from the pivot to the lid's ends
  Length at_bow;    ///< the lid's forward end moves to starboard
  Length at_stern;  ///< its after end
  std::vector<Squeeze> squeezes;
  Length margin;    ///< the worst gap's distance inside the gap window
  GapAt worst;      ///< that gap
  Length as_drawn;  ///< the margin of the lid not moved, on the hull not squeezed
  HullShapeFit seated;
  std::vector<HoldingGap> contacts;  ///< the gaps that hold the margin, by place
  Length gain_left;  ///< what a linear programme at the end still promises
  std::vector<SeatedReading> readings;
  std::optional<HullShapeFit> free;  ///< if there are readings
  std::optional<HullShapeFit> held;  ///< if there are held readings
  /// Of the gaps in the hull's shape as moulded, or as read, to those then.
  std::vector<SideCorrections> corrections;
  Checks checks;

  /// Whether all gaps lie in the window, to a millionth of a mm.
  bool fits() const { return margin.in_mm() >= -1e-6; }
};

/// The best place for the lid on the box, and the squeeze of the hull there, within the
/// limits of the spreaders.
///
/// The gap is looked at every 10 mm along the joint and at every row, at both edges of
/// the lap, from the hull in its free shape, or as moulded where there are no readings.
///
/// @param joint  with its adhesive, whose gap window it is
/// @errors  at "beam_reading[N]...", "spreader[N]..."; "sheer.row[N]": a hull whose gap
///          cannot be measured in a shape its readings give it
Result<Seating> seating(const Joint& joint,
                        const SeatingInputs& inputs,
                        const Perimeter& perimeter);

}  // namespace sheerlap
