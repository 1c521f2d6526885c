// The pictures of a set's pages for the binder: kept where they are what they would be again, else drawn.

#ifndef BENCHLEAF_SRC_CLI_BOOK_PICTURES_H_
#define BENCHLEAF_SRC_CLI_BOOK_PICTURES_H_

#include "cli/status_line.h"
#include "cli/talk_options.h"

#include "benchleaf/binder/write_binder.h"
#include "benchleaf/record/manual_record.h"
#include "benchleaf/work/picture_pages.h"

#include <atomic>
#include <cstddef>
#include <filesystem>
#include <vector>

namespace benchleaf {

// Tells how far it is on a line that belongs to the caller.
class BookPictures {
 public:
  BookPictures(const PicturingOptions& options, const TalkOptions& talk, StatusLine& line,
               const std::atomic<bool>& stop);

  // So many pages come in all books together.
  void Start(int pages) { pace_.Start(pages); }

  // Puts the pictures of the book's pages into the binder and gives their sizes, or why a page has none. `manuals` are
  // those that the book is made of. Fails with kCancelled, with kIo, and when workers cannot work at all.
  Result<std::vector<binder::PagePicture>> Make(const binder::Book& book, const std::vector<ManualRecord>& manuals,
                                                binder::BinderWriter& writer);

  std::size_t missing() const { return missing_; }  // pages without a picture, of all books
  std::size_t kept() const { return kept_; }        // pictures that were not drawn again

 private:
  // Of the picture; empty where the scan cannot be looked at.
  std::string KeyOf(const binder::BookPage& page, int side, const ManualRecord& manual) const;
  void TellOfPage(const PagePlace& page, const char* more);

  std::filesystem::path library_;
  const TalkOptions& talk_;
  StatusLine& line_;
  const std::atomic<bool>& stop_;
  Pace pace_;
  PagePicturer picturer_;
  std::size_t missing_ = 0;
  std::size_t kept_ = 0;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_BOOK_PICTURES_H_
