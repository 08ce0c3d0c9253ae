#include "geometry/spacing_pieces.h"

#include <algorithm>

namespace sheerlap {
namespace {

SpacingInterval ground_of(const SpacingPiece& piece) {
  return {piece.cost.from_mm(), piece.cost.to_mm()};
}

CostTie tie_between(const SpacingPiece& newcomer, const SpacingPiece& holder) {
  if (holder.points == newcomer.points) return CostTie::BySquares;
  return holder.points == any_points ? CostTie::Won : CostTie::Lost;
}

}  // namespace

std::pair<std::size_t, std::size_t> SpacingPieces::sharing(
    std::size_t cell, const SpacingInterval& part) const {
  const Held& held = held_[cell];
  const auto first = std::partition_point(
      held.begin(), held.end(),
      [&](const auto* piece) { return piece->cost.to_mm() < part.from_mm; });
  const auto last = std::partition_point(first, held.end(), [&](const auto* piece) {
    return piece->cost.from_mm() <= part.to_mm;
  });
  return {static_cast<std::size_t>(first - held.begin()),
          static_cast<std::size_t>(last - held.begin())};
}

std::vector<const SpacingPiece*> SpacingPieces::left_of(
    const SpacingPiece& piece) const {
  const SpacingInterval whole = ground_of(piece);
  const auto [first, last] = sharing(piece.cell, whole);
  std::vector<const SpacingPiece*> result;
  for (std::size_t index = first; index < last; ++index) {
    const SpacingPiece* holder = held_[piece.cell][index];
    const SpacingInterval part = ground_of(*holder);
    if (holder->before == piece.before && part.from_mm >= whole.from_mm &&
        part.to_mm <= whole.to_mm)
      result.push_back(holder);
  }
  return result;
}

const SpacingPiece& SpacingPieces::keep(const SpacingPiece& piece) {
  pieces_.push_back(piece);
  return pieces_.back();
}

void SpacingPieces::add_bound(const SpacingPiece& piece) {
  held_[piece.cell].push_back(&keep({piece.cost, piece.cell, any_points, nullptr}));
}

std::vector<SpacingInterval> SpacingPieces::won_by(const SpacingPiece& newcomer) const {
  std::vector<SpacingInterval> covered;
  std::vector<SpacingInterval> won;
  const auto [first, last] = sharing(newcomer.cell, ground_of(newcomer));
  for (std::size_t index = first; index < last; ++index) {
    const SpacingPiece& holder = *held_[newcomer.cell][index];
    append(covered, ground_of(holder));
    const CostOrder order{same_excess_mm_, tie_between(newcomer, holder)};
    for (const SpacingInterval& part : better_parts(newcomer.cost, holder.cost, order))
      append(won, part);
  }
  const auto open = rest_of(ground_of(newcomer), covered);
  won.insert(won.end(), open.begin(), open.end());
  join(won);
  return won;
}

void SpacingPieces::keep_parts(const SpacingPiece& piece,
                               const std::vector<SpacingInterval>& parts,
                               Held& held) {
  for (const SpacingInterval& part : parts)
    held.push_back(&keep({piece.cost.within(part.from_mm, part.to_mm), piece.cell,
                          piece.points, piece.before}));
}

std::vector<const SpacingPiece*> SpacingPieces::offer(const SpacingPiece& newcomer) {
  const std::vector<SpacingInterval> won = won_by(newcomer);
  if (won.empty()) return {};
  Held& held = held_[newcomer.cell];
  const auto [first, last] = sharing(newcomer.cell, ground_of(newcomer));
  Held own;
  keep_parts(newcomer, won, own);
  Held now = own;
  for (std::size_t index = first; index < last; ++index) {
    const SpacingPiece* holder = held[index];
    const SpacingInterval whole = ground_of(*holder);
    const std::vector<SpacingInterval> rest = rest_of(whole, won);
    const bool untouched = rest.size() == 1 && rest[0].from_mm == whole.from_mm &&
                           rest[0].to_mm == whole.to_mm;
    if (untouched)
      now.push_back(holder);
    else
      keep_parts(*holder, rest, now);
  }
  std::sort(now.begin(), now.end(), [](const auto* one, const auto* other) {
    if (one->cost.from_mm() != other->cost.from_mm())
      return one->cost.from_mm() < other->cost.from_mm();
    return one->cost.to_mm() < other->cost.to_mm();
  });
  const auto place = held.begin() + static_cast<std::ptrdiff_t>(first);
  const auto after =
      held.erase(place, held.begin() + static_cast<std::ptrdiff_t>(last));
  held.insert(after, now.begin(), now.end());
  return own;
}

}  // namespace sheerlap
