#include "joint/mechanics/torsion.h"

#include <cmath>
#include <cstddef>
#include <string>

namespace sheerlap {

Result<WallShape> wall_shape(const std::vector<SectionPlate>& plates) {
  if (plates.size() < 3)
    return invalid_input("plate", "not a closed section: three plates or more");
  WallShape shape;
  for (std::size_t i = 0; i < plates.size(); ++i) {
    const SectionPlate& plate = plates[i];
    const SectionPlate& before = plates[(i + plates.size() - 1) % plates.size()];
    const std::string where = "plate[" + std::to_string(i) + "]";
    if (!is_plate(plate))
      return invalid_input(where,
                           "not a plate: a length, a thickness and a modulus above 0");
    const double open = std::hypot(plate.y_1 - before.y_2, plate.z_1 - before.z_2);
    if (!(open <= 1e-6 * plate_length(plate)))
      return invalid_input(where, "section open here: start where the last plate ends");
    shape.enclosed += (plate.y_1 * plate.z_2 - plate.y_2 * plate.z_1) / 2;
    shape.sum_dst += plate_length(plate) / (plate.thickness * plate.modulus_ratio);
  }
  shape.enclosed = std::abs(shape.enclosed);
  return shape;
}

}  // namespace sheerlap
