#include "joint/sheets/sheets.h"

#include <utility>

#include "joint/sheets/drawing.h"
#include "joint/sheets/drill_sheet.h"
#include "joint/sheets/joint_page.h"
#include "joint/sheets/order_workbook.h"
#include "joint/sheets/pattern_drawing.h"
#include "joint/sheets/pattern_dxf.h"
#include "joint/sheets/pattern_svg.h"
#include "joint/sheets/sequence_sheet.h"
#include "joint/sheets/strength_sheet.h"
#include "joint/sheets/strip_content.h"
#include "joint/sheets/strip_roll.h"
#include "joint/sheets/strip_sheet.h"

namespace sheerlap {
namespace {

/// A sheet: when it is due, and how it is made.
struct Sheet {
  std::string name;
  bool (*due)(const Job& job);
  Result<std::string> (*make)(const Job& job, const SheetStyle& style);
};

bool has_jigs(const Job& job) { return job.schedule && !job.schedule->jigs.empty(); }

template <SideName side>
Sheet drill_sheet_of() {
  return {"drill-" + side_word(side) + ".pdf",
          [](const Job& job) { return has_drill_sheet(job, side); },
          [](const Job& job, const SheetStyle& style) {
            return drill_sheet(job, side, style);
          }};
}

template <SideName side>
bool has_strip_of(const Job& job) {
  return has_strip(job, side);
}

template <SideName side>
Sheet strip_of() {
  return {"strip-" + side_word(side) + ".pdf", has_strip_of<side>,
          [](const Job& job, const SheetStyle& style) {
            return strip_sheet(job, side, style);
          }};
}

template <SideName side>
Sheet strip_roll_of() {
  return {"strip-" + side_word(side) + "-roll.pdf", has_strip_of<side>,
          [](const Job& job, const SheetStyle& style) {
            return strip_roll(job, side, style);
          }};
}

/// All sheets, in the order they are written in.
const std::vector<Sheet>& all_sheets() {
  static const std::vector<Sheet> all{
      {"drawing.pdf", [](const Job& job) { return job.layout && job.schedule; },
       drawing},
      {"joint.html", [](const Job& job) { return job.schedule.has_value(); },
       joint_page},
      drill_sheet_of<SideName::Starboard>(),
      drill_sheet_of<SideName::Port>(),
      drill_sheet_of<SideName::Transom>(),
      {"jigs.dxf", has_jigs,
       [](const Job& job, const SheetStyle& style) {
         return pattern_dxf(pattern_drawing(job, style));
       }},
      {"jigs.svg", has_jigs,
       [](const Job& job, const SheetStyle& style) -> Result<std::string> {
         return pattern_svg(pattern_drawing(job, style));
       }},
      {"order.xlsx", [](const Job& job) { return job.adhesive && job.order; },
       order_workbook},
      {"sequence.pdf", [](const Job& job) { return job.schedule.has_value(); },
       sequence_sheet},
      {"strength.pdf", [](const Job& job) { return job.strength.has_value(); },
       strength_sheet},
      strip_of<SideName::Starboard>(),
      strip_of<SideName::Port>(),
      strip_of<SideName::Transom>(),
      strip_roll_of<SideName::Starboard>(),
      strip_roll_of<SideName::Port>(),
      strip_roll_of<SideName::Transom>(),
  };
  return all;
}

}  // namespace

Result<std::vector<Document>> sheets(const Job& job,
                                     const SheetStyle& style,
                                     const SheetProgress& progress) {
  std::vector<const Sheet*> due;
  for (const Sheet& sheet : all_sheets())
    if (sheet.due(job)) due.push_back(&sheet);
  std::vector<Document> made;
  for (const Sheet* sheet : due) {
    if (progress) progress(sheet->name, made.size(), due.size());
    auto bytes = sheet->make(job, style);
    if (!bytes) return tl::unexpected(bytes.error());
    made.push_back({sheet->name, std::move(*bytes)});
  }
  return made;
}

std::vector<std::string> sheet_names() {
  std::vector<std::string> names;
  for (const Sheet& sheet : all_sheets()) names.push_back(sheet.name);
  return names;
}

}  // namespace sheerlap
