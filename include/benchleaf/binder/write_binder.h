// Writes the binder: a folder of HTML, pictures and one search index, set by set.

#ifndef BENCHLEAF_BINDER_WRITE_BINDER_H_
#define BENCHLEAF_BINDER_WRITE_BINDER_H_

#include "benchleaf/binder/book.h"
#include "benchleaf/binder/page_picture.h"
#include "benchleaf/core/result.h"
#include "benchleaf/extract/rules.h"
#include "benchleaf/tubes/tube_table.h"

#include <cstddef>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace benchleaf::binder {

class BinderWriter {
 public:
  // `out` is the binder's place: missing, empty, or a binder of ours, which Finish replaces. `look` holds binder.css
  // and binder.js. Nothing shows at `out` before Finish; what was written goes away with a writer that did not finish.
  // Fails with kForeign when `out` holds anything else, with kMissing without `look`'s files, and with kIo.
  static Result<std::unique_ptr<BinderWriter>> Begin(const std::filesystem::path& out,
                                                     const std::filesystem::path& look);
  ~BinderWriter();
  BinderWriter(const BinderWriter&) = delete;
  BinderWriter& operator=(const BinderWriter&) = delete;

  // The two files of one page's picture, under their key (PictureKey). Fails with kIo.
  Result<void> AddPicture(const Book& book, std::size_t page, const std::string& key, const PageFiles& files);

  // Takes the picture over from the binder that is to be replaced, and gives its size; nothing where that has none with
  // this key. Fails with kIo.
  Result<std::optional<PagePicture>> KeepPicture(const Book& book, std::size_t page, const std::string& key);

  // The documents of one set; `pictures` are those of its pages. Fails with kIo.
  Result<void> AddSet(const Book& book, const std::vector<PagePicture>& pictures);

  // The documents over all sets and the search index; then the binder takes its place. Fails with kIo and kForeign.
  Result<void> Finish(const TubeTable& tubes, const Rules& rules);

 private:
  class Impl;
  explicit BinderWriter(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

}  // namespace benchleaf::binder

#endif  // BENCHLEAF_BINDER_WRITE_BINDER_H_
