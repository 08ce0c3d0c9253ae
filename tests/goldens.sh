#!/usr/bin/env bash
# Runs the real program on the golden cases and compares all that it says and writes with
# what stands in fixtures/.
#   tests/goldens.sh PROGRAM          compares
#   tests/goldens.sh bless [PROGRAM]  rewrites what is expected
#
# A case is a folder fixtures/BOAT/golden/CASE with the file `arguments`: one argument a
# line. The program runs in a copy of fixtures/BOAT without its goldens. Expected are the
# files `status`, `stdout`, `stderr` and, in `written/`, every file the run has added.
#
# Numbers in JSON are compared to 1e-6: the last digits of a double may differ from one
# processor's library to another's.
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

rounded_json() {
  awk '{
    if (match($0, /-?[0-9]+(\.[0-9]+)?(e[-+]?[0-9]+)?,?$/) && $0 ~ /^ *("[a-z_]+": )?-?[0-9]/) {
      number = substr($0, RSTART, RLENGTH)
      comma = sub(/,$/, "", number) ? "," : ""
      text = sprintf("%.6f", number)
      sub(/0+$/, "", text); sub(/\.$/, "", text)
      if (text == "-0") text = "0"
      print substr($0, 1, RSTART - 1) text comma
    } else print
  }' "$1" >"$1.rounded"
  mv "$1.rounded" "$1"
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
    mkdir -p "$result/written/$(dirname "$file")"
    cp "$run/$file" "$result/written/$file"
  done < <(cd "$run" && find . -type f | sed 's,^\./,,' | LC_ALL=C sort)
  rmdir "$result/written" 2>/dev/null || true
  while IFS= read -r file; do rounded_json "$file"; done \
    < <(find "$result" -name '*.json'; grep -lsx '{' "$result/stdout" || true)
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
