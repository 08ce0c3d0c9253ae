#pragma once

#include <cstddef>
#include <functional>
#include <utility>
#include <vector>

#include "joint/gap_profile.h"

namespace sheerlap {

/// A number read off a section, mm.
using SectionValue = std::function<double(const GapSection&)>;

/// Whether two sections bound a stretch within one span, with joint between them.
bool joined(const GapSection& a, const GapSection& b);

/// The section between two joined ones at which `value` is least.
/// @accuracy  Brent's method: a part in 1e8 of the stretch, and so a part in 1e15 of
///            the value at a smooth minimum
GapSection least_between(const GapProfile& profile,
                         const GapSection& a,
                         const GapSection& b,
                         const SectionValue& value);

/// The sections with those local minima of `value` put in, found between the sections,
/// that may pass one of `limits` or lie below all the sections.
std::vector<GapSection> with_minima(const GapProfile& profile,
                                    const std::vector<GapSection>& sections,
                                    const std::vector<double>& limits,
                                    const SectionValue& value);

/// The sections with those put in at which one of `values` passes 0, within 1e-9 mm.
std::vector<GapSection> with_zeros(const GapProfile& profile,
                                   const std::vector<GapSection>& sections,
                                   const std::vector<SectionValue>& values);

/// Sections in a row, by the index of the first and the last.
using SectionSpan = std::pair<std::size_t, std::size_t>;

/// The section at which `value` is least, of those of a span and, beside the least of
/// these, between them.
GapSection least_section(const GapProfile& profile,
                         const std::vector<GapSection>& sections,
                         const SectionSpan& span,
                         const SectionValue& value);

/// The first section of a span whose gap is that of its worst within 1e-6 mm, so that
/// rounding does not choose among places that are alike; the worst itself if none is.
const GapSection& first_alike(const std::vector<GapSection>& sections,
                              const SectionSpan& span,
                              const GapSection& worst,
                              GapAtDepth GapSection::*gap);

}  // namespace sheerlap
