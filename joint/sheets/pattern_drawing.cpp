#include "joint/sheets/pattern_drawing.h"

#include <fmt/format.h>

#include <algorithm>
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/linestring.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <limits>
#include <utility>

#include "joint/documents/check_text.h"
#include "joint/documents/printable.h"
#include "joint/documents/wording.h"
#include "joint/flat_pattern.h"
#include "joint/sheets/short_text.h"

namespace sheerlap {
namespace {

constexpr double sheet_margin_mm = 20;
constexpr double caption_height_mm = 6;
constexpr double mark_height_mm = 4;
constexpr double title_height_mm = 5;
constexpr std::size_t title_letters = 60;  ///< of the user's own, before it is cut
constexpr double gap_mm = 12;              ///< between what stands above and below

/// Upper-case words for a side: what is engraved must not be taken for another's.
std::string side_caption(SideName side) {
  return side == SideName::Starboard ? "STARBOARD"
         : side == SideName::Port    ? "PORT"
                                     : "TRANSOM";
}

/// What a line of lettering is wide at the most.
/// @source  derived: in the wider of common sans-serif faces a letter takes 0.6 of its
///          size and a capital is 0.72 high; stroke letters of a drawing program take
///          as much as they are high
double lettering_mm(const std::string& words, double height_mm) {
  return height_mm * static_cast<double>(words.size());
}

struct Extent {
  Point2 low{std::numeric_limits<double>::infinity(),
             std::numeric_limits<double>::infinity()};
  Point2 high{-std::numeric_limits<double>::infinity(),
              -std::numeric_limits<double>::infinity()};

  void take(const std::vector<Point2>& points) {
    for (const Point2& point : points) {
      low = low.cwiseMin(point);
      high = high.cwiseMax(point);
    }
  }
};

/// The middle of the widest space between neighbouring holes, and its width.
std::pair<Point2, double> widest_space(const FlatPattern& pattern) {
  std::pair<Point2, double> widest{pattern.holes.front().at, 0};
  for (std::size_t i = 1; i < pattern.holes.size(); ++i) {
    const Point2& from = pattern.holes[i - 1].at;
    const Point2& to = pattern.holes[i].at;
    if ((to - from).norm() > widest.second)
      widest = {(from + to) / 2, (to - from).norm()};
  }
  return widest;
}

/// One jig's pattern on its way onto the drawing.
class Placer {
 public:
  Placer(const Job& job, const JigPiece& piece, const NumberStyle& numbers)
      : job_(job), piece_(piece), numbers_(numbers) {
    const JigSegment& jig = piece.segment;
    const auto& stations = job.schedule->stations;
    pattern_ = flat_pattern(
        job.perimeter, stations,
        jig_stretch(job.perimeter, stations, jig.first, jig.last, job.joint.jig),
        job.joint.jig);
    extent_.take(pattern_.top);
    extent_.take(pattern_.low);
    caption_ = caption();
  }

  double width_mm() const {
    return std::max(extent_.high.x() - extent_.low.x(),
                    lettering_mm(caption_, mark_height_mm));
  }
  double height_mm() const {
    return extent_.high.y() - extent_.low.y() + 2 * caption_height_mm + gap_mm;
  }
  /// Adds the pattern with its top left corner at a point.
  void place(PatternDrawing& drawing, Point2 corner) const;

 private:
  void add_shape(PatternDrawing& drawing, const Vector2& shift) const;
  void add_holes(PatternDrawing& drawing, const Vector2& shift) const;
  void add_engraving(PatternDrawing& drawing, const Vector2& shift) const;
  void add_arrow(PatternDrawing& drawing, Point2 middle, double length) const;
  std::string caption() const;

  const Job& job_;
  const JigPiece& piece_;
  const NumberStyle& numbers_;
  FlatPattern pattern_;
  Extent extent_;
  std::string caption_;
};

/// The line moved, without the points that a straight line passes within a fiftieth of
/// what a cutter holds.
std::vector<Point2> shifted(const std::vector<Point2>& points, const Vector2& shift) {
  namespace bg = boost::geometry;
  using Line = bg::model::linestring<bg::model::d2::point_xy<double>>;
  constexpr double within_mm = 0.002;
  Line line, thinned;
  for (const Point2& point : points)
    bg::append(line, Line::value_type(point.x() + shift.x(), point.y() + shift.y()));
  bg::simplify(line, thinned, within_mm);
  std::vector<Point2> moved;
  for (const auto& point : thinned) moved.emplace_back(point.x(), point.y());
  return moved;
}

void Placer::add_shape(PatternDrawing& drawing, const Vector2& shift) const {
  std::vector<Point2> outline = shifted(pattern_.top, shift);
  const std::vector<Point2> low = shifted(pattern_.low, shift);
  outline.insert(outline.end(), low.rbegin(), low.rend());
  drawing.lines.push_back({PatternLayer::Outline, std::move(outline), true});
  drawing.lines.push_back(
      {PatternLayer::DrillLine, shifted(pattern_.drill_line, shift), false});
}

/// Where no hole may be: a cross for the eye, nothing to cut.
void add_cross(PatternDrawing& drawing, Point2 at, double reach) {
  for (const Vector2& arm : {Vector2(reach, reach), Vector2(reach, -reach)})
    drawing.lines.push_back({PatternLayer::Text, {at - arm, at + arm}});
}

void Placer::add_holes(PatternDrawing& drawing, const Vector2& shift) const {
  const FastenerSpec& spec = job_.schedule->fastener;
  const Length pilot = spec.hull_pilot.value_or(spec.lip_hole);
  const bool plate = job_.joint.jig.plate > Length();
  const double radius = (plate ? job_.joint.jig.bush : pilot).in_mm() / 2;
  for (const FlatHole& hole : pattern_.holes) {
    const Point2 at = hole.at + shift;
    const DrillStation& station = job_.schedule->stations[hole.station];
    if (drillable(station))
      drawing.circles.push_back({PatternLayer::Holes, at, radius});
    else
      add_cross(drawing, at, radius);
    drawing.texts.push_back(
        {PatternLayer::Text, at - Vector2(0, radius + 2 + mark_height_mm),
         mark_height_mm,
         drillable(station) ? station.mark : station.mark + " NO HOLE"});
  }
}

void Placer::add_arrow(PatternDrawing& drawing, Point2 middle, double length) const {
  const double way = pattern_.runs_left() ? 1 : -1;  // to where the girths start
  const Vector2 along(way, 0);
  const Vector2 up(0, 1);
  const Point2 tip = middle + length / 2 * along;
  drawing.lines.push_back({PatternLayer::Text, {middle - length / 2 * along, tip}});
  drawing.lines.push_back(
      {PatternLayer::Text, {tip - 4 * along + 2 * up, tip, tip - 4 * along - 2 * up}});
}

/// What a jig is stamped with, in its widest space.
void Placer::add_engraving(PatternDrawing& drawing, const Vector2& shift) const {
  const auto [middle, space] = widest_space(pattern_);
  const double free = space - 2 * job_.joint.jig.bush.in_mm();
  const bool transom = pattern_.side == SideName::Transom;
  const std::string name = piece_.segment.name + " " + side_caption(pattern_.side);
  const std::string way = transom ? "TO STARBOARD" : "TO BOW";
  // a letter is about as wide as three quarters of its height
  const double height =
      std::clamp(free / (0.75 * static_cast<double>(name.size())), 2.5, 5.0);
  const Point2 at = middle + shift;
  const auto add = [&](double up, const std::string& words) {
    drawing.texts.push_back({PatternLayer::Text, at + Vector2(0, up), height, words});
  };
  add(height * 0.7, name);
  add(-height * 1.7, way);
  add_arrow(drawing, at - Vector2(0, height * 2.5), std::max(free * 0.8, 12.0));
}

std::string Placer::caption() const {
  const bool outside = pattern_.seen_from == PlateSide::Outer;
  return fmt::format(
      "{} {}: {}; {}; {}; upper edge: the sheer; lower edge sits on the lip's low edge",
      piece_.segment.name, side_caption(pattern_.side),
      counted(piece_.holes.size(), "hole"),
      outside ? "marked and seen from OUTSIDE"
              : "MIRRORED: marked and seen from the LIP'S SIDE",
      job_.joint.jig.plate > Length()
          ? fmt::format(
                "plate {}, flat {} from first hole to last",
                numbers_.size_with_unit(job_.joint.jig.plate),
                numbers_.span(pattern_.holes.back().flat) + " " + numbers_.unit_name())
          : "strip of no thickness");
}

void Placer::place(PatternDrawing& drawing, Point2 corner) const {
  const Vector2 shift(corner.x() - extent_.low.x(), corner.y() - extent_.high.y());
  add_shape(drawing, shift);
  add_holes(drawing, shift);
  add_engraving(drawing, shift);
  const double foot = extent_.low.y() + shift.y() - 2 * caption_height_mm;
  drawing.texts.push_back({PatternLayer::Text,
                           {corner.x() + width_mm() / 2, foot},
                           mark_height_mm,
                           caption_});
}

}  // namespace

std::string layer_name(PatternLayer layer) {
  switch (layer) {
    case PatternLayer::Outline:
      return "outline";
    case PatternLayer::Holes:
      return "holes";
    case PatternLayer::DrillLine:
      return "drill-line";
    case PatternLayer::Text:
      break;
  }
  return "text";
}

PatternDrawing pattern_drawing(const Job& job, const SheetStyle& style) {
  const NumberStyle numbers(style.report.unit, job.joint.layout.round_to);
  PatternDrawing drawing;
  drawing.title = printable(job.joint.title);
  const std::string heading =
      short_text(job.joint.title, title_letters) +
      ": flat patterns of the jigs, full size, drawn in mm; " +
      (style.report.unit == LengthUnit::Inches ? "words in inches; " : "") +
      verdict_line(job.checks);
  std::vector<Placer> placers;
  for (const JigPiece& piece : job.schedule->jig_pieces)
    placers.emplace_back(job, piece, numbers);
  double width = lettering_mm(heading, title_height_mm), height = 0;
  for (const Placer& placer : placers) {
    width = std::max(width, placer.width_mm());
    height += placer.height_mm();
  }
  drawing.width_mm = width + 2 * sheet_margin_mm;
  drawing.height_mm = height + 2 * sheet_margin_mm + gap_mm;
  double top = drawing.height_mm - sheet_margin_mm;
  drawing.texts.push_back(
      {PatternLayer::Text, {drawing.width_mm / 2, top}, title_height_mm, heading});
  top -= gap_mm;
  for (const Placer& placer : placers) {
    placer.place(drawing, {sheet_margin_mm, top});
    top -= placer.height_mm();
  }
  return drawing;
}

}  // namespace sheerlap
