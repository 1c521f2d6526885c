#include "work/confine.h"
#include "work/copy_plan.h"
#include "work/job_server.h"
#include "work/protocol.h"
#include "work/unique_fd.h"

#include "benchleaf/binder/page_picture.h"
#include "benchleaf/core/fnv.h"
#include "benchleaf/pixels/image_file.h"
#include "benchleaf/raster/page_source.h"
#include "benchleaf/raster/searchable_copy.h"
#include "benchleaf/reading/page_reader.h"
#include "benchleaf/work/index_library.h"

#include <malloc.h>
#include <unistd.h>

#include <cstddef>
#include <exception>
#include <fstream>
#include <iostream>
#include <memory>
#include <new>
#include <sstream>
#include <string>
#include <utility>

namespace benchleaf {
namespace {

// A fold-out of three sheets at 300 dpi; a page is not loaded for viewing with a longer side.
constexpr int kViewedSide = 12000;

// Does jobs one after the other; keeps the last file open and the reader's models loaded.
class JobDoer {
 public:
  explicit JobDoer(std::filesystem::path config) : config_(std::move(config)) {}

  Answer Do(const Job& job) {
    // The libraries behind a job may throw on pages that they were not made for. Such a worker answers once more, so
    // that the reason is known, and is then replaced.
    try {
      return {job.number, Outcome(job)};
    } catch (const std::bad_alloc&) {
      return {job.number, Error{ErrorCode::kCrashed, "reader ran out of memory", job.name, job.page}};
    } catch (const std::exception& exception) {
      return {job.number,
              Error{ErrorCode::kCrashed, std::string("reader failed: ") + exception.what(), job.name, job.page}};
    }
  }

 private:
  using AnyOutcome = decltype(Answer::outcome);

  AnyOutcome Outcome(const Job& job) {
    switch (job.operation) {
      case Operation::kCountPages:
        return Count(job);
      case Operation::kReadPage:
        return Read(job);
      case Operation::kViewPage:
        return View(job);
      case Operation::kCopyPages:
        return CopyPages(job);
      case Operation::kCopyPiece:
        return CopiedPiece(job);
      case Operation::kPicturePage:
        break;
    }
    return Picture(job);
  }

  AnyOutcome Count(const Job& job) {
    const Result<PageSource*> source = Open(job);
    if (!source) {
      return source.error();
    }
    const int pages = (*source)->page_count();
    if (pages > kMaxPagesPerFile) {
      return Error{ErrorCode::kTooLarge,
                   "has " + std::to_string(pages) + " pages; at most " + std::to_string(kMaxPagesPerFile) +
                       " are read, split the file",
                   job.name, 0};
    }
    return PageCount{pages};
  }

  AnyOutcome Read(const Job& job) {
    if (!reader_) {
      Result<std::unique_ptr<PageReader>> made = PageReader::Create(config_);
      if (!made) {
        return Unfit{std::move(made.error())};
      }
      reader_ = std::move(*made);
    }
    const Result<PageSource*> source = Open(job);
    if (!source) {
      return source.error();
    }
    Result<RasterPage> page = (*source)->Load(job.page);
    if (!page) {
      return std::move(page.error());
    }
    Result<PageReading> reading = reader_->Read(*page, job.mode);
    if (!reading) {
      return std::move(reading.error());
    }
    if (reading->words.size() > kMaxWordsPerPage) {
      return Error{ErrorCode::kTooLarge,
                   "has " + std::to_string(reading->words.size()) + " words; at most " +
                       std::to_string(kMaxWordsPerPage) + " are taken",
                   job.name, job.page};
    }
    return std::move(*reading);
  }

  AnyOutcome View(const Job& job) {
    const Result<PageSource*> source = Open(job);
    if (!source) {
      return source.error();
    }
    if (viewed_page_ != job.page) {
      Result<ColorImage> page = (*source)->LoadColor(job.page, kViewedSide);
      if (!page) {
        return std::move(page.error());
      }
      viewed_ = std::move(*page);
      viewed_page_ = job.page;
    }
    const ColorImage part = job.view.part.empty() ? viewed_ : Crop(viewed_, job.view.part);
    if (part.pixels.empty()) {
      return Error{ErrorCode::kUsage, "the part to be shown lies off the page", job.name, job.page};
    }
    return PageView{viewed_.width, viewed_.height, ScaledToFit(part, job.view.longest_side_px)};
  }

  AnyOutcome Picture(const Job& job) {
    const Result<PageSource*> source = Open(job);
    if (!source) {
      return source.error();
    }
    const Result<ColorImage> scan = (*source)->LoadColor(job.page, job.side);
    if (!scan) {
      return scan.error();
    }
    Result<binder::PageFiles> files = binder::PicturePage(*scan, job.orientation, job.side);
    if (!files) {
      return std::move(files.error());
    }
    return std::move(*files);
  }

  AnyOutcome CopyPages(const Job& job) {
    if (Result<void> begun = BeginCopy(job.path); !begun) {
      return std::move(begun.error());
    }
    if (copier_) {
      copier_->CopyPages(static_cast<std::size_t>(job.page));
    }
    return PageCount{job.page};
  }

  AnyOutcome CopiedPiece(const Job& job) {
    Result<void> made = BeginCopy(job.path).and_then([&] { return FinishCopy(); });
    if (!made) {
      return std::move(made.error());
    }
    const std::size_t from = kCopyPieceBytes * (static_cast<std::size_t>(job.page) - 1);
    const std::size_t pieces = (copy_.pdf.size() + kCopyPieceBytes - 1) / kCopyPieceBytes;
    if (from >= copy_.pdf.size() || pieces > static_cast<std::size_t>(kMaxPagesPerFile)) {
      return Error{ErrorCode::kTooLarge, "the copy has no such piece", job.name, 0};
    }
    return CopyPiece{copy_.pdf.substr(from, kCopyPieceBytes), static_cast<int>(pieces), copy_digest_, copy_.left_out};
  }

  Result<void> BeginCopy(const std::string& plan_file) {
    if (copied_plan_ == plan_file) {
      return {};
    }
    std::ifstream stream(plan_file, std::ios::binary);
    std::ostringstream bytes;
    bytes << stream.rdbuf();
    auto plan = DecodeCopyPlan(bytes.view());
    if (!plan) {
      return tl::unexpected(plan.error());
    }
    copier_ = std::make_unique<SearchableCopier>(std::move(*plan));
    copied_plan_ = plan_file;
    return {};
  }

  Result<void> FinishCopy() {
    if (!copier_) {
      return {};
    }
    auto copy = std::exchange(copier_, nullptr)->Finish();
    if (!copy) {
      copied_plan_.clear();
      return tl::unexpected(copy.error());
    }
    copy_ = std::move(*copy);
    Fnv digest;
    digest.AddWhole(copy_.pdf);
    copy_digest_ = digest.Hex();
    return {};
  }

  Result<PageSource*> Open(const Job& job) {
    if (!source_ || path_ != job.path) {
      source_.reset();
      viewed_page_ = 0;
      Result<std::unique_ptr<PageSource>> opened = OpenScan(job.path, job.name);
      if (!opened) {
        return tl::unexpected(std::move(opened.error()));
      }
      source_ = std::move(*opened);
      path_ = job.path;
    }
    return source_.get();
  }

  std::filesystem::path config_;
  std::unique_ptr<PageReader> reader_;  // made for the first page: counting needs none
  std::unique_ptr<PageSource> source_;
  std::string path_;         // of `source_`
  ColorImage viewed_;        // the page of `source_` that was viewed last: its parts are asked for next
  int viewed_page_ = 0;      // 0: none
  std::string copied_plan_;  // what a copy is made from
  std::unique_ptr<SearchableCopier> copier_;  // while it is being made
  SearchableCopy copy_;                       // once it is
  std::string copy_digest_;
};

}  // namespace

int RunWorker(const std::filesystem::path& config) {
  // What the libraries print belongs on standard error; on standard output it would break the protocol.
  const UniqueFd answers(::dup(STDOUT_FILENO));
  if (!answers || ::dup2(STDERR_FILENO, STDOUT_FILENO) < 0) {
    return 1;
  }
  // Pictures of pages are given back to the system as soon as they are freed. Left to itself the allocator would keep
  // what is under 32 MiB for later, which after some fold-outs is more than one of them needs.
  constexpr int kGivenBackFrom = 4 << 20;
  ::mallopt(M_MMAP_THRESHOLD, kGivenBackFrom);
  // Before any scan is opened, and for good.
  if (const Result<void> confined = ConfineToReading(); !confined) {
    std::cerr << confined.error().message << '\n';
    return 1;
  }
  JobDoer doer(config);
  return ServeJobs(STDIN_FILENO, answers.get(), [&doer](const Job& job) { return doer.Do(job); });
}

}  // namespace benchleaf
