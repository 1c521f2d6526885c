// The data of the binder's search: one script that hands everything that can be found to binder.js.

#ifndef BENCHLEAF_SRC_BINDER_FIND_INDEX_H_
#define BENCHLEAF_SRC_BINDER_FIND_INDEX_H_

#include "binder/library_documents.h"

#include "benchleaf/binder/book.h"
#include "benchleaf/extract/rules.h"

#include <string>
#include <vector>

namespace benchleaf::binder {

class FindIndex {
 public:
  // `uses` are the tubes of this book alone.
  void Add(const Book& book, const TubeUses& uses, TubeFiles& tubes);

  // A call of binderFind with an object of
  //   fold  36 characters: what 0 to 9 and A to Z become when look-alikes are taken for one another
  //   sets  for each set its name, its folder and its lines; a line is KIND TERM WORDS ADDRESS MORE, parted by tabs,
  //         with addresses from the set's folder. Kinds: s the set, h a title, p a part (MORE is its row's id), d drawn
  //         and in no row, t a tube type (MORE is the type's page).
  std::string Script(const Rules& rules) const;

 private:
  std::string sets_;
};

}  // namespace benchleaf::binder

#endif  // BENCHLEAF_SRC_BINDER_FIND_INDEX_H_
