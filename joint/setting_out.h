#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "joint/drill_stations.h"
#include "joint/fasteners.h"
#include "joint/joint.h"
#include "joint/layout.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// How far a bit may be out of square to the lip.
/// @source  common practice, no source
inline constexpr Angle bit_out_of_square = Angle::degrees(3);

/// How far along a station, and up or down, a hole may be marked off.
/// @source  common practice, no source
inline constexpr Length station_tolerance = Length::mm(1.5);
inline constexpr Length line_tolerance = Length::mm(1);

/// How far the exit of a hole shifts that is drilled out of square through a stack.
Length exit_shift(Length stack, Angle out_of_square);

/// How much further than their setting dividers come along an arc of a circle at each
/// step.
///
/// @param setting  no more than twice the radius
Length stepping_gain(Length setting, Length radius);

/// Where dividers come to that are stepped off along a side's drill line.
///
/// @param from     girth on the drill line
/// @param setting  > 0: the straight distance of their points
/// @returns  the girth of the last mark; the end of the side if they run off it
/// @accuracy  1e-9 mm a step
Length stepped_off(const SideLine& drill_line,
                   Length from,
                   Length setting,
                   std::size_t steps);

/// What a run of equal spaces comes to that is not set out by running dimensions.
struct SteppedRun {
  SideName side = SideName::Starboard;
  LayoutRun run;
  Length stepped;  ///< its last hole, past its place, by dividers set to the pitch
  Length
      rounded;  ///< likewise with the pitch rounded to the step of the tape and added
};

/// One thing by which a hole in the lip and one in the hull come to differ.
struct HoleError {
  std::string what;
  Length off;  ///< either way
  std::string source;
};

/// The holes that a lip and a hull need which are drilled apart, each by its own marks.
struct ApartHoles {
  std::vector<HoleError> along;    ///< the drill line
  std::vector<HoleError> across;   ///< up and down
  std::vector<HoleError> leaning;  ///< any way
  Length off_worst;     ///< centre to centre, all errors at their greatest together
  Length off_root_sum;  ///< by the square root of the sum of their squares
  /// The hole through which the fastener still goes: in the lip if the hull is piloted,
  /// else in both.
  Length hole_worst;
  Length hole_root_sum;
};

/// What holes are off by.
struct SettingOut {
  std::vector<SteppedRun> runs;  ///< of more than one space, side by side
  Length running;                ///< by running dimensions: half of their step
  std::string thickest;  ///< the mark with the greatest stack; empty without holes
  Length leaning_exit;   ///< there, by a bit out of square
  ApartHoles apart;
};

/// @param stations  of the layout
SettingOut setting_out(const Joint& joint,
                       const Perimeter& perimeter,
                       const Layout& layout,
                       const std::vector<DrillStation>& stations,
                       const FastenerSpec& spec);

/// The holes for a lip and a hull drilled apart at a station.
///
/// Each part is marked from its own edge: its station, its height and the trim of that
/// edge may all be off, and each bit out of square: the lip's over the lip, the hull's
/// carries the fastener over gap and lip.
///
/// @source  derived; with the hull piloted as for a fastener fixed in one part, a hole
///          of d and twice the error; else as for one loose in both, d and the error
///          (ASME Y14.5, appendix on fasteners, from memory, confirm)
ApartHoles apart_holes(const Joint& joint, const FastenerSpec& spec, Length gap);

}  // namespace sheerlap
