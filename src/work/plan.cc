#include "work/plan.h"

#include "work/left_out.h"

#include <algorithm>
#include <cstddef>
#include <set>
#include <tuple>
#include <utility>

namespace benchleaf {
namespace {

// Makes the plan of one manual from its parts.
class Planner {
 public:
  Planner(const IndexOutline& outline, const PageCounts& counts, const LeftOut& left_out, const PlanTerms& terms)
      : outline_(outline), counts_(counts), left_out_(left_out), terms_(terms) {}

  // `head` names the manual; `files` are what the library has of it, none for a manual of the index only.
  ManualPlan Plan(ManualRecord head, const std::vector<ScanFile>& files) const {
    ManualPlan plan;
    plan.head = std::move(head);
    plan.head.files.clear();
    plan.head.rules = terms_.rules_fingerprint;
    const ManualOutline* stored = outline_.Find({plan.head.set, plan.head.manual});
    std::vector<FileRecord> unseen = stored ? OutOfReach(*stored, files) : std::vector<FileRecord>();
    auto next_unseen = unseen.begin();
    for (const ScanFile& file : files) {
      // Files out of reach keep their place among the others.
      const std::size_t place = stored ? PlaceOf(*stored, file.path) : 0;
      for (; next_unseen != unseen.end() && PlaceOf(*stored, next_unseen->path) < place; ++next_unseen) {
        AddKept(plan, std::move(*next_unseen));
      }
      AddFile(plan, file);
    }
    for (; next_unseen != unseen.end(); ++next_unseen) {
      AddKept(plan, std::move(*next_unseen));
    }
    plan.work = WorkFor(plan, stored);
    plan.takes_from_others = TakesFromOthers(plan, stored);
    return plan;
  }

 private:
  // Stored files that are neither among `files` nor known to be gone.
  std::vector<FileRecord> OutOfReach(const ManualOutline& stored, const std::vector<ScanFile>& files) const {
    std::vector<FileRecord> unseen;
    for (const FileRecord& file : stored.head.files) {
      const Error* reason = left_out_.Reason(file.path);
      const bool seen =
          std::any_of(files.begin(), files.end(), [&](const ScanFile& scan) { return scan.path == file.path; });
      if (reason && !seen) {
        unseen.push_back(file);
        unseen.back().failure = *reason;
      }
    }
    return unseen;
  }

  // The file's position among the stored ones; 0 for a new one, so that no stored one comes before it.
  static std::size_t PlaceOf(const ManualOutline& stored, const std::string& path) {
    for (std::size_t i = 0; i < stored.head.files.size(); ++i) {
      if (stored.head.files[i].path == path) {
        return i;
      }
    }
    return 0;
  }

  void AddFile(ManualPlan& plan, const ScanFile& scan) const {
    FileRecord file;
    file.path = scan.path;
    file.hash = scan.hash;
    file.size_bytes = scan.size_bytes;
    file.volume = scan.volume;
    const Result<int> count = Count(scan);
    if (!count) {
      file.failure = count.error();
      AddKept(plan, std::move(file));
      return;
    }
    file.page_count = *count;
    for (int page = 1; page <= *count; ++page) {
      std::string key = ContentKey(file.hash, page, terms_.reading_fingerprint);
      const bool known = !terms_.read_again && outline_.IsSettled(key);
      if (const Error* failure = outline_.Failure(key); known && failure) {
        plan.failures.push_back({failure->code, failure->message, file.path, page});
      }
      plan.pages.push_back({file.path, page, file.volume, std::move(key), known});
    }
    plan.head.files.push_back(std::move(file));
  }

  // A file that cannot be opened now, with the pages that it gave before.
  // REQUIRES: file.failure
  void AddKept(ManualPlan& plan, FileRecord file) const {
    file.page_count = 0;
    file.failure->source = file.path;
    const auto failure_at = static_cast<std::ptrdiff_t>(plan.failures.size());
    if (const ManualOutline* holder = outline_.ManualOf(file.path)) {
      for (const OutlinePage& page : holder->pages) {
        if (page.file == file.path) {
          plan.pages.push_back({page.file, page.page, file.volume, page.content_key, true});
          ++file.page_count;
          if (page.failure) {
            plan.failures.push_back(*page.failure);
          }
        }
      }
    }
    if (file.page_count > 0) {
      file.failure->message += "; its pages stay in the index as they were read before";
    }
    plan.failures.insert(plan.failures.begin() + failure_at, *file.failure);
    plan.head.files.push_back(std::move(file));
  }

  Result<int> Count(const ScanFile& file) const {
    if (const std::optional<int> known = outline_.PageCount(file.hash)) {
      return *known;
    }
    return counts_.at(file.path);
  }

  static ManualWork WorkFor(const ManualPlan& plan, const ManualOutline* stored) {
    if (plan.head.files.empty()) {
      return ManualWork::kRemove;
    }
    const bool all_known =
        std::all_of(plan.pages.begin(), plan.pages.end(), [](const PlannedPage& page) { return page.known; });
    const bool as_stored =
        stored && plan.head == stored->head &&
        std::equal(plan.pages.begin(), plan.pages.end(), stored->pages.begin(), stored->pages.end(),
                   [](const PlannedPage& planned, const OutlinePage& page) {
                     return std::tie(planned.file, planned.page, planned.volume, planned.content_key) ==
                            std::tie(page.file, page.page, page.volume, page.content_key);
                   });
    return all_known && as_stored ? ManualWork::kNothing : ManualWork::kAssemble;
  }

  static bool TakesFromOthers(const ManualPlan& plan, const ManualOutline* stored) {
    std::set<std::string> own;
    if (stored) {
      for (const OutlinePage& page : stored->pages) {
        own.insert(page.content_key);
      }
    }
    return std::any_of(plan.pages.begin(), plan.pages.end(),
                       [&](const PlannedPage& page) { return page.known && !own.contains(page.content_key); });
  }

  const IndexOutline& outline_;
  const PageCounts& counts_;
  const LeftOut& left_out_;
  const PlanTerms& terms_;
};

ManualRecord Named(const ScannedSet& set, const ScannedManual& manual) {
  ManualRecord head;
  head.set = set.name;
  head.maker = set.maker;
  head.model = set.model;
  head.manual = manual.name;
  head.title = manual.title;
  return head;
}

}  // namespace

std::vector<const ScanFile*> FilesToCount(const ScannedLibrary& library, const IndexOutline& outline) {
  std::vector<const ScanFile*> files;
  for (const ScannedSet& set : library.sets) {
    for (const ScannedManual& manual : set.manuals) {
      for (const ScanFile& file : manual.files) {
        if (!outline.PageCount(file.hash)) {
          files.push_back(&file);
        }
      }
    }
  }
  return files;
}

std::vector<ManualPlan> PlanManuals(const ScannedLibrary& library, const IndexOutline& outline,
                                    const PageCounts& counts, const PlanTerms& terms) {
  const LeftOut left_out(library);
  const Planner planner(outline, counts, left_out, terms);
  std::vector<ManualPlan> plans;
  std::set<ManualName> in_library;
  for (const ScannedSet& set : library.sets) {
    for (const ScannedManual& manual : set.manuals) {
      in_library.emplace(set.name, manual.name);
      plans.push_back(planner.Plan(Named(set, manual), manual.files));
    }
  }
  for (const auto& [name, stored] : outline.manuals()) {
    if (!in_library.contains(name)) {
      plans.push_back(planner.Plan(stored.head, {}));
    }
  }
  return plans;
}

}  // namespace benchleaf
