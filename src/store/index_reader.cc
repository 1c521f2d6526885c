#include "benchleaf/store/index_reader.h"

#include "store/find.h"
#include "store/open_database.h"
#include "store/parts.h"
#include "store/schema.h"
#include "store/set_names.h"
#include "store/stored.h"
#include "store/suggest.h"
#include "store/xapian_errors.h"

#include <xapian.h>

#include <utility>

namespace benchleaf {

namespace fs = std::filesystem;

namespace {

tl::unexpected<Error> NoSet(const std::string& set) {
  return Fail(ErrorCode::kMissing, "no set of this name is in the index", set);
}

}  // namespace

std::string_view Name(Match match) {
  switch (match) {
    case Match::kExact:
      return "exact";
    case Match::kForm:
      return "form";
    case Match::kLookAlike:
      return "look-alike";
    case Match::kText:
      break;
  }
  return "text";
}

class IndexReader::Impl {
 public:
  Impl(fs::path folder, std::shared_ptr<const Rules> rules, Xapian::Database database)
      : folder_(std::move(folder)), rules_(std::move(rules)), database_(std::move(database)) {}

  const Rules& rules() const { return *rules_; }

  // Runs `question` on the newest state of the index, from the start again when the writer has overwritten that state
  // meanwhile, so that an answer never mixes two.
  template <class Question>
  auto Ask(const Question& question) -> Result<decltype(question(std::declval<const Xapian::Database&>()))> {
    // A state is only overwritten by the second commit after it, so one retry nearly always does.
    constexpr int kMostTries = 20;
    for (int tries = 0; tries < kMostTries; ++tries) {
      try {
        database_.reopen();
        return question(database_);
      } catch (const Xapian::DatabaseModifiedError&) {
        continue;
      } catch (const Xapian::Error& error) {
        return tl::unexpected<Error>(store::FromXapian(error, folder_));
      }
    }
    return Fail(ErrorCode::kBusy, "the index changes faster than it can be read; try again later", folder_.string());
  }

 private:
  fs::path folder_;
  std::shared_ptr<const Rules> rules_;
  Xapian::Database database_;
};

IndexReader::IndexReader(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
IndexReader::~IndexReader() = default;

Result<std::unique_ptr<IndexReader>> IndexReader::Open(const std::vector<fs::path>& folders,
                                                       std::shared_ptr<const Rules> rules) {
  Xapian::Database all;
  std::string names;
  for (const fs::path& folder : folders) {
    Result<Xapian::Database> database = store::OpenDatabase(folder);
    if (!database) return tl::unexpected<Error>(std::move(database.error()));
    all.add_database(*database);
    names += (names.empty() ? "" : ", ") + folder.string();
  }
  return std::unique_ptr<IndexReader>(
      new IndexReader(std::make_unique<Impl>(std::move(names), std::move(rules), std::move(all))));
}

Result<std::vector<FoundSighting>> IndexReader::Find(const FindQuery& query) {
  return impl_->Ask([&](const Xapian::Database& database) { return store::Find(database, impl_->rules(), query); });
}

Result<std::vector<FoundEntry>> IndexReader::Parts(const std::string& set) {
  auto parts = impl_->Ask([&](const Xapian::Database& database) -> std::optional<std::vector<FoundEntry>> {
    const std::vector<store::StoredManual> manuals = store::ManualsOfSet(database, set);
    if (manuals.empty()) return std::nullopt;
    return store::PartsOf(database, manuals);
  });
  if (!parts) return tl::unexpected<Error>(std::move(parts.error()));
  if (!*parts) return NoSet(set);
  return **std::move(parts);
}

Result<std::vector<FoundTube>> IndexReader::Tube(const std::string& type) {
  return impl_->Ask([&](const Xapian::Database& database) { return store::FindTube(database, impl_->rules(), type); });
}

Result<std::vector<SetSummary>> IndexReader::Sets() {
  return impl_->Ask([](const Xapian::Database& database) { return store::AllSets(database); });
}

Result<IndexReader::SetNames> IndexReader::MatchSets(const std::string& text) {
  return impl_->Ask([&](const Xapian::Database& database) { return store::MatchSetNames(database, text); });
}

Result<std::vector<std::string>> IndexReader::Suggest(const std::string& term, int limit) {
  return impl_->Ask([&](const Xapian::Database& database) {
    return store::NearTerms(database, impl_->rules(), term, limit > 0 ? static_cast<std::size_t>(limit) : 0);
  });
}

Result<std::optional<PageRecord>> IndexReader::Page(const std::string& file, int page) {
  return impl_->Ask([&](const Xapian::Database& database) {
    return store::FindPage(database, store::PlaceTerm(file, page),
                           [&](const PageRecord& record) { return record.file == file && record.page == page; });
  });
}

Result<std::vector<ManualRecord>> IndexReader::Manuals(const std::string& set) {
  auto manuals = impl_->Ask([&](const Xapian::Database& database) {
    std::vector<ManualRecord> records;
    for (const store::StoredManual& stored : store::ManualsOfSet(database, set)) {
      auto record = store::LoadManual(database, stored.manual.set, stored.manual.manual);
      if (record) records.push_back(*std::move(record));
    }
    return records;
  });
  if (manuals && manuals->empty()) return NoSet(set);
  return manuals;
}

Result<void> IndexReader::ForEachManual(const std::function<bool(const ManualRecord&)>& each, ManualParts parts) {
  const auto names = impl_->Ask([](const Xapian::Database& database) { return store::ManualNames(database); });
  if (!names) return tl::unexpected<Error>(names.error());
  for (const auto& name : *names) {
    const auto record = impl_->Ask(
        [&](const Xapian::Database& database) { return store::LoadManual(database, name.first, name.second, parts); });
    if (!record) return tl::unexpected<Error>(record.error());
    if (*record && !each(**record)) return {};
  }
  return {};
}

}  // namespace benchleaf
