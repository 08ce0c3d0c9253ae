#include "joint/sheets/drawing_plan.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "joint/sheets/plan_line.h"
#include "joint/sheets/section_places.h"

namespace sheerlap {
namespace {

// beside the sheer, on paper: outboard, and inboard below 0
constexpr double fit_line_mm = 2.2;
constexpr double keep_out_mm = 3;
constexpr double hole_radius_mm = 0.5;
/// From a hole to where a line to its mark starts.
constexpr double beside_hole_mm = 0.8;
/// Of the line of a section, inboard and outboard of the sheer.
constexpr double cut_mm = 4.5;
constexpr double cut_out_mm = 1.8;
const LabelSpots mark_spots{{3.6, 6.2, 8.8}};
const LabelSpots word_spots{{1.2, 3.8, 6.4, 9}, {0, 30, -30, 60, -60}};
/// The same words closer than this are written once, mm.
constexpr double same_words_mm = 25;

/// Draws the plan of one joint on a sheet.
class Plan {
 public:
  Plan(DrawnSheet& sheet, const View& view) : sheet_(sheet), view_(view) {}

  void draw_lines(const PerimeterSide& side) {
    stroke(side.sheer, Length(), side.sheer_length, {line_width::medium, Dash::Solid});
    stroke(side.drill_line, Length(), side.drill_line_length,
           {line_width::thin, Dash::Chain});
    for (const OpeningSpan& opening : side.openings) draw_opening(side, opening);
    for (const InnerCorner& corner : side.corners)
      sheet_.page.circle(at(side, corner.girth).on_sheet, 1.2);
    draw_fit(side);
  }

  void draw_holes(const PerimeterSide& side) {
    for (const DrillStation& station : sheet_.job.schedule->stations)
      if (station.side == side.name)
        draw_hole(sheet_.page, view_.on_sheet(station.point.head<2>()), hole_radius_mm,
                  drillable(station));
  }

  void draw_keep_outs(const PerimeterSide& side) {
    for (const Obstacle& obstacle : named_on(sheet_.job, side).obstacles) {
      const Length from = within_side(obstacle.from, side);
      const Length to = within_side(obstacle.to, side);
      if (!(to > from)) continue;
      const auto band = inboard_band(side, from, to);
      sheet_.page.hatch(band, {.spacing_mm = 0.8});
      sheet_.page.polygon(band);
      write(side, (from + to) / 2, -1, keep_out_name(sheet_, obstacle), keep_out_mm);
    }
  }

  void write_words(const PerimeterSide& side) {
    for (const OpeningSpan& opening : side.openings)
      write(side, (opening.from + opening.to) / 2, -1,
            short_name(opening.what) + ": no joint", 1);
    for (const InnerCorner& corner : side.corners)
      write_beside(bisected(side, corner.girth), -1, "corner", keep_out_mm);
    if (!sheet_.job.fit) return;
    for (const FitRun& run : sheet_.job.fit->runs)
      if (run.side == side.name && run.verdict != FitVerdict::Good)
        write_beside(plan_point(side.sheer, (run.from + run.to) / 2), 1,
                     fmt::format("{} {}", fit_letter(run.verdict),
                                 sheet_.style.gap(run.worst.gap)),
                     fit_line_mm);
  }

  /// Keeps words off the sheer.
  void keep_off(const PerimeterSide& side) {
    constexpr double step_mm = 1.2, half_mm = 0.5;
    const Length step = Length::mm(step_mm / view_.across);
    for (Length girth; girth < side.sheer_length; girth += step) {
      const Point2 spot = view_.on_sheet(plan_point(side.sheer, girth).point);
      sheet_.labels.take(Box{spot.x(), spot.y(), 0, 0}.inset(-half_mm));
    }
  }

  /// Where sections cut through, with their letters.
  void draw_cuts() {
    for (const SectionPlace& place : section_places(sheet_.job)) {
      const Spot spot = spot_of(plan_point(place.side->sheer, place.sheer_girth));
      sheet_.page.line(spot.on_sheet - spot.outboard * cut_mm,
                       spot.on_sheet + spot.outboard * cut_out_mm,
                       {line_width::thick, Dash::Solid});
      LabelSpots spots = word_spots;
      for (double& distance : spots.distances_mm) distance += cut_mm;
      const std::string name = place.letter + "-" + place.letter;
      const auto words = sheet_.labels.write_beside(sheet_.page, spot.on_sheet,
                                                    -spot.outboard, spots, name);
      if (words)
        sheet_.labels.lead(sheet_.page, spot.on_sheet - spot.outboard * cut_mm, *words);
      else
        sheet_.left_out.push_back(name);
    }
  }

  void write_marks(const PerimeterSide& side) {
    for (const DrillStation& station : sheet_.job.schedule->stations) {
      if (station.side != side.name) continue;
      const Spot spot = at(side, station.girth);
      const auto words = sheet_.labels.write_beside(
          sheet_.page, spot.on_sheet, spot.outboard, mark_spots, station.mark);
      if (!words)
        sheet_.left_out.push_back(station.mark);
      else if (moved_off(spot.on_sheet, *words))
        moved_marks_.emplace_back(spot, *words);
    }
  }

  /// When all words stand: from the holes to those marks that do not stand next to
  /// theirs.
  void lead_to_marks() {
    for (const auto& [spot, words] : moved_marks_)
      sheet_.labels.lead(sheet_.page, spot.on_sheet + spot.outboard * beside_hole_mm,
                         words);
  }

 private:
  struct Spot {
    Point2 on_sheet;
    Vector2 outboard;  ///< on the sheet
  };

  /// Whether words stand further from a hole than the first spot for them is.
  static bool moved_off(const Point2& hole, const Box& words) {
    constexpr double more_mm = 1;
    const Point2 nearest(std::clamp(hole.x(), words.left, words.right()),
                         std::clamp(hole.y(), words.top, words.bottom()));
    return (nearest - hole).norm() > mark_spots.distances_mm.front() + more_mm;
  }

  Spot spot_of(const PlanPoint& point) const {
    return {view_.on_sheet(point.point), {point.outboard.x(), -point.outboard.y()}};
  }
  Spot at(const PerimeterSide& side, Length girth) const {
    return spot_of(plan_point(side.drill_line, girth));
  }
  PlanStretch stretch(Length from, Length to, double away_mm) const {
    return {from, to, away_mm / view_.across, DrawnSheet::within_mm / view_.across};
  }

  void stroke(const SideLine& line,
              Length from,
              Length to,
              const Pen& pen,
              double away_mm = 0) {
    sheet_.page.polyline(on_sheet(view_, plan_line(line, stretch(from, to, away_mm))),
                         pen);
  }

  void draw_opening(const PerimeterSide& side, const OpeningSpan& opening) {
    // the sheer is blotted out and its place shown by a line of what is only thought of
    const auto points = on_sheet(
        view_, plan_line(side.sheer, stretch(opening.sheer_from, opening.sheer_to, 0)));
    for (std::size_t k = 1; k < points.size(); ++k) blot_out(points[k - 1], points[k]);
    stroke(side.drill_line, opening.from, opening.to,
           {line_width::thin, Dash::DoubleChain});
    for (const Length end : {opening.from, opening.to}) {
      const Spot spot = at(side, end);
      sheet_.page.line(spot.on_sheet - spot.outboard * 2,
                       spot.on_sheet + spot.outboard * 2,
                       {line_width::thick, Dash::Solid});
    }
  }

  void blot_out(const Point2& from, const Point2& to) {
    const Vector2 way = to - from;
    if (way.norm() == 0) return;
    const Vector2 aside = Vector2(-way.y(), way.x()).normalized();
    sheet_.page.fill({from + aside, to + aside, to - aside, from - aside},
                     shade::white);
  }

  void draw_fit(const PerimeterSide& side) {
    if (!sheet_.job.fit) return;
    for (const FitRun& run : sheet_.job.fit->runs)
      if (run.side == side.name && run.verdict != FitVerdict::Good)
        stroke(side.sheer, run.from, run.to, fit_pen(run.verdict), fit_line_mm);
  }

  std::vector<Point2> inboard_band(const PerimeterSide& side, Length from, Length to) {
    std::vector<Point2> band = plan_line(side.drill_line, stretch(from, to, 0));
    std::vector<Point2> inner =
        plan_line(side.drill_line, stretch(from, to, -keep_out_mm));
    // at a sharp bow the band would run over to the other side
    for (Point2& point : inner) {
      if (side.name == SideName::Starboard) point.y() = std::max(point.y(), 0.0);
      if (side.name == SideName::Port) point.y() = std::min(point.y(), 0.0);
    }
    band.insert(band.end(), inner.rbegin(), inner.rend());
    return on_sheet(view_, band);
  }

  /// A corner, with the way between its two faces for the one outboard.
  static PlanPoint bisected(const PerimeterSide& side, Length corner) {
    constexpr Length off = Length::mm(1);
    PlanPoint point = plan_point(side.drill_line, corner);
    point.outboard = plan_point(side.drill_line, corner - off).outboard +
                     plan_point(side.drill_line, corner + off).outboard;
    return point;
  }

  /// Words beside the drill line: outboard if `way` is above 0.
  void write(const PerimeterSide& side,
             Length girth,
             double way,
             const std::string& words,
             double beyond_mm) {
    write_beside(plan_point(side.drill_line, girth), way, words, beyond_mm);
  }

  void write_beside(const PlanPoint& point,
                    double way,
                    const std::string& words,
                    double beyond_mm) {
    const Spot spot = spot_of(point);
    for (const auto& [where, what] : written_)
      if (what == words && (where - spot.on_sheet).norm() < same_words_mm) return;
    LabelSpots spots = word_spots;
    for (double& distance : spots.distances_mm) distance += beyond_mm;
    const auto box = sheet_.labels.write_beside(sheet_.page, spot.on_sheet,
                                                spot.outboard * way, spots, words);
    if (!box) {
      sheet_.left_out.push_back(words);
      return;
    }
    written_.emplace_back(spot.on_sheet, words);
    sheet_.labels.lead(sheet_.page, spot.on_sheet + spot.outboard * way * beyond_mm,
                       *box);
  }

  DrawnSheet& sheet_;
  const View& view_;
  std::vector<std::pair<Point2, std::string>> written_;
  std::vector<std::pair<Spot, Box>> moved_marks_;
};

void name_hands(DrawnSheet& sheet, const View& view) {
  for (const PerimeterSide& side : sheet.job.perimeter.sides) {
    if (side.name == SideName::Transom) continue;
    const Point2 middle =
        view.on_sheet(plan_point(side.sheer, side.sheer_length / 2).point);
    const double inboard = side.name == SideName::Starboard ? 17 : -17;
    sheet.labels.write(sheet.page, middle + Vector2(0, inboard),
                       side.name == SideName::Starboard ? "STARBOARD" : "PORT",
                       {.height_mm = letter_height::heading,
                        .bold = true,
                        .across = Across::Centre,
                        .upright = Upright::Middle});
  }
}

}  // namespace

void draw_plan_axes(DrawnSheet& sheet, const View& view) {
  double least = 0, most = 0;
  for (const SideDatum& datum : sheet.job.schedule->datums) {
    least = std::min(least, datum.point.x());
    most = std::max(most, datum.point.x());
  }
  const Point2 bow = view.on_sheet({least, 0}), stern = view.on_sheet({most, 0});
  sheet.page.line(bow - Vector2(14, 0), stern + Vector2(8, 0),
                  {line_width::thin, Dash::Chain});
  sheet.page.arrow(bow - Vector2(8, 0), bow - Vector2(16, 0),
                   {line_width::medium, Dash::Solid});
  sheet.labels.write(sheet.page, bow + Vector2(-16, -1.2), "BOW",
                     {.height_mm = letter_height::least, .bold = true});
  sheet.labels.take({bow.x() - 16, bow.y() - 0.3, stern.x() - bow.x() + 24, 0.6});
}

void draw_plan(DrawnSheet& sheet, const View& view) {
  Plan plan(sheet, view);
  const auto& sides = sheet.job.perimeter.sides;
  for (const PerimeterSide& side : sides) plan.draw_lines(side);
  for (const PerimeterSide& side : sides) plan.keep_off(side);
  name_hands(sheet, view);
  for (const PerimeterSide& side : sides) plan.write_words(side);
  plan.draw_cuts();
  for (const PerimeterSide& side : sides) plan.draw_keep_outs(side);
  for (const PerimeterSide& side : sides) plan.draw_holes(side);
  for (const PerimeterSide& side : sides) plan.write_marks(side);
  plan.lead_to_marks();
}

}  // namespace sheerlap
