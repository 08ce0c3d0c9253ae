#include "joint/blind_rivets.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <span>
#include <string_view>

#include "joint/fastener_table.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// A length and the grips it closes, in the table's own unit.
struct GripRow {
  double length, least, greatest;
};

/// One size (mm); the grips in inches for an inch size, which has those of the metric
/// size as well.
struct Row {
  const char* size;
  double diameter;
  Cell hole, head;
  bool grips_from_memory;
  std::span<const GripRow> grips;
  std::span<const GripRow> metric_grips = {};
};

constexpr std::string_view metric_hole = "ISO 15981, 0.1 mm over the rivet";
constexpr std::string_view metric_head = "ISO 15981";
constexpr std::string_view metric_grip =
    "ISO 15981:2002; which column is which diameter";
constexpr std::string_view inch_table = "US Army TM 10-5410-221-14, table 4-3";
constexpr std::string_view inch_head = "trade usage, twice the diameter";

constexpr GripRow of_3_2[] = {
    {8, 3.5, 5}, {12, 7, 9}, {16, 9, 13}, {20, 13, 17}, {25, 17, 22}};
constexpr GripRow of_4[] = {
    {8, 3, 5}, {12, 6.5, 8.5}, {16, 8.5, 12.5}, {20, 12.5, 16.5}, {25, 16.5, 21}};
constexpr GripRow of_4_8[] = {{8, 2.5, 4},  {12, 6, 8},   {16, 8, 12},
                              {20, 12, 15}, {25, 15, 20}, {30, 20, 25}};
constexpr GripRow of_6_4[] = {
    {12, 3, 6}, {16, 6, 10}, {20, 10, 14}, {25, 14, 18}, {30, 18, 23}};

constexpr std::array<Row, 4> metric{{
    {"3.2", 3.2, remembered(3.3), remembered(6.7), true, of_3_2},
    {"4", 4, remembered(4.1), remembered(8.4), true, of_4},
    {"4.8", 4.8, remembered(4.9), remembered(10.1), true, of_4_8},
    {"6.4", 6.4, remembered(6.5), remembered(13.4), true, of_6_4},
}};

constexpr GripRow of_1_8[] = {{.125, .063, .125}, {.1875, .126, .187},
                              {.25, .188, .250},  {.3125, .251, .312},
                              {.375, .313, .375}, {.5, .376, .500}};
constexpr GripRow of_5_32[] = {
    {.125, .020, .125}, {.25, .188, .250}, {.375, .251, .375}};
// by the rule that the codes follow: the last digits are the greatest grip in
// sixteenths
constexpr GripRow of_3_16[] = {{.125, .020, .125}, {.25, .126, .250},
                               {.375, .251, .375}, {.5, .376, .500},
                               {.625, .501, .625}, {.75, .626, .750}};
constexpr GripRow of_1_4[] = {
    {.25, .125, .250}, {.375, .251, .375}, {.5, .376, .500}, {.75, .626, .750}};

constexpr std::array<Row, 4> inch{{
    {"1/8", inches(1. / 8), seen(inches(.1285)), remembered(inches(.250)), false,
     of_1_8, of_3_2},
    {"5/32", inches(5. / 32), seen(inches(.161)), remembered(inches(.312)), false,
     of_5_32, of_4},
    {"3/16", inches(3. / 16), remembered(inches(.192)), remembered(inches(.375)), true,
     of_3_16, of_4_8},
    {"1/4", inches(1. / 4), seen(inches(.257)), remembered(inches(.500)), false, of_1_4,
     of_6_4},
}};

void take_grips(FastenerSpec& spec,
                std::span<const GripRow> grips,
                double unit_mm,
                bool from_memory,
                std::string_view source) {
  for (const GripRow& grip : grips) {
    spec.grips.push_back({Length::mm(unit_mm * grip.length),
                          Length::mm(unit_mm * grip.least),
                          Length::mm(unit_mm * grip.greatest)});
    take(spec, "greatest grip of " + worded(Length::mm(unit_mm * grip.length)),
         Cell{unit_mm * grip.greatest, from_memory}, source);
  }
}

FastenerSpec spec_of(const Row& row, bool in_inches) {
  FastenerSpec spec;
  spec.kind = FastenerKind::BlindRivet;
  spec.size = row.size;
  spec.diameter = Length::mm(row.diameter);
  spec.diameter_min = spec.diameter;
  spec.core = spec.diameter;
  spec.lip_hole = take(spec, "hole in lip and hull", row.hole,
                       in_inches ? inch_table : metric_hole);
  spec.head_diameter =
      take(spec, "head, diameter", row.head, in_inches ? inch_head : metric_head);
  take_grips(spec, row.grips, in_inches ? 25.4 : 1, row.grips_from_memory,
             in_inches ? inch_table : metric_grip);
  for (const Grip& grip : spec.grips) spec.lengths.push_back(grip.length);
  take_grips(spec, row.metric_grips, 1, true, metric_grip);
  std::sort(spec.grips.begin(), spec.grips.end(),
            [](const Grip& a, const Grip& b) { return a.length < b.length; });
  return spec;
}

}  // namespace

std::vector<std::string> blind_rivet_sizes() {
  std::vector<std::string> sizes;
  for (const Row& row : metric) sizes.emplace_back(row.size);
  for (const Row& row : inch) sizes.emplace_back(row.size);
  return sizes;
}

std::optional<FastenerSpec> blind_rivet(const std::string& size) {
  for (const Row& row : metric)
    if (size == row.size || size == std::string(row.size) + ".0")
      return spec_of(row, false);
  for (const Row& row : inch)
    if (size == row.size) return spec_of(row, true);
  return std::nullopt;
}

}  // namespace sheerlap
