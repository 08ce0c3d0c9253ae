#include "geometry/spacing_path.h"

#include <algorithm>
#include <limits>
#include <queue>

namespace sheerlap {
namespace {

double first_excess(const SpacingPiece& piece) {
  return piece.cost.first_value().excess_mm;
}

class Search {
 public:
  Search(const SpacingGround& ground, const SpacingAllowance& allowance)
      : ground_(ground),
        allowance_(allowance),
        pieces_(ground.cells().size(), 1e-9 * ground.scale_mm()) {}

  /// Keeps, for every place that may matter, the least excess with which it is reached.
  ///
  /// @returns  the excess at the end; infinity if it cannot be reached
  double least_excess();
  /// Takes over as bounds what another search has found.
  void bound_by(const Search& other);
  /// @param most_excess_mm  what paths exceed this are of no use
  /// @param way_back  the way to the end, if the limits are kept; may be null
  std::optional<SpacingPath> fewest(GreatestLimits limits,
                                    double most_excess_mm,
                                    const SpacingWayBack* way_back);

 private:
  SpacingPiece first_piece() const {
    const double from = ground_.cells().front().from_mm;
    return {SpacingCost::at_start(from), ground_.start(), 0, nullptr};
  }
  SpacingPath path_to(const SpacingPiece& last) const;

  const SpacingGround& ground_;
  const SpacingAllowance allowance_;
  SpacingPieces pieces_;
};

double Search::least_excess() {
  const auto comes_later = [](const SpacingPiece* one, const SpacingPiece* other) {
    if (first_excess(*one) != first_excess(*other))
      return first_excess(*one) > first_excess(*other);
    return one->cost.from_mm() > other->cost.from_mm();
  };
  std::priority_queue<const SpacingPiece*, std::vector<const SpacingPiece*>,
                      decltype(comes_later)>
      waiting(comes_later);
  const SpacingRules rules{allowance_, GreatestLimits::Exceeded, false};
  double most = std::numeric_limits<double>::infinity();
  for (const SpacingPiece* piece : pieces_.offer(first_piece())) waiting.push(piece);
  while (!waiting.empty()) {
    const SpacingPiece& piece = *waiting.top();
    waiting.pop();
    if (piece.cell == ground_.end()) continue;
    if (first_excess(piece) > most) break;
    for (const SpacingPiece* part : pieces_.left_of(piece))
      for (const SpacingPiece& next : following(*part, ground_, rules)) {
        if (first_excess(next) > most) continue;
        for (const SpacingPiece* won : pieces_.offer(next)) waiting.push(won);
        if (next.cell != ground_.end()) continue;
        most = first_excess(*pieces_.in(next.cell).front()) + pieces_.same_excess_mm();
      }
  }
  return most;
}

void Search::bound_by(const Search& other) {
  for (std::size_t cell = 0; cell < ground_.cells().size(); ++cell)
    for (const SpacingPiece* piece : other.pieces_.in(cell)) pieces_.add_bound(*piece);
}

std::optional<SpacingPath> Search::fewest(GreatestLimits limits,
                                          double most_excess_mm,
                                          const SpacingWayBack* way_back) {
  const SpacingRules rules{allowance_, limits, true, way_back};
  std::vector<const SpacingPiece*> front{&pieces_.keep(first_piece())};
  for (std::size_t points = 1; !front.empty(); ++points) {
    std::vector<std::size_t> touched;
    for (const SpacingPiece* piece : front)
      for (const SpacingPiece& next : following(*piece, ground_, rules)) {
        if (first_excess(next) > most_excess_mm) continue;
        if (!pieces_.offer(next).empty()) touched.push_back(next.cell);
      }
    std::sort(touched.begin(), touched.end());
    touched.erase(std::unique(touched.begin(), touched.end()), touched.end());
    if (!touched.empty() && touched.back() == ground_.end())
      return path_to(*pieces_.in(ground_.end()).front());
    front.clear();
    for (const std::size_t cell : touched)
      for (const SpacingPiece* piece : pieces_.in(cell))
        if (piece->points == points) front.push_back(piece);
  }
  return std::nullopt;
}

SpacingPath Search::path_to(const SpacingPiece& last) const {
  SpacingPath path;
  path.excess_mm = first_excess(last);
  const double same_place = 1e-11 * ground_.scale_mm();
  double at = ground_.cells().back().to_mm;
  for (const SpacingPiece* piece = &last; piece != nullptr; piece = piece->before) {
    const SpacingCell& cell = ground_.cells()[piece->cell];
    at = std::clamp(at, piece->cost.from_mm(), piece->cost.to_mm());
    if (at - cell.from_mm <= same_place) at = cell.from_mm;
    if (cell.to_mm - at <= same_place) at = cell.to_mm;
    path.stops.push_back({piece->cell, at});
    at = piece->cost.before_mm(at);
  }
  std::reverse(path.stops.begin(), path.stops.end());
  return path;
}

}  // namespace

std::optional<SpacingPath> best_path(const SpacingGround& ground,
                                     const SpacingAllowance& allowance,
                                     GreatestLimits limits) {
  Search search(ground, allowance);
  if (limits == GreatestLimits::Kept) {
    const SpacingWayBack way_back(ground, allowance);
    if (auto path = search.fewest(limits, 0, &way_back)) return path;
    return Search(ground, allowance).fewest(limits, 0, nullptr);  // rounding hid it
  }
  Search bounds(ground, allowance);
  const double excess = bounds.least_excess();
  search.bound_by(bounds);
  return search.fewest(limits, excess, nullptr);
}

}  // namespace sheerlap
