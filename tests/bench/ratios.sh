#!/bin/sh
# Prints ratios of whole runs of `index`, all measured in one run on this machine: an unchanged library against the first
# run, and two workers against one. Takes some minutes; on a machine with other work the second ratio tells little.
#   ratios.sh BENCHLEAF [LIBRARY]        (default library: the samples)
set -eu
benchleaf=$(realpath "$1")
library=$(realpath "${2:-$(dirname "$0")/../../sample-scans/library}")
export OMP_THREAD_LIMIT=1
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT

# Seconds by the clock that an index of the library into folder $1 takes with $2 workers.
seconds() {
  start=$(date +%s.%N)
  code=0
  "$benchleaf" index "$library" --db "$scratch/$1" --workers "$2" --quiet || code=$?
  [ "$code" = 0 ] || [ "$code" = 2 ] || exit "$code"
  end=$(date +%s.%N)
  echo "$start $end" | awk '{ printf "%.3f", $2 - $1 }'
}

one=$(seconds one 1)
again=$(seconds one 1)
two=$(seconds two 2)
echo "$one $again $two" | awk '{
  printf "first run, 1 worker    %8.2f s\n", $1
  printf "unchanged library      %8.2f s   %.2f %% of the first run\n", $2, 100 * $2 / $1
  printf "first run, 2 workers   %8.2f s   %.2f times as fast as 1\n", $3, $1 / $3
}'
