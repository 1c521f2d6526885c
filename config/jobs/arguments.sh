# shellcheck shell=sh
# What parallel.sh and slurm.sh are called with, LIBRARY N OUT; sourced by both. Sets library, count, out and jobs, the
# folder of these files; other arguments stay where they are. Without enough of them, the caller's first lines are shown.
if [ "$#" -lt 3 ]; then
  sed -n '2,9s/^# \{0,1\}//p' "$0" >&2
  exit 3
fi
case $2 in
  *[!0-9]* | 0* | '')
    echo "$(basename "$0"): N is a number of shards, from 1; not '$2'" >&2
    exit 3
    ;;
esac
library=$(realpath "$1")
count=$2
out=$(realpath -m "$3")
jobs=$(dirname "$(realpath "$0")")
