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

/// The bridge from one girth to another, if there is one.
const Bridge* bridge_of(const LayoutSide& side, Length from, Length to) {
  constexpr double same_mm = 1e-6;
  const auto bridge =
      std::find_if(side.bridged.begin(), side.bridged.end(), [&](const Bridge& other) {
        return std::abs((from - other.from).in_mm()) < same_mm &&
               std::abs((to - other.to).in_mm()) < same_mm;
      });
  return bridge == side.bridged.end() ? nullptr : &*bridge;
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
    draw_end(laid, Length(), laid.girths.front());
    draw_end(laid, laid.girths.back(), end());
    for (const LayoutRun& run : laid.runs) {
      if (const Bridge* bridge = bridge_of(laid, run.from, run.to))
        draw_bridge(*bridge);
      else
        draw_run(run.from, run.to, run_words(run), short_run_words(run));
    }
    // last, as its words are the longest and need not stand where it is
    for (const auto& [from, to] : {std::pair(Length(), laid.girths.front()),
                                   std::pair(laid.girths.back(), end())})
      if (const Bridge* bridge = bridge_of(laid, from, to))
        draw_bridge(*bridge, " across the centreline");
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

  /// Not as a product: the space is rounded, so that it would not come out.
  std::string run_words(const LayoutRun& run) const {
    if (run.spaces == 1) return sheet_.style.span(run.pitch);
    return fmt::format("{} in {} equal spaces of {}",
                       sheet_.style.span(run.to - run.from), run.spaces,
                       sheet_.style.span(run.pitch));
  }
  std::string short_run_words(const LayoutRun& run) const {
    if (run.spaces == 1) return sheet_.style.span(run.pitch);
    return fmt::format("{} in {} of {}", sheet_.style.span(run.to - run.from),
                       run.spaces, sheet_.style.span(run.pitch));
  }

  /// From an end of the side to the hole next to it, unless that is bridged.
  void draw_end(const LayoutSide& laid, Length from, Length to) {
    const std::string words = sheet_.style.span(to - from);
    if (bridge_of(laid, from, to) == nullptr) draw_run(from, to, words, words);
  }

  bool goes_over(const std::string& words, double length_mm) const {
    return page_.width_of(words, {.height_mm = letter_height::least}) + 1 < length_mm;
  }

  /// The line of a run, with its words over it, or else the short ones over or under
  /// it, where there is room.
  void draw_run(Length from,
                Length to,
                const std::string& words,
                const std::string& short_words) {
    const double y = low_y() + runs_down_mm;
    const Point2 start(at(from, 0).x(), y), stop(at(to, 0).x(), y);
    const Vector2 way(stop.x() > start.x() ? 1 : -1, 0);
    page_.line(start, stop);
    const double length = std::abs(stop.x() - start.x());
    for (const auto& [tip, out] :
         {std::pair(start, Vector2(-way)), std::pair(stop, way)}) {
      if (length >= 6)
        page_.arrow_head(tip, out);
      else
        page_.line(tip + Vector2(-0.7, 0.7), tip + Vector2(0.7, -0.7));
      page_.line({tip.x(), low_y() + 0.8}, tip + Vector2(0, 1));
    }
    write_run(start, stop, goes_over(words, length) ? words : short_words);
  }

  void write_run(const Point2& start, const Point2& stop, const std::string& words) {
    const Point2 middle = (start + stop) / 2;
    const bool over = page_.width_of(words, {.height_mm = letter_height::least}) + 1 <
                      std::abs(stop.x() - start.x());
    // at the edge of the sheet there is room on one hand only
    for (const double down : {over ? -0.8 : 3.2, 3.2, 6.4, 9.6})
      for (const Across across : {Across::Centre, Across::Right, Across::Left})
        if (sheet_.labels.write(page_, middle + Vector2(0, down), words,
                                {.height_mm = letter_height::least, .across = across}))
          return;
    sheet_.left_out.push_back(words);
  }

  /// @param where  said behind it
  void draw_bridge(const Bridge& bridge, const std::string& where = "") {
    page_.line(at(bridge.from, line_mm()), at(bridge.to, line_mm()),
               {line_width::heavy, Dash::Solid});
    const std::string words =
        fmt::format("BRIDGED {} over {}{}", sheet_.style.span(bridge.pitch),
                    sheet_.style.size(bridge.limit), where);
    draw_run(bridge.from, bridge.to, words, words);
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
      sheet_.left_out.push_back(words);
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
