#include "joint/documents/json_parts.h"

#include <cassert>
#include <cmath>
#include <utility>
#include <vector>

#include "joint/documents/wording.h"
#include "joint/perimeter.h"

namespace sheerlap {
namespace {

Json numbers(const std::vector<Length>& lengths) {
  Json list = Json::array();
  for (const Length length : lengths) list.push_back(number(length));
  return list;
}

Json amounts_json(const AdhesiveAmounts& amounts) {
  return {{"joint_volume", number(amounts.joint.in_ml())},
          {"bead_volume", number(amounts.bead.in_ml())},
          {"boat_volume", number(amounts.boat.in_ml())},
          {"packs", amounts.packs},
          {"nozzles", amounts.nozzles},
          {"mass_kg", number(amounts.mass_kg)}};
}

Json beads_json(const std::vector<BeadRun>& runs) {
  Json list = Json::array();
  for (const BeadRun& run : runs)
    list.push_back({{"side", side_word(run.side)},
                    {"from", number(run.from)},
                    {"to", number(run.to)},
                    {"size", number(run.size)},
                    {"area", number(run.area_mm2)},
                    {"beads", run.beads},
                    {"needed", number(run.needed_mm2)}});
  return list;
}

Json time_json(const TimePlan& time) {
  return {{"dispensing", number(time.dispensing.in_minutes())},
          {"pack_changes", number(time.pack_changes.in_minutes())},
          {"seating", number(time.seating.in_minutes())},
          {"driving", number(time.driving.in_minutes())},
          {"total", number(time.total.in_minutes())},
          {"working_time", number(time.working_time.in_minutes())}};
}

Json runs_json(const std::vector<LayoutRun>& runs) {
  Json list = Json::array();
  for (const LayoutRun& run : runs)
    list.push_back({{"from", number(run.from)},
                    {"to", number(run.to)},
                    {"spaces", run.spaces},
                    {"pitch", number(run.pitch)}});
  return list;
}

Json bridged_json(const std::vector<Bridge>& bridged) {
  Json list = Json::array();
  for (const Bridge& bridge : bridged)
    list.push_back({{"from", number(bridge.from)},
                    {"to", number(bridge.to)},
                    {"pitch", number(bridge.pitch)},
                    {"limit", number(bridge.limit)},
                    {"what", bridge.what}});
  return list;
}

Json why_json(const LayoutSide& side) {
  Json list = Json::array();
  for (std::size_t i = 0; i < side.girths.size(); ++i)
    list.push_back({{"girth", number(side.girths[i])}, {"because", side.because[i]}});
  return list;
}

Json station_json(const DrillStation& station) {
  // no depths for a hole that is not to be drilled
  const bool drill = drillable(station);
  return {{"mark", station.mark},
          {"side", side_word(station.side)},
          {"girth", number(station.girth)},
          {"hull_girth", number(station.hull_girth)},
          {"pitch", number(station.pitch)},
          {"chord", number(station.chord)},
          {"x", number(station.point.x())},
          {"y", number(station.point.y())},
          {"z", number(station.point.z())},
          {"ax", number(station.axis.x())},
          {"ay", number(station.axis.y())},
          {"az", number(station.axis.z())},
          {"edge_low", number(station.edge_low)},
          {"edge_top", number(station.edge_top)},
          {"gap", number(station.gap)},
          {"stack", number(station.stack)},
          {"length", number(station.length)},
          {"lip_hole", number(station.lip_hole)},
          {"hull_pilot", number(station.hull_pilot)},
          {"countersink", number(station.countersink)},
          {"drill_depth", drill ? number(station.drill_depth) : Json(nullptr)},
          {"jig", station.jig},
          {"jig_girth", number(station.jig_girth)},
          {"because", station.because},
          {"next_jig", station.next_jig},
          {"lip_depth", drill ? number(station.lip_depth) : Json(nullptr)}};
}

}  // namespace

std::string json_text(const Json& object) {
  return object.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

Json number(double value) {
  assert(std::isfinite(value));
  // a negative zero would read as a side of its own
  return value == 0 ? 0.0 : value;
}

Json number(std::optional<double> value) {
  return value ? number(*value) : Json(nullptr);
}

Json number(Length length) { return number(length.in_mm()); }

Json number(std::optional<Length> length) {
  return length ? number(*length) : Json(nullptr);
}

Json place_json(const GapAt& at) {
  return {{"side", side_word(at.side)},
          {"girth", number(at.girth)},
          {"depth", number(at.depth)}};
}

Json entry_json(const Entry& entry) {
  return {{"worst", number(entry.worst)},
          {"height", number(entry.height)},
          {"side", side_word(entry.side)},
          {"girth", number(entry.girth)}};
}

Json fit_json(const Fit& fit) {
  Json runs = Json::array();
  for (const FitRun& run : fit.runs)
    runs.push_back({{"side", side_word(run.side)},
                    {"from", number(run.from)},
                    {"to", number(run.to)},
                    {"verdict", word_of(run.verdict)},
                    {"worst", number(run.worst.gap)},
                    {"worst_at", place_json(run.worst)}});
  Json stations = Json::array();
  for (const FitStation& station : fit.stations)
    stations.push_back({{"side", side_word(station.side)},
                        {"girth", number(station.girth)},
                        {"x", number(station.point.x())},
                        {"y", number(station.point.y())},
                        {"z", number(station.point.z())},
                        {"gaps", numbers(station.gaps)},
                        {"station", station.station},
                        {"lap", number(station.lap)}});
  return {
      {"gap_min", number(fit.least.gap)},       {"gap_max", number(fit.greatest.gap)},
      {"gap_mean", number(fit.mean)},           {"gap_min_at", place_json(fit.least)},
      {"gap_max_at", place_json(fit.greatest)}, {"runs", std::move(runs)},
      {"stations", std::move(stations)}};
}

Json adhesive_json(const AdhesivePlan& plan) {
  return {{"joint_volume", number(plan.nominal.joint.in_ml())},
          {"bond_area", number(plan.bond_area_mm2)},
          {"bead_volume", number(plan.nominal.bead.in_ml())},
          {"boat_volume", number(plan.nominal.boat.in_ml())},
          {"packs", plan.nominal.packs},
          {"mass_kg", number(plan.nominal.mass_kg)},
          {"beads", beads_json(plan.beads)},
          {"time", plan.time ? time_json(*plan.time) : Json(nullptr)},
          {"nozzles", plan.nominal.nozzles},
          {"least", plan.least ? amounts_json(*plan.least) : Json(nullptr)},
          {"most", plan.most ? amounts_json(*plan.most) : Json(nullptr)}};
}

Json layout_json(const Layout& layout) {
  Json sides = Json::array();
  for (const LayoutSide& side : layout.sides)
    sides.push_back({{"name", side_word(side.name)},
                     {"count", side.girths.size()},
                     {"girths", numbers(side.girths)},
                     {"largest_pitch", number(side.largest_pitch)},
                     {"runs", runs_json(side.runs)},
                     {"bridged", bridged_json(side.bridged)},
                     {"why", why_json(side)},
                     {"smallest_pitch", number(side.smallest_pitch)}});
  return {{"count", layout.count},
          {"largest_pitch", number(layout.largest_pitch)},
          {"smallest_pitch", number(layout.smallest_pitch)},
          {"sides", std::move(sides)}};
}

Json stations_json(const Schedule& schedule) {
  Json list = Json::array();
  for (const DrillStation& station : schedule.stations)
    list.push_back(station_json(station));
  return list;
}

Json check_lines_json(const Schedule& schedule) {
  Json list = Json::array();
  for (const CheckLine& line : schedule.check_lines)
    list.push_back({{"side", side_word(line.side)},
                    {"what", line.what},
                    {"from", line.from},
                    {"to", line.to},
                    {"value", number(line.value)},
                    {"measured", line.measured}});
  return list;
}

Json datums_json(const Schedule& schedule) {
  Json list = Json::array();
  for (const SideDatum& datum : schedule.datums)
    list.push_back({{"side", side_word(datum.side)},
                    {"what", datum.what},
                    {"x", number(datum.point.x())},
                    {"y", number(datum.point.y())},
                    {"z", number(datum.point.z())}});
  return list;
}

Json order_lines_json(const Order& order) {
  Json list = Json::array();
  for (const OrderLine& line : order.lines)
    list.push_back({{"item", line.item},
                    {"need", number(line.need)},
                    {"packs", line.packs},
                    {"pack_size", number(line.pack_size)},
                    {"price", number(line.price)},
                    {"total", number(line.total)},
                    {"unit", line.unit}});
  return list;
}

Json allowances_json(const Order& order) {
  Json list = Json::array();
  for (const Allowance& allowance : order.allowances)
    list.push_back({{"item", allowance.item},
                    {"what", allowance.what},
                    {"amount", number(allowance.amount)},
                    {"unit", allowance.unit},
                    {"basis", allowance.basis}});
  return list;
}

Json shelf_json(const Order& order) {
  if (!order.shelf) return nullptr;
  return {{"boats", number(order.shelf->boats)},
          {"packs", order.shelf->packs},
          {"deliveries", order.shelf->deliveries}};
}

}  // namespace sheerlap
