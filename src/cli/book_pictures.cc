#include "cli/book_pictures.h"

#include <algorithm>
#include <chrono>
#include <string>
#include <system_error>
#include <utility>

namespace benchleaf {

namespace fs = std::filesystem;

BookPictures::BookPictures(const PicturingOptions& options, const TalkOptions& talk, StatusLine& line,
                           const std::atomic<bool>& stop)
    : library_(options.library),
      talk_(talk),
      line_(line),
      stop_(stop),
      pace_(&std::chrono::steady_clock::now),
      picturer_(options) {}

Result<std::vector<binder::PagePicture>> BookPictures::Make(const binder::Book& book,
                                                            const std::vector<ManualRecord>& manuals,
                                                            binder::BinderWriter& writer) {
  std::vector<binder::PagePicture> pictures(book.pages.size());
  std::vector<std::string> keys;
  std::vector<PageToPicture> to_draw;
  std::vector<std::size_t> positions;  // of those, in the book
  for (std::size_t i = 0; i < book.pages.size(); ++i) {
    if (stop_) return Fail(ErrorCode::kCancelled, "stopped");
    const binder::BookPage& page = book.pages[i];
    const int side = binder::LegibleSide(page.frame);
    keys.push_back(KeyOf(page, side, manuals[page.manual]));
    const auto kept = writer.KeepPicture(book, i, keys.back());
    if (!kept) return tl::unexpected(kept.error());
    if (*kept) {
      pictures[i] = **kept;
      ++kept_;
      pace_.LeaveOut();
      TellOfPage(page.place, ": as before");
      continue;
    }
    positions.push_back(i);
    to_draw.push_back({page.place.file, page.place.page, page.frame.orientation, side});
  }
  const auto done = [&](std::size_t drawn, Result<binder::PageFiles> files) -> Result<void> {
    const std::size_t page = positions[drawn];
    pace_.PageDone(!files);
    TellOfPage(book.pages[page].place, "");
    line_.Show(pace_.ToString(), pace_.done() == pace_.total());
    if (!files) {
      line_.Tell(files.error().ToString());
      pictures[page].failure = files.error();
      ++missing_;
      return {};
    }
    pictures[page] = files->size;
    return writer.AddPicture(book, page, keys[page], *files);
  };
  auto made = picturer_.Run(to_draw, done, stop_);
  if (!made) return tl::unexpected(made.error());
  return pictures;
}

std::string BookPictures::KeyOf(const binder::BookPage& page, int side, const ManualRecord& manual) const {
  const auto file = std::find_if(manual.files.begin(), manual.files.end(),
                                 [&](const FileRecord& record) { return record.path == page.place.file; });
  const fs::path path = library_ / page.place.file;
  std::error_code failed;
  const auto bytes = fs::file_size(path, failed);
  if (failed || file == manual.files.end()) return {};
  const auto changed = fs::last_write_time(path, failed).time_since_epoch();
  if (failed) return {};
  return binder::PictureKey(
      {file->hash, bytes, std::chrono::nanoseconds(changed).count(), page.place.page, page.frame.orientation, side});
}

void BookPictures::TellOfPage(const PagePlace& page, const char* more) {
  if (talk_.verbose) line_.Tell(page.file + ", page " + std::to_string(page.page) + more);
}

}  // namespace benchleaf
