#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "geometry/result.h"

namespace sheerlap {

/// A number of a standard (N/mm2), and where it was read.
struct ClassValue {
  double mpa = 0;
  std::string source;  ///< ends in `memory_note` if it was not read there
};

/// The property class of a bolt, screw or stud: what its material carries.
struct StrengthClass {
  std::string name;      ///< "A4-80"
  std::string material;  ///< "austenitic stainless steel A4 (about 316)"
  ClassValue tensile;    ///< Rm, least
  ClassValue proof;      ///< Rp0.2, least
  ClassValue modulus;    ///< E
  std::string validity;  ///< the threads that it holds for
};

/// The names of the property classes that are known here.
std::vector<std::string_view> strength_class_names();

/// A property class by its name: "A4-80", "8.8".
///
/// @param where  address of the name in the input, for errors: "fastener.class"
/// @errors  at `where`: a class that is not known, with the nearest that is
/// @source  ISO 3506-1 (stainless), ISO 898-1 (8.8); each value's own
Result<StrengthClass> strength_class(std::string_view name, const std::string& where);

}  // namespace sheerlap
