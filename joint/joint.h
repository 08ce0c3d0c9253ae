#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "joint/adhesive_product.h"
#include "joint/reading_limits.h"
#include "joint/seating_inputs.h"
#include "joint/sheer.h"
#include "joint/strength_inputs.h"
#include "joint/stretch.h"
#include "joint/tolerance_inputs.h"

namespace sheerlap {

/// The band of the lap that is to be filled, as depths; the whole lap if absent.
struct BondBand {
  std::optional<Length> from;
  std::optional<Length> to;
};

/// One of the two mouldings where they lap.
struct Laminate {
  Length thickness;  ///< square to the face, in the vertical section across it
  Length trim;       ///< tolerance of the trimmed edge, plus or minus
  LaminateStrength strength = {};
};

/// A stretch without a joint.
struct Opening {
  Stretch stretch;
  std::string what;
};

/// A stretch with pitch limits of its own.
struct Zone {
  Stretch stretch;
  std::optional<Length> pitch_max;
  std::optional<Length> pitch_min;
  std::string what;
};

/// A stretch of the drill line where no hole may go.
struct KeepOut {
  Stretch stretch;
  Length clear;  ///< added at both ends
  std::string what;
};

/// A point of the drill line where a hole must be.
struct FixedPlace {
  SideChoice side = SideChoice::Both;
  Length at;  ///< running girth on the drill line, or x
  bool by_x = false;
  std::string what;
};

enum class FastenerKind { TappingScrew, Bolt, BlindRivet };
enum class HeadKind { Pan, Countersunk };

struct FastenerChoice {
  FastenerKind kind = FastenerKind::TappingScrew;
  std::string size;  ///< as written: "ST4.8", "M6", "#10", "1/4"
  HeadKind head = HeadKind::Pan;
  std::vector<Length> lengths;       ///< in stock, ascending
  Length line;                       ///< depth of the drill line
  std::optional<Length> lip_hole;    ///< the user's own, in place of the table's
  std::optional<Length> hull_pilot;  ///< the user's own, in place of the table's
  std::optional<std::size_t> box;    ///< fasteners in a box
  std::optional<double> box_price;
  FastenerStrength strength = {};
};

/// What stands for no limit of a space.
inline constexpr Length unlimited_pitch = Length::mm(1e9);

struct LayoutRules {
  Length pitch_max;  ///< `unlimited_pitch` where only the strength limits it
  Length pitch_min;
  Length end_min;
  Length end_max;
  Length radius_min;
  Length round_to;
  bool by_strength = false;  ///< spaces also keep what the strength allows
};

/// The side of a jig's plate that is marked and seen when it is set out flat.
enum class PlateSide { Outer, Lip };

struct JigRules {
  Length length_max;
  Length bush;        ///< outer diameter of the drill bush
  Length plate = {};  ///< thickness of the strip bent onto the lip; 0: film or paper
  PlateSide marks = PlateSide::Outer;
};

struct Shop {
  double temperature = 23;  ///< degrees C
  int guns = 1;
  double gun_rate = 0;    ///< ml/min, each
  Duration pack_change;   ///< for one fresh pack and nozzle
  Duration seat;          ///< lowering and seating the deck
  double screw_rate = 0;  ///< a minute, each driver
  int drivers = 1;
};

struct OrderRules {
  std::size_t boats = 1;
  std::optional<double> boats_a_month;
  double spare = 0;  ///< share of the fasteners
};

/// A default that stands in the result because the joint file does not say.
struct DefaultUsed {
  std::string key;
  std::string value;
  std::string why;
};

/// A joint as its file gives it, in one set of units, with defaults filled in.
struct Joint {
  std::string title;
  Sheer sheer;
  BondBand bond;
  Laminate hull;
  Laminate lip;
  std::vector<Opening> openings;
  std::optional<Adhesive> adhesive;
  std::vector<Adhesive> adhesive_options;  ///< to be compared with it
  FastenerChoice fastener;
  LayoutRules layout;
  std::vector<Zone> zones;
  std::vector<KeepOut> keepouts;
  std::vector<FixedPlace> places;
  std::optional<Loads> loads;
  StrengthRules strength;
  std::optional<TurnedEntry> turned_entry;
  SeatingInputs seating;
  ReadingLimits reading_limits;
  std::optional<ToleranceInputs> tolerance;
  JigRules jig;
  std::optional<Shop> shop;
  std::optional<OrderRules> order;
  std::vector<DefaultUsed> defaults;
};

}  // namespace sheerlap
