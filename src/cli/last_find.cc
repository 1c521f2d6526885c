#include "cli/last_find.h"

#include "benchleaf/core/fnv.h"
#include "benchleaf/record/json.h"

#include <unistd.h>

#include <array>
#include <charconv>
#include <fstream>
#include <system_error>

namespace benchleaf {

namespace fs = std::filesystem;

namespace {

constexpr const char* kFirstLine = "benchleaf: what was found last, 1";

fs::path FileIn(const fs::path& state_folder) { return state_folder / "last-find"; }

// The fields that are text, in the order of their lines.
template <class Find>
auto Lines(Find& find) {
  return std::array{&find.database, &find.term, &find.set, &find.kind, &find.answer};
}

bool IsOneLine(const std::string& text) { return text.find('\n') == std::string::npos; }

}  // namespace

std::string AbsoluteDatabase(const PlaceOptions& places) {
  std::string names;
  for (const fs::path& database : places.DatabaseFolders()) {
    std::error_code failed;
    const fs::path folder = fs::weakly_canonical(fs::absolute(database), failed);
    names += (names.empty() ? "" : "\t") + (failed ? database : folder).string();
  }
  return names;
}

std::string AnswerDigest(const TermHits& found) {
  Fnv digest;
  for (const FoundSighting& hit : found.hits) {
    digest.AddWhole(hit.place.file);
    digest.AddWhole(std::to_string(hit.place.page));
    digest.AddWhole(hit.sighting.text);
    digest.AddWhole(ToJson(hit.sighting.box).Dump());
  }
  return digest.Hex();
}

void RememberFind(const fs::path& state_folder, const LastFind& find) {
  if (state_folder.empty()) return;
  for (const std::string* line : Lines(find)) {
    if (!IsOneLine(*line)) return;
  }
  std::error_code failed;
  fs::create_directories(state_folder, failed);
  const fs::path file = FileIn(state_folder);
  // Beside it and then in its place, so that two runs at once leave one whole file.
  fs::path part = file;
  part += '.' + std::to_string(::getpid());
  {
    std::ofstream stream(part);
    stream << kFirstLine << '\n';
    for (const std::string* line : Lines(find)) stream << *line << '\n';
    stream << find.limit << '\n';
    if (!stream.flush()) {
      fs::remove(part, failed);
      return;
    }
  }
  fs::rename(part, file, failed);
  if (failed) fs::remove(part, failed);
}

Result<LastFind> RecallFind(const fs::path& state_folder) {
  LastFind find;
  std::ifstream stream(FileIn(state_folder));
  std::string line;
  bool read = !state_folder.empty() && std::getline(stream, line) && line == kFirstLine;
  for (std::string* text : Lines(find)) read = read && std::getline(stream, *text);
  read = read && std::getline(stream, line);
  if (read) read = std::from_chars(line.data(), line.data() + line.size(), find.limit).ec == std::errc();
  if (!read || find.limit < 1) {
    return Fail(ErrorCode::kMissing,
                "no find is remembered that a number could mean: say `benchleaf find TERM` first, "
                "or name the term");
  }
  return find;
}

}  // namespace benchleaf
