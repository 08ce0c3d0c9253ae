#include "joint/setting_out.h"

#include <algorithm>
#include <boost/math/tools/roots.hpp>
#include <cassert>
#include <cmath>
#include <cstdint>

#include "joint/setting_out_workings.h"

namespace sheerlap {
namespace {

constexpr const char* usual = "common practice, no source";

Point3 point_at(const SideLine& drill_line, double girth_mm) {
  return drill_line.line().at(drill_line.place_at(Length::mm(girth_mm))).point;
}

/// The girth of the next mark; the side's end if there is none.
double next_mark(const SideLine& drill_line, double from_mm, double setting_mm) {
  const double end = drill_line.length().in_mm();
  const Point3 foot = point_at(drill_line, from_mm);
  const auto short_of = [&](double girth_mm) {
    return (point_at(drill_line, girth_mm) - foot).norm() - setting_mm;
  };
  // a chord is no longer than its arc
  double low = from_mm + setting_mm;
  if (low >= end) return end;
  double high = low;
  for (double further = setting_mm / 64; short_of(high) < 0; further *= 2) {
    if (high == end) return end;
    low = high;
    high = std::min(high + further, end);
  }
  if (high == low) return low;
  std::uintmax_t steps = 200;
  const auto [below, above] = boost::math::tools::toms748_solve(
      short_of, low, high, boost::math::tools::eps_tolerance<double>(50), steps);
  return (below + above) / 2;
}

SteppedRun stepped_run(const PerimeterSide& side, const LayoutRun& run, Length step) {
  PlainWorking work;
  return {side.name, run,
          stepped_off(side.drill_line, run.from, run.pitch, run.spaces) - run.to,
          Length::mm(rounded_error(work, run, step))};
}

}  // namespace

Length exit_shift(Length stack, Angle out_of_square) {
  PlainWorking work;
  return Length::mm(exit_shift_of(work, stack, out_of_square));
}

Length stepping_gain(Length setting, Length radius) {
  assert(setting <= 2 * radius);
  return 2 * std::asin(setting / (2 * radius)) * radius - setting;
}

Length stepped_off(const SideLine& drill_line,
                   Length from,
                   Length setting,
                   std::size_t steps) {
  assert(setting > Length());
  double girth = from.in_mm();
  for (std::size_t i = 0; i < steps; ++i)
    girth = next_mark(drill_line, girth, setting.in_mm());
  return Length::mm(girth);
}

ApartHoles apart_holes(const Joint& joint, const FastenerSpec& spec, Length gap) {
  const Length half_step = joint.layout.round_to / 2;
  const char* const rounding = "the joint file: layout.round_to";
  ApartHoles holes;
  holes.along = {{"station marked on the lip", station_tolerance, usual},
                 {"station marked on the hull", station_tolerance, usual},
                 {"girth on the drill line, rounded", half_step, rounding},
                 {"girth on the hull, rounded", half_step, rounding}};
  holes.across = {
      {"height of the line on the lip", line_tolerance, usual},
      {"height of the line on the hull", line_tolerance, usual},
      {"trim of the lip's low edge", joint.lip.trim, "the joint file: lip.trim"},
      {"trim of the hull's top edge", joint.hull.trim, "the joint file: hull.trim"}};
  const Length lip = joint.lip.thickness;
  holes.leaning = {
      {"bit out of square in the lip", exit_shift(lip, bit_out_of_square), usual},
      {"bit out of square in the hull, over gap and lip",
       exit_shift(lip + std::max(gap, Length()), bit_out_of_square), usual}};
  PlainWorking work;
  holes.off_worst = Length::mm(worst_off(work, holes));
  holes.off_root_sum = Length::mm(root_sum_off(work, holes));
  holes.hole_worst = Length::mm(hole_for(work, spec, holes.off_worst));
  holes.hole_root_sum = Length::mm(hole_for(work, spec, holes.off_root_sum));
  return holes;
}

SettingOut setting_out(const Joint& joint,
                       const Perimeter& perimeter,
                       const Layout& layout,
                       const std::vector<DrillStation>& stations,
                       const FastenerSpec& spec) {
  SettingOut result;
  for (const LayoutSide& side : layout.sides)
    for (const LayoutRun& run : side.runs)
      if (run.spaces > 1)
        result.runs.push_back(
            stepped_run(*perimeter.side(side.name), run, joint.layout.round_to));
  PlainWorking work;
  result.running = Length::mm(running_error(work, joint.layout.round_to));
  const auto thickest =
      std::max_element(stations.begin(), stations.end(),
                       [](const DrillStation& one, const DrillStation& other) {
                         return one.stack < other.stack;
                       });
  Length gap;
  if (thickest != stations.end()) {
    result.thickest = thickest->mark;
    result.leaning_exit = exit_shift(thickest->stack, bit_out_of_square);
    gap = thickest->gap;
  }
  result.apart = apart_holes(joint, spec, gap);
  return result;
}

}  // namespace sheerlap
