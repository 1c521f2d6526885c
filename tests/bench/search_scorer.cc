#include "bench/search_scorer.h"

#include <algorithm>

namespace benchleaf::bench {
namespace {

constexpr double kLeastOverlap = 0.3;

bool IsExact(const FoundSighting& answer) { return answer.match == Match::kExact || answer.match == Match::kForm; }

double Share(int part, int whole) { return whole == 0 ? 0 : static_cast<double>(part) / whole; }

}  // namespace

JudgedAnswers JudgeAnswers(const std::vector<scanmaker::PageTruth>& truth, const std::string& kind,
                           const std::string& term, const std::vector<FoundSighting>& answers) {
  JudgedAnswers judged;
  for (std::size_t page = 0; page < truth.size(); ++page) {
    for (const scanmaker::TruthTerm& there : truth[page].terms) {
      if (there.kind == kind && there.text == term) {
        judged.places.push_back({page, there.box});
      }
    }
  }
  for (const FoundSighting& answer : answers) {
    bool right = false;
    for (PlaceOfTerm& place : judged.places) {
      if (static_cast<std::size_t>(answer.place.page) == place.page + 1 &&
          OverlapOfSmaller(place.box, answer.sighting.box) >= kLeastOverlap) {
        right = true;
        place.found = true;
        place.found_exactly = place.found_exactly || IsExact(answer);
      }
    }
    judged.right.push_back(right);
  }
  return judged;
}

void SearchTally::Add(const JudgedAnswers& judged, const std::vector<FoundSighting>& all) {
  ++queries;
  answers += static_cast<int>(all.size());
  exact_answers += static_cast<int>(std::count_if(all.begin(), all.end(), IsExact));
  for (const PlaceOfTerm& place : judged.places) {
    ++there;
    found_exactly += place.found_exactly ? 1 : 0;
    found += place.found ? 1 : 0;
  }
  if (std::find(judged.right.begin(), judged.right.end(), true) != judged.right.end()) {
    ++with_right;
    first_right += judged.right.front() ? 1 : 0;
    right_before_wrong += std::is_sorted(judged.right.rbegin(), judged.right.rend()) ? 1 : 0;
  }
}

double SearchTally::ExactRecall() const { return Share(found_exactly, there); }
double SearchTally::Recall() const { return Share(found, there); }
double SearchTally::FirstRight() const { return Share(first_right, with_right); }
double SearchTally::RightBeforeWrong() const { return Share(right_before_wrong, with_right); }
double SearchTally::AnswersPerQuery() const { return Share(answers, queries); }
double SearchTally::ExactAnswersPerQuery() const { return Share(exact_answers, queries); }

}  // namespace benchleaf::bench
