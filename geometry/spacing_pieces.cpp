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

std::vector<const SpacingPiece*> SpacingPieces::left_of(
    const SpacingPiece& piece) const {
  const SpacingInterval whole = ground_of(piece);
  std::vector<const SpacingPiece*> result;
  for (const SpacingPiece* holder : held_[piece.cell]) {
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
  for (const SpacingPiece* holder : held_[newcomer.cell]) {
    append(covered, ground_of(*holder));
    const CostOrder order{same_excess_mm_, tie_between(newcomer, *holder)};
    for (const SpacingInterval& part : better_parts(newcomer.cost, holder->cost, order))
      append(won, part);
  }
  const auto open = rest_of(ground_of(newcomer), covered);
  won.insert(won.end(), open.begin(), open.end());
  join(won);
  return won;
}

std::vector<const SpacingPiece*> SpacingPieces::offer(const SpacingPiece& newcomer) {
  const std::vector<SpacingInterval> won = won_by(newcomer);
  if (won.empty()) return {};
  std::vector<const SpacingPiece*> held;
  const auto keep_part = [&](const SpacingPiece& piece, const SpacingInterval& part) {
    held.push_back(&keep({piece.cost.within(part.from_mm, part.to_mm), piece.cell,
                          piece.points, piece.before}));
  };
  for (const SpacingPiece* holder : held_[newcomer.cell]) {
    const SpacingInterval whole = ground_of(*holder);
    const std::vector<SpacingInterval> rest = rest_of(whole, won);
    if (rest.size() == 1 && rest[0].from_mm == whole.from_mm &&
        rest[0].to_mm == whole.to_mm) {
      held.push_back(holder);
      continue;
    }
    for (const SpacingInterval& part : rest) keep_part(*holder, part);
  }
  const auto own = held.size();
  for (const SpacingInterval& part : won) keep_part(newcomer, part);
  std::vector<const SpacingPiece*> result(
      held.begin() + static_cast<std::ptrdiff_t>(own), held.end());
  std::sort(held.begin(), held.end(), [](const auto* one, const auto* other) {
    return one->cost.from_mm() < other->cost.from_mm();
  });
  held_[newcomer.cell] = std::move(held);
  return result;
}

}  // namespace sheerlap
