#include "joint/bolts.h"

#include <array>
#include <cmath>
#include <numbers>
#include <string_view>

#include "joint/fastener_table.h"

namespace sheerlap {
namespace {

/// A countersunk head (mm).
struct Sunk {
  Cell diameter, depth;
};

/// One size: mm throughout.
struct Row {
  const char* size;
  const char* with_thread;  ///< the size written with its thread
  double diameter, pitch;
  Cell clearance, washer, washer_height, nut;
  std::optional<Sunk> sunk;
};

struct Sources {
  std::string_view thread, clearance, washer, nut, sunk, lengths;
};

constexpr Sources metric_sources{"ISO 261, coarse (retyped table)",
                                 "ISO 273, medium (retyped table)",
                                 "ISO 7093-1 (retyped table)",
                                 "ISO 4032",
                                 "ISO 7046-2",
                                 "ISO 888"};
constexpr Sources inch_sources{
    "ASME B1.1, UNC (retyped table)", "normal clearance drill (retyped table)",
    "ASME B18.21.1, type A",          "ASME B18.2.2 and B18.6.3",
    "ASME B18.6.3, 82 degrees",       "trade usage"};

// The retyped table of ISO 273 reads 14 at M12 medium; the bore of the M12 coarse
// washer supports the 13.5 that is remembered.
constexpr std::array<Row, 6> metric{{
    {"M4", "M4x0.7", 4, 0.7, seen(4.5), seen(12), seen(1.0), remembered(3.2),
     Sunk{seen(8.4), seen(2.7)}},
    {"M5", "M5x0.8", 5, 0.8, seen(5.5), seen(15), seen(1.0), remembered(4.7),
     Sunk{seen(9.3), seen(2.7)}},
    {"M6", "M6x1", 6, 1, seen(6.6), seen(18), seen(1.6), remembered(5.2),
     Sunk{seen(11.3), seen(3.3)}},
    {"M8", "M8x1.25", 8, 1.25, seen(9), seen(24), seen(2.0), remembered(6.8),
     Sunk{seen(15.8), seen(4.65)}},
    {"M10", "M10x1.5", 10, 1.5, seen(11), seen(30), seen(2.5), remembered(8.4),
     Sunk{seen(18.3), seen(5)}},
    {"M12", "M12x1.75", 12, 1.75, remembered(13.5), seen(37), seen(3.0),
     remembered(10.8), std::nullopt},
}};

constexpr Sunk remembered_head(double diameter_in, double depth_in) {
  return {remembered(inches(diameter_in)), remembered(inches(depth_in))};
}

constexpr std::array<Row, 5> inch{{
    {"#10", "#10-24", inches(.190), inches(1. / 24), seen(inches(.221)),
     remembered(inches(.500)), remembered(inches(.049)), remembered(inches(.130)),
     remembered_head(.385, .116)},
    {"#12", "#12-24", inches(.216), inches(1. / 24), seen(inches(.228)),
     remembered(inches(.562)), remembered(inches(.065)), remembered(inches(.161)),
     remembered_head(.438, .132)},
    {"1/4", "1/4-20", inches(.250), inches(1. / 20), seen(inches(9. / 32)),
     remembered(inches(.625)), remembered(inches(.065)), remembered(inches(.226)),
     remembered_head(.507, .153)},
    {"5/16", "5/16-18", inches(.3125), inches(1. / 18), seen(inches(11. / 32)),
     remembered(inches(.688)), remembered(inches(.065)), remembered(inches(.273)),
     remembered_head(.635, .191)},
    {"3/8", "3/8-16", inches(.375), inches(1. / 16), seen(inches(13. / 32)),
     remembered(inches(.812)), remembered(inches(.065)), remembered(inches(.337)),
     remembered_head(.762, .230)},
}};

constexpr double metric_lengths[] = {10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60};
constexpr double inch_lengths[] = {0.5, 0.625, 0.75, 0.875, 1,   1.25,
                                   1.5, 1.75,  2,    2.25,  2.5, 3};

FastenerSpec spec_of(const Row& row, HeadKind head, const Sources& from) {
  FastenerSpec spec;
  spec.kind = FastenerKind::Bolt;
  spec.head = head;
  spec.size = row.size;
  spec.diameter = take(spec, "diameter", seen(row.diameter), from.thread);
  spec.diameter_min = spec.diameter;
  spec.thread_pitch = take(spec, "pitch of the thread", seen(row.pitch), from.thread);
  spec.core = Length::mm(std::sqrt(root_area_mm2(spec.diameter, spec.thread_pitch) * 4 /
                                   std::numbers::pi));
  spec.tensile_mm2 = stress_area_mm2(spec.diameter, spec.thread_pitch);
  spec.lip_hole = take(spec, "hole in lip and hull", row.clearance, from.clearance);
  const Length washer = take(spec, "washer, diameter", row.washer, from.washer);
  const Length height = take(spec, "washer, thickness", row.washer_height, from.washer);
  const Length nut = take(spec, "nut, height", row.nut, from.nut);
  spec.washers = head == HeadKind::Pan ? 2 : 1;
  spec.beyond_stack =
      static_cast<double>(spec.washers) * height + nut + 2 * spec.thread_pitch;
  spec.head_diameter = washer;
  if (head == HeadKind::Countersunk) {
    spec.head_diameter =
        take(spec, "countersunk head, diameter", row.sunk->diameter, from.sunk);
    spec.countersink_depth =
        take(spec, "countersunk head, depth", row.sunk->depth, from.sunk);
  }
  return spec;
}

FastenerSpec with_lengths(FastenerSpec spec, const Sources& from) {
  if (&from == &metric_sources)
    for (const double length : metric_lengths)
      spec.lengths.push_back(Length::mm(length));
  else
    for (const double length : inch_lengths)
      spec.lengths.push_back(Length::inches(length));
  take(spec, "shortest in stock", remembered(spec.lengths.front().in_mm()),
       from.lengths);
  take(spec, "longest in stock", remembered(spec.lengths.back().in_mm()), from.lengths);
  return spec;
}

template <std::size_t N>
const Row* find(const std::array<Row, N>& rows,
                const std::string& size,
                HeadKind head) {
  for (const Row& row : rows)
    if ((size == row.size || size == row.with_thread) &&
        (head == HeadKind::Pan || row.sunk))
      return &row;
  return nullptr;
}

}  // namespace

double stress_area_mm2(Length diameter, Length pitch) {
  const double across = (diameter - 0.9382 * pitch).in_mm();
  return std::numbers::pi / 4 * across * across;
}

double root_area_mm2(Length diameter, Length pitch) {
  const double across = (diameter - 1.22687 * pitch).in_mm();
  return std::numbers::pi / 4 * across * across;
}

std::vector<std::string> bolt_sizes() {
  std::vector<std::string> sizes;
  for (const Row& row : metric) sizes.emplace_back(row.size);
  for (const Row& row : inch) sizes.emplace_back(row.size);
  return sizes;
}

std::optional<FastenerSpec> bolt(const std::string& size, HeadKind head) {
  if (const Row* row = find(metric, size, head))
    return with_lengths(spec_of(*row, head, metric_sources), metric_sources);
  if (const Row* row = find(inch, size, head))
    return with_lengths(spec_of(*row, head, inch_sources), inch_sources);
  return std::nullopt;
}

}  // namespace sheerlap
