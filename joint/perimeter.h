#pragma once

#include <memory>
#include <string>
#include <vector>

#include "geometry/enclosed_volume.h"
#include "geometry/face_line.h"
#include "geometry/points.h"
#include "geometry/quantity.h"
#include "geometry/result.h"
#include "geometry/ruled_face.h"
#include "joint/check.h"
#include "joint/joint.h"
#include "joint/reasons/working.h"
#include "joint/side_line.h"

namespace sheerlap {

/// How a side starts or ends: at a corner, on the centreline without one, or where
/// the table stops.
enum class SideEnd { Corner, Smooth, End };

/// A stretch of a side without a joint.
struct OpeningSpan {
  std::string what;
  Length from;  ///< girth on the drill line
  Length to;
  Length sheer_from;  ///< girth on the sheer
  Length sheer_to;
};

/// A corner within a side, as a pram's bow has.
struct InnerCorner {
  Length girth;        ///< on the drill line
  Length sheer_girth;  ///< on the sheer
};

inline constexpr std::string_view girth_validity =
    "girth along the curve, not the chord; openings are measured across as if joined";

/// How the lengths of a side are found.
inline constexpr FoundWords sheer_length_words{
    {"L_sheer", "girth of a side on the sheer", "mm",
     "derived: arc length of the curve through the rows", girth_validity},
    "the curve's arc length between rows, span by span, by Gauss quadrature",
    "about 1e-12 of itself for the curve given"};
inline constexpr FoundWords drill_length_words{
    {"L_drill", "girth of a side on the drill line", "mm",
     "derived: arc length of the line on the lip's outer face", girth_validity},
    "the line's arc length, span by span, by Gauss quadrature; at corners to where the "
    "neighbouring faces meet",
    "about 1e-12 of itself for the faces given"};

struct PerimeterSide {
  SideName name = SideName::Starboard;
  Length sheer_length;
  Length drill_line_length;
  SideEnd start = SideEnd::Smooth;
  SideEnd end = SideEnd::Smooth;
  std::vector<OpeningSpan> openings;  ///< by girth
  std::vector<InnerCorner> corners;   ///< by girth
  SideLine sheer;
  SideLine drill_line;
  SideLine hull_line;           ///< on the hull face at the drill line's depth
  std::vector<SpanPart> parts;  ///< of the sheer, openings left out
};

/// The sides' lengths together, mm.
template <class Working>
auto joint_length(Working& work,
                  const std::vector<PerimeterSide>& sides,
                  Length PerimeterSide::*length) {
  typename Working::Number sum(0);
  std::size_t number = 0;
  for (const PerimeterSide& side : sides) {
    const std::string letters = "L_" + std::to_string(++number);
    const auto term =
        work.given({letters, "girth of one side", "mm"}, (side.*length).in_mm(),
                   Origin::of_joint("perimeter.sides"));
    sum = number == 1 ? term : sum + term;
  }
  return work.figure({"L", "girth of the joint, all sides", "mm",
                      "derived: the sides' lengths added", girth_validity},
                     sum);
}

/// A knot of the sheer's curve: the row it comes from, and which hand.
struct SheerKnot {
  std::size_t row = 0;
  bool mirrored = false;  ///< the port image of a half boat's row
  bool added = false;     ///< ours, on the centreline aft, after `row`
  bool corner = false;
};

/// The sheer all the way round, the faces that hang from it, and its sides.
struct Perimeter {
  Length sheer_length;  ///< of the joint: the sides' lengths together
  Length drill_line_length;
  std::vector<PerimeterSide> sides;  ///< starboard, port and, with corners, transom
  Checks checks;                     ///< fairness of the curve

  std::shared_ptr<const RuledFace> hull;       ///< outer face of the hull
  std::shared_ptr<const RuledFace> lip;        ///< inner face of the lip
  std::shared_ptr<const RuledFace> lip_outer;  ///< outer face of the lip
  std::vector<SheerKnot> knots;
  std::vector<std::size_t> mitres;  ///< knuckles with joint on both sides

  const PerimeterSide* side(SideName name) const;
};

/// The perimeter of a joint.
///
/// Rows may come in either direction; they are turned so that the curve runs from the
/// bow aft on starboard.
///
/// @errors  at "sheer.row[N]": points that coincide, a curve that crosses itself or
///          turns back, a face that folds or whose corners do not meet; at
///          "opening[N]...": an opening that is not on its side
Result<Perimeter> perimeter(const Joint& joint);

/// Whether each knot of the sheer is a corner, as `tight_bends` asks.
std::vector<bool> corner_knots(const Perimeter& perimeter);

/// "starboard", "port" or "transom".
std::string side_word(SideName name);

/// "starboard and port".
/// @param names  at least one
std::string sides_words(const std::vector<SideName>& names);

/// Whether a keep-out or the like, given for `choice`, stands on side `name`.
bool stands_on(SideChoice choice, SideName name);

/// The girths on a side's drill line of a stretch given by girth or by x.
///
/// @param where  address of the stretch, for errors: "keepout[2]"
/// @param what   what it is, for errors: "keep-out fuel fill"
/// @errors  a stretch that does not lie on the side
Result<std::pair<Length, Length>> stretch_on(const PerimeterSide& side,
                                             const Stretch& stretch,
                                             const std::string& where,
                                             const std::string& what);

/// The girth on a side's drill line of a place given by girth or by x.
Result<Length> place_on(const PerimeterSide& side,
                        const FixedPlace& place,
                        const std::string& where);

}  // namespace sheerlap
