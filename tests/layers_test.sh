#!/usr/bin/env bash
# tests/layers.sh finds each fault it is there for: it is run on a copy of the tree with
# one fault put in at a time.
set -euo pipefail
cd "$(dirname "$0")/.."
copy=$(mktemp -d)
trap 'rm -rf "$copy"' EXIT
cases=0

# expect_fault FILE LINE: the file with that line at its end is refused
expect_fault() {
  rm -rf "${copy:?}"/*
  cp -r geometry joint cli tests "$copy"
  printf '%s\n' "$2" >>"$copy/$1"
  if bash tests/layers.sh "$copy" 2>/dev/null; then
    echo "tests/layers.sh does not see in $1: $2" >&2
    exit 1
  fi
  cases=$((cases + 1))
}

cp -r geometry joint cli tests "$copy"
bash tests/layers.sh "$copy"
expect_fault geometry/curve.h '#include "joint/joint.h"'
expect_fault geometry/curve.cpp '#include "cli/run.h"'
expect_fault geometry/curve.h '/// The sheer of a boat.'
expect_fault joint/fit.cpp '#include "cli/run.h"'
expect_fault joint/fit.cpp '#include "joint/documents/report.h"'
expect_fault joint/fit.cpp '#include "tests/joint/example_joint.h"'
expect_fault joint/fit.cpp '#include "fit.h"'
expect_fault joint/fit.cpp '#include "joint/sheets/sheets.h"'
expect_fault joint/fit.cpp '#include "joint/records/boat_store.h"'
expect_fault joint/records/boat_store.cpp '#include "joint/documents/report.h"'
expect_fault cli/run.cpp '#include <sqlite3.h>'
expect_fault joint/documents/report.cpp '#include "cli/run.h"'
expect_fault joint/documents/report.cpp '#include "joint/sheets/sheets.h"'
expect_fault joint/sheets/sheets.cpp '#include "cli/run.h"'
expect_fault cli/run.cpp '#include <gsl/gsl_spline.h>'
expect_fault geometry/CMakeLists.txt 'target_link_libraries(geometry PUBLIC joint)'
expect_fault joint/CMakeLists.txt 'target_link_libraries(joint PRIVATE cli)'
expect_fault joint/CMakeLists.txt 'target_link_libraries(joint PRIVATE documents)'
expect_fault joint/documents/CMakeLists.txt 'target_link_libraries(documents PRIVATE sheets)'
expect_fault joint/CMakeLists.txt 'target_link_libraries(joint PRIVATE records)'
expect_fault joint/records/CMakeLists.txt 'target_link_libraries(records PRIVATE documents)'
expect_fault joint/sheets/CMakeLists.txt 'target_link_libraries(sheets PRIVATE cli)'
echo "$cases faults seen"
