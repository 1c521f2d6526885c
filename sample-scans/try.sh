#!/bin/sh
# Installs what is needed, builds, reads the sample manuals and shows what was found. The index and the pictures go to
# sample-scans/found/, which may be deleted.
set -eu
cd "$(dirname "$0")/.."
config/install-packages.sh build
cmake --preset release -DBENCHLEAF_TESTS=OFF -B .build/try >&2
cmake --build .build/try -j "$(nproc)" >&2
benchleaf=.build/try/src/benchleaf
library=sample-scans/library
found=sample-scans/found
rm -rf "$found"
mkdir -p "$found"

say() { printf '\n== %s\n' "$*"; }
show() {
  printf '\n$ benchleaf %s\n' "$*"
  "$benchleaf" "$@" --library "$library" --db "$found/index"
}

say "Reading the sample library (invented makers and models)"
"$benchleaf" index "$library" --db "$found/index"
show sets

say "1. Find a component: where is it drawn, where is it listed?"
show find C12
show picture C12 --in "Osterwick" -o "$found/C12.png"

say "2. A set's parts, each tied to the spot where it is drawn"
show parts "Larkfield"

say "3. Every set that uses a tube"
show tube 6CB6
show picture 6CB6 -o "$found/6CB6.png"

say "4. A set's tubes, what each does and what the heaters draw; two sets side by side"
show lineup "Osterwick"
show lineup "Larkfield" "Dunmarrow"

say "5. What a manual lacks, and where it contradicts itself"
show gaps "Osterwick"

"$benchleaf" export --db "$found/index" --library "$library" > "$found/export.jsonl"
say "Pictures and the whole export are in $found:"
ls "$found"
