#include "work/index_outline.h"

namespace benchleaf {
namespace {

ManualRecord WithoutPages(const ManualRecord& manual) {
  ManualRecord head;
  head.set = manual.set;
  head.maker = manual.maker;
  head.model = manual.model;
  head.manual = manual.manual;
  head.title = manual.title;
  head.files = manual.files;
  head.rules = manual.rules;
  return head;
}

}  // namespace

bool IsLasting(ErrorCode code) { return code != ErrorCode::kIo && code != ErrorCode::kMissing; }

Result<IndexOutline> IndexOutline::Read(IndexWriter& writer, const std::atomic<bool>& cancel) {
  const Result<std::vector<ManualName>> names = writer.Manuals();
  if (!names) {
    return tl::unexpected(names.error());
  }
  IndexOutline outline;
  for (const auto& [set, manual] : *names) {
    if (cancel) {
      return Fail(ErrorCode::kCancelled, "stopped");
    }
    const Result<std::optional<ManualRecord>> stored = writer.StoredManual(set, manual, ManualParts::kOutline);
    if (!stored) {
      return tl::unexpected(stored.error());
    }
    if (*stored) {
      outline.Add(**stored);
    }
  }
  return outline;
}

void IndexOutline::Add(const ManualRecord& manual) {
  ManualOutline& outline = manuals_[{manual.set, manual.manual}];
  outline.head = WithoutPages(manual);
  for (const FileRecord& file : manual.files) {
    by_file_[file.path] = &outline;
    if (!file.failure) {
      page_counts_[file.hash] = file.page_count;
    }
  }
  for (const PageRecord& page : manual.pages) {
    outline.pages.push_back({page.file, page.page, page.volume, page.content_key, page.failure});
    // Two copies of a file in the library share their keys; a reading of one is as good as one of the other.
    if (!page.failure) {
      outcomes_[page.content_key] = std::nullopt;
    } else if (IsLasting(page.failure->code)) {
      outcomes_.try_emplace(page.content_key, page.failure);
    }
  }
}

const ManualOutline* IndexOutline::Find(const ManualName& name) const {
  const auto found = manuals_.find(name);
  return found == manuals_.end() ? nullptr : &found->second;
}

const ManualOutline* IndexOutline::ManualOf(const std::string& path) const {
  const auto found = by_file_.find(path);
  return found == by_file_.end() ? nullptr : found->second;
}

std::optional<int> IndexOutline::PageCount(const std::string& file_hash) const {
  const auto found = page_counts_.find(file_hash);
  return found == page_counts_.end() ? std::nullopt : std::optional<int>(found->second);
}

bool IndexOutline::IsSettled(const std::string& content_key) const { return outcomes_.contains(content_key); }

const Error* IndexOutline::Failure(const std::string& content_key) const {
  const auto found = outcomes_.find(content_key);
  return found != outcomes_.end() && found->second ? &*found->second : nullptr;
}

int IndexOutline::PageTotal() const {
  std::size_t pages = 0;
  for (const auto& [name, manual] : manuals_) {
    pages += manual.pages.size();
  }
  return static_cast<int>(pages);
}

}  // namespace benchleaf
