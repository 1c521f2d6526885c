#include "cli/narrowed_search.h"

#include "cli/choices.h"
#include "cli/talk.h"

#include <cstddef>
#include <utility>

namespace benchleaf {

tl::expected<Narrowing, ExitCode> ChooseNarrowing(IndexReader& index, const std::string& set, const std::string& kind,
                                                  const Streams& streams) {
  Narrowing narrowing;
  const auto chosen_kind = ChoosePageKind(kind);
  if (!chosen_kind) return tl::unexpected(Stop(streams, chosen_kind.error()));
  narrowing.kind = *chosen_kind;
  if (!set.empty()) {
    auto chosen_set = ChooseSet(index, set, streams);
    if (!chosen_set) return tl::unexpected(chosen_set.error());
    narrowing.set = std::move(*chosen_set);
  }
  return narrowing;
}

Result<TermHits> Search(IndexReader& index, const std::string& term, const Narrowing& narrowing, int limit) {
  // One more than is shown tells whether there are more.
  auto hits = index.Find({.term = term, .set = narrowing.set, .kind = narrowing.kind, .limit = limit + 1});
  if (!hits) return tl::unexpected(hits.error());
  TermHits found;
  found.term = term;
  found.hits = std::move(*hits);
  if (found.hits.size() > static_cast<std::size_t>(limit)) {
    found.hits.resize(static_cast<std::size_t>(limit));
    found.more = true;
  }
  if (narrowing.kind) found.searched.push_back("on pages of kind " + std::string(Name(*narrowing.kind)));
  if (!narrowing.set.empty()) found.searched.push_back("in " + narrowing.set);
  if (found.hits.empty()) {
    auto near = index.Suggest(term);
    if (!near) return tl::unexpected(near.error());
    found.near = std::move(*near);
  }
  return found;
}

}  // namespace benchleaf
