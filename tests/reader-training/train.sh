#!/bin/sh
# Trains the net that reads drawings' lettering from nothing: crops of made pages, spoilt by the scan maker and cut by
# the program itself, are learnt by tests/reader-training/trainer (libtorch). Same seeds, same crops.
#
#   tests/reader-training/train.sh MAKE_CROPS WORK [CROPS] [THREADS]
#
# Some fifty minutes, THREADS being 1, after fifteen on two cores in which the crops are made. MAKE_CROPS is the built program, WORK
# a folder for all that is made (2 GB). The net comes out as WORK/lettering.net; the share of whole texts read right is
# printed for crops of letterings met in training, of some that never were, of coarse scans and of lists.
set -eu
make_crops="$1"
work="$2"
crops="${3:-470000}"
threads="${4:-1}"
tree="$(cd "$(dirname "$0")/../.." && pwd)"
"$tree/config/install-packages.sh" training
mkdir -p "$work"

crops() { # NAME SEED SHEETS KIND LETTERINGS
  [ -e "$work/$1" ] && return
  "$make_crops" "$work/$1.part" "$2" "$3" "$4" "$5"
  mv "$work/$1.part" "$work/$1"
}

crops usual 100000 400 sheets usual
crops usual-too 120000 400 sheets usual
crops all 500000 1400 sheets all
crops coarse 700000 250 coarse all
crops lists 300000 60 lists usual
crops lists-too 340000 240 lists all
crops coarse-lists 800000 60 coarse-lists all
crops judge.seen 900000 13 sheets usual
crops judge.unmet 910000 12 sheets unmet
crops judge.coarse 960000 6 coarse all
crops judge.lists 970082 5 lists all

cmake -S "$tree/tests/reader-training/trainer" -B "$work/trainer" -DCMAKE_BUILD_TYPE=Release > "$work/cmake.log"
cmake --build "$work/trainer" >> "$work/cmake.log"
cd "$work"
OMP_NUM_THREADS="$threads" trainer/train-net lettering.net "$crops" "$threads" \
  judge.seen judge.unmet judge.coarse judge.lists -- \
  usual usual-too all coarse lists lists-too coarse-lists
ls -l "$work/lettering.net"
