#include "joint/documents/csv_files.h"

#include <fmt/format.h>

#include <optional>

#include "joint/documents/bit_angles.h"
#include "joint/perimeter.h"

namespace sheerlap {
namespace {

std::string field(const std::string& text) {
  if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
  std::string quoted = "\"";
  for (const char letter : text) {
    if (letter == '"') quoted += '"';
    quoted += letter;
  }
  return quoted + "\"";
}

/// Names of length columns get the unit behind them.
std::vector<std::string> with_unit(std::vector<std::string> names,
                                   std::size_t first,
                                   std::size_t end,
                                   const NumberStyle& style) {
  for (std::size_t i = first; i < end; ++i) names[i] += "_" + style.unit_name();
  return names;
}

NumberStyle full_lengths(LengthUnit unit) { return {unit, Length::mm(1)}; }

std::string money(const std::optional<double>& amount) {
  return amount ? decimals(*amount, 2) : "";
}

std::vector<std::string> station_fields(const DrillStation& station,
                                        const NumberStyle& style) {
  const auto maybe = [&](const std::optional<Length>& length) {
    return length ? style.full(*length) : "";
  };
  std::vector<std::string> fields{station.mark, side_word(station.side), station.jig};
  for (const Length length :
       {station.girth, station.hull_girth, station.jig_girth, station.pitch})
    fields.push_back(style.full(length));
  fields.push_back(maybe(station.chord));
  for (const double coordinate :
       {station.point.x(), station.point.y(), station.point.z()})
    fields.push_back(style.full(Length::mm(coordinate)));
  for (const Length length :
       {station.edge_low, station.edge_top, station.gap, station.stack})
    fields.push_back(style.full(length));
  fields.push_back(maybe(station.length));
  fields.push_back(style.full(station.lip_hole));
  fields.push_back(maybe(station.hull_pilot));
  fields.push_back(style.full(station.countersink));
  fields.push_back(drillable(station) ? style.full(station.drill_depth) : "");
  const BitAngles angles = bit_angles(station.side, station.axis);
  fields.push_back(decimals(angles.tilt.in_degrees(), 3));
  fields.push_back(decimals(angles.skew.in_degrees(), 3));
  for (const double part : {station.axis.x(), station.axis.y(), station.axis.z()})
    fields.push_back(decimals(part, 6));
  fields.push_back(style.sentence(station.because));
  fields.push_back(station.next_jig);
  fields.push_back(drillable(station) ? maybe(station.lip_depth) : "");
  return fields;
}

}  // namespace

std::string csv_record(const std::vector<std::string>& fields) {
  std::string record;
  for (const std::string& text : fields)
    record += (&text == &fields.front() ? "" : ",") + field(text);
  return record + "\r\n";
}

std::string fit_csv(const Fit& fit, LengthUnit unit) {
  const NumberStyle style = full_lengths(unit);
  std::string text = csv_record(with_unit({"station", "side", "girth", "x", "y", "z",
                                           "lap", "gap_top", "gap_middle", "gap_low"},
                                          2, 10, style));
  for (const FitStation& station : fit.stations) {
    std::vector<std::string> fields{station.station, side_word(station.side),
                                    style.full(station.girth)};
    for (const double coordinate :
         {station.point.x(), station.point.y(), station.point.z()})
      fields.push_back(style.full(Length::mm(coordinate)));
    fields.push_back(style.full(station.lap));
    for (const Length gap : station.gaps) fields.push_back(style.full(gap));
    text += csv_record(fields);
  }
  return text;
}

std::string schedule_csv(const Schedule& schedule, SideName side, LengthUnit unit) {
  const NumberStyle style = full_lengths(unit);
  std::vector<std::string> heads = with_unit(
      {"mark",        "side",        "jig",      "girth",    "hull_girth", "jig_girth",
       "pitch",       "chord",       "x",        "y",        "z",          "edge_low",
       "edge_top",    "gap",         "stack",    "length",   "lip_hole",   "hull_pilot",
       "countersink", "drill_depth", "tilt_deg", "skew_deg", "ax",         "ay",
       "az",          "because",     "next_jig", "lip_depth"},
      3, 20, style);
  heads.back() += "_" + style.unit_name();
  std::string text = csv_record(heads);
  for (const DrillStation& station : schedule.stations)
    if (station.side == side) text += csv_record(station_fields(station, style));
  return text;
}

std::string order_csv(const Order& order, const Adhesive& adhesive) {
  std::string text = csv_record(
      {"item", "need", "unit", "pack_size", "packs", "price", "total", "sold_as"});
  for (const OrderLine& line : order.lines) {
    const bool paste = &line == &order.lines.front();
    text += csv_record(
        {line.item, at_most_decimals(line.need, 3), line.unit,
         at_most_decimals(line.pack_size, 3), fmt::format("{}", line.packs),
         line.price ? price_text(*line.price) : "", money(line.total),
         at_most_decimals(paste ? adhesive.pack.in_ml() : line.pack_size, 3)});
  }
  return text;
}

std::string allowances_csv(const Order& order) {
  std::string text = csv_record({"item", "allowance", "amount", "unit", "basis"});
  for (const Allowance& allowance : order.allowances)
    text += csv_record({allowance.item, allowance.what,
                        at_most_decimals(allowance.amount, 3), allowance.unit,
                        allowance.basis});
  return text;
}

}  // namespace sheerlap
