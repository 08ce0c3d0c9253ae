#!/usr/bin/env bash
# Builds the program and runs the whole job on the demo boat.
set -euo pipefail
cd "$(dirname "$0")/.."
. tests/packages.sh

need_packages "${program_packages[@]}"
build=build-demo
options=(-DCMAKE_BUILD_TYPE=Release -DBUILD_TESTING=OFF)
command -v ccache >/dev/null && options+=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
cmake -G Ninja -S . -B "$build" "${options[@]}" >/dev/null
cmake --build "$build" -j "${JOBS:-$(nproc)}" --target sheerlap

status=0
"$build/cli/sheerlap" job fixtures/demo-640/joint.toml --out demo-640-joint || status=$?
# the demo boat has faults on purpose: that a check fails is the program at work
[ "$status" -le 1 ] || exit "$status"
echo
echo "All of it is in $PWD/demo-640-joint; open joint.html there first, in a browser"
