#include "joint/sheets/flat_rulers.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace sheerlap {
namespace {

// below the lap's low edge, on paper
constexpr double runs_down_mm = 6;
constexpr double girths_down_mm = 18;
constexpr double zones_down_mm = 27;
constexpr double jigs_down_mm = 30;
constexpr double jig_high_mm = 3.2;

const LayoutSide& layout_of(const Job& job, SideName name) {
  return *std::find_if(job.layout->sides.begin(), job.layout->sides.end(),
                       [&](const LayoutSide& side) { return side.name == name; });
}

bool same_space(const LayoutRun& run, const Bridge& bridge) {
  constexpr double same_mm = 1e-6;
  return std::abs((run.from - bridge.from).in_mm()) < same_mm &&
         std::abs((run.to - bridge.to).in_mm()) < same_mm;
}

/// Steps of a scale of girths, in its unit.
struct GirthSteps {
  double tick_mm;
  double number_mm;
};
GirthSteps girth_steps(LengthUnit unit, double factor) {
  constexpr double least_tick = 2, least_number = 14;  // on paper
  const std::array metric{5.,   10.,   20.,   50.,   100., 200.,
                          500., 1000., 2000., 5000., 1e4};
  const std::array inches{.25, .5, 1., 2., 6., 12., 24., 48., 96., 240., 480.};
  const bool in_mm = unit == LengthUnit::Millimetres;
  const auto first = [&](double least) {
    for (std::size_t k = 0; k < metric.size(); ++k) {
      const double step = in_mm ? metric[k] : Length::inches(inches[k]).in_mm();
      if (step * factor >= least) return step;
    }
    return in_mm ? metric.back() : Length::inches(inches.back()).in_mm();
  };
  return {first(least_tick), first(least_number)};
}

/// Draws what stands below one side.
class FlatRulers {
 public:
  FlatRulers(DrawnSheet& sheet, const FlatSide& flat)
      : sheet_(sheet),
        page_(sheet.page),
        flat_(flat),
        side_(flat.side),
        named_(named_on(sheet.job, flat.side)) {}

  void draw_runs() {
    const LayoutSide& laid = layout_of(sheet_.job, side_.name);
    if (laid.girths.empty()) return;
    draw_run(Length(), laid.girths.front(), sheet_.style.span(laid.girths.front()));
    draw_run(laid.girths.back(), end(), sheet_.style.span(end() - laid.girths.back()));
    for (const LayoutRun& run : laid.runs) {
      const auto bridge =
          std::find_if(laid.bridged.begin(), laid.bridged.end(),
                       [&](const Bridge& other) { return same_space(run, other); });
      if (bridge != laid.bridged.end())
        draw_bridge(run, *bridge);
      else
        draw_run(run.from, run.to, run_words(run));
    }
  }

  void draw_girths() {
    const auto [tick, number] =
        girth_steps(sheet_.style.unit(), std::abs(flat_.view.across));
    const double y = low_y() + girths_down_mm;
    page_.line({at(Length(), 0).x(), y}, {at(end(), 0).x(), y});
    for (double girth = 0; girth <= end().in_mm(); girth += tick)
      draw_tick(girth, y, 1.2);
    for (double girth = 0; girth <= end().in_mm(); girth += number) {
      draw_tick(girth, y, 2.4);
      sheet_.labels.write(page_, {at(Length::mm(girth), 0).x(), y + 3},
                          sheet_.style.running(Length::mm(girth)),
                          {.height_mm = letter_height::least,
                           .across = Across::Centre,
                           .upright = Upright::Top});
    }
  }

  void draw_zones() {
    const double y = low_y() + zones_down_mm;
    for (const NamedZone& zone : named_.zones)
      draw_bar(within_side(zone.from, side_), within_side(zone.to, side_), y,
               "zone" + (zone.what.empty() ? "" : ": " + short_name(zone.what)));
  }

  void draw_jigs() {
    const auto& stations = sheet_.job.schedule->stations;
    const Length bush = sheet_.job.joint.jig.bush;
    bool lower = false;
    for (const JigSegment& jig : sheet_.job.schedule->jigs) {
      if (jig.side != side_.name) continue;
      const double from = at(stations[jig.first].girth - bush, 0).x();
      const double to = at(stations[jig.last].girth + bush, 0).x();
      const Box piece{std::min(from, to),
                      low_y() + jigs_down_mm + (lower ? jig_high_mm : 0),
                      std::abs(to - from), jig_high_mm};
      page_.box(piece);
      page_.fitted(piece.centre(),
                   fmt::format("{}: {}-{}", jig.name, stations[jig.first].mark,
                               stations[jig.last].mark),
                   piece.width - 1,
                   {.height_mm = letter_height::least,
                    .across = Across::Centre,
                    .upright = Upright::Middle});
      lower = !lower;
    }
  }

 private:
  Length end() const { return side_.drill_line_length; }
  double line_mm() const { return flat_.line_mm(); }
  double low_y() const { return flat_.low_y(); }
  Point2 at(Length girth, double depth_mm) const { return flat_.at(girth, depth_mm); }

  std::string run_words(const LayoutRun& run) const {
    if (run.spaces == 1) return sheet_.style.span(run.pitch);
    return fmt::format("{} x {} = {}", run.spaces, sheet_.style.span(run.pitch),
                       sheet_.style.span(run.to - run.from));
  }

  /// The line of a run, with its words over it, or else under it, where there is room.
  void draw_run(Length from, Length to, const std::string& words) {
    const double y = low_y() + runs_down_mm;
    const Point2 start(at(from, 0).x(), y), stop(at(to, 0).x(), y);
    const Vector2 way(stop.x() > start.x() ? 1 : -1, 0);
    page_.line(start, stop);
    const bool heads = std::abs(stop.x() - start.x()) >= 6;
    for (const auto& [tip, out] :
         {std::pair(start, Vector2(-way)), std::pair(stop, way)}) {
      if (heads)
        page_.arrow_head(tip, out);
      else
        page_.line(tip + Vector2(-0.7, 0.7), tip + Vector2(0.7, -0.7));
      page_.line({tip.x(), low_y() + 0.8}, tip + Vector2(0, 1));
    }
    const Lettering lettering{.height_mm = letter_height::least,
                              .across = Across::Centre};
    const Point2 middle = (start + stop) / 2;
    const bool over =
        page_.width_of(words, lettering) + 1 < std::abs(stop.x() - start.x());
    for (const double down : {over ? -0.8 : 3.2, 3.2, 6.4, 9.6})
      if (sheet_.labels.write(page_, middle + Vector2(0, down), words, lettering))
        return;
    ++sheet_.marks_left_out;
  }

  void draw_bridge(const LayoutRun& run, const Bridge& bridge) {
    page_.line(at(run.from, line_mm()), at(run.to, line_mm()),
               {line_width::heavy, Dash::Solid});
    draw_run(run.from, run.to,
             fmt::format("BRIDGED {} over {}", sheet_.style.span(bridge.pitch),
                         sheet_.style.size(bridge.limit)));
  }

  void draw_tick(double girth_mm, double y, double length_mm) {
    const double x = at(Length::mm(girth_mm), 0).x();
    page_.line({x, y}, {x, y + length_mm});
  }

  void draw_bar(Length from, Length to, double y, const std::string& words) {
    const double start = at(from, 0).x(), stop = at(to, 0).x();
    page_.line({start, y}, {stop, y}, {line_width::medium, Dash::Solid});
    for (const double x : {start, stop})
      page_.line({x, y - 1}, {x, y + 1}, {line_width::medium, Dash::Solid});
    if (!sheet_.labels.write(
            page_, {(start + stop) / 2, y - 0.8}, words,
            {.height_mm = letter_height::least, .across = Across::Centre}))
      ++sheet_.marks_left_out;
  }

  DrawnSheet& sheet_;
  Page& page_;
  const FlatSide& flat_;
  const PerimeterSide& side_;
  SideObstacles named_;
};

}  // namespace

void draw_flat_rulers(DrawnSheet& sheet, const FlatSide& flat) {
  FlatRulers rulers(sheet, flat);
  rulers.draw_runs();
  rulers.draw_girths();
  rulers.draw_zones();
  rulers.draw_jigs();
}

}  // namespace sheerlap
