#!/bin/sh
# kill-campaign.sh BUILD [KILLS]: kills `index` of the build in that folder with SIGKILL at KILLS (100) random moments. After each kill the
# database must be sound (xapian-check) and answer; after another one while it is completed, and a last run, `export`
# must equal that of an undisturbed run byte for byte. Prints a line a kill, and the figures at the end.
set -eu
program="$1/src/benchleaf"
kills="${2:-100}"
here="$(cd "$(dirname "$0")" && pwd)"
work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT
"$1/tests/trust/make-small-scans" "$work/library" "$here/../../sample-scans/library/Larkfield 512/page-02.jpg"

index() { "$program" index "$work/library" --db "$work/db" --quiet "$@"; }
export_all() { "$program" export --library "$work/library" --db "$work/db"; }
milliseconds() { echo "$(($(date +%s%N) / 1000000))"; }

began="$(milliseconds)"
index || true
whole="$(($(milliseconds) - began))"
export_all > "$work/expected"
echo "an undisturbed run takes $whole ms" >&2

faults=0
begun=0
i=0
while [ "$i" -lt "$kills" ]; do
  i=$((i + 1))
  # Every second kill meets an index that an earlier kill has left in part.
  [ "$((i % 2))" -eq 0 ] || rm -rf "$work/db"
  moment="$(awk -v seed="$i" -v whole="$whole" 'BEGIN { srand(seed * 7919); printf "%d", rand() * whole }')"
  "$program" index "$work/library" --db "$work/db" --quiet 2> "$work/talk" &
  victim="$!"
  sleep "$(awk -v ms="$moment" 'BEGIN { printf "%.3f", ms / 1000 }')"
  kill -KILL "$victim" 2> /dev/null || true
  wait "$victim" 2> /dev/null || true
  state=sound
  if [ -e "$work/db/iamglass" ]; then
    begun=$((begun + 1))
    xapian-check "$work/db" > "$work/check" 2>&1 || state="xapian-check: $(tail -n 1 "$work/check")"
    # Killed before the first commit, there is nothing to ask yet.
    [ "$(stat -c %s "$work/db/postlist.glass")" -eq 0 ] || export_all > /dev/null 2> "$work/talk" ||
      state="export: $(cat "$work/talk")"
  fi
  if [ "$((i % 2))" -eq 0 ]; then
    index || true
    export_all > "$work/now" || state="export fails after completion"
    cmp -s "$work/expected" "$work/now" || state="another export after completion"
  fi
  [ "$state" = sound ] || faults=$((faults + 1))
  echo "kill $i after $moment ms: $state"
done
echo "$kills kills, $begun of them with an index on the disk, $faults faults"
[ "$faults" -eq 0 ]
