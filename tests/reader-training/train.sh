#!/bin/sh
# Trains the second reader from nothing: lines drawn and spoiled by the scan maker and cut by the program itself,
# tesseract's lstmtraining on one core, an integer model at the end. Same seeds, same lines.
#
#   tests/reader-training/train.sh MAKE_LINES WORK [SHEETS] [LISTS] [ITERATIONS] [SLOW_ITERATIONS]
#
# About two hours on one core.
# MAKE_LINES is the built program, WORK a folder for all that is made. The model comes out as WORK/lettering.traineddata;
# the error rates on lines of seen and of unseen letterings are printed.
set -eu
make_lines="$1"
work="$2"
sheets="${3:-312}"
lists="${4:-36}"
iterations="${5:-49000}"
slow_iterations="${6:-10000}"
export OMP_THREAD_LIMIT=1
"$(dirname "$0")/../../config/install-packages.sh" training
mkdir -p "$work/langdata"

lines() { # NAME SEED SHEETS seen|unseen|lists
  [ -e "$work/$1.list" ] && return
  "$make_lines" "$work/$1" "$2" "$3" "$4"
  for picture in "$work/$1"/*.tif; do
    tesseract "$picture" "${picture%.tif}" --psm 13 lstm.train 2> "$work/tesseract.log"
    rm "$picture"
  done
  ls "$work/$1"/*.lstmf > "$work/$1.list"
}

lines train 100000 "$sheets" seen
lines lists 300000 "$lists" lists
lines judge-seen 900000 12 seen
lines judge-unseen 910000 12 unseen
lines judge-lists 920000 4 lists
cat "$work/train.list" "$work/lists.list" > "$work/all.list"

unicharset_extractor --output_unicharset "$work/unicharset" --norm_mode 1 "$work"/*/*.box > "$work/unicharset.log" 2>&1
# combine_lang_model wants the file, and refuses it empty.
echo '#' > "$work/langdata/radical-stroke.txt"
combine_lang_model --input_unicharset "$work/unicharset" --script_dir "$work/langdata" --output_dir "$work" \
  --lang start > "$work/model.log" 2>&1

lstmtraining --model_output "$work/net" --traineddata "$work/start/start.traineddata" \
  --net_spec '[1,36,0,1 Ct3,3,16 Mp3,3 Lfys48 Lfx64 Lrx64 Lfx96 O1c1]' --learning_rate 0.001 \
  --train_listfile "$work/all.list" --max_iterations "$iterations" --debug_interval 0 > "$work/training.log" 2>&1 ||
  tail -3 "$work/training.log" >&2
# At a fifth of the rate the error falls from 10 to 6.4 % of the characters within some 10,000 steps.
lstmtraining --model_output "$work/slow" --traineddata "$work/start/start.traineddata" \
  --continue_from "$work/net_checkpoint" --learning_rate 0.0002 --reset_learning_rate \
  --train_listfile "$work/all.list" --max_iterations "$((iterations + slow_iterations))" --debug_interval 0 \
  > "$work/slow.log" 2>&1 || tail -3 "$work/slow.log" >&2
lstmtraining --stop_training --convert_to_int --continue_from "$work/slow_checkpoint" \
  --traineddata "$work/start/start.traineddata" --model_output "$work/lettering.traineddata" > "$work/stop.log" 2>&1
for judged in judge-seen judge-unseen judge-lists; do
  echo "$judged: $(lstmeval --model "$work/lettering.traineddata" --eval_listfile "$work/$judged.list" \
    --verbosity 0 2>&1 | grep -i 'eval' | tail -1)"
done
ls -l "$work/lettering.traineddata"
