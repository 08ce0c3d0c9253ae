#!/usr/bin/env bash
# Makes the README's pictures from the sheets of the demo boat.
#   tests/pictures.sh [PROGRAM]
set -euo pipefail
cd "$(dirname "$0")/.."
. tests/packages.sh
need_packages poppler-utils
program=$(realpath "${1:-build/cli/sheerlap}")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
status=0
"$program" job fixtures/demo-640/joint.toml --out "$work" --quiet || status=$?
[ "$status" -le 1 ] || exit "$status"
mkdir -p pictures
pdftoppm -f 1 -l 1 -r 70 -gray -png -singlefile "$work/drawing.pdf" pictures/plan
pdftoppm -f 2 -l 2 -r 80 -gray -png -singlefile "$work/strip-starboard.pdf" pictures/strip
ls -l pictures
