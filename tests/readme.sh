#!/usr/bin/env bash
# Compares the output that README.md shows with what the program prints.
#   tests/readme.sh PROGRAM          compares
#   tests/readme.sh bless [PROGRAM]  rewrites the README's output
#
# A block stands between the lines `<!-- output: ARGUMENTS -->` and `<!-- end -->`; with
# ` lines M-N` behind the arguments it shows these lines alone.
set -euo pipefail
cd "$(dirname "$0")/.."
bless=0
if [ "${1:-}" = bless ]; then
  bless=1
  shift
fi
program=$(realpath "${1:-build/cli/sheerlap}")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cp -r fixtures "$work/fixtures"

: >"$work/README.md"
inside=0
blocks=0
while IFS= read -r line || [ -n "$line" ]; do
  if [[ $line =~ ^'<!-- output: '(.*)' -->'$ ]]; then
    inside=1
    blocks=$((blocks + 1))
    command=${BASH_REMATCH[1]}
    shown='1,$p'
    if [[ $command =~ ^(.*)' lines '([0-9]+)-([0-9]+)$ ]]; then
      command=${BASH_REMATCH[1]}
      shown=${BASH_REMATCH[2]},${BASH_REMATCH[3]}p
    fi
    read -ra arguments <<<"$command"
    {
      printf '%s\n\n```text\n' "$line"
      (cd "$work" && env -u SOURCE_DATE_EPOCH "$program" "${arguments[@]}" 2>&1 || [ $? -eq 1 ]) | sed -n "$shown"
      printf '```\n\n'
    } >>"$work/README.md"
  elif [ "$line" = '<!-- end -->' ]; then
    inside=0
  fi
  [ "$inside" = 1 ] || printf '%s\n' "$line" >>"$work/README.md"
done <README.md

[ "$blocks" -gt 0 ] || {
  echo "README.md shows no output" >&2
  exit 1
}
if [ "$bless" = 1 ]; then
  cp "$work/README.md" README.md
else
  diff -u README.md "$work/README.md"
  echo "README.md shows what the program prints, $blocks times"
fi
