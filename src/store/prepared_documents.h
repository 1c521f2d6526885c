// What a PreparedManual holds.

#ifndef BENCHLEAF_SRC_STORE_PREPARED_DOCUMENTS_H_
#define BENCHLEAF_SRC_STORE_PREPARED_DOCUMENTS_H_

#include "benchleaf/store/prepared_manual.h"

#include <xapian.h>

#include <vector>

namespace benchleaf {

struct PreparedManual::Documents {
  std::vector<Xapian::Document> of_first_pages;  // as store::PageDocuments gives them
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_STORE_PREPARED_DOCUMENTS_H_
