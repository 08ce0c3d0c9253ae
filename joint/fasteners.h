#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/quantity.h"
#include "geometry/result.h"
#include "joint/joint.h"

namespace sheerlap {

/// What the source of a value ends in that was not read but remembered.
inline constexpr std::string_view memory_note = "from memory, confirm";

/// A value of a fastener, and where it is from.
struct FastenerValue {
  std::string what;  ///< in shop words: "hole in the lip"
  Length value;
  std::string source;     ///< ends in `memory_note` if the value was not read there
  bool is_pilot = false;  ///< what `FastenerSpec::hull_pilot` is
};

/// The pilot holes that are common in glass laminate.
struct PilotRange {
  Length least;
  Length greatest;
};

/// The stacks that one length of blind rivet closes.
struct Grip {
  Length length;
  Length least;
  Length greatest;
};

/// A fastener as it is drilled for and bought.
struct FastenerSpec {
  FastenerKind kind = FastenerKind::TappingScrew;
  HeadKind head = HeadKind::Pan;
  std::string size;
  Length diameter;       ///< over the thread at its greatest; a rivet's nominal
  Length diameter_min;   ///< over the thread at its least; otherwise as `diameter`
  Length core;           ///< at the root of the thread, least; a rivet's nominal
  Length thread_pitch;   ///< 0 for a rivet
  Length head_diameter;  ///< of what bears on the lip: the head, or a washer under it
  Length beyond_stack;   ///< a tapping screw's point; a bolt's washers, nut and threads
  std::size_t washers = 0;  ///< with each bolt
  Length lip_hole;
  std::optional<Length> hull_pilot;  ///< none: the hull's hole is as the lip's
  bool pilot_for_plastics = false;   ///< the pilot hole is not one for laminates
  std::optional<PilotRange> laminate_pilot;  ///< from memory; none for some sizes
  Length countersink;                        ///< diameter on the lip's outer face
  Length countersink_depth;                  ///< from the lip's outer face
  std::optional<double> tensile_mm2;         ///< area in tension; none for a rivet
  std::vector<Length> lengths;               ///< in stock, ascending
  std::vector<Grip> grips;                   ///< of a rivet, ascending; else none
  std::vector<FastenerValue> values;         ///< all that were taken from tables
};

/// The fastener of a joint file, with the user's own holes and lengths where he gives
/// any.
///
/// @errors  at "fastener.size": a size that no table here has, or not with that head;
///          at "fastener.lip_hole", "fastener.hull_pilot": a hole that no table here
///          gives, or the user's own if the screw would not pass it or not bite in it;
///          at "fastener.lengths": a rivet whose grip no table here gives
/// @source  each value's own: `FastenerSpec::values`
Result<FastenerSpec> fastener(const FastenerChoice& choice);

/// The least length that serves a stack; of a rivet the grip, which is the stack.
Length length_needed(const FastenerSpec& spec, Length stack);

/// The shortest length in stock that serves a stack: a tapping screw with its whole
/// thread in the hull, its point beyond; a bolt with its nut on and two threads out; a
/// rivet whose grip takes the stack.
std::optional<Length> serving_length(const FastenerSpec& spec, Length stack);

/// The name of a fastener without its length: "tapping screw ST4.8".
std::string fastener_name(const FastenerSpec& spec);

/// The name a fastener is bought by: "tapping screw ST4.8 x 19", "bolt 1/4 x 1-1/4 in".
std::string fastener_name(const FastenerSpec& spec, Length length);

}  // namespace sheerlap
