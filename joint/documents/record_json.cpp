#include "joint/documents/record_json.h"

#include <cassert>

#include "joint/records/boat_merge.h"

namespace sheerlap {
namespace {

template <class T>
Json whole_number(const std::optional<T>& value) {
  return value ? Json(*value) : Json(nullptr);
}

Json reading_json(const BoatRecord& boat, const GapReading& reading) {
  return {{"side", side_word(reading.side)},
          {"place", kind_word(reading.kind)},
          {"name", reading.name},
          {"girth", number(reading.girth)},
          {"state", state_word(reading.state)},
          {"gap_top", number(reading.top)},
          {"gap_low", number(reading.low)},
          {"top", window_word(boat, reading.top)},
          {"low", window_word(boat, reading.low)},
          {"note", reading.note}};
}

Json leak_json(const Leak& leak) {
  Json marks = Json::array();
  for (const LeakMark& mark : leak.marks)
    marks.push_back({{"mark", mark.mark},
                     {"girth", number(mark.girth)},
                     {"gap", number(mark.gap)},
                     {"bead", number(mark.bead)},
                     {"beads", mark.beads},
                     {"pitch", number(mark.pitch)}});
  return {
      {"side", side_word(leak.side)}, {"girth", number(leak.girth)}, {"marks", marks}};
}

Json boat_part(const BoatRecord& boat) {
  Json readings = Json::array();
  for (const GapReading& reading : boat.readings)
    readings.push_back(reading_json(boat, reading));
  Json leaks = Json::array();
  for (const Leak& leak : boat.leaks) leaks.push_back(leak_json(leak));
  return {{"hull", boat.hull},
          {"gap_min", number(boat.gap_min)},
          {"gap_max", number(boat.gap_max)},
          {"mean_gap", number(boat.mean_gap)},
          {"outside", gaps_outside(boat)},
          {"litres", number(boat.litres)},
          {"holes", whole_number(boat.holes)},
          {"readings", readings},
          {"leaks", leaks}};
}

Json base(const std::string& title) {
  return {{"format", "sheerlap/1"}, {"title", title}};
}

Json signals_json(const PlaceChart& chart) {
  Json signals = Json::array();
  for (const ChartSignal& signal : chart.chart.signals)
    signals.push_back({{"rule", rule_key(signal.rule)},
                       {"from_hull", chart.series.hulls[signal.first]},
                       {"to_hull", chart.series.hulls[signal.last]}});
  return signals;
}

Json drift_json(const PlaceChart& chart) {
  if (!chart.drift) return nullptr;
  return {{"slope", number(chart.drift->slope)},
          {"slope_error", number(chart.drift->slope_error)},
          {"chance", number(chart.drift->chance)},
          {"scatter", number(chart.drift->scatter)},
          {"found", chart.drifts}};
}

Json step_json(const PlaceChart& chart) {
  if (!chart.step) return nullptr;
  return {{"at_hull", chart.series.hulls[chart.step->at]},
          {"before", number(chart.step->before)},
          {"after", number(chart.step->after)},
          {"chance", number(chart.step->chance)},
          {"scatter", number(chart.step->scatter)},
          {"found", chart.steps}};
}

Json capability_json(const std::optional<Capability>& capability) {
  if (!capability) return nullptr;
  return {
      {"deviation", number(capability->deviation)},
      {"cp", number(capability->cp)},
      {"cp_interval", {number(capability->cp_low), number(capability->cp_high)}},
      {"cpk", number(capability->cpk)},
      {"cpk_interval", {number(capability->cpk_low), number(capability->cpk_high)}}};
}

Json chart_json(const PlaceChart& chart) {
  const GapSeries& series = chart.series;
  return {{"side", side_word(series.side)},
          {"place", kind_word(series.kind)},
          {"name", series.name},
          {"girth", number(series.girth)},
          {"state", state_word(series.state)},
          {"edge", series.low ? "low" : "top"},
          {"boats", series.hulls.size()},
          {"limits_from", chart.chart.base},
          {"mean", number(chart.chart.mean)},
          {"sigma", number(chart.chart.sigma)},
          {"low", number(chart.chart.low)},
          {"high", number(chart.chart.high)},
          {"mean_range", number(chart.chart.mean_range)},
          {"range_high", number(chart.chart.range_high)},
          {"outside", chart.outside},
          {"signals", signals_json(chart)},
          {"drift", drift_json(chart)},
          {"step", step_json(chart)},
          {"nearer", chart.more_step ? "step" : "drift"},
          {"capability", capability_json(chart.capability)},
          {"hulls", series.hulls},
          {"gaps", series.gaps_mm},
          {"ranges", chart.chart.ranges}};
}

}  // namespace

const char* rule_key(ChartRule rule) {
  switch (rule) {
    case ChartRule::BeyondLimit:
      return "beyond_limit";
    case ChartRule::RangeBeyondLimit:
      return "range_beyond_limit";
    case ChartRule::OneSide:
      return "one_side";
    case ChartRule::Rising:
      return "rising";
    case ChartRule::Falling:
      return "falling";
  }
  assert(false);
  return "";
}

Json added_json(const AddedBoat& added) {
  Json result = base(added.boat.title);
  Json held = Json::array();
  for (const HeldStretch& stretch : added.held)
    held.push_back({{"side", side_word(stretch.side)},
                    {"from", number(stretch.from)},
                    {"to", number(stretch.to)},
                    {"reading", number(stretch.reading)}});
  Json unread = Json::array();
  for (const SideName side : added.unread) unread.push_back(side_word(side));
  result["added"] = {{"new", added.is_new},  {"readings", added.readings},
                     {"leaks", added.leaks}, {"held", held},
                     {"unread", unread},     {"one_edge", added.one_edge}};
  result["boat"] = boat_part(added.boat);
  return result;
}

Json boat_list_json(const BoatList& list) {
  Json result = base(list.title);
  result["boats"] = Json::array();
  for (const BoatLine& boat : list.boats)
    result["boats"].push_back({{"hull", boat.hull},
                               {"readings", boat.readings},
                               {"outside", boat.outside},
                               {"mean_gap", number(boat.mean_gap)},
                               {"litres", number(boat.litres)},
                               {"holes", whole_number(boat.holes)},
                               {"leaks", boat.leaks}});
  return result;
}

Json boat_json(const BoatRecord& boat) {
  Json result = base(boat.title);
  result["boat"] = boat_part(boat);
  return result;
}

Json record_chart_json(const RecordCharts& charts) {
  Json result = base(charts.title);
  result["boats"] = charts.boats.size();
  result["gap_min"] = number(charts.gap_min);
  result["gap_max"] = number(charts.gap_max);
  result["level"] = number(charts.level);
  result["change"] = finds_change(charts);
  const auto& found = charts.gap_and_litres;
  result["gap_and_litres"] =
      found ? Json{{"boats", found->count},
                   {"r", number(found->r)},
                   {"interval", {number(found->low), number(found->high)}},
                   {"litres_for_mm", number(found->slope)}}
            : Json(nullptr);
  result["charts"] = Json::array();
  for (const PlaceChart& chart : charts.charts)
    result["charts"].push_back(chart_json(chart));
  return result;
}

}  // namespace sheerlap
