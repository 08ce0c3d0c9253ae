#include "tests/joint/example_strength.h"

namespace sheerlap {

Joint with_strength(Joint joint, const JointLoad& load) {
  for (Laminate* laminate : {&joint.hull, &joint.lip}) {
    LaminateStrength& strength = laminate->strength;
    strength.modulus = 8000;
    strength.shear_modulus = 3000;
    strength.poisson = 0.3;
    strength.tension = 80;
    strength.shear = 50;
    strength.interlaminar = 14;
    strength.bearing = 100;
  }
  AdhesiveStrength& adhesive = joint.adhesive->strength;
  adhesive.modulus = 1000;
  adhesive.shear_modulus = 370;
  adhesive.shear_strength = 10;
  adhesive.peel_strength = 6;
  joint.fastener.strength.tensile = 700;
  joint.fastener.lip_hole = Length::mm(5.3);
  joint.fastener.hull_pilot = Length::mm(3.9);
  joint.loads.emplace();
  joint.loads->along = load.along;
  joint.loads->across = load.across;
  joint.loads->off = load.off;
  return joint;
}

}  // namespace sheerlap
