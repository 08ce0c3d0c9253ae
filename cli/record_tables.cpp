#include "cli/record_tables.h"

namespace sheerlap {

ReadingLimits read_reading_limits(TomlTable& root) {
  TomlTable table = root.table("readings");
  ReadingLimits limits;
  limits.gap_min = table.length("gap_min", bounds::from_zero).optional();
  limits.gap_max = table.length("gap_max", bounds::above_zero).optional();
  limits.step = table.length("step", bounds::above_zero).optional();
  table.refuse_unknown_keys();
  return limits;
}

}  // namespace sheerlap
