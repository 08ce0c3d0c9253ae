#include "joint/out_stretches.h"

#include <cmath>
#include <cstddef>

#include "joint/gap_search.h"
#include "joint/sheer_places.h"

namespace sheerlap {
namespace {

/// How far apart the gap is looked at, and how close to a limit still keeps it, as in
/// `fit`.
constexpr double step_mm = 10;
constexpr double keeps_mm = 1e-9;

/// One side, its gap, and which way a gap is out.
struct Looked {
  const PerimeterSide& side;
  GapProfile profile;
  double limit_mm;
  bool below;

  /// How far a section is inside the limit.
  double inside(const GapSection& section) const {
    return below ? section.least.gap_mm - limit_mm : limit_mm - section.greatest.gap_mm;
  }
};

/// The girth on the drill line at a section; at the end of a span of the sheer that of
/// the drill line's, which a corner may carry on.
Length line_girth(const PerimeterSide& side, Place place) {
  constexpr double at_end_mm = 1e-9;
  const SideLine& line = side.drill_line;
  const std::size_t index = line.index_of(place.span);
  const bool forward = line.path().forward;
  const double chord = side.sheer.line().face().curve().chord_mm(place.span);
  if (place.u_mm <= at_end_mm) return line.girth_at_span(forward ? index : index + 1);
  if (place.u_mm >= chord - at_end_mm)
    return line.girth_at_span(forward ? index + 1 : index);
  return drill_girth(side, place);
}

std::vector<SectionSpan> spans_out(const Looked& looked,
                                   const std::vector<GapSection>& sections) {
  constexpr double same_girth_mm = 1e-6;
  std::vector<SectionSpan> spans;
  for (std::size_t i = 0; i + 1 < sections.size(); ++i) {
    if (!joined(sections[i], sections[i + 1])) continue;
    const double middle =
        (looked.inside(sections[i]) + looked.inside(sections[i + 1])) / 2;
    if (!(middle < -keeps_mm)) continue;
    const bool goes_on = !spans.empty() && spans.back().second + 1 >= i &&
                         sections[spans.back().second].strand == sections[i].strand &&
                         std::abs(sections[spans.back().second].girth_mm -
                                  sections[i].girth_mm) < same_girth_mm;
    if (goes_on)
      spans.back().second = i + 1;
    else
      spans.emplace_back(i, i + 1);
  }
  return spans;
}

OutStretch stretch_of(const Looked& looked,
                      const std::vector<GapSection>& sections,
                      const SectionSpan& span) {
  const GapSection worst =
      least_section(looked.profile, sections, span,
                    [&](const GapSection& section) { return looked.inside(section); });
  const auto gap = looked.below ? &GapSection::least : &GapSection::greatest;
  const GapSection& named = first_alike(sections, span, worst, gap);
  return {line_girth(looked.side, sections[span.first].place),
          line_girth(looked.side, sections[span.second].place),
          Length::mm((worst.*gap).gap_mm), line_girth(looked.side, named.place),
          Length::mm((named.*gap).depth_mm)};
}

std::vector<OutStretch> stretches(const Looked& looked) {
  const auto value = [&](const GapSection& section) { return looked.inside(section); };
  auto sections = looked.profile.sections(step_mm);
  sections = with_minima(looked.profile, sections, {0}, value);
  sections = with_zeros(looked.profile, sections, {[&](const GapSection& section) {
                          return value(section) + keeps_mm;
                        }});
  std::vector<OutStretch> result;
  for (const SectionSpan& span : spans_out(looked, sections)) {
    const OutStretch found = stretch_of(looked, sections, span);
    if (std::abs(found.worst.in_mm() - looked.limit_mm) > keeps_limit_mm)
      result.push_back(found);
  }
  return result;
}

}  // namespace

std::vector<OutStretch> stretches_below(const Perimeter& perimeter,
                                        const PerimeterSide& side,
                                        Length limit) {
  return stretches({side, GapProfile(perimeter, side), limit.in_mm(), true});
}

std::vector<OutStretch> stretches_above(const Perimeter& perimeter,
                                        const PerimeterSide& side,
                                        Length limit) {
  return stretches({side, GapProfile(perimeter, side), limit.in_mm(), false});
}

}  // namespace sheerlap
