// What a person means by the name of a set or of a kind of page.

#ifndef BENCHLEAF_SRC_CLI_CHOICES_H_
#define BENCHLEAF_SRC_CLI_CHOICES_H_

#include "benchleaf/cli/run.h"
#include "benchleaf/core/result.h"
#include "benchleaf/paging/page_facts.h"
#include "benchleaf/store/index_reader.h"

#include <optional>
#include <string>
#include <vector>

namespace benchleaf {

// The set's exact name. When several are meant, or none, says so with the names that come near, and gives the exit
// code: kUsage for several, kNothingFound for none.
tl::expected<std::string, ExitCode> ChooseSet(IndexReader& index, const std::string& text, const Streams& streams);

// "parts list", "Parts-List"; nothing for an empty text. Fails with kUsage, naming the kinds there are.
Result<std::optional<PageKind>> ChoosePageKind(const std::string& text);

// The kinds of pages, by their names.
std::vector<std::string> PageKinds();

// "electrolytic, paper, selenium".
std::string ListOf(const std::vector<std::string>& names);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_CHOICES_H_
