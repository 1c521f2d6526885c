#include "benchleaf/stock/stock_words.h"

#include "benchleaf/core/ascii.h"
#include "benchleaf/core/table_file.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <utility>

namespace benchleaf {
namespace {

constexpr std::array<std::pair<std::string_view, StockColumn>, 7> kColumnRoles = {{
    {"column-type", StockColumn::kType},
    {"column-count", StockColumn::kCount},
    {"column-glass", StockColumn::kGlass},
    {"column-box", StockColumn::kBox},
    {"column-condition", StockColumn::kCondition},
    {"column-tester", StockColumn::kTester},
    {"column-place", StockColumn::kPlace},
}};

constexpr std::array<std::pair<std::string_view, ConditionWord>, 6> kConditionRoles = {{
    {"good", ConditionWord::kGood},
    {"tested-good", ConditionWord::kTestedGood},
    {"used", ConditionWord::kUsed},
    {"untested", ConditionWord::kUntested},
    {"bad", ConditionWord::kBad},
    {"nothing", ConditionWord::kNothing},
}};

constexpr std::string_view kUnmarkedRole = "unmarked";
constexpr std::string_view kNoRole = "none";

template <class Roles>
auto RoleNamed(const Roles& roles, std::string_view name) -> std::optional<typename Roles::value_type::second_type> {
  for (const auto& [role, meaning] : roles) {
    if (role == name) return meaning;
  }
  return std::nullopt;
}

// Capitals and figures, everything else between them as one space.
std::string Plain(std::string_view text) {
  std::string plain;
  bool gap = false;
  for (const char c : text) {
    if (!IsAlnum(c)) {
      gap = true;
      continue;
    }
    if (gap && !plain.empty()) plain += ' ';
    gap = false;
    plain += ToUpper(c);
  }
  return plain;
}

}  // namespace

Result<StockWords> StockWords::Load(const std::vector<std::filesystem::path>& files) {
  StockWords known;
  for (const std::filesystem::path& path : files) {
    const auto file = TableFile::Read(path, {"role", "words", "source"});
    if (!file) return tl::unexpected<Error>(file.error());
    for (std::size_t row = 0; row < file->size(); ++row) {
      const std::string& role = file->Cell(row, "role");
      const std::string& words = file->Cell(row, "words");
      if (words.empty() || Plain(words) != words) {
        return tl::unexpected<Error>(
            file->Complaint(row, "words", "write capitals and figures, with one space between words"));
      }
      if (RoleNamed(kColumnRoles, role)) {
        known.columns_[words] = role;
      } else if (RoleNamed(kConditionRoles, role)) {
        known.conditions_[words] = role;
      } else if (role == kUnmarkedRole) {
        known.unmarked_[words] = role;
      } else if (role == kNoRole) {
        for (auto* table : {&known.columns_, &known.conditions_, &known.unmarked_}) table->erase(words);
      } else {
        std::string roles;
        for (const auto& [name, meaning] : kColumnRoles) roles.append(name).append(", ");
        for (const auto& [name, meaning] : kConditionRoles) roles.append(name).append(", ");
        return tl::unexpected<Error>(file->Complaint(row, "role", "write one of: " + roles + "unmarked, none"));
      }
    }
  }
  return known;
}

std::optional<StockColumn> StockWords::Column(std::string_view title) const {
  const auto found = columns_.find(Plain(title));
  return found == columns_.end() ? std::nullopt : RoleNamed(kColumnRoles, found->second);
}

std::vector<ConditionWord> StockWords::Conditions(std::string_view text) const {
  std::vector<ConditionWord> said;
  const std::string plain = Plain(text);
  std::string_view rest = plain;
  while (!rest.empty()) {
    std::size_t taken = std::min(rest.find(' '), rest.size());  // a word that says nothing to us
    for (std::size_t end = rest.size();; end = rest.rfind(' ', end - 1)) {
      const auto found = conditions_.find(rest.substr(0, end));
      if (found != conditions_.end()) {
        said.push_back(*RoleNamed(kConditionRoles, found->second));
        taken = end;
        break;
      }
      if (rest.rfind(' ', end - 1) == std::string_view::npos) break;
    }
    rest.remove_prefix(std::min(taken + 1, rest.size()));
  }
  return said;
}

bool StockWords::IsUnmarked(std::string_view marking) const {
  const std::string plain = Plain(marking);
  return plain.empty() || unmarked_.find(plain) != unmarked_.end();
}

}  // namespace benchleaf
