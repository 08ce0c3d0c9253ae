#include "joint/adhesive_amounts.h"

#include <cassert>

namespace sheerlap {

AdhesiveAmounts amounts_of(Volume joint, Volume bead, const Adhesive& adhesive) {
  assert(adhesive.pack_usable > adhesive.nozzle_purge);
  PlainWorking work;
  const BoatAdhesive<double> boat = boat_adhesive(work, bead, adhesive);
  AdhesiveAmounts amounts;
  amounts.joint = joint;
  amounts.bead = bead;
  amounts.packs = static_cast<std::size_t>(boat.packs);
  amounts.nozzles = amounts.packs;
  amounts.boat = Volume::ml(boat.boat);
  if (adhesive.density)
    amounts.mass_kg = adhesive_mass(work, boat.boat, *adhesive.density);
  return amounts;
}

}  // namespace sheerlap
