#include "joint/fit.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <functional>
#include <future>
#include <optional>

#include "joint/entry_squeeze.h"
#include "joint/fit_reach.h"
#include "joint/gap_search.h"
#include "joint/row_errors.h"
#include "joint/way_down.h"

namespace sheerlap {
namespace {

/// How far apart the gap is looked at, and how close to a limit still keeps it.
constexpr double step_mm = 10;
constexpr double keeps_mm = 1e-9;

/// The window a gap is to lie in.
struct Window {
  double least_mm;
  double greatest_mm;
};

/// How far a section is inside each limit: no interference, not tight, not wide.
struct Slack {
  double clear, above_least, below_greatest;
};

Slack slack(const GapSection& section, Window window) {
  return {section.least.gap_mm, section.least.gap_mm - window.least_mm,
          window.greatest_mm - section.greatest.gap_mm};
}

FitVerdict verdict(const Slack& slack) {
  if (slack.clear < -keeps_mm) return FitVerdict::Interference;
  if (slack.above_least < -keeps_mm) return FitVerdict::Tight;
  if (slack.below_greatest < -keeps_mm) return FitVerdict::Wide;
  return FitVerdict::Good;
}

/// What a run of a verdict is judged by: the smaller, the worse.
double standing(const GapSection& section, FitVerdict verdict, Window window) {
  const Slack slack = sheerlap::slack(section, window);
  switch (verdict) {
    case FitVerdict::Interference:
    case FitVerdict::Tight:
      return slack.above_least;
    case FitVerdict::Wide:
      return slack.below_greatest;
    case FitVerdict::Good:
      break;
  }
  return std::min(slack.above_least, slack.below_greatest);
}

/// What passes 0 where the verdict may change.
std::vector<SectionValue> limit_values(Window window) {
  std::vector<SectionValue> values;
  for (const auto limit : {&Slack::clear, &Slack::above_least, &Slack::below_greatest})
    values.push_back([=](const GapSection& section) {
      return slack(section, window).*limit + keeps_mm;
    });
  return values;
}

/// The verdict between two neighbouring sections, at one of which it may change.
FitVerdict verdict_between(const GapSection& a, const GapSection& b, Window window) {
  const Slack one = slack(a, window);
  const Slack other = slack(b, window);
  return verdict({(one.clear + other.clear) / 2,
                  (one.above_least + other.above_least) / 2,
                  (one.below_greatest + other.below_greatest) / 2});
}

GapAt gap_at(const GapSection& section, SideName side, const GapAtDepth& gap) {
  return {Length::mm(gap.gap_mm), side, Length::mm(section.girth_mm),
          Length::mm(gap.depth_mm)};
}

/// A run as the sections it spans.
struct SectionRun {
  std::size_t first, last;
  FitVerdict verdict;
};

std::vector<SectionRun> section_runs(const std::vector<GapSection>& sections,
                                     Window window) {
  std::vector<SectionRun> runs;
  for (std::size_t i = 0; i + 1 < sections.size(); ++i) {
    if (sections[i].strand != sections[i + 1].strand) continue;
    if (!joined(sections[i], sections[i + 1])) continue;
    const FitVerdict here = verdict_between(sections[i], sections[i + 1], window);
    const bool goes_on = !runs.empty() && runs.back().verdict == here &&
                         sections[runs.back().last].strand == sections[i].strand;
    if (goes_on)
      runs.back().last = i + 1;
    else
      runs.push_back({i, i + 1, here});
  }
  return runs;
}

FitRun fit_run(const GapProfile& profile,
               const std::vector<GapSection>& sections,
               const SectionRun& run,
               SideName side,
               Window window) {
  const SectionSpan span{run.first, run.last};
  const GapSection worst =
      least_section(profile, sections, span, [&](const GapSection& section) {
        return standing(section, run.verdict, window);
      });
  const Slack slack = sheerlap::slack(worst, window);
  const bool by_greatest =
      run.verdict == FitVerdict::Wide ||
      (run.verdict == FitVerdict::Good && slack.below_greatest < slack.above_least);
  const auto gap = by_greatest ? &GapSection::greatest : &GapSection::least;
  const GapSection& named = first_alike(sections, span, worst, gap);
  return {side, Length::mm(sections[run.first].girth_mm),
          Length::mm(sections[run.last].girth_mm), run.verdict,
          gap_at(named, side, {(worst.*gap).gap_mm, (named.*gap).depth_mm})};
}

std::vector<FitStation> stations(const Joint& joint,
                                 const Perimeter& perimeter,
                                 const PerimeterSide& side,
                                 const GapProfile& profile) {
  std::vector<FitStation> result;
  const Curve& curve = perimeter.hull->curve();
  const SidePath& path = side.sheer.path();
  for (std::size_t k = 0; k <= path.span_count; ++k) {
    const bool last = k == path.span_count;
    const std::size_t span = path.span(last ? k - 1 : k, curve.spans());
    const bool at_start = path.forward != last;
    const std::size_t knot = at_start ? span : curve.knot_after(span);
    const Length girth = side.sheer.girth_at_span(k);
    const bool opened = std::any_of(
        side.openings.begin(), side.openings.end(), [&](const OpeningSpan& opening) {
          return opening.sheer_from < girth && girth < opening.sheer_to;
        });
    if (opened || perimeter.knots[knot].added) continue;
    const Place place{span, at_start ? 0 : curve.chord_mm(span)};
    const GapSection section = profile.section(place, 0);
    result.push_back({joint.sheer.rows[perimeter.knots[knot].row].station,
                      side.name,
                      girth,
                      curve.at(place).point,
                      Length::mm(perimeter.hull->lap_mm(place)),
                      {Length::mm(section.top_mm), Length::mm(section.middle_mm),
                       Length::mm(section.low_mm)}});
  }
  return result;
}

/// A gap of a side that is its least or greatest, and how much that varies along it.
struct GapOfSide {
  GapAt at;
  Length spread;
};

/// The least gap, or with `sign` -1 the greatest; the first of those that are alike.
GapOfSide worst_gap(const std::vector<GapSection>& sections,
                    SideName side,
                    GapAtDepth GapSection::*gap,
                    double sign) {
  if (sections.empty())  // openings leave no joint
    return {{Length::mm(sign * 1e300), side, {}, {}}, Length()};
  const auto below = [&](const GapSection& a, const GapSection& b) {
    return sign * (a.*gap).gap_mm < sign * (b.*gap).gap_mm;
  };
  const auto [worst, best] =
      std::minmax_element(sections.begin(), sections.end(), below);
  const double spread = sign * ((*best.*gap).gap_mm - (*worst.*gap).gap_mm);
  const GapSection& named = spread <= alike_mm ? sections.front() : *worst;
  const GapAtDepth shown{(*worst.*gap).gap_mm, (named.*gap).depth_mm};
  return {gap_at(named, side, shown), Length::mm(spread)};
}

/// The fit of one side.
struct SideFit {
  EntryOfSide entry;
  GapOfSide least;
  GapOfSide greatest;
  std::vector<FitRun> runs;
  std::vector<FitStation> stations;
  MeanParts mean;
  std::optional<Place> lost;
};

SideFit side_fit(const Joint& joint,
                 const Perimeter& perimeter,
                 const PerimeterSide& side) {
  const Window window{joint.adhesive->gap_min.in_mm(), joint.adhesive->gap_max.in_mm()};
  const GapProfile profile(perimeter, side);
  auto sections = profile.sections(step_mm);
  sections =
      with_minima(profile, sections, {0, window.least_mm},
                  [](const GapSection& section) { return section.least.gap_mm; });
  sections =
      with_minima(profile, sections, {-window.greatest_mm},
                  [](const GapSection& section) { return -section.greatest.gap_mm; });
  SideFit fit;
  fit.least = worst_gap(sections, side.name, &GapSection::least, 1);
  fit.greatest = worst_gap(sections, side.name, &GapSection::greatest, -1);
  sections = with_zeros(profile, sections, limit_values(window));
  for (const SectionRun& run : section_runs(sections, window))
    fit.runs.push_back(fit_run(profile, sections, run, side.name, window));
  fit.stations = stations(joint, perimeter, side, profile);
  fit.mean = side_mean_parts(joint, perimeter, side, profile);
  fit.lost = profile.lost();
  fit.entry = side_entry(perimeter, side);
  return fit;
}

/// The index of the least value, of those that are alike the first.
std::size_t first_worst(const std::vector<SideWorst>& sides) {
  std::size_t worst = 0;
  for (std::size_t i = 1; i < sides.size(); ++i)
    if ((sides[worst].worst - sides[i].worst).in_mm() > alike_mm) worst = i;
  return worst;
}

void set_extremes(Fit& fit, const std::vector<SideFit>& sides) {
  std::vector<SideWorst> least, greatest, entry;
  for (const SideFit& side : sides) {
    const auto& [low, low_spread] = side.least;
    const auto& [high, high_spread] = side.greatest;
    least.push_back({low.side, low.gap, low.girth, low_spread});
    greatest.push_back({high.side, -high.gap, high.girth, high_spread});
    entry.push_back({side.entry.entry.side, side.entry.entry.worst,
                     side.entry.entry.girth, side.entry.spread});
  }
  fit.least = sides[first_worst(least)].least.at;
  fit.least_reach = reach_of(least, first_worst(least));
  fit.greatest = sides[first_worst(greatest)].greatest.at;
  fit.greatest_reach = reach_of(greatest, first_worst(greatest));
  fit.entry = sides[first_worst(entry)].entry.entry;
  fit.entry_reach = reach_of(entry, first_worst(entry));
}

template <class Element>
void append(std::vector<Element>& all, const std::vector<Element>& more) {
  all.insert(all.end(), more.begin(), more.end());
}

}  // namespace

Result<Fit> fit(const Joint& joint, const Perimeter& perimeter) {
  assert(joint.adhesive);
  std::vector<std::future<SideFit>> sides;
  for (const PerimeterSide& side : perimeter.sides)
    sides.push_back(std::async(std::launch::async, side_fit, std::cref(joint),
                               std::cref(perimeter), std::cref(side)));
  const auto mitres = mitre_mean_parts(joint, perimeter);
  if (!mitres) return tl::unexpected(at_rows(mitres.error(), perimeter.knots));
  Fit result;
  std::vector<SideFit> found;
  result.mean_parts = *mitres;
  for (auto& future : sides) {
    const SideFit side = future.get();
    if (side.lost)
      return invalid_input(
          fmt::format("sheer.row[{}]", perimeter.knots[side.lost->span].row),
          "no gap can be measured after this row: the lip face turns away from the "
          "hull face: the two faces must run side by side");
    found.push_back(side);
    append(result.runs, side.runs);
    append(result.stations, side.stations);
    result.mean_parts.add(side.mean);
  }
  PlainWorking work;
  result.mean = Length::mm(mean_gap(work, result.mean_parts));
  set_extremes(result, found);
  result.checks = fit_checks(result, *joint.adhesive, other_way_down(joint, perimeter));
  return result;
}

}  // namespace sheerlap
