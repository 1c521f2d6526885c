#!/bin/sh
# Indexes a library in N shards on a Slurm cluster and makes one index of them: an array of N tasks, and a job that waits
# for all of them.
#   slurm.sh LIBRARY N OUT [OPTION OF sbatch]...
#   slurm.sh /nfs/manuals 64 /nfs/index --time=24:00:00 --partition=batch
# All nodes must see the same folders. OUT must be new. A task whose node is lost is queued again and goes on where it was;
# one that fails keeps the merge from starting: look into its output (benchleaf-JOB_TASK.out), mend it, and run this again.
# BENCHLEAF and WORKERS are as shard.sh has them.
set -eu
. "$(dirname "$(realpath "$0")")/arguments.sh"
shift 3
array=$(sbatch --parsable --job-name=benchleaf --array="1-$count" --cpus-per-task="${WORKERS:-1}" --requeue --open-mode=append \
  --output=benchleaf-%A_%a.out "$@" "$jobs/slurm-task.sh" "$jobs" "$library" "$count")
sbatch --parsable --job-name=benchleaf-merge --dependency="afterok:${array%%;*}" --kill-on-invalid-dep=yes \
  --output=benchleaf-merge-%j.out "$@" "$jobs/merge.sh" "$library" "$count" "$out"
