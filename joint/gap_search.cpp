#include "joint/gap_search.h"

#include <algorithm>
#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <cstdint>
#include <optional>

namespace sheerlap {
namespace {

/// Values closer than this are taken for the same, mm.
constexpr double same_mm = 1e-9;

/// Places whose gaps differ by less are alike, as in `reach_of`, mm.
constexpr double alike_mm = 1e-6;

/// Where `value` passes 0 between two joined sections.
std::optional<double> zero_between(const GapProfile& profile,
                                   const GapSection& a,
                                   const GapSection& b,
                                   const SectionValue& value) {
  const bool up = a.place.u_mm < b.place.u_mm;
  const GapSection& low = up ? a : b;
  const GapSection& high = up ? b : a;
  const double at_low = value(low);
  const double at_high = value(high);
  if ((at_low < 0) == (at_high < 0)) return std::nullopt;
  std::uintmax_t steps = 100;
  const auto [from, to] = boost::math::tools::toms748_solve(
      [&](double u) {
        return value(profile.section({a.place.span, u}, a.strand));
      },
      low.place.u_mm, high.place.u_mm, at_low, at_high,
      [](double u, double other) { return other - u < 1e-9; }, steps);
  return (from + to) / 2;
}

}  // namespace

bool joined(const GapSection& a, const GapSection& b) {
  return a.strand == b.strand && a.place.span == b.place.span;
}

GapSection least_between(const GapProfile& profile,
                         const GapSection& a,
                         const GapSection& b,
                         const SectionValue& value) {
  const auto [low, high] = std::minmax(a.place.u_mm, b.place.u_mm);
  const auto at = [&](double u) {
    return profile.section({a.place.span, u}, a.strand);
  };
  const auto found = boost::math::tools::brent_find_minima(
      [&](double u) { return value(at(u)); }, low, high, 40);
  return at(found.first);
}

std::vector<GapSection> with_minima(const GapProfile& profile,
                                    const std::vector<GapSection>& sections,
                                    const std::vector<double>& limits,
                                    const SectionValue& value) {
  double least = 1e300;
  for (const GapSection& section : sections) least = std::min(least, value(section));
  std::vector<GapSection> result;
  for (std::size_t i = 0; i < sections.size(); ++i) {
    const GapSection& here = sections[i];
    const bool before = i > 0 && joined(sections[i - 1], here);
    const bool after = i + 1 < sections.size() && joined(here, sections[i + 1]);
    const double own = value(here);
    const double rise_before = before ? value(sections[i - 1]) - own : 0;
    const double rise_after = after ? value(sections[i + 1]) - own : 0;
    // a parabola through three points dips an eighth of this below the lowest
    const double reach = rise_before + rise_after;
    const bool may_matter = own - reach < least ||
                            std::any_of(limits.begin(), limits.end(), [&](double at) {
                              return own >= at && own - reach < at;
                            });
    const bool dips =
        rise_before >= 0 && rise_after >= 0 && reach > same_mm && may_matter;
    const auto add_below = [&](bool there, std::size_t a, std::size_t b) {
      if (!dips || !there) return;
      const auto lower = least_between(profile, sections[a], sections[b], value);
      if (value(lower) < own - same_mm) result.push_back(lower);
    };
    add_below(before, i - 1, i);
    result.push_back(here);
    add_below(after, i, i + 1);
  }
  return result;
}

std::vector<GapSection> with_zeros(const GapProfile& profile,
                                   const std::vector<GapSection>& sections,
                                   const std::vector<SectionValue>& values) {
  std::vector<GapSection> result;
  for (std::size_t i = 0; i < sections.size(); ++i) {
    result.push_back(sections[i]);
    if (i + 1 == sections.size() || !joined(sections[i], sections[i + 1])) continue;
    const GapSection& here = sections[i];
    std::vector<double> zeros;
    for (const SectionValue& value : values)
      if (const auto zero = zero_between(profile, here, sections[i + 1], value))
        zeros.push_back(*zero);
    std::sort(zeros.begin(), zeros.end());
    if (here.place.u_mm > sections[i + 1].place.u_mm)
      std::reverse(zeros.begin(), zeros.end());
    for (const double u : zeros)
      result.push_back(profile.section({here.place.span, u}, here.strand));
  }
  return result;
}

GapSection least_section(const GapProfile& profile,
                         const std::vector<GapSection>& sections,
                         const SectionSpan& span,
                         const SectionValue& value) {
  std::size_t least = span.first;
  for (std::size_t i = span.first; i <= span.second; ++i)
    if (value(sections[i]) < value(sections[least])) least = i;
  GapSection found = sections[least];
  const auto look = [&](std::size_t a, std::size_t b) {
    if (!joined(sections[a], sections[b])) return;
    const auto lower = least_between(profile, sections[a], sections[b], value);
    if (value(lower) < value(found) - same_mm) found = lower;
  };
  if (least > span.first) look(least - 1, least);
  if (least < span.second) look(least, least + 1);
  return found;
}

const GapSection& first_alike(const std::vector<GapSection>& sections,
                              const SectionSpan& span,
                              const GapSection& worst,
                              GapAtDepth GapSection::*gap) {
  for (std::size_t i = span.first; i <= span.second; ++i)
    if (std::abs((sections[i].*gap).gap_mm - (worst.*gap).gap_mm) < alike_mm)
      return sections[i];
  return worst;
}

}  // namespace sheerlap
