#include "joint/sheets/joint_page_holes.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdint>

#include "geometry/clearance.h"
#include "joint/documents/wording.h"
#include "joint/layout_stretches.h"

namespace sheerlap {
namespace {

/// Girths closer than this are of the same hole, mm.
constexpr double same_mm = 1e-6;

bool same(Length a, Length b) { return std::abs((a - b).in_mm()) < same_mm; }

HoleSection section_at(const Perimeter& perimeter,
                       const RuledFace& hull_inner,
                       const DrillStation& station,
                       Place place,
                       double depth_mm) {
  HoleSection section;
  section.lap_mm = perimeter.hull->lap_mm(place);
  const auto face = [&](const RuledFace& from) {
    return std::array{from.offset(place, 0).offset,
                      from.offset(place, section.lap_mm).offset};
  };
  section.hull_inner = face(hull_inner);
  section.hull = face(*perimeter.hull);
  section.lip = face(*perimeter.lip);
  section.lip_outer = face(*perimeter.lip_outer);
  section.entry = {perimeter.lip_outer->offset(place, depth_mm).offset, depth_mm};
  const PlanFrame frame = plan_frame(perimeter.hull->curve().at(place));
  section.bit = {frame.outboard.dot(station.axis.head<2>()), -station.axis.z()};
  return section;
}

/// "3, 12.0 further on": the row nearest along the sheer; by its number if unnamed.
std::string near_row(const Job& job,
                     const PerimeterSide& side,
                     Length sheer_girth,
                     const NumberStyle& style) {
  const Curve& curve = job.perimeter.hull->curve();
  const SidePath& path = side.sheer.path();
  std::optional<Length> nearest;
  std::size_t row = 0;
  for (std::size_t k = 0; k <= path.span_count; ++k) {
    const bool last = k == path.span_count;
    const std::size_t span = path.span(last ? k - 1 : k, curve.spans());
    const std::size_t knot = path.forward == last ? curve.knot_after(span) : span;
    if (job.perimeter.knots[knot].added) continue;
    const Length away = sheer_girth - side.sheer.girth_at_span(k);
    if (nearest && std::abs(away.in_mm()) >= std::abs(nearest->in_mm())) continue;
    nearest = away;
    row = job.perimeter.knots[knot].row;
  }
  if (!nearest) return "";
  const std::string& label = job.joint.sheer.rows[row].station;
  return fmt::format("{} {}{}", label.empty() ? fmt::format("row {}", row + 1) : label,
                     *nearest < Length() ? "" : "+", style.span(*nearest));
}

/// "25.0 before bow cleat": from the hole along the drill line to the keep-out itself.
std::string nearest_keepout(const SideObstacles& named,
                            Length girth,
                            const NumberStyle& style) {
  std::optional<Length> least;
  std::string text;
  for (const Obstacle& obstacle : named.obstacles) {
    const Length before = obstacle.from + obstacle.clear - girth;
    const Length after = girth - (obstacle.to - obstacle.clear);
    const Length away = std::max({before, after, Length()});
    if (least && away >= *least) continue;
    least = away;
    text = fmt::format("{} {} {}", style.span(away),
                       before > after ? "before" : "after", obstacle.what);
  }
  return text;
}

const LayoutSide& layout_side(const Job& job, SideName name) {
  return *std::find_if(job.layout->sides.begin(), job.layout->sides.end(),
                       [&](const LayoutSide& side) { return side.name == name; });
}

/// "2: 14 of 149.4": the number of the run, its spaces and its pitch.
std::string run_words(const LayoutSide& side, Length girth, const NumberStyle& style) {
  std::string text;
  for (std::size_t i = 0; i < side.runs.size(); ++i) {
    const LayoutRun& run = side.runs[i];
    const bool within = (run.from < girth || same(run.from, girth)) &&
                        (girth < run.to || same(girth, run.to));
    if (!within) continue;
    text += fmt::format("{}{}: {} of {}", text.empty() ? "" : "; ", i + 1, run.spaces,
                        style.span(run.pitch));
  }
  return text;
}

void add_note(std::string& note, const std::string& more) {
  note += (note.empty() ? "" : "; ") + more;
}

void add_notes(PageHole& hole, const LayoutSide& side, const NumberStyle& style) {
  const DrillStation& station = *hole.station;
  if (!drillable(station))
    add_note(hole.note, misses_hull(station) ? "DO NOT DRILL: the bit misses the hull"
                                             : "DO NOT DRILL: no fastener serves");
  for (const Bridge& bridge : side.bridged) {
    const bool before = same(bridge.to, station.girth);
    if (!before && !same(bridge.from, station.girth)) continue;
    hole.bridged = true;
    add_note(hole.note,
             fmt::format("space {} it bridged, {} against {}: {}",
                         before ? "before" : "after", style.span(bridge.pitch),
                         style.span(bridge.limit), style.sentence(bridge.what)));
  }
  if (!station.next_jig.empty())
    add_note(hole.note, fmt::format("index hole: pins {}", station.next_jig));
}

PageHole page_hole(const Job& job,
                   const DrillStation& station,
                   const SideObstacles& named,
                   const RuledFace& hull_inner,
                   const NumberStyle& style) {
  const Perimeter& perimeter = job.perimeter;
  PageHole hole;
  hole.station = &station;
  hole.side = perimeter.side(station.side);
  const Place place = hole.side->drill_line.place_at(station.girth);
  hole.sheer_girth =
      std::clamp(hole.side->sheer.girth_at(place), Length(), hole.side->sheer_length);
  const LayoutSide& side = layout_side(job, station.side);
  hole.near_row = near_row(job, *hole.side, hole.sheer_girth, style);
  hole.run = run_words(side, station.girth, style);
  hole.keepout = nearest_keepout(named, station.girth, style);
  hole.section = section_at(perimeter, hull_inner, station, place,
                            hole.side->drill_line.line().depth_mm());
  for (std::size_t i = 0; i < hole.gaps.size(); ++i) {
    const double depth = hole.section.lap_mm * static_cast<double>(i) / 2;
    const auto gap = gap_mm(*perimeter.hull, *perimeter.lip, place, depth);
    if (gap) hole.gaps[i] = Length::mm(*gap);
  }
  add_notes(hole, side, style);
  return hole;
}

}  // namespace

std::vector<PageHole> page_holes(const Job& job, const NumberStyle& style) {
  const RuledFace hull_inner =
      job.perimeter.hull->thickened(-job.joint.hull.thickness.in_mm());
  std::vector<PageHole> holes;
  for (const PerimeterSide& side : job.perimeter.sides) {
    // the layout was made of the same ground: it cannot fail here
    const auto ground = layout_ground(job.joint, job.perimeter, side);
    for (const DrillStation& station : job.schedule->stations)
      if (station.side == side.name)
        holes.push_back(page_hole(job, station, ground->named, hull_inner, style));
  }
  return holes;
}

std::string layout_fingerprint(const Schedule& schedule) {
  const NumberStyle metric(LengthUnit::Millimetres, Length::mm(1));
  std::string text;
  for (const DrillStation& station : schedule.stations) {
    text += station.mark + " " + metric.full(station.girth);
    for (const double coordinate :
         {station.point.x(), station.point.y(), station.point.z()})
      text += " " + metric.full(Length::mm(coordinate));
    text += " " + metric.full(station.lip_hole) + " " +
            (station.hull_pilot ? metric.full(*station.hull_pilot) : "-") + "\n";
  }
  std::uint64_t hash = 0xcbf29ce484222325U;
  for (const char letter : text) {
    hash ^= static_cast<unsigned char>(letter);
    hash *= 0x100000001b3U;
  }
  return fmt::format("{:016x}", hash);
}

}  // namespace sheerlap
