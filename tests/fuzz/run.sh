#!/bin/sh
# run.sh BUILD SECONDS [TARGET...]: fuzzes each target of a build with the preset "fuzz" for so many seconds of the
# processor, one after the other, whatever else the machine has to do. New inputs go to BUILD/corpus, what a target fails
# on to BUILD/crash-*: the least of it becomes a file of tests/fuzz/corpus, which the normal build replays as a test.
set -eu
build="$1"
seconds="$2"
shift 2
here="$(cd "$(dirname "$0")" && pwd)"
[ "$#" -gt 0 ] || set -- $(cd "$here" && ls fuzz_*.cc | sed 's/\.cc$//')

# Sets `used` to the seconds of the processor that all targets have had so far. A subshell's `times` would know none of them.
count_used() {
  times > "$build/times"
  used="$(awk 'NR == 2 { split($1, own, "m"); split($2, kernel, "m"); print int(60 * (own[1] + kernel[1]) + own[2] + kernel[2]) }' \
    "$build/times")"
}

faults=0
for target in "$@"; do
  mkdir -p "$build/corpus/$target"
  inputs=0
  count_used
  end=$((used + seconds))
  fault=no
  while left=$((end - used)) && [ "$left" -gt 0 ]; do
    if ! "$build/tests/fuzz/$target" -max_total_time="$((left < 300 ? left : 300))" -max_len=4096 -timeout=60 -rss_limit_mb=2048 \
      -print_final_stats=1 -artifact_prefix="$build/crash-$target-" "$build/corpus/$target" "$here/corpus/$target" \
      2> "$build/$target.log"; then
      fault=yes
      break
    fi
    count_used
    inputs=$((inputs + $(sed -n 's/^stat::number_of_executed_units: *//p' "$build/$target.log")))
  done
  if [ "$fault" = no ]; then
    echo "$target: $inputs inputs in $((used - end + seconds)) s of the processor, no fault"
  else
    faults=$((faults + 1))
    echo "$target: FAULT, see $build/$target.log"
  fi
done
[ "$faults" -eq 0 ]
