#include "joint/sheets/strip_content.h"

#include <fmt/format.h>

#include <algorithm>
#include <limits>

#include "joint/sheets/joint_page_drawing.h"
#include "joint/side_ends.h"

namespace sheerlap {
namespace {

/// Parts of a keep-out nearer to each other are drawn as one.
constexpr Length apart = Length::mm(1);

/// What an end of a stretch is that is not an end of the side.
std::string inner_end(const PerimeterSide& side, Length girth) {
  for (const OpeningSpan& opening : side.openings)
    if (girth == opening.from || girth == opening.to) return "opening: " + opening.what;
  return "corner of " + side_word(side.name);
}

std::vector<StripHole> holes_of(const Job& job,
                                const FlatPattern& pattern,
                                const FastenerSpec& spec) {
  std::vector<StripHole> holes;
  for (const FlatHole& flat : pattern.holes) {
    const DrillStation& station = job.schedule->stations[flat.station];
    holes.push_back({station.mark, station.girth, flat.at,
                     spec.hull_pilot.value_or(spec.lip_hole), drillable(station),
                     Length::mm(std::numeric_limits<double>::infinity())});
  }
  for (std::size_t i = 1; i < holes.size(); ++i) {
    const Length space = holes[i].girth - holes[i - 1].girth;
    holes[i].room = space;
    holes[i - 1].room = std::min(holes[i - 1].room, space);
  }
  return holes;
}

std::vector<StripBand> bands_of(const Job& job, const PerimeterSide& side) {
  std::vector<StripBand> bands;
  for (const Obstacle& obstacle : joined_keepouts(job, side, apart))
    bands.push_back({StripBand::Kind::KeepOut, obstacle.from, obstacle.to,
                     obstacle.what, obstacle.clear});
  for (const LayoutSide& laid : job.layout->sides)
    if (laid.name == side.name)
      for (const Bridge& bridge : laid.bridged)
        bands.push_back({StripBand::Kind::Bridge,
                         bridge.from,
                         bridge.to,
                         bridge.what,
                         {},
                         bridge.pitch,
                         bridge.limit});
  return bands;
}

StripStretch content_of(const Job& job,
                        const PerimeterSide& side,
                        const FlatStretch& stretch) {
  // the strip is paper laid on the lip: of no thickness, seen from outside
  JigRules paper = job.joint.jig;
  paper.plate = {};
  paper.marks = PlateSide::Outer;
  const FlatPattern pattern =
      flat_pattern(job.perimeter, job.schedule->stations, stretch, paper);
  StripStretch made{side.name,
                    StripLine(pattern, stretch),
                    holes_of(job, pattern, job.schedule->fastener),
                    {},
                    inner_end(side, stretch.from),
                    inner_end(side, stretch.to),
                    pattern.distortion};
  for (const StripBand& band : bands_of(job, side)) {
    StripBand cut = band;
    cut.from = std::max(band.from, stretch.from);
    cut.to = std::min(band.to, stretch.to);
    if (cut.to > cut.from) made.bands.push_back(cut);
  }
  if (stretch.from == Length()) made.start = "ZERO: " + start_word(side);
  if (stretch.to == side.drill_line_length) made.end = "END: " + end_word(side);
  return made;
}

}  // namespace

std::vector<Length> StripStretch::girths() const {
  std::vector<Length> all;
  for (const StripHole& hole : holes) all.push_back(hole.girth);
  return all;
}

std::vector<StripStretch> strip_content(const Job& job, SideName name) {
  const PerimeterSide& side = *job.perimeter.side(name);
  std::vector<StripStretch> content;
  for (const FlatStretch& stretch : strip_stretches(side, job.schedule->stations))
    content.push_back(content_of(job, side, stretch));
  for (std::size_t i = 0; i < content.size(); ++i) {
    content[i].number = i + 1;
    content[i].of = content.size();
  }
  return content;
}

bool has_strip(const Job& job, SideName side) {
  return job.layout && job.schedule && job.perimeter.side(side) != nullptr &&
         std::any_of(job.schedule->stations.begin(), job.schedule->stations.end(),
                     [&](const DrillStation& station) { return station.side == side; });
}

}  // namespace sheerlap
