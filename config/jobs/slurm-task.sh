#!/bin/sh
# A task of slurm.sh's array. Slurm runs a copy of this file, so it is told where the others are.
exec "$1/shard.sh" "$2" "$SLURM_ARRAY_TASK_ID" "$3"
