#include "bench/list_pages.h"

#include "scan-maker/parts_list_page.h"

#include <algorithm>
#include <stdexcept>

namespace benchleaf::bench {
namespace {

using scanmaker::Grouping;
using scanmaker::Lettering;
using scanmaker::ListForm;
using scanmaker::ListLayout;
using scanmaker::NumberForm;
using scanmaker::Wording;

struct Case {
  const char* name;
  ListLayout layout;
  Lettering lettering;  // of the development half
  Lettering held_out;
  std::uint64_t seed;  // odd ones without assemblies, even ones with; the held-out half adds 1000
};

constexpr Lettering kTyped = Lettering::kTypewriter;
constexpr Lettering kBook = Lettering::kBook;
constexpr Lettering kDrafting = Lettering::kDrafting;
constexpr Lettering kSimplex = Lettering::kSimplex;
constexpr Lettering kDuplex = Lettering::kDuplex;
constexpr Lettering kHand = Lettering::kHand;

const std::vector<Case>& Cases() {
  static const std::vector<Case> kCases = {
      {"columns", {.form = ListForm::kColumns}, kTyped, kBook, 301},
      {"abreast", {.form = ListForm::kColumns, .abreast = 2}, kTyped, kDuplex, 302},
      {"quantities",
       {.form = ListForm::kColumns, .grouping = Grouping::kThrough, .quantity = true},
       kBook,
       kTyped,
       303},
      {"leaders", {.form = ListForm::kLeaders}, kTyped, kBook, 304},
      {"leaders-grouped", {.form = ListForm::kLeaders, .grouping = Grouping::kDashes}, kBook, kDuplex, 305},
      {"ruled", {.form = ListForm::kRuled, .quantity = true}, kTyped, kSimplex, 306},
      {"ruled-grouped", {.form = ListForm::kRuled, .grouping = Grouping::kDashes}, kDrafting, kBook, 307},
      {"designator-last", {.form = ListForm::kDesignatorLast}, kTyped, kBook, 308},
      {"number-first",
       {.form = ListForm::kNumberFirst, .grouping = Grouping::kTildes, .tubes_first = true},
       kBook,
       kTyped,
       309},
      {"number-second",
       {.form = ListForm::kNumberSecond, .grouping = Grouping::kCommas, .tubes_first = true},
       kTyped,
       kDuplex,
       311},
      {"items", {.form = ListForm::kItems, .quantity = true, .tubes_first = true}, kTyped, kBook, 313},
      {"class-tables",
       {.form = ListForm::kColumns,
        .abreast = 2,
        .class_tables = true,
        .wording = Wording::kTerse,
        .tubes_first = true},
       kBook,
       kTyped,
       315},
      {"makers",
       {.form = ListForm::kRuled, .class_tables = true, .makers = 5, .wording = Wording::kTerse, .tubes_first = true},
       kBook,
       kSimplex,
       317},
      {"makers-abreast",
       {.form = ListForm::kNumberSecond,
        .abreast = 2,
        .class_tables = true,
        .makers = 2,
        .wording = Wording::kTerse,
        .tubes_first = true},
       kBook,
       kTyped,
       319},
      {"wrapped",
       {.form = ListForm::kColumns, .abreast = 2, .grouping = Grouping::kCommas, .description_share = 0.8},
       kTyped,
       kBook,
       321},
      {"tildes", {.form = ListForm::kColumns, .grouping = Grouping::kTildes, .boxed = true}, kTyped, kDrafting, 323},
      {"sections", {.form = ListForm::kColumns, .lettered_sections = true}, kTyped, kBook, 325},
      {"units", {.form = ListForm::kColumns, .abreast = 2, .units = true, .tubes_first = true}, kTyped, kBook, 326},
      {"text-above",
       {.form = ListForm::kColumns, .abreast = 2, .boxed = true, .tubes_first = true, .text_above = true},
       kTyped,
       kBook,
       327},
      {"hardware-beside",
       {.form = ListForm::kColumns, .abreast = 2, .tubes_first = true, .hardware_second = true},
       kTyped,
       kBook,
       329},
      {"spaced-numbers",
       {.form = ListForm::kNumberSecond, .numbers = NumberForm::kSpaced, .tubes_first = true},
       kBook,
       kTyped,
       331},
      {"numbers-like-designators",
       {.form = ListForm::kNumberFirst, .numbers = NumberForm::kLikeDesignators, .tubes_first = true},
       kTyped,
       kBook,
       333},
      {"sockets", {.form = ListForm::kRuled, .sockets = true, .tubes_first = true}, kTyped, kDuplex, 334},
      {"spaced-designators", {.form = ListForm::kColumns, .spaced_designators = true}, kTyped, kBook, 335},
      {"dittos", {.form = ListForm::kColumns, .wording = Wording::kDittos, .tubes_first = true}, kTyped, kBook, 337},
      {"same-as", {.form = ListForm::kLeaders, .wording = Wording::kSameAs, .tubes_first = true}, kTyped, kDuplex, 339},
      {"long-descriptions",
       {.form = ListForm::kColumns, .description_share = 0.5, .unused = true, .tubes_first = true},
       kBook,
       kTyped,
       341},
      {"printed-by-hand", {.form = ListForm::kRuled, .tubes_first = true}, kHand, kSimplex, 343},
  };
  return kCases;
}

// Practice pages are lettered as held-out ones, but never in the lettering that only these know.
Lettering LetteringOf(const Case& one, ListHalf half) {
  if (half == ListHalf::kDevelopment) {
    return one.lettering;
  }
  return half == ListHalf::kPractice && one.held_out == kDuplex ? Lettering::kBookPen : one.held_out;
}

}  // namespace

std::vector<std::string> ListLayoutNames() {
  std::vector<std::string> names;
  for (const Case& one : Cases()) {
    names.emplace_back(one.name);
  }
  return names;
}

ListPage MakeListPage(std::string_view layout, ListHalf half, int number) {
  const auto found = std::find_if(Cases().begin(), Cases().end(), [&](const Case& one) { return one.name == layout; });
  if (found == Cases().end()) {
    throw std::invalid_argument("no layout is called " + std::string(layout));
  }
  if (number != 0 && half != ListHalf::kPractice) {
    throw std::invalid_argument("only of practice pages there are several");
  }
  constexpr std::uint64_t kBetween = 100;  // even, so that pages stay with or without assemblies
  const std::uint64_t half_seed = half == ListHalf::kDevelopment ? 0 : half == ListHalf::kHeldOut ? 1000 : 2000;
  const std::uint64_t seed = found->seed + half_seed + kBetween * static_cast<std::uint64_t>(number);
  return {found->name, seed, scanmaker::MakeRandomPartsListPage(found->layout, LetteringOf(*found, half), seed)};
}

}  // namespace benchleaf::bench
