#include "joint/adhesive_amounts.h"

#include <algorithm>
#include <cassert>

#include "joint/whole_packs.h"

namespace sheerlap {

AdhesiveAmounts amounts_of(Volume joint, Volume bead, const Adhesive& adhesive) {
  assert(adhesive.pack_usable > adhesive.nozzle_purge);
  AdhesiveAmounts amounts;
  amounts.joint = joint;
  amounts.bead = bead;
  const Volume laid = bead * (1 + adhesive.waste);
  const Volume of_a_pack = adhesive.pack_usable - adhesive.nozzle_purge;
  amounts.packs =
      std::max<std::size_t>(1, whole_packs(laid.in_ml(), of_a_pack.in_ml()));
  amounts.nozzles = amounts.packs;
  amounts.boat = laid + static_cast<double>(amounts.nozzles) * adhesive.nozzle_purge;
  if (adhesive.density)
    amounts.mass_kg = amounts.boat.in_ml() * *adhesive.density / 1000;
  return amounts;
}

}  // namespace sheerlap
