#pragma once

#include "joint/jigs.h"
#include "joint/reasons/working.h"

namespace sheerlap {

inline constexpr std::string_view jig_validity =
    "the drill line as drawn; a jig cut to these";

/// How the figures of a jig's pieces are found.
inline constexpr FoundWords piece_holes_words{
    {"n", "holes of the piece", "1",
     "derived: fewest pieces, then the longest shortest",
     "no piece passes a corner, an opening or a tight bend"},
    "each piece taken as long as it may be, then all as short as the fewest allow",
    "exact; the longest within 0.1 mm"};
inline constexpr FoundWords middle_off_words{
    {"h_mid", "drill line off the chord, over its middle", "mm",
     "derived: in the plane square to the chord at its middle", jig_validity},
    "the distance from the chord's middle to where the line passes that plane, its "
    "girth by "
    "bracketing",
    "1e-9 mm"};
inline constexpr FoundWords along_chord_words{
    {"c_along", "from the first hole, square down onto the chord", "mm",
     "derived: the hole's way from the first hole, along the chord", jig_validity},
    "the scalar product with the chord's direction",
    "1e-9 mm"};
inline constexpr FoundWords off_chord_words{
    {"c_off", "from the hole straight to the chord", "mm",
     "derived: what is left of its way from the first hole, square to the chord",
     jig_validity},
    "the length of that part",
    "1e-9 mm"};
inline constexpr FoundWords lean_up_words{
    {"lean_up", "lean of the bush's outer end to the plate's upper edge", "degrees",
     "derived: the bit's axis against the plate's square",
     "a flat plate through the first and last hole, as square as can be to the bits"},
    "the angle of the axis to the plate's square, up",
    "1e-9 degrees"};
inline constexpr FoundWords lean_along_words{
    {"lean_along", "lean of the bush's outer end away from the first hole", "degrees",
     "derived: the bit's axis against the plate's square",
     "a flat plate through the first and last hole, as square as can be to the bits"},
    "the angle of the axis to the plate's square, along the chord",
    "1e-9 degrees"};
inline constexpr FoundWords straight_words{
    {"c", "straight from the piece's first hole", "mm",
     "derived: distance of two points", jig_validity},
    "the distance of the points at which the bits enter",
    "1e-9 mm"};
inline constexpr FoundWords check_line_words{
    {"L_check", "dimension to check the setting-out by", "mm",
     "derived: a girth of the drill line, or a straight distance of its points",
     "each says which under `measured`"},
    "girths as the layout has them; straight ones from the points, the greatest offset "
    "by Brent's method",
    "1e-9 mm"};

/// The length of a piece, mm.
template <class Working>
auto length_of_piece(Working& work, Length run, Length bush) {
  const auto s = work.given({"s_run", "girth from its first hole to its last", "mm"},
                            run.in_mm(), Origin::of_joint("jigs: `girth`"));
  const auto d = work.given({"d_bush", "outer diameter of a bush", "mm"}, bush.in_mm(),
                            Origin::of_file("jig.bush"));
  return work.figure({"L_piece", "length of the piece", "mm",
                      "common practice, no source: a bush of material at each end",
                      "girth along the drill line"},
                     s + d + d);
}

/// The least distance of a hole to the lip's low edge as drawn, mm.
template <class Working>
auto above_low_edge(Working& work, Length edge_low, Length trim) {
  const auto e = work.given({"e_low", "to the edge at its worst trim", "mm"},
                            edge_low.in_mm(), Origin::of_joint("schedule: `edge_low`"));
  const auto t = work.given({"trim", "tolerance of the trimmed edge", "mm"},
                            trim.in_mm(), Origin::of_file("lip.trim"));
  return work.figure({"e_drawn", "from the hole to the lip's low edge as drawn", "mm",
                      "derived: the trim's tolerance put back", jig_validity},
                     e + t);
}

}  // namespace sheerlap
