// Judges the answers to a search.

#ifndef BENCHLEAF_TESTS_BENCH_SEARCH_SCORER_H_
#define BENCHLEAF_TESTS_BENCH_SEARCH_SCORER_H_

#include "scan-maker/truth.h"

#include "benchleaf/store/index_reader.h"

#include <cstddef>
#include <string>
#include <vector>

namespace benchleaf::bench {

// A place where the term really stands.
struct PlaceOfTerm {
  std::size_t page = 0;  // position, counts from 0
  FractionBox box;
  bool found_exactly = false;  // by an answer of Match::kExact or kForm
  bool found = false;
};

struct JudgedAnswers {
  std::vector<PlaceOfTerm> places;
  std::vector<bool> right;  // of each answer: it stands where the term does
};

// `truth` are the pages of the one file that is asked; an answer's page counts from 1 in it. An answer is right when it
// overlaps a place by 30 % of the smaller box, whatever was read there; a second answer to one place is neither right
// nor wrong, and counts as right.
JudgedAnswers JudgeAnswers(const std::vector<scanmaker::PageTruth>& truth, const std::string& kind,
                           const std::string& term, const std::vector<FoundSighting>& answers);

// Sums over questions. All shares are 0 where there is nothing to divide by.
struct SearchTally {
  int queries = 0;
  int there = 0;
  int found_exactly = 0;
  int found = 0;
  int answers = 0;
  int exact_answers = 0;
  int with_right = 0;          // questions with a right answer
  int first_right = 0;         // whose first answer is right
  int right_before_wrong = 0;  // of which no right answer stands behind a wrong one

  void Add(const JudgedAnswers& judged, const std::vector<FoundSighting>& all);

  double ExactRecall() const;
  double Recall() const;
  double FirstRight() const;
  double RightBeforeWrong() const;
  double AnswersPerQuery() const;
  double ExactAnswersPerQuery() const;
};

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_SEARCH_SCORER_H_
