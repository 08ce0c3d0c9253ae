#include "joint/sheets/page_size.h"

namespace sheerlap {
namespace {

constexpr double inch_mm = 25.4;

}  // namespace

PageSize small_page(Paper paper) {
  if (paper == Paper::A4) return {210, 297};
  return {8.5 * inch_mm, 11 * inch_mm};
}

PageSize drawing_page(Paper paper) {
  if (paper == Paper::A4) return {420, 297};
  return {17 * inch_mm, 11 * inch_mm};
}

}  // namespace sheerlap
