# Writes a C++ file that holds text files as strings.
#   cmake -DOUTPUT=FILE.cpp -DHEADER=PATH.h -DFOLDER=DIR "-DFILES=a.css b.js" -P embed_text.cmake
# Each string is named after its file, with _ for the dots.
separate_arguments(FILES)
set(source "// written by the build from the files named\n#include \"${HEADER}\"\n\n")
string(APPEND source "namespace sheerlap {\n")
foreach(name IN LISTS FILES)
  file(READ "${FOLDER}/${name}" text)
  string(FIND "${text}" ")text\"" ends)
  if(NOT ends EQUAL -1)
    message(FATAL_ERROR "${name} holds what ends a raw string")
  endif()
  string(REPLACE "." "_" variable "${name}")
  string(APPEND source
    "\nconst std::string_view ${variable} = R\"text(${text})text\";\n")
endforeach()
string(APPEND source "\n}  // namespace sheerlap\n")
file(WRITE "${OUTPUT}" "${source}")
