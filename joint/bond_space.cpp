#include "joint/bond_space.h"

#include <limits>

namespace sheerlap {

EnclosedSpace bond_space(const BondBand& band,
                         const Perimeter& perimeter,
                         const RuledFace& lip) {
  const double endless = std::numeric_limits<double>::infinity();
  return {*perimeter.hull,
          lip,
          {band.from.value_or(Length()).in_mm(),
           band.to.value_or(Length::mm(endless)).in_mm()}};
}

}  // namespace sheerlap
