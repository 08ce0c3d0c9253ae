#include "joint/fit_reasons.h"

#include <fmt/format.h>

#include <string>
#include <utility>

#include "joint/reasons/working.h"
#include "joint/way_down.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

Place place_at(const Perimeter& perimeter, SideName side, Length girth) {
  return perimeter.side(side)->sheer.place_at(girth);
}

/// The faces that a gap is between.
struct Faces {
  const Perimeter& perimeter;
  HullFrom hull;
};

/// Where the offsets of the hull are from.
Origin hull_origin(HullFrom hull, const Origin& rows) {
  return hull == HullFrom::Drawing
             ? rows
             : Origin::of_joint(
                   "the drawing's offset, moved to where the gap was read, linear "
                   "along the girth between rows and readings");
}

/// Where a gap is, and the offsets of the faces there.
void place_given(WrittenWorking& work, const Faces& faces, const GapAt& at) {
  const Perimeter& perimeter = faces.perimeter;
  const Place place = place_at(perimeter, at.side, at.girth);
  const double lap_mm = perimeter.hull->lap_mm(place);
  const Origin here = Origin::of_joint("where the gap is found");
  const Origin rows = Origin::of_joint(
      "the sheer table's offset, or [lap]'s, linear along the girth between rows");
  work.given({"s", "girth on the sheer from the start of the side", "mm"},
             at.girth.in_mm(), here);
  const Term d =
      work.given({"d", "depth below the sheer", "mm"}, at.depth.in_mm(), here);
  const Term lap = work.given({"lap", "depth of the lap here", "mm"}, lap_mm, rows);
  const Origin hull_rows = hull_origin(faces.hull, rows);
  const auto offset_at = [&](const RuledFace& face, double depth_mm) {
    return face.offset(place, depth_mm).offset;
  };
  const Term hull_top = work.given({"h_top", "hull face, offset at the sheer", "mm"},
                                   offset_at(*perimeter.hull, 0), hull_rows);
  const Term hull_low =
      work.given({"h_low", "hull face, offset at the foot of the lap", "mm"},
                 offset_at(*perimeter.hull, lap_mm), hull_rows);
  const Term lip_top = work.given({"l_top", "lip face, offset at the sheer", "mm"},
                                  offset_at(*perimeter.lip, 0), rows);
  const Term lip_low =
      work.given({"l_low", "lip face, offset at the foot of the lap", "mm"},
                 offset_at(*perimeter.lip, lap_mm), rows);
  work.figure({"g_level", "lip face from hull face, level, square to the sheer in plan",
               "mm", "derived: faces straight from the top to the low offset",
               "level and at one depth; the gap is square to the hull face and so no "
               "longer for parallel faces"},
              lip_top + (lip_low - lip_top) * d / lap -
                  (hull_top + (hull_low - hull_top) * d / lap));
}

std::string at_words(const GapAt& at) {
  return fmt::format("{}, girth {} along the sheer, depth {}", side_word(at.side),
                     worded(at.girth), worded(at.depth));
}

Explanation extreme(const Faces& faces,
                    const FoundWords& words,
                    const GapAt& at,
                    const std::string& figure) {
  WrittenWorking work;
  place_given(work, faces, at);
  work.found(words, at.gap.in_mm());
  return {figure,
          fmt::format("{}: {}", words.figure.what, at_words(at)),
          work.release(),
          {{figure, std::string(words.figure.letters)},
           {figure + "_at.girth", "s"},
           {figure + "_at.depth", "d"}}};
}

/// The run that ends where its verdict changes, and how its figures are found.
void add_run(Explanations& reasons, const Faces& faces, const Fit& fit) {
  if (fit.runs.empty()) return;
  const FitRun& run = fit.runs.front();
  WrittenWorking worst, end;
  place_given(worst, faces, run.worst);
  worst.found(run_worst_words, run.worst.gap.in_mm());
  reasons.push_back(
      {"fit.runs.0.worst",
       "what a run of one verdict is judged by, here " + at_words(run.worst),
       worst.release(),
       {{"fit.runs.*.worst", "g_run"},
        {"fit.runs.*.worst_at.girth", "s"},
        {"fit.runs.*.worst_at.depth", "d"}}});
  end.found(run_end_words, run.to.in_mm());
  reasons.push_back({"fit.runs.0.to",
                     "where a run of one verdict begins and ends",
                     end.release(),
                     {{"fit.runs.*.from", "s_to"}, {"fit.runs.*.to", "s_to"}}});
}

void add_station(Explanations& reasons, const Faces& faces, const Fit& fit) {
  if (fit.stations.empty()) return;
  const FitStation& station = fit.stations.front();
  const GapAt top{station.gaps.front(), station.side, station.girth, Length()};
  WrittenWorking gap, girth;
  place_given(gap, faces, top);
  gap.found(station_gap_words, top.gap.in_mm());
  reasons.push_back({"fit.stations.0.gaps.0",
                     "gap at a row of the sheer table, here " + at_words(top),
                     gap.release(),
                     {{"fit.stations.*.gaps.*", "g"}}});
  girth.found(sheer_girth_words, station.girth.in_mm());
  reasons.push_back({"fit.stations.0.girth",
                     "girth of a row on the sheer",
                     girth.release(),
                     {{"fit.stations.*.girth", "s_row"}}});
}

Explanation entry_reason(const Perimeter& perimeter, const Entry& entry) {
  const Place place = place_at(perimeter, entry.side, entry.girth);
  const Origin here = Origin::of_joint("where the clearance is least");
  WrittenWorking work;
  work.given({"s", "girth on the sheer from the start of the side", "mm"},
             entry.girth.in_mm(), here);
  const double lap_mm = perimeter.lip->lap_mm(place);
  work.given({"lap", "height of the lid there above its seat: the lap", "mm"}, lap_mm,
             here);
  way_clear(work, perimeter.lip->offset(place, lap_mm).offset,
            perimeter.hull->offset(place, 0).offset);
  return {"entry.worst",
          fmt::format("the lid on its way down, tightest on {} at girth {} along the "
                      "sheer",
                      side_word(entry.side), worded(entry.girth)),
          work.release(),
          {{"entry.worst", "c_entry"}, {"entry.height", "lap"}, {"entry.girth", "s"}}};
}

}  // namespace

Explanations fit_reasons(const Perimeter& perimeter, const Fit& fit, HullFrom hull) {
  const Faces faces{perimeter, hull};
  Explanations reasons{extreme(faces, least_gap_words, fit.least, "fit.gap_min"),
                       extreme(faces, greatest_gap_words, fit.greatest, "fit.gap_max")};
  WrittenWorking mean;
  mean_gap(mean, fit.mean_parts);
  reasons.push_back({"fit.gap_mean",
                     "mean gap over the bond band",
                     mean.release(),
                     {{"fit.gap_mean", "g_mean"}}});
  add_run(reasons, faces, fit);
  add_station(reasons, faces, fit);
  reasons.push_back(entry_reason(perimeter, fit.entry));
  return reasons;
}

}  // namespace sheerlap
