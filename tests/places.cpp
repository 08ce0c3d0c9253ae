#include "tests/places.h"

namespace sheerlap {

std::filesystem::path fixtures_folder() { return FIXTURES; }

std::filesystem::path program_path() { return SHEERLAP_PROGRAM; }

}  // namespace sheerlap
