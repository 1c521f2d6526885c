#!/bin/sh
# run.sh BUILD SECONDS [TARGET...]: fuzzes each target of a build with the preset "fuzz" for so many seconds, one after
# the other. New inputs go to BUILD/corpus, what a target fails on to BUILD/crash-*: the least of it becomes a file of
# tests/fuzz/corpus, which the normal build replays as a test.
set -eu
build="$1"
seconds="$2"
shift 2
here="$(cd "$(dirname "$0")" && pwd)"
[ "$#" -gt 0 ] || set -- $(cd "$here" && ls fuzz_*.cc | sed 's/\.cc$//')
faults=0
for target in "$@"; do
  mkdir -p "$build/corpus/$target"
  if "$build/tests/fuzz/$target" -max_total_time="$seconds" -max_len=4096 -timeout=20 -rss_limit_mb=2048 -print_final_stats=1 \
    -artifact_prefix="$build/crash-$target-" "$build/corpus/$target" "$here/corpus/$target" 2> "$build/$target.log"; then
    echo "$target: $(sed -n 's/^stat::number_of_executed_units: *//p' "$build/$target.log") inputs, no fault"
  else
    faults=$((faults + 1))
    echo "$target: FAULT, see $build/$target.log"
  fi
done
[ "$faults" -eq 0 ]
