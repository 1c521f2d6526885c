// Finds the weights of reading/trust.cc from what compare-readers printed: a logistic regression by Newton's method,
// with a little shrinking, and the reliability of the result on files that took no part in the fit.

#include "reader-training/run_tool.h"
#include "reading/token.h"
#include "reading/token_partner.h"
#include "reading/trust.h"
#include "reading/word_choice.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <cstdio>
#include <fstream>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf::training {
namespace {

constexpr const char* kUsage =
    "fit-trust FIT.tsv [JUDGE.tsv]...\n"
    "Each file as compare-readers prints it. Prints weights, and for each JUDGE.tsv how often texts of each bin of\n"
    "stated trust are right.\n";

using Features = std::array<double, kTrustFeatures>;

struct Example {
  Features features{};
  bool right = false;
};

std::vector<std::string> Fields(const std::string& line) {
  std::vector<std::string> fields(1);
  for (const char c : line) {
    if (c == '\t') {
      fields.emplace_back();
    } else {
      fields.back() += c;
    }
  }
  return fields;
}

// One example of each reader that gave a text.
void AddExamples(const std::vector<std::string>& fields, std::vector<Example>& examples) {
  constexpr std::size_t kTurn = 2;
  constexpr std::size_t kLetters = 3;
  constexpr std::size_t kLength = 4;
  constexpr std::size_t kBreadth = 5;
  constexpr std::size_t kTruth = 6;
  constexpr std::size_t kGeneral = 7;
  constexpr std::size_t kLettering = 9;
  constexpr std::size_t kPart = 11;  // only there for words of a phrase
  if (fields.size() <= kLettering + 1) {
    throw std::runtime_error("a line has too few columns");
  }
  const std::size_t letters = std::stoul(fields[kLetters]);
  const StringLook look = {letters == 0, fields[kTurn] == "standing", letters, std::stod(fields[kLength]),
                           std::stod(fields[kBreadth])};
  for (const auto& [own, other] : {std::pair(kGeneral, kLettering), std::pair(kLettering, kGeneral)}) {
    const std::string& text = fields[own];
    const std::string& rival = fields[other];
    if (text.empty() || text == kNoText || (own == kLettering && text == rival)) {
      continue;
    }
    Evidence evidence;
    evidence.reader = own == kGeneral ? ReaderKind::kGeneral : ReaderKind::kLettering;
    evidence.confidence = std::stod(fields[own + 1]);
    evidence.other = rival.empty()           ? OtherReading::kNothing
                     : rival == kNoText      ? OtherReading::kScrap
                     : SameWord(rival, text) ? OtherReading::kSame
                                             : OtherReading::kDifferent;
    evidence.other_confidence = std::stod(fields[other + 1]);
    evidence.designator_form = HasDesignatorForm(text);
    evidence.characters = text.size();
    evidence.whole = fields.size() <= kPart && text.find(' ') == std::string::npos;
    evidence.look = look;
    examples.push_back({TrustFeatures(evidence), SameWord(text, fields[kTruth])});
  }
}

std::vector<Example> Load(const std::string& path) {
  std::ifstream file(path);
  std::vector<Example> examples;
  for (std::string line; std::getline(file, line);) AddExamples(Fields(line), examples);
  if (examples.empty()) {
    throw std::runtime_error(path + " holds no readings");
  }
  return examples;
}

double Chance(const Features& features, const Features& weights) {
  double sum = 0;
  for (std::size_t i = 0; i < kTrustFeatures; ++i) sum += features[i] * weights[i];
  return 1 / (1 + std::exp(-sum));
}

// Solves a * x = b by elimination; `a` is positive definite.
Features Solved(std::array<Features, kTrustFeatures> a, Features b) {
  for (std::size_t i = 0; i < kTrustFeatures; ++i) {
    for (std::size_t row = i + 1; row < kTrustFeatures; ++row) {
      const double factor = a[row][i] / a[i][i];
      for (std::size_t column = i; column < kTrustFeatures; ++column) a[row][column] -= factor * a[i][column];
      b[row] -= factor * b[i];
    }
  }
  Features x{};
  for (std::size_t i = kTrustFeatures; i-- > 0;) {
    x[i] = b[i];
    for (std::size_t column = i + 1; column < kTrustFeatures; ++column) x[i] -= a[i][column] * x[column];
    x[i] /= a[i][i];
  }
  return x;
}

Features Fit(const std::vector<Example>& examples) {
  constexpr int kSteps = 30;
  constexpr double kShrink = 1;  // as if one example each spoke for a weight of naught
  Features weights{};
  for (int step = 0; step < kSteps; ++step) {
    Features slope{};
    std::array<Features, kTrustFeatures> curve{};
    for (std::size_t i = 0; i < kTrustFeatures; ++i) {
      slope[i] = -kShrink * weights[i];
      curve[i][i] = kShrink;
    }
    for (const Example& example : examples) {
      const double chance = Chance(example.features, weights);
      for (std::size_t i = 0; i < kTrustFeatures; ++i) {
        slope[i] += ((example.right ? 1 : 0) - chance) * example.features[i];
        for (std::size_t j = 0; j < kTrustFeatures; ++j) {
          curve[i][j] += chance * (1 - chance) * example.features[i] * example.features[j];
        }
      }
    }
    const Features change = Solved(curve, slope);
    for (std::size_t i = 0; i < kTrustFeatures; ++i) weights[i] += change[i];
  }
  return weights;
}

void PrintReliability(const std::string& name, const std::vector<Example>& examples, const Features& weights) {
  constexpr std::size_t kBins = 10;
  std::array<int, kBins> count{};
  std::array<int, kBins> right{};
  std::array<double, kBins> stated{};
  for (const Example& example : examples) {
    const double chance = Chance(example.features, weights);
    const std::size_t bin = std::min(kBins - 1, static_cast<std::size_t>(chance * kBins));
    ++count[bin];
    right[bin] += example.right ? 1 : 0;
    stated[bin] += chance;
  }
  std::printf("%s\n", name.c_str());
  for (std::size_t bin = 0; bin < kBins; ++bin) {
    const double n = std::max(1, count[bin]);
    std::printf("  stated %.2f  right %.2f  of %d\n", stated[bin] / n, right[bin] / n, count[bin]);
  }
}

void Run(const std::vector<std::string>& files) {
  if (files.empty()) {
    throw std::invalid_argument("no file is named");
  }
  const std::vector<Example> examples = Load(files.front());
  const Features weights = Fit(examples);
  for (const double weight : weights) std::printf("%.3f, ", weight);
  std::printf("\n");
  for (const std::string& file : files) PrintReliability(file, Load(file), weights);
}

}  // namespace
}  // namespace benchleaf::training

int main(int argc, char** argv) {
  using namespace benchleaf::training;
  return RunTool("fit-trust", kUsage, argc, argv, Run);
}
