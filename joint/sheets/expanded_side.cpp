#include "joint/sheets/expanded_side.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "joint/sheets/flat_rulers.h"
#include "joint/sheets/flat_side.h"
#include "joint/sheets/led_labels.h"

namespace sheerlap {
namespace {

// above the sheer, on paper
constexpr double fit_up_mm = 9.4;
constexpr double marks_up_mm = 2;
constexpr std::array words_up_mm{10.6, 13.7, 16.8, 19.9};
/// Above a mark, where a line of words over a hole ends.
constexpr double over_mark_mm = 9;
/// Of a keep-out, to both sides of its middle: where its words may lead to.
constexpr double foot_share = 0.3;
/// The same words closer than this are written once.
constexpr double same_words_mm = 25;
constexpr double hole_radius_mm = 0.6;

/// Draws one side laid flat.
class ExpandedSide {
 public:
  ExpandedSide(DrawnSheet& sheet, const FlatSide& flat)
      : sheet_(sheet),
        page_(sheet.page),
        flat_(flat),
        side_(flat.side),
        named_(named_on(sheet.job, flat.side)) {}

  void draw_lap() {
    std::vector<Point2> low;
    for (const Length girth : flat_.samples()) low.push_back(at(girth, lap_mm(girth)));
    const Pen edge{line_width::medium, Dash::Solid};
    page_.line(at(Length(), 0), at(end(), 0), edge);
    page_.polyline(low, edge);
    for (const Length girth : {Length(), end()})
      page_.line(at(girth, 0), at(girth, lap_mm(girth)), edge);
    page_.line(at(Length(), line_mm()), at(end(), line_mm()),
               {line_width::thin, Dash::Chain});
    for (const InnerCorner& corner : side_.corners) {
      page_.line(at(corner.girth, 0), at(corner.girth, lap_mm(corner.girth)), edge);
      write_over(corner.girth, "corner");
    }
  }

  void draw_openings() {
    for (const OpeningSpan& opening : side_.openings) {
      const double deep = flat_.deepest_mm;
      std::vector<Point2> blank{at(opening.from, 0), at(opening.to, 0),
                                at(opening.to, deep), at(opening.from, deep)};
      for (Point2& corner : blank)
        corner.y() += corner.y() > flat_.sheer_y() ? 0.5 : -0.5;
      page_.fill(blank, shade::white);
      const Pen ends{line_width::thick, Dash::Solid};
      for (const Length girth : {opening.from, opening.to})
        page_.line(at(girth, 0), at(girth, lap_mm(girth)), ends);
      page_.line(at(opening.from, line_mm()), at(opening.to, line_mm()),
                 {line_width::thin, Dash::DoubleChain});
      write_over((opening.from + opening.to) / 2,
                 short_name(opening.what) + ": no joint");
    }
  }

  void draw_keep_outs() {
    for (const Obstacle& obstacle : named_.obstacles) {
      const Length from = within_side(obstacle.from, side_);
      const Length to = within_side(obstacle.to, side_);
      if (!(to > from)) continue;
      const std::vector<Point2> area{at(from, 0), at(to, 0), at(to, lap_mm(to)),
                                     at(from, lap_mm(from))};
      page_.hatch(area, {.spacing_mm = 1.2});
      page_.polygon(area);
      const double span_mm = std::abs(at(to, 0).x() - at(from, 0).x());
      write_over((from + to) / 2, keep_out_name(sheet_, obstacle), 0,
                 foot_share * span_mm);
    }
  }

  void draw_fit() {
    if (!sheet_.job.fit) return;
    for (const FitRun& run : sheet_.job.fit->runs) {
      if (run.side != side_.name || run.verdict == FitVerdict::Good) continue;
      const Vector2 up(0, -fit_up_mm);
      page_.line(at(on_drill_line(run.from), 0) + up, at(on_drill_line(run.to), 0) + up,
                 fit_pen(run.verdict));
      // off its middle, where what makes it tight or wide often stands
      write_over(on_drill_line(run.from + (run.to - run.from) * 0.2),
                 fmt::format("{} {}", fit_letter(run.verdict),
                             sheet_.style.gap(run.worst.gap)),
                 fit_up_mm);
    }
  }

  void draw_holes() {
    for (const NamedPlace& place : named_.places) {
      page_.circle(at(place.at, line_mm()), 2 * hole_radius_mm);
      write_over(place.at, short_name(place.what), over_mark_mm);
    }
    for (const DrillStation& station : sheet_.job.schedule->stations) {
      if (station.side != side_.name) continue;
      draw_hole(page_, at(station.girth, line_mm()), hole_radius_mm,
                drillable(station));
      const Point2 mark = at(station.girth, 0) + Vector2(0, -marks_up_mm);
      if (!sheet_.labels.write(page_, mark, station.mark,
                               {.height_mm = letter_height::least,
                                .upright = Upright::Middle,
                                .turn_degrees = 90}))
        sheet_.left_out.push_back(station.mark);
    }
  }

  void write_words_over() {
    LabelLines lines;
    for (const double up : words_up_mm)
      lines.baselines_y.push_back(flat_.sheer_y() - up);
    // from one side to the other, so that neighbours are placed one after the other
    std::sort(over_.begin(), over_.end(), [](const LedLabel& a, const LedLabel& b) {
      return a.foot.x() < b.foot.x();
    });
    const auto left_out = write_led_labels(page_, sheet_.labels, over_, lines);
    sheet_.left_out.insert(sheet_.left_out.end(), left_out.begin(), left_out.end());
  }

 private:
  Length end() const { return side_.drill_line_length; }
  double line_mm() const { return flat_.line_mm(); }
  double lap_mm(Length girth) const { return flat_.lap_mm(girth); }
  Point2 at(Length girth, double depth_mm) const { return flat_.at(girth, depth_mm); }
  Length on_drill_line(Length sheer_girth) const {
    return within_side(side_.drill_line.girth_at(side_.sheer.place_at(sheer_girth)),
                       side_);
  }

  /// Has words written over the side, with a line down to so far above the sheer, up
  /// to half a span to the left or the right.
  void write_over(Length girth,
                  const std::string& words,
                  double foot_up_mm = 0,
                  double half_span_mm = 0) {
    const Point2 foot = at(girth, 0) - Vector2(0, foot_up_mm);
    for (const LedLabel& other : over_)
      if (other.words == words && std::abs(other.foot.x() - foot.x()) < same_words_mm)
        return;
    over_.push_back({foot, words, half_span_mm});
  }

  DrawnSheet& sheet_;
  Page& page_;
  const FlatSide& flat_;
  const PerimeterSide& side_;
  SideObstacles named_;
  std::vector<LedLabel> over_;
};

}  // namespace

void draw_expanded_side(DrawnSheet& sheet,
                        const PerimeterSide& side,
                        const View& view) {
  const FlatSide flat(*sheet.job.perimeter.lip_outer, side, view);
  ExpandedSide drawn(sheet, flat);
  drawn.draw_lap();
  drawn.draw_keep_outs();
  drawn.draw_openings();
  drawn.draw_fit();
  drawn.draw_holes();
  drawn.write_words_over();
  draw_flat_rulers(sheet, flat);
}

}  // namespace sheerlap
