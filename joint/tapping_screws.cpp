#include "joint/tapping_screws.h"

#include <array>
#include <cmath>
#include <numbers>
#include <string_view>

#include "joint/fastener_table.h"

namespace sheerlap {
namespace {

/// One size: mm throughout.
struct Row {
  const char* size;
  double pitch, outer_max, outer_min, core_min, point;
  Cell pan, sunk, sunk_depth;  ///< head diameters, depth of a countersunk head
  std::optional<Cell> pilot, clearance;
  Cell shortest, longest;  ///< stock lengths
};

struct Sources {
  std::string_view thread, point, pan, sunk, pilot, clearance, lengths;
};

constexpr Sources metric_sources{
    "ISO 1478 (retyped table)",
    "ISO 1478 (retyped table)",
    "ISO 7049 (retyped table)",
    "ISO 7050",
    "a fastener maker's hole tables for tapping screws, thermoset plastics",
    "a fastener maker's hole tables for tapping screws",
    "ISO 7049 (retyped table)"};
constexpr Sources inch_sources{
    "types AB and B after ASME B18.6.3 (supplier's table)",
    "ISO 1478, the metric size of the same thread",
    "ASME B18.6.3 (retyped table)",
    "ASME B18.6.3, 82 degrees",
    "type AB holes in light metal (supplier's table)",
    "normal clearance of the machine screw (retyped table)",
    "common practice, no source: the inch lengths that ISO 7049 rounds"};

constexpr std::string_view laminate_holes =
    "the large side of what is common in glass laminate 5 to 8 mm thick";

/// Pilot holes that are common in glass laminate 5 to 8 mm thick.
struct LaminatePilot {
  std::string_view size;
  double least, greatest;
};
constexpr LaminatePilot laminate_pilots[] = {{"ST4.2", 3.3, 3.6}, {"ST4.8", 3.8, 4.0},
                                             {"#8", 3.3, 3.6},    {"#10", 3.8, 4.0},
                                             {"#12", 4.4, 4.6},   {"1/4", 5.2, 5.4}};

// ISO 1478, ISO 7049, ISO 7050 and hole tables
constexpr std::array<Row, 9> metric{{
    {"ST2.2", 0.8, 2.24, 2.10, 1.52, 2.0, remembered(4), remembered(3.8),
     remembered(1.1), seen(2.0), seen(2.8), remembered(4.5), remembered(16)},
    {"ST2.9", 1.1, 2.90, 2.76, 2.08, 2.6, seen(5.6), remembered(5.5), remembered(1.7),
     seen(2.5), seen(3.6), remembered(6.5), remembered(19)},
    {"ST3.5", 1.3, 3.53, 3.35, 2.51, 3.2, seen(7), remembered(7.3), remembered(2.35),
     seen(3.2), seen(4.2), seen(9.5), seen(25)},
    {"ST4.2", 1.4, 4.22, 4.04, 2.95, 3.7, seen(8), remembered(8.4), remembered(2.6),
     seen(3.8), seen(5.0), seen(9.5), seen(32)},
    {"ST4.8", 1.6, 4.80, 4.62, 3.43, 4.3, seen(9.5), remembered(9.3), remembered(2.8),
     seen(4.5), seen(5.8), seen(9.5), seen(38)},
    {"ST5.5", 1.8, 5.46, 5.28, 3.99, 5.0, seen(11), remembered(10.3), remembered(3.0),
     remembered(4.6), remembered(6.0), seen(13), seen(38)},
    {"ST6.3", 1.8, 6.25, 6.03, 4.70, 6.0, seen(12), remembered(11.3), remembered(3.15),
     remembered(5.4), remembered(7.0), seen(13), seen(38)},
    {"ST8", 2.1, 8.00, 7.78, 5.99, 7.5, remembered(16), remembered(15.8),
     remembered(4.65), std::nullopt, std::nullopt, seen(16), seen(50)},
    {"ST9.5", 2.1, 9.65, 9.43, 7.59, 8.0, remembered(20), remembered(18.3),
     remembered(5.25), std::nullopt, std::nullopt, remembered(16), remembered(50)},
}};

constexpr double inch_shortest = inches(0.375);
constexpr double inch_longest = inches(2);

// Threads, pan heads, drills; the point is that of the metric size.
constexpr std::array<Row, 7> inch{{
    {"#6", inches(1. / 20), inches(.139), inches(.132), inches(.099), 3.2,
     seen(inches(.270)), remembered(inches(.279)), remembered(inches(.083)),
     seen(inches(.1160)), seen(inches(.170)), seen(inch_shortest), seen(inch_longest)},
    {"#8", inches(1. / 18), inches(.166), inches(.159), inches(.116), 3.7,
     seen(inches(.322)), remembered(inches(.332)), remembered(inches(.100)),
     seen(inches(.1360)), seen(inches(.196)), seen(inch_shortest), seen(inch_longest)},
    {"#10", inches(1. / 16), inches(.189), inches(.182), inches(.135), 4.3,
     seen(inches(.373)), remembered(inches(.385)), remembered(inches(.116)),
     seen(inches(.1590)), seen(inches(.221)), seen(inch_shortest), seen(inch_longest)},
    {"#12", inches(1. / 14), inches(.215), inches(.208), inches(.157), 5.0,
     seen(inches(.425)), remembered(inches(.438)), remembered(inches(.132)),
     seen(inches(.1820)), seen(inches(.228)), seen(inch_shortest), seen(inch_longest)},
    {"1/4", inches(1. / 14), inches(.246), inches(.237), inches(.185), 6.0,
     seen(inches(.492)), remembered(inches(.507)), remembered(inches(.153)),
     seen(inches(.2090)), seen(inches(9. / 32)), seen(inch_shortest),
     seen(inch_longest)},
    {"5/16", inches(1. / 12), inches(.315), inches(.306), inches(.236), 7.5,
     seen(inches(.615)), remembered(inches(.635)), remembered(inches(.191)),
     seen(inches(.2660)), seen(inches(11. / 32)), seen(inch_shortest),
     seen(inch_longest)},
    {"3/8", inches(1. / 12), inches(.380), inches(.371), inches(.299), 8.0,
     seen(inches(.740)), remembered(inches(.762)), remembered(inches(.230)),
     seen(inches(.3320)), seen(inches(13. / 32)), seen(inch_shortest),
     seen(inch_longest)},
}};

// ISO 7049 (retyped table); the inch lengths are the same before rounding
constexpr double metric_lengths[] = {4.5, 6.5, 9.5, 13, 16, 19, 22, 25, 32, 38, 45, 50};
constexpr double inch_lengths[] = {0.375, 0.5,  0.625, 0.75, 0.875,
                                   1,     1.25, 1.5,   1.75, 2};

void take_laminate_pilot(FastenerSpec& spec) {
  for (const LaminatePilot& pilot : laminate_pilots) {
    if (spec.size != pilot.size) continue;
    const Length least = take(spec, "pilot hole common in glass laminate, least",
                              remembered(pilot.least), "trade usage");
    const Length greatest = take(spec, "pilot hole common in glass laminate, greatest",
                                 remembered(pilot.greatest), "trade usage");
    spec.laminate_pilot = {least, greatest};
  }
}

FastenerSpec spec_of(const Row& row, HeadKind head, const Sources& from) {
  FastenerSpec spec;
  spec.kind = FastenerKind::TappingScrew;
  spec.head = head;
  spec.size = row.size;
  spec.diameter = take(spec, "thread, greatest", seen(row.outer_max), from.thread);
  spec.diameter_min = take(spec, "thread, least", seen(row.outer_min), from.thread);
  spec.core = take(spec, "core, least", seen(row.core_min), from.thread);
  spec.thread_pitch = take(spec, "pitch of the thread", seen(row.pitch), from.thread);
  spec.beyond_stack = take(spec, "point", seen(row.point), from.point);
  spec.tensile_mm2 = std::numbers::pi / 4 * std::pow(spec.core.in_mm(), 2);
  if (row.pilot) {
    spec.pilot_for_plastics = !row.pilot->from_memory;
    spec.hull_pilot = take_pilot(spec, *row.pilot,
                                 row.pilot->from_memory ? laminate_holes : from.pilot);
  }
  take_laminate_pilot(spec);
  if (row.clearance)
    spec.lip_hole = take(spec, "hole in the lip", *row.clearance,
                         row.clearance->from_memory ? laminate_holes : from.clearance);
  if (head == HeadKind::Pan) {
    spec.head_diameter = take(spec, "pan head, diameter", row.pan, from.pan);
  } else {
    spec.head_diameter = take(spec, "countersunk head, diameter", row.sunk, from.sunk);
    spec.countersink_depth =
        take(spec, "countersunk head, depth", row.sunk_depth, from.sunk);
  }
  return spec;
}

FastenerSpec with_lengths(FastenerSpec spec, const Row& row, const Sources& from) {
  const Length least = take(spec, "shortest in stock", row.shortest, from.lengths);
  const Length most = take(spec, "longest in stock", row.longest, from.lengths);
  const auto add = [&](Length length) {
    if (length >= least && length <= most) spec.lengths.push_back(length);
  };
  if (&from == &metric_sources)
    for (const double length : metric_lengths) add(Length::mm(length));
  else
    for (const double length : inch_lengths) add(Length::inches(length));
  return spec;
}

}  // namespace

std::vector<std::string> tapping_screw_sizes() {
  std::vector<std::string> sizes;
  for (const Row& row : metric) sizes.emplace_back(row.size);
  for (const Row& row : inch) sizes.emplace_back(row.size);
  return sizes;
}

std::optional<FastenerSpec> tapping_screw(const std::string& size, HeadKind head) {
  for (const Row& row : metric)
    if (size == row.size)
      return with_lengths(spec_of(row, head, metric_sources), row, metric_sources);
  const std::string name = size == "#14" ? "1/4" : size;
  for (const Row& row : inch) {
    if (name != row.size) continue;
    auto spec = with_lengths(spec_of(row, head, inch_sources), row, inch_sources);
    spec.size = size;
    if (size == "#14")
      take(spec, "#14, the quarter inch", remembered(row.outer_max), "trade usage");
    return spec;
  }
  return std::nullopt;
}

}  // namespace sheerlap
