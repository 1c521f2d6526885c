#!/bin/sh
# Trains the net that reads drawings' lettering from nothing: crops of made pages, spoilt by the scan maker and cut by
# the program itself, are learnt by tests/reader-training/trainer (libtorch). Same seeds, same crops.
#
#   tests/reader-training/train.sh MAKE_CROPS WORK [THREADS]
#
# Some two and a half hours, THREADS being 1, of which half an hour on two cores goes to making the crops. MAKE_CROPS is
# the built program, WORK a folder for all that is made (4 GB). The net comes out as WORK/lettering.net; the share of whole
# texts read right is printed for crops of letterings met in training, of some that never were, of coarse scans and of
# lists.
set -eu
make_crops="$1"
work="$2"
threads="${3:-1}"
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
crops further-usual-a 140000 200 sheets usual
crops further-usual-b 140400 200 sheets usual
crops further-all-a 600000 700 sheets all
crops further-all-b 600700 600 sheets all
crops further-coarse 750000 250 coarse all
crops further-lists 400000 200 lists all
crops further-coarse-lists 820000 60 coarse-lists all
crops judge.seen 900000 13 sheets usual
crops judge.unmet 910000 12 sheets unmet
crops judge.coarse 960000 6 coarse all
crops judge.lists 970082 5 lists all

cmake -S "$tree/tests/reader-training/trainer" -B "$work/trainer" -DCMAKE_BUILD_TYPE=Release > "$work/cmake.log"
cmake --build "$work/trainer" >> "$work/cmake.log"
cd "$work"

train() { # OUT CROPS RATE FROM TRAIN...
  out="$1" crops="$2" rate="$3" from="$4"
  shift 4
  OMP_NUM_THREADS="$threads" trainer/train-net "$out" "$crops" "$rate" "$threads" "$from" \
    judge.seen judge.unmet judge.coarse judge.lists -- "$@"
}

first="usual usual-too all coarse lists lists-too coarse-lists"
further="further-usual-a further-usual-b further-all-a further-all-b further-coarse further-lists further-coarse-lists"
# Lists of files, to be split.
# shellcheck disable=SC2086
train first.net 470000 0.002 - $first
# shellcheck disable=SC2086
train second.net 760000 0.001 first.net $further
# shellcheck disable=SC2086
train lettering.net 130000 0.0004 second.net $further
ls -l "$work/lettering.net"
