#include "benchleaf/orders/part_kinds.h"

#include "orders/plain_words.h"

#include "benchleaf/core/edits.h"
#include "benchleaf/core/table_file.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <utility>

namespace benchleaf {
namespace {

// In the order in which kinds win where the words of several fit.
constexpr std::array<std::pair<std::string_view, PartKind>, 9> kKinds = {{
    {"variable", PartKind::kVariable},
    {"electrolytic", PartKind::kElectrolytic},
    {"selenium", PartKind::kSelenium},
    {"wirewound", PartKind::kWirewound},
    {"mica", PartKind::kMica},
    {"ceramic", PartKind::kCeramic},
    {"film", PartKind::kFilm},
    {"paper", PartKind::kPaper},
    {"carbon", PartKind::kCarbon},
}};

constexpr std::array<std::pair<std::string_view, LinePlace>, 3> kLines = {{
    {"line-chassis", LinePlace::kToChassis},
    {"line-across", LinePlace::kAcross},
    {"line", LinePlace::kUnsaid},
}};

constexpr std::string_view kClassRole = "class-selenium";

std::string Joined(const std::vector<std::string>& words) {
  std::string text = " ";
  for (const std::string& word : words) text += word + " ";
  return text;
}

// Whether one of the words is the known one with as many letters misread as its length allows.
bool HasMisreadOf(const std::vector<std::string>& words, const std::string& known) {
  const int most = known.size() >= 10 ? 2 : known.size() >= 7 ? 1 : 0;
  return std::any_of(words.begin(), words.end(),
                     [&](const std::string& word) { return EditsBetween(word, known, most) <= most; });
}

}  // namespace

std::string_view Name(PartKind kind) {
  return std::find_if(kKinds.begin(), kKinds.end(), [&](const auto& one) { return one.second == kind; })->first;
}

std::optional<PartKind> PartKindNamed(std::string_view name) {
  const auto found = std::find_if(kKinds.begin(), kKinds.end(), [&](const auto& one) { return one.first == name; });
  return found == kKinds.end() ? std::nullopt : std::optional(found->second);
}

std::vector<std::string> OrderableKindNames() {
  std::vector<std::string> names;
  for (const auto& [name, kind] : kKinds) {
    if (kind != PartKind::kVariable) names.emplace_back(name);
  }
  return names;
}

std::string OrderableKinds() {
  std::string list;
  for (const std::string& name : OrderableKindNames()) list.append(list.empty() ? "" : ", ").append(name);
  return list;
}

Result<PartWords> PartWords::Load(const std::vector<std::filesystem::path>& files) {
  PartWords known;
  for (const std::filesystem::path& path : files) {
    const auto file = TableFile::Read(path, {"role", "words", "source"});
    if (!file) return tl::unexpected<Error>(file.error());
    for (std::size_t row = 0; row < file->size(); ++row) {
      const std::string& role = file->Cell(row, "role");
      const std::string& words = file->Cell(row, "words");
      const std::string plain = Joined(orders::PlainWords(words));
      if (words.empty() || plain != " " + words + " ") {
        return tl::unexpected<Error>(
            file->Complaint(row, "words", "write capitals and figures, with one space between words"));
      }
      const bool line = std::any_of(kLines.begin(), kLines.end(), [&](const auto& one) { return one.first == role; });
      if (role == kClassRole) {
        known.letters_[words] = role;
      } else if (PartKindNamed(role) || line) {
        known.words_[words] = role;
      } else if (role == "none") {
        known.letters_.erase(words);
        known.words_.erase(words);
      } else {
        return tl::unexpected<Error>(file->Complaint(
            row, "role",
            "write one of: variable, " + OrderableKinds() + ", class-selenium, line-across, line-chassis, line, none"));
      }
    }
  }
  return known;
}

std::optional<PartKind> PartWords::KindIn(std::string_view description) const {
  const std::vector<std::string> words = orders::PlainWords(description);
  const std::string text = Joined(words);
  for (const auto& [role, kind] : kKinds) {
    for (const auto& [known, role_of_known] : words_) {
      if (role_of_known != role) continue;
      if (text.find(" " + known + " ") != std::string::npos || HasMisreadOf(words, known)) return kind;
    }
  }
  return std::nullopt;
}

std::optional<LinePlace> PartWords::LineIn(std::string_view description) const {
  const std::string text = Joined(orders::PlainWords(description));
  for (const auto& [role, place] : kLines) {
    for (const auto& [known, role_of_known] : words_) {
      if (role_of_known == role && text.find(" " + known + " ") != std::string::npos) return place;
    }
  }
  return std::nullopt;
}

std::optional<PartKind> PartWords::KindOfClass(std::string_view letters) const {
  return letters_.find(letters) == letters_.end() ? std::nullopt : std::optional(PartKind::kSelenium);
}

}  // namespace benchleaf
