#include "cli/version.h"

namespace sheerlap {

std::string version_text() {
  return "sheerlap " SHEERLAP_VERSION
         "\nGPL-3.0-or-later; there is no warranty, to the extent the law permits\n";
}

}  // namespace sheerlap
