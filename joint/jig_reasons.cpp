#include "joint/jig_reasons.h"

#include <utility>

#include "joint/drill_workings.h"
#include "joint/jig_workings.h"
#include "joint/reasons/found.h"

namespace sheerlap {
namespace {

/// The last hole of a piece: the one furthest from its first.
void add_hole(Explanations& reasons,
              const Joint& joint,
              const Schedule& schedule,
              const JigPiece& piece) {
  const JigHole& hole = piece.holes.back();
  const DrillStation& station = schedule.stations[hole.station];
  const std::string at = "jigs." + piece.segment.name + ".hole_list." + station.mark;
  const std::string any = "jigs.*.hole_list.*.";
  const auto add = [&](const FoundWords& words, double value, const std::string& key) {
    reasons.push_back(found_reason(words, value, at + "." + key, {any + key}));
  };
  reasons.push_back(found_reason(straight_words, hole.straight.in_mm(),
                                 at + ".straight", {any + "straight", "jigs.*.chord"}));
  add(along_chord_words, hole.along_chord.in_mm(), "along_chord");
  add(off_chord_words, hole.off_chord.in_mm(), "off_chord");
  add(lean_up_words, hole.lean.up.in_degrees(), "lean_up");
  add(lean_along_words, hole.lean.along.in_degrees(), "lean_along");
  WrittenWorking edge;
  above_low_edge(edge, station.edge_low, joint.lip.trim);
  reasons.push_back({at + ".above_edge",
                     "from a hole of the jig to the lip's low edge",
                     edge.release(),
                     {{any + "above_edge", "e_drawn"}}});
}

}  // namespace

Explanations jig_reasons(const Joint& joint, const Schedule& schedule) {
  Explanations reasons;
  if (schedule.jig_pieces.empty()) return reasons;
  const JigPiece& piece = schedule.jig_pieces.front();
  const JigSegment& jig = piece.segment;
  const DrillStation& first = schedule.stations[jig.first];
  const DrillStation& last = schedule.stations[jig.last];
  const std::string at = "jigs." + jig.name;
  reasons.push_back(found_reason(piece_holes_words,
                                 static_cast<double>(piece.holes.size()), at + ".holes",
                                 {"jigs.*.holes", "jigs.*.bushes.*.count"}));
  WrittenWorking girth, length;
  girth_between(girth, first.girth, last.girth);
  reasons.push_back({at + ".girth",
                     "girth of a piece from its first hole to its last",
                     girth.release(),
                     {{"jigs.*.girth", "p"},
                      {"jigs.*.hole_list.*.girth", "p"},
                      {"schedule.*.jig_girth", "p"}}});
  length_of_piece(length, last.girth - first.girth, joint.jig.bush);
  reasons.push_back(
      {at + ".piece",
       "length of a piece of the jig",
       length.release(),
       {{"jigs.*.piece", "L_piece"}, {"jigs.*.bushes.*.outer", "d_bush"}}});
  reasons.push_back(found_reason(middle_off_words, piece.middle_off_chord.in_mm(),
                                 at + ".middle_off_chord",
                                 {"jigs.*.middle_off_chord"}));
  add_hole(reasons, joint, schedule, piece);
  return reasons;
}

Explanations check_line_reasons(const Schedule& schedule) {
  if (schedule.check_lines.empty()) return {};
  return {found_reason(check_line_words, schedule.check_lines.front().value.in_mm(),
                       "schedule_checks.0.value", {"schedule_checks.*.value"})};
}

}  // namespace sheerlap
