#!/bin/sh
# mutation-campaign.sh BUILD [FILES] [SEED] [SCAN...]: indexes FILES (10000) spoilt scans with the build in that folder,
# made from small samples and the SCANs given, in batches of 250. The program must end by itself each time, and every
# file must be accounted for: named as a problem or with its pages in `export`. Prints the figures; a fault keeps its
# batch.
set -eu
program="$1/src/benchleaf"
tools="$1/tests/trust"
files="${2:-10000}"
seed="${3:-1}"
[ "$#" -gt 3 ] && shift 3 || shift "$#"
here="$(cd "$(dirname "$0")" && pwd)"
work="$(mktemp -d)"
small="$work/small"
"$tools/make-small-scans" "$small" "$here/../../sample-scans/library/Larkfield 512/page-02.jpg"
set -- "$small"/*.pdf "$small"/*.tif "$small"/pictures/* "$@"

fault() {
  faults=$((faults + 1))
  echo "$1 (kept: $work/fault-$faults)"
  cp -r "$work/library" "$work/fault-$faults"
}

batch=250
done=0
faults=0
read=0
failed=0
refused=0
lost=0
while [ "$done" -lt "$files" ]; do
  count="$batch"
  [ "$((files - done))" -ge "$batch" ] || count="$((files - done))"
  rm -rf "$work/library"
  mkdir "$work/library"
  "$tools/mutate-scans" "$work/library" "$count" "$((seed + done))" "$@"
  code=0
  timeout -s KILL 7200 "$program" index "$work/library" --json > "$work/summary" 2> "$work/talk" || code="$?"
  [ "$code" -eq 0 ] || [ "$code" -eq 2 ] || fault "exit code $code"
  "$program" export --library "$work/library" > "$work/export" || fault "export fails"
  tr '{' '\n' < "$work/summary" > "$work/problems"
  for file in "$work/library"/*; do
    name="${file##*/}"
    grep -qF "\"file\":\"$name\"" "$work/problems" "$work/export" || fault "$name is forgotten"
  done
  read=$((read + $(grep '"record":"page"' "$work/export" | grep -c '"status":"read"' || true)))
  failed=$((failed + $(grep '"record":"page"' "$work/export" | grep -c '"status":"failed"' || true)))
  refused=$((refused + $(grep -c '"page":0' "$work/problems" || true)))
  lost=$((lost + $(grep -cE '"code":"(crashed|timeout)"' "$work/problems" || true)))
  grep -hE '"code":"(crashed|timeout)"' "$work/problems" | sed 's/^/  /' || true
  done=$((done + count))
  echo "$done files: $read pages read, $failed not read, $refused files refused whole; $lost crashes and hangs of workers;" \
    "$faults faults"
done
[ "$faults" -gt 0 ] || rm -rf "$work"
[ "$faults" -eq 0 ]
