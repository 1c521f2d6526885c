#!/bin/sh
# Indexes a library in N shards with GNU parallel and makes one index of them.
#   parallel.sh LIBRARY N OUT [OPTION OF parallel]...
#   parallel.sh ~/manuals 16 ~/manuals/.benchleaf                            # a shard for each core of this machine
#   parallel.sh /nfs/manuals 64 /nfs/index --sshloginfile hosts --env BENCHLEAF  # on hosts that see the same folders
# OUT must be new. Shards lie in LIBRARY/.benchleaf-shards/ and may be deleted afterwards; where they are kept, the next
# run reads only what has changed. BENCHLEAF and WORKERS are as shard.sh has them.
set -eu
. "$(dirname "$(realpath "$0")")/arguments.sh"
shift 3
seq "$count" | parallel --will-cite --retries 3 --line-buffer --tagstring 'shard {}' "$@" \
  "$jobs/shard.sh" "$library" {} "$count"
exec "$jobs/merge.sh" "$library" "$count" "$out"
