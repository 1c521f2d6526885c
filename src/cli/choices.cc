#include "cli/choices.h"

#include "cli/talk.h"

#include <algorithm>
#include <cctype>

namespace benchleaf {

tl::expected<std::string, ExitCode> ChooseSet(IndexReader& index, const std::string& text, const Streams& streams) {
  const auto matches = index.MatchSets(text);
  if (!matches) return tl::unexpected(Stop(streams, matches.error()));
  if (!matches->near && matches->names.size() == 1) return matches->names.front();
  if (matches->near || matches->names.empty()) {
    Say(streams,
        "no set is called '" + text + "'" +
            (matches->names.empty() ? "; `benchleaf sets` lists all of them" : "; sets with names near to it:"));
  } else {
    Say(streams, "'" + text + "' may mean several sets; say which:");
  }
  for (const std::string& name : matches->names) Say(streams, "  " + name);
  return tl::unexpected(matches->near || matches->names.empty() ? ExitCode::kNothingFound : ExitCode::kUsage);
}

Result<std::optional<PageKind>> ChoosePageKind(const std::string& text) {
  if (text.empty()) return std::optional<PageKind>();
  std::string name = text;
  std::transform(name.begin(), name.end(), name.begin(),
                 [](unsigned char c) { return c == '-' || c == '_' ? ' ' : static_cast<char>(std::tolower(c)); });
  if (const std::optional<PageKind> kind = PageKindNamed(name)) return kind;
  return Fail(ErrorCode::kUsage, "no kind of page is called '" + text + "'; the kinds are: " + ListOf(PageKinds()));
}

std::vector<std::string> PageKinds() {
  std::vector<std::string> names;
  for (int i = 0; i <= static_cast<int>(PageKind::kOther); ++i) names.emplace_back(Name(static_cast<PageKind>(i)));
  return names;
}

std::string ListOf(const std::vector<std::string>& names) {
  std::string list;
  for (const std::string& name : names) list.append(list.empty() ? "" : ", ").append(name);
  return list;
}

}  // namespace benchleaf
