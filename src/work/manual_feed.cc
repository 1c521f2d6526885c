#include "work/manual_feed.h"

#include "work/assemble_manual.h"

#include <algorithm>
#include <string>
#include <unordered_map>
#include <variant>

namespace benchleaf {
namespace {

// "HASH:PAGE" of "HASH:PAGE:FINGERPRINT".
std::string ContentOf(const std::string& content_key) {
  const std::size_t first = content_key.find(':');
  const std::size_t second = first == std::string::npos ? first : content_key.find(':', first + 1);
  return content_key.substr(0, second);
}

// The page's reading, or failure, of another record of the same content.
void TakeReading(PageRecord& page, const PageRecord& from) {
  page.reading = from.reading;
  page.plain_mode = from.plain_mode;
  page.failure = from.failure;
  if (page.failure) {
    page.failure->source = page.file;
    page.failure->page = page.page;
  }
}

Error WithMessage(Error error, const std::string& message) {
  error.message = message;
  return error;
}

}  // namespace

ManualFeed::ManualFeed(const std::vector<ManualPlan>& plans, const IndexOutline& outline, const StoringTools& tools)
    : plans_(plans), outline_(outline), tools_(tools) {
  for (std::size_t i = 0; i < plans.size(); ++i) {
    if (plans[i].work == ManualWork::kAssemble) {
      plans_ahead_.push_back(i);
    }
  }
  std::stable_partition(plans_ahead_.begin(), plans_ahead_.end(),
                        [&](std::size_t plan) { return plans[plan].takes_from_others; });
}

Result<std::optional<Task>> ManualFeed::Next() {
  while (queue_.empty()) {
    if (plans_ahead_.empty()) {
      // Pages that are under way may bring more.
      const Result<void> stored = under_way_.empty() ? StoreAssembled(0) : Result<void>();
      return stored ? Result<std::optional<Task>>(std::nullopt) : tl::unexpected(stored.error());
    }
    if (tools_.cancel) {
      return Fail(ErrorCode::kCancelled, "stopped");
    }
    const std::size_t plan = plans_ahead_.front();
    plans_ahead_.pop_front();
    if (Result<void> taken = TakeUp(plan); !taken) {
      return tl::unexpected(std::move(taken.error()));
    }
  }
  const PagePlace place = std::move(queue_.front());
  queue_.pop_front();
  const PageRecord& page = place.manual->pages[place.page];
  Task task;
  task.id = ++last_id_;
  task.operation = Operation::kReadPage;
  task.page = page.page;
  task.path = (tools_.library / page.file).string();
  task.name = page.file;
  under_way_.emplace(task.id, place);
  return task;
}

Result<void> ManualFeed::TakeUp(std::size_t plan) {
  const auto manual = std::make_shared<InHand>();
  manual->plan = plan;
  for (const PlannedPage& planned : plans_[plan].pages) {
    PageRecord page;
    page.file = planned.file;
    page.page = planned.page;
    page.volume = planned.volume;
    page.content_key = planned.content_key;
    manual->pages.push_back(std::move(page));
  }
  std::vector<bool> filled(manual->pages.size(), false);
  if (Result<void> done = FillFromIndex(*manual, filled); !done) {
    return done;
  }
  for (std::size_t i = 0; i < manual->pages.size(); ++i) {
    if (!filled[i]) {
      queue_.push_back({manual, i});
      ++manual->awaited;
      ++manual->asked;
    }
  }
  return manual->awaited == 0 ? Assemble(manual) : Result<void>();
}

Result<void> ManualFeed::FillFromIndex(InHand& manual, std::vector<bool>& filled) {
  const ManualPlan& plan = plans_[manual.plan];
  const Result<std::optional<ManualRecord>> stored = tools_.writer.StoredManual(plan.head.set, plan.head.manual);
  if (!stored) {
    return tl::unexpected(stored.error());
  }
  std::unordered_map<std::string, const PageRecord*> by_key;
  std::unordered_map<std::string, const PageRecord*> by_content;
  if (*stored) {
    for (const PageRecord& page : (*stored)->pages) {
      by_key.emplace(page.content_key, &page);
      if (!page.failure) {
        by_content.emplace(ContentOf(page.content_key), &page);
      }
    }
  }
  for (std::size_t i = 0; i < plan.pages.size(); ++i) {
    PageRecord& page = manual.pages[i];
    if (!plan.pages[i].known) {
      if (const auto earlier = by_content.find(ContentOf(page.content_key)); earlier != by_content.end()) {
        manual.earlier.emplace(i, *earlier->second);
      }
      continue;
    }
    if (const auto own = by_key.find(page.content_key); own != by_key.end()) {
      TakeReading(page, *own->second);
      filled[i] = true;
      continue;
    }
    const Result<std::optional<PageRecord>> other = tools_.writer.StoredPage(page.content_key);
    if (!other) {
      return tl::unexpected(other.error());
    }
    if (*other) {
      TakeReading(page, **other);
      filled[i] = true;
    }
  }
  return {};
}

Result<void> ManualFeed::Done(const Task& task, TaskOutcome outcome) {
  const auto found = under_way_.find(task.id);
  const PagePlace place = std::move(found->second);
  under_way_.erase(found);
  InHand& manual = *place.manual;  // by which it stays
  const bool failed = std::holds_alternative<Error>(outcome.value);
  if (failed) {
    KeepFailure(manual, place.page, std::move(std::get<Error>(outcome.value)));
  } else {
    KeepReading(manual, place.page, std::move(std::get<PageReading>(outcome.value)), outcome.first_try);
  }
  tools_.observer.PageDone(task.name, task.page, failed);
  --manual.awaited;
  return manual.awaited == 0 ? Assemble(place.manual) : Result<void>();
}

void ManualFeed::KeepReading(InHand& manual, std::size_t position, PageReading reading,
                             const std::optional<Error>& first_try) {
  PageRecord& page = manual.pages[position];
  page.reading = std::move(reading);
  page.plain_mode = first_try.has_value();
  ++manual.read;
  if (first_try) {
    Report(manual, WithMessage(*first_try, "read only in the plainer mode: " + first_try->message));
  }
}

void ManualFeed::KeepFailure(InHand& manual, std::size_t position, Error error) {
  PageRecord& page = manual.pages[position];
  const auto earlier = manual.earlier.find(position);
  if (earlier == manual.earlier.end()) {
    page.failure = error;
    Report(manual, std::move(error));
    return;
  }
  // The earlier reading is the best there is of this page. Under the new key it will not be tried at every run, unless
  // it was not the page that failed.
  TakeReading(page, earlier->second);
  if (!IsLasting(error.code)) {
    page.content_key = earlier->second.content_key;
  }
  const std::string message = error.message + "; its earlier reading stays in the index";
  Report(manual, WithMessage(std::move(error), message));
}

Result<void> ManualFeed::Assemble(const std::shared_ptr<InHand>& manual) {
  const auto prepare = [this, manual]() -> std::optional<PreparedManual> {
    std::optional<ManualRecord> record =
        AssembleManual(plans_[manual->plan].head, std::move(manual->pages), tools_.rules, tools_.cancel);
    return record ? std::optional(PreparedManual(std::move(*record), tools_.rules)) : std::nullopt;
  };
  assembling_.push_back({manual, std::async(std::launch::async, prepare)});
  // What took minutes to read is on the disk before more is read.
  return StoreAssembled(manual->asked > 0 ? 0 : static_cast<std::size_t>(tools_.threads) - 1);
}

Result<void> ManualFeed::StoreAssembled(std::size_t most_left) {
  while (assembling_.size() > most_left) {
    Assembling first = std::move(assembling_.front());
    assembling_.pop_front();
    std::optional<PreparedManual> prepared = first.prepared.get();
    if (!prepared) {
      return Fail(ErrorCode::kCancelled, "stopped");
    }
    if (Result<void> stored = Store(*first.manual, std::move(*prepared)); !stored) {
      return stored;
    }
  }
  return {};
}

Result<void> ManualFeed::Store(const InHand& manual, PreparedManual prepared) {
  const auto pages = static_cast<int>(prepared.record().pages.size());
  // What took no reading is soon done again.
  const auto durable = manual.asked > 0 ? IndexWriter::Durable::kNow : IndexWriter::Durable::kSoon;
  if (Result<void> replaced = tools_.writer.ReplaceManual(std::move(prepared), durable); !replaced) {
    return replaced;
  }
  const ManualPlan& plan = plans_[manual.plan];
  const ManualOutline* before = outline_.Find({plan.head.set, plan.head.manual});
  result_.pages_gained += pages - (before ? static_cast<int>(before->pages.size()) : 0);
  result_.pages_read += manual.read;
  result_.pages_known += pages - manual.asked;
  tools_.observer.ManualStored(plan.head.set, plan.head.manual);
  return {};
}

void ManualFeed::Report(const InHand& manual, Error problem) {
  tools_.observer.Problem(problem);
  result_.problems[manual.plan].push_back(std::move(problem));
}

}  // namespace benchleaf
