#include "joint/documents/jig_json.h"

#include <string>
#include <vector>

#include "joint/jig_bushes.h"

namespace sheerlap {
namespace {

Json holes_json(const Schedule& schedule, const JigPiece& piece) {
  Json list = Json::array();
  for (const JigHole& hole : piece.holes)
    list.push_back({{"mark", schedule.stations[hole.station].mark},
                    {"girth", number(hole.run)},
                    {"straight", number(hole.straight)},
                    {"along_chord", number(hole.along_chord)},
                    {"off_chord", number(hole.off_chord)},
                    {"above_edge", number(hole.above_edge)},
                    {"lean_up", number(hole.lean.up.in_degrees())},
                    {"lean_along", number(hole.lean.along.in_degrees())}});
  return list;
}

Json bushes_json(const Schedule& schedule,
                 const JigPiece& piece,
                 const JigRules& rules) {
  Json list = Json::array();
  for (const JigBush& bush : jig_bushes(piece, schedule.stations, schedule.fastener, rules))
    list.push_back({{"for", bush.what},
                    {"bore", number(bush.bore)},
                    {"outer", number(bush.outer)},
                    {"count", bush.count}});
  return list;
}

Json errors_json(const std::vector<HoleError>& errors) {
  Json list = Json::array();
  for (const HoleError& error : errors)
    list.push_back(
        {{"what", error.what}, {"off", number(error.off)}, {"source", error.source}});
  return list;
}

Json apart_json(const ApartHoles& apart) {
  return {{"along", errors_json(apart.along)},
          {"across", errors_json(apart.across)},
          {"leaning", errors_json(apart.leaning)},
          {"off_worst", number(apart.off_worst)},
          {"off_root_sum", number(apart.off_root_sum)},
          {"hole_worst", number(apart.hole_worst)},
          {"hole_root_sum", number(apart.hole_root_sum)}};
}

}  // namespace

Json jigs_json(const Schedule& schedule, const JigRules& rules) {
  Json list = Json::array();
  for (const JigPiece& piece : schedule.jig_pieces) {
    const JigSegment& jig = piece.segment;
    const DrillStation& first = schedule.stations[jig.first];
    const DrillStation& last = schedule.stations[jig.last];
    list.push_back({{"name", jig.name},
                    {"side", side_word(jig.side)},
                    {"first", first.mark},
                    {"last", last.mark},
                    {"holes", jig.last - jig.first + 1},
                    {"girth", number(last.girth - first.girth)},
                    {"from_start", number(first.girth)},
                    {"index", first.next_jig == jig.name ? first.mark : ""},
                    {"piece", number(piece_length(last.girth - first.girth, rules))},
                    {"chord", number(piece.chord)},
                    {"middle_off_chord", number(piece.middle_off_chord)},
                    {"hole_list", holes_json(schedule, piece)},
                    {"bushes", bushes_json(schedule, piece, rules)}});
  }
  return list;
}

Json setting_out_json(const Schedule& schedule) {
  const SettingOut& errors = schedule.setting_out;
  Json runs = Json::array();
  for (const SteppedRun& run : errors.runs)
    runs.push_back({{"side", side_word(run.side)},
                    {"from", number(run.run.from)},
                    {"to", number(run.run.to)},
                    {"spaces", run.run.spaces},
                    {"pitch", number(run.run.pitch)},
                    {"stepped", number(run.stepped)},
                    {"rounded", number(run.rounded)}});
  return {{"running", number(errors.running)},
          {"thickest", errors.thickest},
          {"leaning_exit", number(errors.leaning_exit)},
          {"runs", std::move(runs)},
          {"apart", apart_json(errors.apart)}};
}

}  // namespace sheerlap
