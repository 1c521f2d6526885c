#include "extract/look_alikes.h"
#include "extract/plain_text.h"
#include "extract/tube_form.h"
#include "extract/tube_type.h"

#include "benchleaf/core/utf8.h"

#include <algorithm>
#include <cstddef>
#include <vector>

namespace benchleaf::extract {
namespace {

constexpr double kMostUnlike = 2;
constexpr double kClearlyBetter = 0.5;  // than the next type, in unlikeness
constexpr std::size_t kLongestSuffix = 4;

struct Candidate {
  std::string type;
  double unlike = 0;
};

// What a figure that must be a suffix adds: most types were printed without one, so 6C86 is rather 6CB6 than 6C8G.
constexpr double kFigureForSuffix = 0.5;

// The letters that the rest of a text may be when a suffix must stand there: "GT8" is GTB.
std::string AsSuffix(const std::vector<std::string_view>& characters, std::size_t from) {
  std::string suffix;
  for (std::size_t i = from; i < characters.size(); ++i) {
    if (characters[i] == "8") {
      suffix += 'B';
    } else if (characters[i] == "6") {
      suffix += 'G';
    } else {
      suffix += Upper(characters[i]);
    }
  }
  return suffix;
}

// Whether a letter and a figure of the type were read as they are, so that not all of it is guessed.
bool HasAnchors(const std::vector<std::string_view>& read, const std::string& type) {
  bool letter = false;
  bool figure = false;
  for (std::size_t i = 0; i < type.size(); ++i) {
    const bool same = read[i] == std::string_view(type).substr(i, 1);
    letter = letter || (same && IsUpper(type[i]));
    figure = figure || (same && IsDigit(type[i]));
  }
  return letter && figure;
}

std::vector<Candidate> Candidates(const std::vector<std::string_view>& read, const Rules::Tables& tables) {
  std::vector<Candidate> candidates;
  std::vector<std::string_view> stem = read;
  for (std::size_t cut = 0; cut <= kLongestSuffix && read.size() >= cut + 3; ++cut) {
    stem.resize(read.size() - cut);
    std::string joined;
    for (const std::string_view character : stem) {
      joined += character;
    }
    const auto known = tables.folded_tubes.find(Folded(joined, tables));
    if (known == tables.folded_tubes.end()) {
      continue;
    }
    const std::string suffix = AsSuffix(read, stem.size());
    for (const std::string& type : known->second) {
      const std::string whole = type + suffix;
      const auto parts = SplitNumberFirst(whole);
      if (cut > 0 && !(parts && HasReceivingForm(*parts))) {
        continue;
      }
      auto unlike = Unlikeness(read, whole, tables);
      if (unlike && IsUpper(whole.back()) && read.back().size() == 1 && IsDigit(read.back().front())) {
        *unlike += kFigureForSuffix;
      }
      const bool again = std::any_of(candidates.begin(), candidates.end(),
                                     [&](const Candidate& other) { return other.type == whole; });
      if (unlike && *unlike <= kMostUnlike && !again && HasAnchors(read, whole)) {
        candidates.push_back({whole, *unlike});
      }
    }
  }
  return candidates;
}

}  // namespace

std::optional<TubeType> TubeTypeLookingLike(const std::string& text, const Rules::Tables& tables, TubeContext context) {
  // A letter and a figure must have been read as they are: see HasAnchors. Most words of text end here.
  if (std::none_of(text.begin(), text.end(), IsDigit) || std::none_of(text.begin(), text.end(), IsUpper)) {
    return std::nullopt;
  }
  const std::vector<std::string_view> read = Characters(text);
  // Three characters are too few to tell a type from a pin, unless a tube is meant.
  if (read.size() < (context == TubeContext::kTube ? 3U : 4U)) {
    return std::nullopt;
  }
  std::vector<Candidate> candidates = Candidates(read, tables);
  if (candidates.empty()) {
    return std::nullopt;
  }
  std::sort(candidates.begin(), candidates.end(),
            [](const Candidate& a, const Candidate& b) { return a.unlike < b.unlike; });
  if (candidates.size() > 1 && candidates[1].unlike < candidates[0].unlike + kClearlyBetter) {
    return std::nullopt;
  }
  const double unlike = candidates[0].unlike;
  const double sure = unlike <= 0.5 ? 0.9 : unlike <= 1 ? 0.85 : 0.65;
  return TubeType{candidates[0].type, sure, true, true};
}

}  // namespace benchleaf::extract
