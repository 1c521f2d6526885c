#include "reading/line_reader.h"

#include "reading/token_partner.h"
#include "reading/word_choice.h"

#include <algorithm>
#include <cstddef>
#include <string_view>
#include <tuple>
#include <utility>

namespace benchleaf {
namespace {

// What the reader for drawings calls no text is none, or part of one: of 2,628 such strings that it was at least so
// sure of, 31 held a whole text (sheets for development and practice, all grades; compare-readers).
constexpr double kSurelyNoText = 0.3;

// Where it is so sure, the other reader is not asked: of 9,640 such short words, it alone was right in 8. What is
// trusted then is how often the sure one was right, on the same sheets (.981 and .904).
constexpr double kSurelyRead = 0.95;
constexpr double kTrustInSureDesignator = 0.98;
constexpr double kTrustInSure = 0.91;
constexpr std::size_t kLongestSure = 7;  // characters; longer ones may be several words, whose spaces it overlooks

// How far to trust a token of one reader, of which the other has read `others` on the same line.
double TrustIn(const Token& token, ReaderKind reader, const std::vector<Token>& others, const StringLook& look,
               bool whole) {
  Evidence evidence;
  evidence.reader = reader;
  evidence.confidence = token.confidence;
  if (const Token* partner = Partner(token, others); partner != nullptr) {
    evidence.other = SameWord(partner->text, token.text) ? OtherReading::kSame
                     : partner->text == kNoText          ? OtherReading::kScrap
                                                         : OtherReading::kDifferent;
    evidence.other_confidence = partner->confidence;
  }
  evidence.designator_form = HasDesignatorForm(token.text);
  evidence.characters = token.text.size();
  evidence.whole = whole;
  evidence.look = look;
  return Trust(evidence);
}

// Whether a token is another with a figure in place of its closing comma or point ("V7" for "V,"). The reader for
// drawings does that: labels have no commas, and a letter with a figure behind it is what they mostly are.
bool TakesCommaForFigure(const Token& token, const Token& other) {
  if (token.text.size() < 2 || token.text.size() != other.text.size() || token.text.back() < '0' ||
      token.text.back() > '9' || (other.text.back() != ',' && other.text.back() != '.')) {
    return false;
  }
  const std::string_view stem(token.text.data(), token.text.size() - 1);
  return std::string_view(other.text).starts_with(stem) && CommonWidth(token.box, other.box) > 0;
}

bool HasSmallLetters(const Token& token) {
  return std::any_of(token.text.begin(), token.text.end(), [](char c) { return c >= 'a' && c <= 'z'; });
}

// Whether a token is a word of running text. The reader for drawings knows few small letters, and takes them for
// capitals and figures (1ooP for loop).
bool IsProse(const Token& token) {
  constexpr std::size_t kFewestLetters = 4;
  const std::string_view text = token.text;
  const std::string_view word = text.substr(0, text.find_last_not_of(",.;:") + 1);
  const auto is_small = [](char c) { return c >= 'a' && c <= 'z'; };
  const bool capital = !word.empty() && word.front() >= 'A' && word.front() <= 'Z';
  return word.size() >= kFewestLetters && std::all_of(word.begin() + (capital ? 1 : 0), word.end(), is_small);
}

// Whether a token is what a word of running text was misread as: it has a figure, or was read less surely.
bool SpoilsProse(const Token& token, const Token& word) {
  const bool figures = std::any_of(token.text.begin(), token.text.end(), [](char c) { return c >= '0' && c <= '9'; });
  return !IsProse(token) && IsProse(word) && CommonWidth(token.box, word.box) > 0 &&
         (figures || token.confidence < word.confidence);
}

// Whether the token runs together what the other reader sees as several words. The reader for drawings overlooks
// spaces.
bool RunsTogether(const Token& token, const std::vector<Token>& others) {
  constexpr double kWithin = 0.5;
  const auto within = std::count_if(others.begin(), others.end(),
                                    [&](const Token& other) { return CommonWidth(token.box, other.box) >= kWithin; });
  return within > 1 && !HasDesignatorForm(token.text);
}

bool Holds(const std::vector<Token>& tokens, const Token& token) {
  return std::any_of(tokens.begin(), tokens.end(), [&](const Token& other) {
    return other.text == token.text && CommonWidth(other.box, token.box) > 0;
  });
}

// The token, trusted so far; its alternatives gain or lose nothing beside it, but are no surer than their reader was.
Token Trusted(Token token, double trust) {
  const double share = token.confidence > 0 ? std::min(1.0, trust / token.confidence) : 0;
  for (Alternative& other : token.alternatives) other.confidence *= share;
  token.confidence = trust;
  return token;
}

}  // namespace

LineReader::LineReader(std::unique_ptr<Recognizer> general, std::unique_ptr<LetteringReader> lettering,
                       const PageSteps& steps)
    : general_(std::move(general)), lettering_(std::move(lettering)), steps_(steps) {}

Result<std::unique_ptr<LineReader>> LineReader::Create(const std::filesystem::path& config, const PageSteps& steps) {
  Result<std::unique_ptr<Recognizer>> general = Recognizer::Create();
  if (!general) {
    return tl::unexpected(std::move(general.error()));
  }
  Result<std::unique_ptr<LetteringReader>> lettering = LetteringReader::Create(config);
  if (!lettering) {
    return tl::unexpected(std::move(lettering.error()));
  }
  return std::unique_ptr<LineReader>(new LineReader(std::move(*general), std::move(*lettering), steps));
}

std::vector<Token> LineReader::Read(const GreyImage& line, const StringLook& look) {
  // The reader for drawings comes first: it is the quicker one, and knows scraps.
  const std::vector<Token> lettering = steps_.lettering_reader ? lettering_->ReadLine(line) : std::vector<Token>();
  if (lettering.size() == 1 && lettering.front().text == kNoText && lettering.front().confidence >= kSurelyNoText) {
    return {};
  }
  if (lettering.size() == 1 && lettering.front().confidence >= kSurelyRead &&
      lettering.front().text.size() <= kLongestSure && !HasSmallLetters(lettering.front())) {
    std::vector<Token> sure = lettering;
    sure.front().confidence = HasDesignatorForm(sure.front().text) ? kTrustInSureDesignator : kTrustInSure;
    sure.front().alternatives.clear();
    return sure;
  }
  std::vector<Token> tokens;
  const std::vector<Token> general = general_->ReadLine(line);
  const auto trust_in = [&](const Token& token, ReaderKind reader) {
    const auto& [own, others] =
        reader == ReaderKind::kGeneral ? std::tie(general, lettering) : std::tie(lettering, general);
    return steps_.trust ? TrustIn(token, reader, others, look, own.size() == 1) : token.confidence;
  };
  for (const Token& token : general) {
    const double trust = trust_in(token, ReaderKind::kGeneral);
    const auto same =
        std::find_if(lettering.begin(), lettering.end(), [&](const Token& other) { return other.text == token.text; });
    Token trusted = token;
    trusted.confidence = trust;
    if (same != lettering.end()) {
      trusted.alternatives = Trusted(*same, trust).alternatives;
    }
    tokens.push_back(std::move(trusted));
  }
  for (const Token& token : lettering) {
    const bool misread = std::any_of(general.begin(), general.end(), [&](const Token& other) {
      return TakesCommaForFigure(token, other) || SpoilsProse(token, other);
    });
    if (token.text != kNoText && !misread && !RunsTogether(token, general) && !Holds(general, token)) {
      tokens.push_back(Trusted(token, trust_in(token, ReaderKind::kLettering)));
    }
  }
  return tokens;
}

}  // namespace benchleaf
