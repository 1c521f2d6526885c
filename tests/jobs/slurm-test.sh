#!/bin/sh
# Runs config/jobs/slurm.sh for real on this machine: a controller, a node and munge of its own in a scratch folder, a
# library in shards. A task is killed in the middle; the job is run again, the node is lost and comes back, and the merged
# index must be, byte for byte in `export`, the one that a single run makes. Needs root and Debian's slurm-wlm and munge;
# ends what it has started.
#   slurm-test.sh BENCHLEAF [LIBRARY [SHARDS]]      (default: the sample library, 2 shards; both are read twice)
set -eu
[ "$#" -ge 1 ] || { sed -n '2,7s/^# \{0,1\}//p' "$0" >&2; exit 3; }
BENCHLEAF=$(realpath "$1")
here=$(dirname "$(realpath "$0")")
jobs=$here/../../config/jobs
count=${3:-2}
export BENCHLEAF OMP_THREAD_LIMIT=1
scratch=$(mktemp -d)
chmod 755 "$scratch"
node=$(hostname -s)
export SLURM_CONF="$scratch/slurm.conf"

started=
finish() {
  scancel --user=root 2>/dev/null || true
  for pid in $started; do kill "$pid" 2>/dev/null || true; done
  for pid in $started; do wait "$pid" 2>/dev/null || true; done
  rm -rf "$scratch"
}
trap finish EXIT
trap 'exit 130' INT TERM

fail() {
  echo "slurm-test: $*" >&2
  tail -n 5 "$scratch"/*.log "$scratch"/*.out >&2 2>/dev/null || true
  exit 1
}

# Waits, at most $1 seconds, until the rest of the line is true.
wait_for() {
  left=$1
  shift
  until "$@" > /dev/null 2>&1; do
    left=$((left - 1))
    [ "$left" -gt 0 ] || fail "waited in vain for: $*"
    sleep 1
  done
}

cp -r "${2:-$here/../../sample-scans/library}" "$scratch/library"
mkdir "$scratch/state" "$scratch/spool" "$scratch/run"
cat > "$SLURM_CONF" <<CONF
ClusterName=benchleaf
SlurmctldHost=$node(127.0.0.1)
SlurmctldPort=16817
SlurmdPort=16818
SlurmUser=root
AuthType=auth/munge
AuthInfo=socket=$scratch/munge.socket
CredType=cred/munge
StateSaveLocation=$scratch/state
SlurmdSpoolDir=$scratch/spool
SlurmctldPidFile=$scratch/run/slurmctld.pid
SlurmdPidFile=$scratch/run/slurmd.pid
ProctrackType=proctrack/linuxproc
TaskPlugin=task/none
MpiDefault=none
SelectType=select/cons_tres
SelectTypeParameters=CR_CPU
ReturnToService=1
NodeName=$node NodeAddr=127.0.0.1 CPUs=2 State=UNKNOWN
PartitionName=all Nodes=$node Default=YES MaxTime=INFINITE State=UP
CONF
dd if=/dev/urandom of="$scratch/munge.key" bs=1024 count=1 2> /dev/null
chmod 600 "$scratch/munge.key"
munged --foreground --force --key-file="$scratch/munge.key" --socket="$scratch/munge.socket" \
  --pid-file="$scratch/run/munged.pid" --seed-file="$scratch/run/munged.seed" --log-file="$scratch/munged.log" \
  > "$scratch/munged.log" 2>&1 &
started="$started $!"
wait_for 20 test -S "$scratch/munge.socket"
slurmctld -D -f "$SLURM_CONF" > "$scratch/slurmctld.log" 2>&1 &
started="$started $!"
slurmd -D -f "$SLURM_CONF" > "$scratch/slurmd.log" 2>&1 &
started="$started $!"
is_idle() { sinfo --noheader --format=%T | grep -qx idle; }
wait_for 60 is_idle
cd "$scratch"

submit() { "$jobs/slurm.sh" "$scratch/library" "$count" "$scratch/merged" --export=ALL; }
shards=$scratch/library/.benchleaf-shards
# The process of benchleaf that writes a shard of that name.
writer() { pgrep -f -- "^$BENCHLEAF index $scratch/library --shard $1/$count " | head -n 1; }
is_reading() { [ -e "$shards/$1-of-$count.unfinished" ] && [ -n "$(writer "$1")" ]; }
is_over() { [ -z "$(squeue --noheader)" ]; }

submit > job
wait_for 60 is_reading 1
sleep 2
kill -KILL "$(writer 1)" || fail "shard 1 was done before it could be killed"
wait_for 3600 is_over
[ ! -e "$scratch/merged" ] || fail "an index was merged though a task was killed"
[ -e "$shards/1-of-$count.unfinished" ] || fail "the killed shard left nothing to go on with"
echo "a task was killed: nothing is merged"

submit > job
wait_for 60 is_reading 1
scontrol update NodeName="$node" State=DOWN Reason=lost
is_pending() { squeue --noheader --states=PENDING --format=%j | grep -qx benchleaf; }
wait_for 60 is_pending
scontrol update NodeName="$node" State=RESUME
wait_for 3600 is_over
[ -e "$scratch/merged" ] || fail "no index was merged"
echo "the node was lost and came back: the index is merged"

code=0
"$BENCHLEAF" index "$scratch/library" --db "$scratch/single" --quiet || code=$?
[ "$code" = 0 ] || [ "$code" = 2 ] || fail "the single run ended with $code"
for index in merged single; do
  "$BENCHLEAF" export --db "$scratch/$index" > "$scratch/$index.jsonl"
done
cmp "$scratch/merged.jsonl" "$scratch/single.jsonl" || fail "the merged index is another than that of a single run"
echo "export: $(wc -l < "$scratch/merged.jsonl") lines, the same byte for byte"
