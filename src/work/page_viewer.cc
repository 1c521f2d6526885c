#include "benchleaf/work/page_viewer.h"

#include "work/one_task.h"
#include "work/worker_pool.h"

#include <atomic>
#include <utility>
#include <variant>

namespace benchleaf {

class PageViewer::Impl {
 public:
  Impl(const std::filesystem::path& program, const std::filesystem::path& config) : pool_({program, config, {}}, 1) {}

  Result<PageView> View(Task task) {
    // Ctrl-C ends the program, and with it its worker.
    const std::atomic<bool> never{false};
    OneTask feed(std::move(task));
    if (Result<void> done = pool_.Run(feed, never); !done) {
      return tl::unexpected(std::move(done.error()));
    }
    TaskValue value = feed.TakeValue();
    if (auto* error = std::get_if<Error>(&value)) {
      return tl::unexpected(std::move(*error));
    }
    return std::get<PageView>(std::move(value));
  }

 private:
  WorkerPool pool_;
};

PageViewer::PageViewer(const std::filesystem::path& program, const std::filesystem::path& config)
    : impl_(std::make_unique<Impl>(program, config)) {}

PageViewer::~PageViewer() = default;

Result<PageView> PageViewer::View(const std::filesystem::path& path, const std::string& name, int page,
                                  const ViewedPart& view) {
  Task task;
  task.operation = Operation::kViewPage;
  task.page = page;
  task.view = view;
  task.path = path.string();
  task.name = name;
  return impl_->View(std::move(task));
}

}  // namespace benchleaf
