#include "joint/mechanics/deck_pressure.h"

namespace sheerlap {

double category_factor(DesignCategory category) {
  switch (category) {
    case DesignCategory::A:
      return 1.0;
    case DesignCategory::B:
      return 0.8;
    case DesignCategory::C:
      return 0.6;
    case DesignCategory::D:
      return 0.4;
  }
  return 1.0;
}

}  // namespace sheerlap
