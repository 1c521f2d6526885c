#include "benchleaf/store/index_writer.h"

#include "store/documents.h"
#include "store/folder.h"
#include "store/prepared_documents.h"
#include "store/schema.h"
#include "store/shard_manifest.h"
#include "store/stored.h"
#include "store/writer_note.h"
#include "store/xapian_errors.h"

#include <xapian.h>

#include <system_error>
#include <utility>

namespace benchleaf {

namespace fs = std::filesystem;

class IndexWriter::Impl {
 public:
  Impl(const fs::path& folder, std::shared_ptr<const Rules> rules, Xapian::WritableDatabase database)
      : folder_(folder), rules_(std::move(rules)), database_(std::move(database)), note_(folder) {}

  const Xapian::Database& database() const { return database_; }
  const Rules& rules() const { return *rules_; }
  bool under_way() const { return under_way_; }

  // Runs `body`, which throws Xapian::Error, and gives what it returns.
  template <class Body>
  auto Ask(const Body& body) const -> Result<decltype(body())> {
    try {
      return body();
    } catch (const Xapian::Error& error) {
      return tl::unexpected<Error>(store::FromXapian(error, folder_));
    }
  }

  // Runs `change` on the database in one transaction. All of it is on the disk afterwards, or nothing.
  template <class Change>
  Result<void> Commit(const Change& change) {
    return Make(change, kMostUncommitted);
  }

  // The same, but what is committed may wait until changes of some size, in pages, have come together.
  template <class Change>
  Result<void> Make(const Change& change, std::size_t size) {
    try {
      if (!under_way_) {
        database_.begin_transaction(true);
        under_way_ = true;
      }
      change(database_);
      uncommitted_ += size;
      if (uncommitted_ >= kMostUncommitted) {
        uncommitted_ = 0;
        under_way_ = false;
        database_.commit_transaction();
      }
      return {};
    } catch (const Xapian::Error& error) {
      Cancel();
      return tl::unexpected<Error>(store::FromXapian(error, folder_));
    } catch (...) {
      Cancel();
      throw;
    }
  }

 private:
  void Cancel() noexcept {
    uncommitted_ = 0;
    under_way_ = false;
    try {
      database_.cancel_transaction();
    } catch (...) {
      // There is none: it was the commit itself that failed, which has then undone everything. Or there is no memory
      // even for this: the run ends, and what was not committed with it.
    }
  }

  static constexpr std::size_t kMostUncommitted = 1000;  // pages

  fs::path folder_;
  std::shared_ptr<const Rules> rules_;
  bool under_way_ = false;  // a transaction
  std::size_t uncommitted_ = 0;
  // The note goes before the database, and with it the lock, is given up.
  Xapian::WritableDatabase database_;
  store::WriterNote note_;
};

IndexWriter::IndexWriter(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
IndexWriter::~IndexWriter() = default;

Result<std::unique_ptr<IndexWriter>> IndexWriter::Open(const fs::path& folder, std::shared_ptr<const Rules> rules) {
  const Result<store::FolderState> state = store::LookAt(folder);
  if (!state) return tl::unexpected<Error>(state.error());
  if (*state == store::FolderState::kOther) {
    return Fail(ErrorCode::kForeign, "this holds other files, which are left as they are; name an empty or new folder",
                folder.string());
  }
  try {
    if (*state == store::FolderState::kDatabase) {
      // Looked at before it is opened for writing, which would leave traces in it.
      const Result<store::SchemaState> schema = store::CheckSchema(Xapian::Database(folder.string()), folder);
      if (!schema) return tl::unexpected<Error>(schema.error());
    } else {
      std::error_code code;
      fs::create_directories(folder, code);
      if (code) return Fail(ErrorCode::kIo, "the folder cannot be made: " + code.message(), folder.string());
    }
    // Xapian takes files that were only begun for a database, and fails to open it.
    const int way = *state == store::FolderState::kBegun ? Xapian::DB_CREATE_OR_OVERWRITE : Xapian::DB_CREATE_OR_OPEN;
    Xapian::WritableDatabase database(folder.string(), way);
    const Result<store::SchemaState> schema = store::CheckSchema(database, folder);
    if (!schema) return tl::unexpected<Error>(schema.error());
    if (*schema == store::SchemaState::kNew) {
      database.set_metadata(store::kSchemaKey, store::kSchemaVersion);
      database.commit();
    }
    return std::unique_ptr<IndexWriter>(
        new IndexWriter(std::make_unique<Impl>(folder, std::move(rules), std::move(database))));
  } catch (const Xapian::Error& error) {
    return tl::unexpected<Error>(store::FromXapian(error, folder));
  }
}

Result<std::optional<PageRecord>> IndexWriter::StoredPage(const std::string& content_key) {
  return impl_->Ask([&] {
    return store::FindPage(impl_->database(), store::KeyTerm(content_key),
                           [&](const PageRecord& page) { return page.content_key == content_key; });
  });
}

Result<std::vector<std::pair<std::string, std::string>>> IndexWriter::Manuals() {
  return impl_->Ask([&] { return store::ManualNames(impl_->database()); });
}

Result<std::optional<ManualRecord>> IndexWriter::StoredManual(const std::string& set, const std::string& manual,
                                                              ManualParts parts) {
  return impl_->Ask([&] { return store::LoadManual(impl_->database(), set, manual, parts); });
}

template <class Change>
Result<void> IndexWriter::Put(const ManualRecord& manual, Durable durable, const Change& change) {
  if (!LinksFit(manual)) {
    return Fail(ErrorCode::kUsage, "a link of the manual points at no entry or sighting", manual.manual);
  }
  return durable == Durable::kNow ? impl_->Commit(change) : impl_->Make(change, manual.pages.size() + 1);
}

Result<void> IndexWriter::ReplaceManual(const ManualRecord& manual, Durable durable) {
  return Put(manual, durable,
             [&](Xapian::WritableDatabase& database) { store::PutManual(database, manual, impl_->rules()); });
}

Result<void> IndexWriter::ReplaceManual(PreparedManual manual, Durable durable) {
  return Put(manual.record(), durable, [&](Xapian::WritableDatabase& database) {
    store::PutManual(database, manual.record(), impl_->rules(), std::move(manual.documents_->of_first_pages));
  });
}

Result<void> IndexWriter::Commit() {
  return impl_->under_way() ? impl_->Commit([](const Xapian::WritableDatabase&) {}) : Result<void>();
}

Result<void> IndexWriter::SetManifest(const std::optional<ShardManifest>& manifest) {
  return impl_->Commit([&](Xapian::WritableDatabase& database) {
    database.set_metadata(store::kShardKey, manifest ? store::EncodeManifest(*manifest) : std::string());
  });
}

Result<void> IndexWriter::RemoveManual(const std::string& set, const std::string& manual) {
  return impl_->Commit(
      [&](Xapian::WritableDatabase& database) { database.delete_document(store::ManualTerm(set, manual)); });
}

}  // namespace benchleaf
