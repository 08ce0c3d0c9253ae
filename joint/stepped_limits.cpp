#include "joint/stepped_limits.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <utility>

namespace sheerlap {
namespace {

/// A part of a row of straight lines, from end to end; of some length.
struct Line {
  double from_mm = 0, to_mm = 0;
  double from_limit_mm = 0, to_limit_mm = 0;

  double limit_at(double at_mm) const {
    if (at_mm == to_mm) return to_limit_mm;
    const double share = (at_mm - from_mm) / (to_mm - from_mm);
    return from_limit_mm + share * (to_limit_mm - from_limit_mm);
  }
};

/// Lines one after the other whose limit has one name.
struct Row {
  std::string whose;
  std::vector<Line> lines;
};

/// The least and the largest limit of a stretch, and whether it may have one greatest
/// space.
struct Range {
  LimitSteps steps;
  double least_mm = std::numeric_limits<double>::infinity();
  double largest_mm = 0;

  void take(double limit_mm) {
    least_mm = std::min(least_mm, limit_mm);
    largest_mm = std::max(largest_mm, limit_mm);
  }
  /// The least limit a stretch with this largest one may have.
  double lowest_mm() const {
    const double step = steps.least_step.in_mm();
    return largest_mm - std::max(steps.share * largest_mm, step);
  }
  /// The largest one a stretch with this least one may have.
  double highest_mm() const {
    const double step = steps.least_step.in_mm();
    return std::max(least_mm / (1 - steps.share), least_mm + step);
  }
  bool fits(double limit_mm) const {
    if (largest_mm < least_mm) return true;  // nothing yet
    const double rounding = 1e-12 * std::max(largest_mm, limit_mm);
    return limit_mm >= lowest_mm() - rounding && limit_mm <= highest_mm() + rounding;
  }
};

std::vector<Row> rows_of(const std::vector<LimitSample>& samples, double most_mm) {
  std::vector<Row> rows;
  const auto add = [&](const std::string& whose, const Line& line) {
    if (!(line.from_mm < line.to_mm)) return;
    if (rows.empty() || rows.back().whose != whose) rows.push_back({whose, {}});
    rows.back().lines.push_back(line);
  };
  for (std::size_t i = 0; i + 1 < samples.size(); ++i) {
    const LimitSample& here = samples[i];
    const LimitSample& next = samples[i + 1];
    assert(here.girth <= next.girth);
    const Line line{here.girth.in_mm(), next.girth.in_mm(),
                    std::min(here.greatest.in_mm(), most_mm),
                    std::min(next.greatest.in_mm(), most_mm)};
    if (here.whose == next.whose) {
      add(here.whose, line);
      continue;
    }
    const double middle = (line.from_mm + line.to_mm) / 2;
    const double limit = (line.from_limit_mm + line.to_limit_mm) / 2;
    add(here.whose, {line.from_mm, middle, line.from_limit_mm, limit});
    add(next.whose, {middle, line.to_mm, limit, line.to_limit_mm});
  }
  return rows;
}

std::vector<Line> reversed(const std::vector<Line>& lines) {
  std::vector<Line> result;
  for (auto line = lines.rbegin(); line != lines.rend(); ++line)
    result.push_back(
        {-line->to_mm, -line->from_mm, line->to_limit_mm, line->from_limit_mm});
  return result;
}

/// Where a line leaves the range of a stretch that has come to `at_mm` on it; the
/// line's end if it does not.
double way_out(const Line& line, double at_mm, const Range& range) {
  Range whole = range;
  whole.take(line.limit_at(at_mm));
  if (whole.fits(line.to_limit_mm)) return line.to_mm;
  const bool rises = line.to_limit_mm > line.from_limit_mm;
  const double limit = rises ? whole.highest_mm() : whole.lowest_mm();
  const double share =
      (limit - line.from_limit_mm) / (line.to_limit_mm - line.from_limit_mm);
  const double out = line.from_mm + share * (line.to_mm - line.from_mm);
  return std::min(line.to_mm, std::max(out, std::nextafter(at_mm, line.to_mm)));
}

/// The ends of the stretches that are cut as late as can be.
std::vector<double> latest_cuts(const std::vector<Line>& lines,
                                const LimitSteps& steps) {
  std::vector<double> cuts;
  Range range{steps};
  for (const Line& line : lines) {
    if (!range.fits(line.from_limit_mm)) {  // a jump
      cuts.push_back(line.from_mm);
      range = Range{steps};
    }
    double at = line.from_mm;
    while (at < line.to_mm) {
      const double out = way_out(line, at, range);
      range.take(line.limit_at(at));
      range.take(line.limit_at(out));
      at = out;
      if (at == line.to_mm) break;
      cuts.push_back(at);
      range = Range{steps};
    }
  }
  cuts.push_back(lines.back().to_mm);
  return cuts;
}

/// The ends of the fewest stretches; the same from either end.
std::vector<double> even_cuts(const std::vector<Line>& lines, const LimitSteps& steps) {
  const std::vector<double> latest = latest_cuts(lines, steps);
  std::vector<double> earliest;
  for (const double cut : latest_cuts(reversed(lines), steps)) earliest.push_back(-cut);
  std::reverse(earliest.begin(), earliest.end());  // the first is the start
  earliest.erase(earliest.begin());
  earliest.push_back(latest.back());
  const std::size_t count = latest.size();
  if (earliest.size() != count)  // by rounding
    return earliest.size() < count ? earliest : latest;
  std::vector<double> cuts;
  for (std::size_t cut = 1; cut <= count; ++cut) {
    const double late = latest[cut - 1];
    const double early = earliest[cut - 1];
    cuts.push_back(2 * cut < count   ? late
                   : 2 * cut > count ? early
                                     : (late + early) / 2);
  }
  return cuts;
}

/// The stretches of a row between its cuts.
void add_stretches(std::vector<PitchLimit>& stretches,
                   const Row& row,
                   const std::vector<double>& cuts) {
  double from = row.lines.front().from_mm;
  auto line = row.lines.begin();
  for (const double to : cuts) {
    if (!(from < to)) continue;
    double least = std::numeric_limits<double>::infinity();
    while (line->to_mm <= from) ++line;
    for (auto part = line; part != row.lines.end() && part->from_mm < to; ++part)
      for (const double at : {std::max(part->from_mm, from), std::min(part->to_mm, to)})
        least = std::min(least, part->limit_at(at));
    stretches.push_back(
        {Length::mm(from), Length::mm(to), Length::mm(least), row.whose});
    from = to;
  }
}

}  // namespace

std::vector<PitchLimit> stepped_limits(const std::vector<LimitSample>& samples,
                                       const LimitSteps& steps) {
  assert(steps.share > 0 && steps.share < 1 && steps.least_step > Length());
  assert(steps.most > Length() && std::isfinite(steps.most.in_mm()));
  std::vector<PitchLimit> stretches;
  for (const Row& row : rows_of(samples, steps.most.in_mm()))
    add_stretches(stretches, row, even_cuts(row.lines, steps));
  return stretches;
}

}  // namespace sheerlap
