#!/usr/bin/env bash
# Times the demo's made-up boats, and the same model in NumPy and SciPy beside it, which has
# to say the same of the same boats. For those who work on the program; not a test.
#   tests/tolerance_speed.sh [PROGRAM [BOATS [THREADS]]]
# PROGRAM is sheerlap_tolerance_model. Both are given in seconds, wall and processor; the
# ratio is of processor time, so that a busy machine does not count.
set -euo pipefail
cd "$(dirname "$0")/.."
. tests/packages.sh
need_packages python3 python3-numpy python3-scipy
program=$(realpath "${1:-build/tests/sheerlap_tolerance_model}")
boats=${2:-100000}
threads=${3:-2}
joint=fixtures/demo-640/joint.toml
read -r wall processor < <("$program" speed "$joint" "$boats" "$threads")
echo "$boats boats on $threads threads: $wall s, processor $processor s"
# HiGHS prints remarks of its own among the lines
other=$(OMP_NUM_THREADS=1 OPENBLAS_NUM_THREADS=1 \
  /usr/bin/python3 -B tests/tolerance_numpy.py "$program" "$joint" 200 --time)
grep 'boats alike' <<<"$other"
read -r _ _ _ other_wall other_processor < <(grep '^seconds a boat' <<<"$other")
echo "NumPy and SciPy: $other_wall s a boat, processor $other_processor s"
awk -v ours="$processor" -v boats="$boats" -v other="$other_processor" \
  'BEGIN { printf "ratio %.0f\n", other / (ours / boats) }'
