#include "joint/sheets/drawing_sections.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "geometry/clearance.h"
#include "joint/documents/drilling_words.h"
#include "joint/sheets/drawing_tables.h"
#include "joint/sheets/lap_section.h"
#include "joint/sheets/section_places.h"
#include "joint/sheets/section_view.h"

namespace sheerlap {
namespace {

// on paper: what sections may take, and what stands around each
constexpr double highest_mm = 132;
constexpr double widest_mm = 52;
constexpr double title_mm = 10;
constexpr double title_top_mm = 6;  ///< to its baseline
constexpr double over_mm = 18;      ///< for dimensions over the lip
constexpr double under_mm = 9;      ///< for those under the hull
constexpr double inboard_mm = 34;   ///< left of the sheer

struct SectionSize {
  double width_mm = 0;
  double height_mm = 0;
};

/// The largest a section of the job is, on the boat.
SectionSize largest_section(const Job& job, const std::vector<SectionPlace>& places) {
  SectionSize size;
  for (const SectionPlace& place : places) {
    const LapSection section = lap_section(job, place);
    const auto [least, most] =
        std::minmax({section.hull_inner.top_mm, section.lip_outer.top_mm,
                     section.hull_inner.low_mm, section.lip_outer.low_mm});
    size.width_mm = std::max(size.width_mm, most - least);
    size.height_mm = std::max(
        size.height_mm, section.lap_mm * (section_hull_share + section_lip_share));
  }
  return size;
}

std::string gap_words(const Job& job,
                      const SectionPlace& place,
                      const NumberStyle& style) {
  const Place at = place.side->sheer.place_at(place.sheer_girth);
  const double lap = job.perimeter.hull->lap_mm(at);
  std::string words;
  for (const auto& [name, share] :
       {std::pair("top", 0.0), std::pair("middle", 0.5), std::pair("low", 1.0)}) {
    const auto gap = gap_mm(*job.perimeter.hull, *job.perimeter.lip, at, share * lap);
    if (gap)
      words += fmt::format("{}{} {}", words.empty() ? "" : ", ", name,
                           style.gap(Length::mm(*gap)));
  }
  return "gap " + words;
}

std::string bond_words(const Job& job, const NumberStyle& style) {
  const BondBand& bond = job.joint.bond;
  if (!bond.from && !bond.to) return " Grey: the bond band, the whole lap.";
  return fmt::format(" Grey: the bond band, {} to {} down.",
                     style.size(bond.from.value_or(Length())),
                     bond.to ? style.size(*bond.to) : "the low edge");
}

std::string caption(const Job& job,
                    const SectionPlace& place,
                    const NumberStyle& style) {
  std::string words =
      fmt::format("On {}, {} along the sheer; {}; outboard is to the right.",
                  side_word(place.side->name), style.running(place.sheer_girth),
                  gap_words(job, place, style));
  if (same_gap_all_round(job))
    words += fmt::format(" The gap is the same all round, within {}.",
                         style.size_with_unit(same_gap));
  words += bond_words(job, style);
  if (place.hole == nullptr)
    return words +
           " The chain line is square to the lip on the drill line; there is no "
           "hole here.";
  const NumberStyle tools = tool_style(job.schedule->fastener, style);
  words += fmt::format(" Gap where the bit goes in {}, stack {}; {}.",
                       style.gap(place.hole->gap), style.gap(place.hole->stack),
                       place.hole->length
                           ? fastener_name(job.schedule->fastener, *place.hole->length)
                           : "no length in stock serves: DO NOT DRILL");
  return words + fmt::format(" Holes: lip {}, hull {}.",
                             tools.size_with_unit(place.hole->lip_hole),
                             tools.size_with_unit(place.hole->hull_pilot.value_or(
                                 place.hole->lip_hole)));
}

void draw_one(DrawnSheet& sheet,
              const SectionPlace& place,
              const Box& column,
              const DrawingScale& scale) {
  const LapSection section = lap_section(sheet.job, place);
  const double factor = scale.factor();
  const double lip_top = section_lip_share * section.lap_mm * factor;
  const std::string title =
      fmt::format("SECTION {}-{}, {}: {}", place.letter, place.letter,
                  scale.words(LengthUnit::Millimetres), place.what);
  sheet.page.fitted({column.left, column.top + title_top_mm}, title, column.width - 4,
                    {.height_mm = letter_height::heading, .bold = true});
  const View view{{column.left + inboard_mm +
                       (section.hull.top_mm - section.hull_inner.top_mm) * factor,
                   column.top + title_mm + over_mm + lip_top},
                  factor,
                  factor};
  draw_section(sheet, place, view);
  const double foot =
      view.origin.y() + section_hull_share * section.lap_mm * factor + under_mm;
  sheet.page.paragraph({column.left, foot}, caption(sheet.job, place, sheet.style),
                       column.width - 6, {.height_mm = letter_height::least});
}

}  // namespace

DrawingScale section_scale(const Job& job, LengthUnit unit, PageSize) {
  const SectionSize largest = largest_section(job, section_places(job));
  return largest_scale(unit, [&](double factor) {
    return largest.width_mm * factor <= widest_mm &&
           largest.height_mm * factor <= highest_mm;
  });
}

void draw_sections(DrawnSheet& sheet) {
  const Box room = view_room(sheet.page.size());
  const auto places = section_places(sheet.job);
  const DrawingScale scale =
      section_scale(sheet.job, sheet.style.unit(), sheet.page.size());
  double left = room.left;
  const double width = room.width / 3;
  for (const SectionPlace& place : places) {
    draw_one(sheet, place, {left, room.top, width, room.height}, scale);
    left += width;
  }
  const double height = largest_section(sheet.job, places).height_mm * scale.factor();
  const double top = room.top + title_mm + over_mm + height + under_mm + 14;
  draw_bars(sheet);
  draw_tables(sheet, {room.left, top, room.width, room.bottom() - top});
}

}  // namespace sheerlap
