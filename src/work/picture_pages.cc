#include "benchleaf/work/picture_pages.h"

#include "work/task.h"
#include "work/worker_pool.h"

#include <optional>
#include <system_error>
#include <utility>
#include <variant>

namespace benchleaf {
namespace {

class PictureFeed : public TaskFeed {
 public:
  PictureFeed(const std::filesystem::path& library, const std::vector<PageToPicture>& pages,
              const PagePicturer::Done& done)
      : library_(library), pages_(pages), done_(done) {}

  Result<std::optional<Task>> Next() override {
    while (next_ < pages_.size()) {
      const PageToPicture& page = pages_[next_];
      const std::filesystem::path path = library_ / page.file;
      std::error_code ignored;
      if (!std::filesystem::exists(path, ignored)) {
        const Error missing{ErrorCode::kMissing, "the scan is not in the library folder '" + library_.string() + "'",
                            page.file, page.page};
        if (auto told = done_(next_++, tl::unexpected(missing)); !told) return tl::unexpected(told.error());
        continue;
      }
      Task task;
      task.id = next_++;
      task.operation = Operation::kPicturePage;
      task.page = page.page;
      task.orientation = page.orientation;
      task.side = page.side;
      task.path = path.string();
      task.name = page.file;
      return task;
    }
    return std::nullopt;
  }

  Result<void> Done(const Task& task, TaskOutcome outcome) override {
    if (auto* files = std::get_if<binder::PageFiles>(&outcome.value)) return done_(task.id, std::move(*files));
    return done_(task.id, tl::unexpected(std::get<Error>(std::move(outcome.value))));
  }

 private:
  const std::filesystem::path& library_;
  const std::vector<PageToPicture>& pages_;
  const PagePicturer::Done& done_;
  std::size_t next_ = 0;
};

}  // namespace

class PagePicturer::Impl {
 public:
  explicit Impl(const PicturingOptions& options)
      : library_(options.library), pool_({options.program, options.config, options.limits}, options.workers) {}

  Result<void> Run(const std::vector<PageToPicture>& pages, const Done& done, const std::atomic<bool>& cancel) {
    PictureFeed feed(library_, pages, done);
    return pool_.Run(feed, cancel);
  }

 private:
  std::filesystem::path library_;
  WorkerPool pool_;
};

PagePicturer::PagePicturer(const PicturingOptions& options) : impl_(std::make_unique<Impl>(options)) {}
PagePicturer::~PagePicturer() = default;

Result<void> PagePicturer::Run(const std::vector<PageToPicture>& pages, const Done& done,
                               const std::atomic<bool>& cancel) {
  return impl_->Run(pages, done, cancel);
}

}  // namespace benchleaf
