#!/usr/bin/env bash
# Times the charts of a record of 10,000 boats with 60 readings each: 60 places read at the
# top edge, or with "both" at both edges. For those who work on the program; not a test.
#   tests/record_speed.sh [PROGRAM [both]]
set -euo pipefail
cd "$(dirname "$0")/.."
program=$(realpath "${1:-build/cli/sheerlap}")
low=NULL
[ "${2:-}" = both ] && low='1 + top'
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cp fixtures/demo-640/record/boats.db "$work/boats.db"
# scattered by a multiplicative sequence: the same on every machine
sqlite3 "$work/boats.db" "
  DELETE FROM readings; DELETE FROM leak_marks; DELETE FROM leaks;
  DELETE FROM boats; DELETE FROM places;
  WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 60)
    INSERT INTO places SELECT i, 'port', 'girth', 100 * i FROM n;
  WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 10000)
    INSERT INTO boats SELECT i, 'Many', 1, 8, 3 + i * 7919 % 1000 / 1000.0,
      2 + i * 7919 % 997 / 1000.0, 109 FROM n;
  INSERT INTO readings SELECT place, 'dry', hull, top, $low, 100.0 * place, '' FROM (
    SELECT place, hull, 3 + (hull * 7919 + place * 104729) % 1009 / 1009.0 AS top
    FROM places, boats ORDER BY place, hull);"
for arguments in "--quiet" "" "--out $work/charts --quiet"; do
  echo "record chart $arguments"
  # shellcheck disable=SC2086
  time "$program" record chart "$work/boats.db" $arguments >"$work/out" || [ $? -eq 1 ]
done
