#include "joint/sheets/strip_line.h"

#include <algorithm>
#include <cassert>

namespace sheerlap {

StripLine::StripLine(const FlatPattern& pattern, const FlatStretch& stretch)
    : runs_left_(pattern.runs_left()),
      sheer_(pattern.top),
      drill_line_(pattern.drill_line),
      low_(pattern.low) {
  assert(drill_line_.size() > 1);
  double run = 0;
  girths_.push_back(0);
  for (std::size_t i = 1; i < drill_line_.size(); ++i) {
    run += (drill_line_[i] - drill_line_[i - 1]).norm();
    girths_.push_back(run);
  }
  // chords are a trifle shorter than the line: shared out over its length
  const double scale = (stretch.to - stretch.from).in_mm() / run;
  for (double& girth : girths_) girth = stretch.from.in_mm() + girth * scale;
  girths_.back() = stretch.to.in_mm();
}

std::size_t StripLine::segment_of(double girth_mm) const {
  const auto after = std::upper_bound(girths_.begin(), girths_.end(), girth_mm);
  const auto index = static_cast<std::size_t>(after - girths_.begin());
  return std::clamp<std::size_t>(index, 1, girths_.size() - 1);
}

const std::vector<Point2>& StripLine::points(StripEdge edge) const {
  switch (edge) {
    case StripEdge::Sheer:
      return sheer_;
    case StripEdge::DrillLine:
      return drill_line_;
    case StripEdge::Low:
      break;
  }
  return low_;
}

Point2 StripLine::at(StripEdge edge, Length girth) const {
  const double sought = std::clamp(girth.in_mm(), girths_.front(), girths_.back());
  const std::size_t i = segment_of(sought);
  const double width = girths_[i] - girths_[i - 1];
  const double share = width > 0 ? (sought - girths_[i - 1]) / width : 0;
  const std::vector<Point2>& line = points(edge);
  return line[i - 1] + share * (line[i] - line[i - 1]);
}

std::vector<Point2> StripLine::between(StripEdge edge, Length from, Length to) const {
  std::vector<Point2> result{at(edge, from)};
  const auto first = std::upper_bound(girths_.begin(), girths_.end(), from.in_mm());
  for (auto girth = first; girth != girths_.end() && *girth < to.in_mm(); ++girth)
    result.push_back(points(edge)[static_cast<std::size_t>(girth - girths_.begin())]);
  result.push_back(at(edge, to));
  return result;
}

Vector2 StripLine::along(Length girth) const {
  // over a little more than the spacing of the rulings, so that none is met twice
  constexpr Length reach = Length::mm(3);
  const Length before = std::max(from(), girth - reach);
  const Length after = std::min(to(), girth + reach);
  return (at(StripEdge::DrillLine, after) - at(StripEdge::DrillLine, before))
      .normalized();
}

}  // namespace sheerlap
