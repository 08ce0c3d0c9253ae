#include "joint/sheets/flat_side.h"

#include <algorithm>

namespace sheerlap {

FlatSide::FlatSide(const RuledFace& lip_outer,
                   const PerimeterSide& laid_side,
                   const View& on_sheet)
    : lip(lip_outer), side(laid_side), view(on_sheet) {
  for (const Length girth : samples()) deepest_mm = std::max(deepest_mm, lap_mm(girth));
}

std::vector<Length> FlatSide::samples() const {
  constexpr int count = 200;
  std::vector<Length> girths;
  for (int k = 0; k <= count; ++k)
    girths.push_back(side.drill_line_length * (static_cast<double>(k) / count));
  return girths;
}

double FlatSide::lap_mm(Length girth) const {
  return lip.lap_mm(side.drill_line.place_at(girth));
}

}  // namespace sheerlap
