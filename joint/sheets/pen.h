#pragma once

namespace sheerlap {

/// Widths of lines on a sheet, mm.
/// @source  ISO 128-20, the series of line widths: from memory, confirm
namespace line_width {
inline constexpr double thin = 0.25;
inline constexpr double medium = 0.35;
inline constexpr double thick = 0.5;
inline constexpr double heavy = 0.7;
}  // namespace line_width

/// How a line is broken, in the sense of ISO 128-20 (from memory, confirm).
enum class Dash {
  Solid,
  Dashed,       ///< hidden edges
  Dotted,       ///< what is only thought of
  Chain,        ///< long and short: centrelines
  DoubleChain,  ///< long and two short: neighbouring parts
};

/// What a line is drawn with.
struct Pen {
  double width_mm = line_width::thin;
  Dash dash = Dash::Solid;
};

/// Black is 0 and white is 1.
namespace shade {
inline constexpr double black = 0;
inline constexpr double light = 0.88;  ///< still white enough to read black text on
inline constexpr double white = 1;
}  // namespace shade

/// Parallel lines that fill an area.
struct Hatch {
  double spacing_mm = 2;
  double turn_degrees = 45;  ///< counter-clockwise from level
};

/// Heights of capital letters on a sheet, mm; nothing is written smaller.
/// @source  ISO 3098-1, the series of nominal sizes: from memory, confirm
namespace letter_height {
inline constexpr double least = 1.8;
inline constexpr double text = 2.5;
inline constexpr double heading = 3.5;
inline constexpr double title = 5;
}  // namespace letter_height

/// From one line of lettering to the next, in heights of its capitals.
inline constexpr double line_pitch = 1.6;

/// Which point of a line of lettering stands on the point it is given.
enum class Across { Left, Centre, Right };
enum class Upright { Top, Middle, Baseline };  ///< of its capitals

/// How words are written.
struct Lettering {
  double height_mm = letter_height::text;  ///< of capitals
  bool bold = false;
  Across across = Across::Left;
  Upright upright = Upright::Baseline;
  double turn_degrees = 0;     ///< counter-clockwise, about the point it is given
  double ink = shade::black;   ///< white on a filled area
  bool clears_ground = false;  ///< takes away what was drawn below it
};

}  // namespace sheerlap
