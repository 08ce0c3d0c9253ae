#!/usr/bin/env bash
# The arrows run cli -> joint -> geometry and never back, in includes and in link lines;
# geometry/ knows no boats; nothing but the tests uses the reference libraries.
#   tests/layers.sh         looks at this tree
#   tests/layers.sh DIR     looks at another (for a test of this script)
set -euo pipefail
cd "${1:-$(dirname "$0")/..}"
faults=0

# refuse WHY PATTERN FILE...: the pattern must not be found
refuse() {
  local why=$1 pattern=$2
  shift 2
  if grep -rnEi "$pattern" "$@" >&2; then
    echo "layers: $why" >&2
    faults=1
  fi
}

# refuse_link TARGET FILE PATTERN: what a target links must not match
refuse_link() {
  local lines
  lines=$(sed -n "/^target_link_libraries($1\$/,/)/p; /^target_link_libraries($1 .*)/p" "$2")
  if [ -z "$lines" ]; then
    echo "layers: $2 has no target_link_libraries of $1" >&2
    faults=1
  elif grep -wE "$3" <<<"$lines" >&2; then
    echo "layers: $1 links what is above it" >&2
    faults=1
  fi
}

sources=(--include=*.h --include=*.cpp)
refuse "geometry/ includes what is above it" \
  '#include "(joint|cli|tests)/' "${sources[@]}" geometry
refuse "joint/ includes what is above it" '#include "(cli|tests)/' "${sources[@]}" joint
refuse "cli/ includes tests" '#include "tests/' "${sources[@]}" cli
refuse "joint/reasons/ includes what is above it" \
  '#include "(geometry/|joint/[^r]|joint/r[^e])' "${sources[@]}" joint/reasons
refuse "joint/mechanics/ includes what is above it" \
  '#include "joint/([^mr/][^/]*|[^/]*\.h)(/|")' "${sources[@]}" joint/mechanics
refuse "joint/ calls its documents" '#include "joint/(documents|sheets)/' \
  --exclude-dir=documents --exclude-dir=sheets "${sources[@]}" joint
refuse "joint/ calls its records" '#include "joint/records/' \
  --exclude-dir=documents --exclude-dir=records --exclude-dir=sheets "${sources[@]}" joint
refuse "SQL is spoken outside joint/records/" '#include <sqlite3' \
  --exclude-dir=records "${sources[@]}" geometry joint cli
refuse "joint/documents/ calls the sheets" '#include "joint/sheets/' \
  "${sources[@]}" joint/documents
refuse "geometry/ speaks of boats" \
  '\b(boat|hull|lip|deck|sheer|transom|starboard|port side|adhesive|fastener|screw|bead|jig|stem|bow)s?\b' \
  "${sources[@]}" geometry
refuse "an include does not start at the root" '#include "[^/"]*"' \
  "${sources[@]}" geometry joint cli tests
refuse "the product uses a library for tests" '#include <(gsl|geos|glpk|boost/test)' \
  "${sources[@]}" geometry joint cli

refuse_link geometry geometry/CMakeLists.txt 'joint|documents|cli'
refuse_link joint joint/CMakeLists.txt 'documents|records|sheets|cli'
refuse_link reasons joint/reasons/CMakeLists.txt 'geometry|mechanics|joint|documents|records|sheets|cli'
refuse_link records joint/records/CMakeLists.txt 'documents|sheets|cli'
refuse_link mechanics joint/mechanics/CMakeLists.txt 'joint|documents|records|sheets|cli'
refuse_link documents joint/documents/CMakeLists.txt 'sheets|cli'
refuse_link sheets joint/sheets/CMakeLists.txt 'cli'

exit "$faults"
