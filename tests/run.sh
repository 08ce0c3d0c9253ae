#!/usr/bin/env bash
# Installs what is missing, builds, and runs every test.
#   tests/run.sh        the tests
#   tests/run.sh asan   the same under the address and undefined-behaviour sanitizers
#   tests/run.sh tidy   clang-tidy over our own sources
set -euo pipefail
cd "$(dirname "$0")/.."
. tests/packages.sh

kind=${1:-tests}
jobs=${JOBS:-$(nproc)}
build=build
options=(-DCMAKE_BUILD_TYPE=Release)
command -v ccache >/dev/null && options+=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)

case $kind in
  tests) ;;
  asan)
    build=build-asan
    options=(-DCMAKE_BUILD_TYPE=Debug "${options[@]:1}"
      "-DCMAKE_CXX_FLAGS=-O1 -fno-omit-frame-pointer -fsanitize=address,undefined -fno-sanitize-recover=all"
      -DCMAKE_CXX_FLAGS_DEBUG=-g1)
    ;;
  tidy) build=build-tidy ;;
  *)
    echo "unknown: $kind: nothing, asan or tidy" >&2
    exit 2
    ;;
esac

need_packages "${program_packages[@]}" "${test_packages[@]}"
[ "$kind" = tidy ] && need_packages clang-tidy

cmake -G Ninja -S . -B "$build" -DCMAKE_EXPORT_COMPILE_COMMANDS=ON "${options[@]}"

if [ "$kind" = tidy ]; then
  git ls-files '*.cpp' | xargs -P "$jobs" -n 4 clang-tidy -p "$build" --quiet
  exit
fi

cmake --build "$build" -j "$jobs"
[ "$kind" = tests ] &&
  cmake --build "$build" -j "$jobs" --target all_verify_interface_header_sets
ctest --test-dir "$build" --output-on-failure --no-tests=error
