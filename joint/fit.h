#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "geometry/quantity.h"
#include "geometry/result.h"
#include "joint/check.h"
#include "joint/joint.h"
#include "joint/mean_gap.h"
#include "joint/perimeter.h"

namespace sheerlap {

inline constexpr std::string_view gap_source =
    "derived: along the hull face's outward normal to the lip face, by Newton's method";
inline constexpr std::string_view gap_validity =
    "faces as drawn: no tolerance, no sag and no lid held off its seat; below 0 they "
    "interfere";

/// How the figures of a fit are found.
inline constexpr FoundWords least_gap_words{
    {"g_min", "least gap between the faces", "mm", gap_source, gap_validity},
    "the least of the gaps at every row, every 10 mm of girth and down the lap, "
    "narrowed "
    "between them by Brent's method",
    "1e-9 mm; a dip shorter than 10 mm of girth may be passed over"};
inline constexpr FoundWords greatest_gap_words{
    {"g_max", "greatest gap between the faces", "mm", gap_source, gap_validity},
    "the greatest of the gaps at every row, every 10 mm of girth and down the lap, "
    "narrowed between them by Brent's method",
    "1e-9 mm; a rise shorter than 10 mm of girth may be passed over"};
inline constexpr FoundWords run_worst_words{
    {"g_run", "gap of the run that lies deepest in its verdict", "mm", gap_source,
     gap_validity},
    "the worst of the run's gaps against the window, narrowed by Brent's method; in a "
    "good run the one nearest to leaving the window",
    "1e-9 mm"};
inline constexpr FoundWords run_end_words{
    {"s_to", "girth on the sheer where the verdict changes or the side ends", "mm",
     "derived: where the least or greatest gap passes 0 or a limit of the window",
     "the window is the adhesive's: gap_min and gap_max"},
    "the girth at which a gap passes a limit, bracketed between two sections",
    "1e-6 mm"};
inline constexpr FoundWords station_gap_words{
    {"g", "gap at the row", "mm", gap_source, gap_validity},
    "the normal of the hull face followed to the lip face, at depth 0, half the lap "
    "and "
    "the lap",
    "1e-9 mm"};

inline constexpr FoundWords sheer_girth_words{
    {"s_row", "girth of a row on the sheer, from the start of its side", "mm",
     "derived: arc length of the curve through the rows", girth_validity},
    "the curve's arc length between rows, span by span, by Gauss quadrature",
    "about 1e-12 of itself for the curve given"};

enum class FitVerdict { Good, Tight, Wide, Interference };

/// A gap and where it is.
struct GapAt {
  Length gap;
  SideName side = SideName::Starboard;
  Length girth;  ///< along the sheer
  Length depth;
};

/// A stretch of one verdict.
struct FitRun {
  SideName side = SideName::Starboard;
  Length from;  ///< girth along the sheer, within 1e-6 mm
  Length to;
  FitVerdict verdict = FitVerdict::Good;
  /// The gap of the run that lies deepest in the verdict; in a good run the one
  /// nearest to leaving the window.
  GapAt worst;
};

/// The gaps at one row of the sheer table.
struct FitStation {
  std::string station;  ///< the row's label
  SideName side = SideName::Starboard;
  Length girth;  ///< along the sheer
  Point3 point;  ///< on the sheer, mm
  Length lap;
  std::vector<Length> gaps;  ///< at depth 0, lap/2 and lap
};

/// The lid on its way straight down: the least clearance, level and square to the sheer
/// in plan, between the lip's low edge and the hull's top edge, which pass each other
/// when the lid is a lap above its seat. Negative: it does not go down by itself.
struct Entry {
  Length worst;
  Length height;  ///< of the lid above its seat there
  SideName side = SideName::Starboard;
  Length girth;  ///< along the sheer
};

/// Where a least or greatest value is to be had, within 1e-6 mm.
struct Reach {
  std::vector<SideName> sides;  ///< in the order of the joint's
  bool all_along = false;       ///< at every girth of these sides, of one depth or any
  bool all_round = false;       ///< the same, and they are all the sides
};

struct Fit {
  Entry entry;
  Reach entry_reach;
  GapAt least;  ///< of places that are alike the first
  Reach least_reach;
  GapAt greatest;
  Reach greatest_reach;
  Length mean;           ///< by area of the hull face over the bond band
  MeanParts mean_parts;  ///< what it is made of
  std::vector<FitRun> runs;
  std::vector<FitStation> stations;
  Checks checks;
};

/// Whether the lid goes over the box, all the way round and down the whole lap.
///
/// The gap is measured from the hull face along its outward normal. Least and
/// greatest gap are those of the faces, refined between the rows.
///
/// @param joint  with its adhesive: the gap window is the adhesive's
/// @errors       a face that the other cannot be measured against
Result<Fit> fit(const Joint& joint, const Perimeter& perimeter);

}  // namespace sheerlap
