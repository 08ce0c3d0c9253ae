# glpk ships neither a CMake package nor a pkg-config file
find_path(glpk_INCLUDE_DIR glpk.h)
find_library(glpk_LIBRARY glpk)

include(FindPackageHandleStandardArgs)
find_package_handle_standard_args(glpk DEFAULT_MSG glpk_LIBRARY glpk_INCLUDE_DIR)

if(glpk_FOUND AND NOT TARGET glpk::glpk)
  add_library(glpk::glpk UNKNOWN IMPORTED)
  set_target_properties(glpk::glpk PROPERTIES
    IMPORTED_LOCATION "${glpk_LIBRARY}"
    INTERFACE_INCLUDE_DIRECTORIES "${glpk_INCLUDE_DIR}")
endif()
