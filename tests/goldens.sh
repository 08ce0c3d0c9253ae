#!/usr/bin/env bash
# Runs the real program on the golden cases and compares all that it says and writes with
# what stands in fixtures/.
#   tests/goldens.sh PROGRAM          compares
#   tests/goldens.sh bless [PROGRAM]  rewrites what is expected
#
# A case is a folder fixtures/BOAT/golden/CASE with the file `arguments`: one argument a
# line. The program runs in a copy of fixtures/BOAT without its goldens. Expected are the
# files `status`, `stdout`, `stderr` and, in `written/`, every file the run has added; of drawn
# sheets the names alone, in `sheets`.
#
# A number at the end of a line of JSON may be 2e-6 off: the last digits of a double
# differ from one processor's library to another's.
set -euo pipefail
cd "$(dirname "$0")/.."
root=$PWD
bless=0
if [ "${1:-}" = bless ]; then
  bless=1
  shift
fi
program=$(realpath "${1:-build/cli/sheerlap}")
[ -x "$program" ] || {
  echo "there is no program $program: build it, or name it" >&2
  exit 2
}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
passed=0
failed=0

# near_numbers EXPECTED RESULT: takes over from the expected file each number that the
# result has within 2e-6, line by line
near_numbers() {
  awk 'NR == FNR { expected[FNR] = $0; next }
  {
    line = $0
    pattern = "-?[0-9]+(\\.[0-9]+)?(e[-+]?[0-9]+)?,?$"
    if (line != expected[FNR] && match(line, pattern)) {
      number = substr(line, RSTART); words = substr(line, 1, RSTART - 1)
      comma = line ~ /,$/
      if (match(expected[FNR], pattern) && comma == (expected[FNR] ~ /,$/) &&
          words == substr(expected[FNR], 1, RSTART - 1)) {
        apart = number - substr(expected[FNR], RSTART)
        if (apart < 2e-6 && apart > -2e-6) line = expected[FNR]
      }
    }
    print line
  }' "$1" "$2" >"$2.near"
  mv "$2.near" "$2"
}

# run_case CASE RESULT: runs a case and lays out what it gave
run_case() {
  local boat=${1%/golden/*} result=$2 run=$work/run
  rm -rf "$run" "$result"
  mkdir -p "$result/written"
  cp -r "$boat" "$run"
  rm -rf "$run/golden"
  mapfile -t arguments <"$1/arguments"
  local status=0
  (cd "$run" && env -u SOURCE_DATE_EPOCH LC_ALL=C "$program" "${arguments[@]}") \
    >"$result/stdout" 2>"$result/stderr" </dev/null || status=$?
  echo "$status" >"$result/status"
  local file
  while IFS= read -r file; do
    [ -e "$boat/$file" ] && cmp -s "$boat/$file" "$run/$file" && continue
    case $file in
      # checked by tests/joint/sheets/, which reads them back with other programs
      *.pdf | *.xlsx | *.html | *.dxf | *.svg)
        echo "$file" >>"$result/sheets"
        continue
        ;;
    esac
    mkdir -p "$result/written/$(dirname "$file")"
    cp "$run/$file" "$result/written/$file"
  done < <(cd "$run" && find . -type f | sed 's,^\./,,' | LC_ALL=C sort)
  rmdir "$result/written" 2>/dev/null || true
  while IFS= read -r file; do
    local expected=$1/${file#"$result"/}
    if [ -e "$expected" ]; then near_numbers "$expected" "$file"; fi
  done < <(find "$result" -name '*.json'; grep -lsx '{' "$result/stdout" || true)
}

for arguments_file in fixtures/*/golden/*/arguments; do
  [ -e "$arguments_file" ] || continue
  case=$(dirname "$arguments_file")
  run_case "$root/$case" "$work/result"
  cp "$case/arguments" "$work/result/arguments"
  if [ "$bless" = 1 ]; then
    rm -rf "$case"
    cp -r "$work/result" "$case"
  elif diff -ru "$case" "$work/result" >"$work/difference"; then
    passed=$((passed + 1))
  else
    failed=$((failed + 1))
    echo "$case differs:"
    head -n 60 "$work/difference"
  fi
done
if [ "$bless" = 1 ]; then
  git status --short fixtures
  exit
fi
if [ "$passed" -eq 0 ] && [ "$failed" -eq 0 ]; then
  echo "there are no golden cases in fixtures/" >&2
  exit 1
fi
echo "goldens: $passed passed, $failed failed"
[ "$failed" -eq 0 ]
