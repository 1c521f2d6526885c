// Puts back what taking out lines cut from letters. Private to clean/.

#ifndef BENCHLEAF_SRC_CLEAN_LETTER_MENDING_H_
#define BENCHLEAF_SRC_CLEAN_LETTER_MENDING_H_

#include "benchleaf/core/image.h"
#include "benchleaf/pixels/lines.h"

namespace benchleaf {

// Paints `ink` into `split.rest` at each crossing where what touches the line on one side and on the other is together
// no higher than a letter. Two letters that both touch a line from their sides stay apart.
void MendLetters(const InkImage& ink, double cap_px, LineSplit& split);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLEAN_LETTER_MENDING_H_
