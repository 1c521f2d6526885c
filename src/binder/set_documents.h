// The documents of one set, each as a whole HTML file.

#ifndef BENCHLEAF_SRC_BINDER_SET_DOCUMENTS_H_
#define BENCHLEAF_SRC_BINDER_SET_DOCUMENTS_H_

#include "binder/addresses.h"

#include "benchleaf/binder/book.h"
#include "benchleaf/binder/page_picture.h"

#include <cstddef>
#include <string>
#include <vector>

namespace benchleaf::binder {

// `pictures` are those of the book's pages, in their order.

// index.html: the manuals, and the pages by kind.
std::string PagesHtml(const Book& book, const std::vector<PagePicture>& pictures);

// parts.html: the parts index, and what is drawn and in no list.
std::string PartsHtml(const Book& book);

// paper.html: the parts index with a ringed picture of each place, to be printed.
std::string PaperHtml(const Book& book, const std::vector<PagePicture>& pictures);

// tubes.html: the lineups and their heaters.
std::string LineupHtml(const Book& book, TubeFiles& tubes);

// gaps.html: what the manuals lack, and where they contradict themselves.
std::string GapsHtml(const Book& book);

// sheet-0008.html: one page with its spots.
std::string SheetHtml(const Book& book, std::size_t page, const PagePicture& picture, TubeFiles& tubes);

}  // namespace benchleaf::binder

#endif  // BENCHLEAF_SRC_BINDER_SET_DOCUMENTS_H_
