#!/bin/sh
# One shard of a library, as a task of parallel.sh or slurm.sh: indexes it and ends well when it is whole. Pages that
# cannot be read (exit code 2) are named in the task's output and are no reason to run it again; whatever else went wrong
# is. A task that is run again goes on where it was.
#   shard.sh LIBRARY I N
# BENCHLEAF names the program (default: benchleaf), WORKERS how many pages it reads at the same time (default: 1).
set -u
"${BENCHLEAF:-benchleaf}" index "$1" --shard "$2/$3" --workers "${WORKERS:-1}"
code=$?
[ "$code" = 2 ] && exit 0
exit "$code"
