#include "store/open_database.h"

#include "store/folder.h"
#include "store/xapian_errors.h"

#include <charconv>
#include <string>
#include <string_view>

namespace benchleaf::store {

namespace {

constexpr std::string_view kRemote = "remote:";

tl::unexpected<Error> NoIndex(const std::filesystem::path& folder) {
  return Fail(ErrorCode::kMissing, "there is no index here; make one with: benchleaf index LIBRARY", folder.string());
}

Result<Xapian::Database> OpenRemote(const std::string& name) {
  const std::size_t colon = name.rfind(':');
  const std::string host = colon < kRemote.size() ? std::string() : name.substr(kRemote.size(), colon - kRemote.size());
  unsigned port = 0;
  const char* const end = name.data() + name.size();
  const bool number = std::from_chars(name.data() + colon + 1, end, port).ptr == end;
  constexpr unsigned kMostPorts = 65535;
  if (host.empty() || !number || port == 0 || port > kMostPorts) {
    return Fail(ErrorCode::kUsage, "an index on another host is named as remote:HOST:PORT", name);
  }
  return Xapian::Remote::open(host, port);
}

}  // namespace

Result<Xapian::Database> OpenDatabase(const std::filesystem::path& folder) {
  try {
    Result<Xapian::Database> database = Xapian::Database();
    if (folder.string().starts_with(kRemote)) {
      database = OpenRemote(folder.string());
    } else {
      const Result<FolderState> state = LookAt(folder);
      if (!state) return tl::unexpected<Error>(state.error());
      if (*state != FolderState::kDatabase) return NoIndex(folder);
      database = Xapian::Database(folder.string());
    }
    if (!database) return database;
    const Result<SchemaState> schema = CheckSchema(*database, folder);
    if (!schema) return tl::unexpected<Error>(schema.error());
    if (*schema == SchemaState::kNew) return NoIndex(folder);
    return database;
  } catch (const Xapian::Error& error) {
    return tl::unexpected<Error>(FromXapian(error, folder));
  }
}

}  // namespace benchleaf::store
