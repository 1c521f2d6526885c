#!/bin/sh
# What each step of reading is worth: the development sheets read with each step left out in turn, as a table in
# Markdown. Half an hour on a machine with nothing else to do.
#
#   tests/bench/leave-out.sh .build/release/tests/bench/bench_outside
set -eu
bench="$1"
figures() { # STEP...
  "$bench" --half dev --only benchleaf --grade medium --grade severe "$@" |
    awk '$3 == "designator" { printf " %s / %s | %s |", $5, $6, $NF }'
}
echo "| left out | medium | s/page | severe | s/page |"
echo "| --- | --- | --- | --- | --- |"
echo "| nothing |$(figures)"
for step in surroundings even-ground deskew lines mending white pale callout-lines phrases standing \
  upended spaced broken own-ink contrast lettering-reader trust; do
  echo "| $step |$(figures --without "$step")"
done
