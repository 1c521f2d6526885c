#include "store/folder.h"

#include "store/schema.h"

#include <string>
#include <system_error>

namespace benchleaf::store {

namespace {

namespace fs = std::filesystem;

// Xapian writes this file last when it makes a database.
constexpr const char* kVersionFile = "iamglass";

// Whether the file is one that Xapian makes, without content, before a new database has its version file.
bool IsBeginning(const fs::directory_entry& file, std::error_code& code) {
  const fs::path name = file.path().filename();
  if (name == "flintlock" || name == "v.tmp") return true;
  return name.extension() == ".glass" && file.is_regular_file(code) && file.file_size(code) == 0;
}

}  // namespace

Result<FolderState> LookAt(const fs::path& folder) {
  std::error_code code;
  const fs::file_status status = fs::status(folder, code);
  if (status.type() == fs::file_type::not_found) return FolderState::kNothing;
  if (!code && status.type() != fs::file_type::directory) return FolderState::kOther;

  bool empty = true;
  bool only_beginnings = true;
  fs::directory_iterator file(folder, code);
  for (; !code && file != fs::directory_iterator(); file.increment(code)) {
    if (file->path().filename() == kVersionFile) return FolderState::kDatabase;
    empty = false;
    only_beginnings = only_beginnings && IsBeginning(*file, code);
  }
  if (code) return Fail(ErrorCode::kIo, "the folder cannot be read: " + code.message(), folder.string());
  if (empty) return FolderState::kNothing;
  return only_beginnings ? FolderState::kBegun : FolderState::kOther;
}

Result<SchemaState> CheckSchema(const Xapian::Database& database, const fs::path& folder) {
  const std::string version = database.get_metadata(kSchemaKey);
  if (version == kSchemaVersion) return SchemaState::kOurs;
  if (!version.empty()) {
    return Fail(ErrorCode::kForeign,
                "the index was made by another version of this program (schema " + version + ", this one has " +
                    kSchemaVersion + "); it is left as it is: name another folder, or delete this one and index again",
                folder.string());
  }
  const bool empty = database.get_lastdocid() == 0 && database.metadata_keys_begin() == database.metadata_keys_end();
  if (empty) return SchemaState::kNew;
  return Fail(ErrorCode::kForeign,
              "the folder holds another program's database, which is left as it is; name another folder for the index",
              folder.string());
}

}  // namespace benchleaf::store
