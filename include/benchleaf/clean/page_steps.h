// The steps of reading that a benchmark can leave out, one at a time, to tell what each is worth.

#ifndef BENCHLEAF_CLEAN_PAGE_STEPS_H_
#define BENCHLEAF_CLEAN_PAGE_STEPS_H_

namespace benchleaf {

// Every step is done unless a benchmark says otherwise.
struct PageSteps {
  bool surroundings = true;      // what is no part of the page is painted over
  bool even_ground = true;       // the page is divided by its own ground
  bool deskew = true;            // skew is taken out
  bool lines = true;             // straight lines are taken out before strings are looked for
  bool mending = true;           // ink that a taken line had in common with a letter is put back
  bool white = true;             // lettering white on black is turned
  bool pale = true;              // pale letters that the threshold left out are added
  bool callout_lines = true;     // rings and leaders of callouts are taken off letters that they touch
  bool phrases = true;           // long rows are read whole
  bool standing = true;          // standing strings are read
  bool upended = true;           // lying strings that read badly are tried upside down
  bool spaced = true;            // letter-spaced designators are closed up
  bool broken = true;            // blobs of fragments are read, too
  bool own_ink = true;           // foreign ink is blanked in a string's crop
  bool contrast = true;          // a crop's grey is stretched
  bool lettering_reader = true;  // the reader for the lettering of drawings is asked
  bool trust = true;             // what both readers say is weighed; otherwise each is believed as it says itself
};

}  // namespace benchleaf

#endif  // BENCHLEAF_CLEAN_PAGE_STEPS_H_
