#!/bin/sh
# One index of all N shards of a library, the last step of parallel.sh and slurm.sh.
#   merge.sh LIBRARY N OUT
set -eu
library=$1
count=$2
out=$3
set --
for shard in $(seq "$count"); do
  set -- "$@" "$library/.benchleaf-shards/$shard-of-$count"
done
exec "${BENCHLEAF:-benchleaf}" merge --db "$out" "$@"
