#pragma once

#include <filesystem>

namespace sheerlap {

/// The folder of the invented boats and the published tables.
std::filesystem::path fixtures_folder();

/// The program under test.
std::filesystem::path program_path();

}  // namespace sheerlap
