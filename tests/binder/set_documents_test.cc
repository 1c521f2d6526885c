#include "binder/set_documents.h"

#include "binder/find_index.h"
#include "binder/sample_book.h"
#include "places/places.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace benchleaf::binder {
namespace {

using testing::HasSubstr;
using testing::Not;

std::vector<PagePicture> Pictures(const Book& book) {
  return std::vector<PagePicture>(book.pages.size(), {1000, 800, std::nullopt});
}

// All documents of the set.
std::vector<std::string> Documents(const Book& book) {
  TubeFiles tubes;
  std::vector<std::string> all = {PagesHtml(book, Pictures(book)), PartsHtml(book), PaperHtml(book, Pictures(book)),
                                  LineupHtml(book, tubes), GapsHtml(book)};
  for (std::size_t i = 0; i < book.pages.size(); ++i) all.push_back(SheetHtml(book, i, Pictures(book)[i], tubes));
  return all;
}

TEST(SetDocuments, ARowLeadsToTheRingedSpotAndTheSpotToTheRow) {
  TubeFiles tubes;
  const Book book = SampleBook();
  EXPECT_THAT(PartsHtml(book), HasSubstr("id=\"part-c112\" data-go=\"sheet-0001.html#at-c112\""));
  EXPECT_THAT(SheetHtml(book, 0, Pictures(book)[0], tubes),
              HasSubstr("<a id=\"at-c112\" class=\"spot\" href=\"parts.html#part-c112\""));
}

TEST(SetDocuments, ASetWithoutASchematicSaysSo) {
  ManualRecord manual = SampleManual();
  manual.pages.erase(manual.pages.begin());
  manual.links.clear();
  const Book book = MakeBook(1, {manual}, {}, {});
  const std::string html = PagesHtml(book, Pictures(book));
  EXPECT_THAT(html, HasSubstr("No page of this set was told to be a schematic"));
  EXPECT_THAT(html, HasSubstr("Parts lists (1)"));
  EXPECT_THAT(PartsHtml(book), HasSubstr("C112"));
}

TEST(SetDocuments, APageWithoutAPictureSaysWhy) {
  TubeFiles tubes;
  const Book book = SampleBook();
  const PagePicture none{0, 0, Error{ErrorCode::kCrashed, "reader died", "chassis.png", 1}};
  EXPECT_THAT(SheetHtml(book, 0, none, tubes), HasSubstr("There is no picture of this sheet: reader died."));
}

TEST(SetDocuments, HostileTextIsNoMarkup) {
  const Book book = MakeBook(1, {HostileManual()}, {}, {});
  for (const std::string& html : Documents(book)) {
    EXPECT_THAT(html, Not(HasSubstr("<script>")));
    EXPECT_THAT(html, Not(HasSubstr("<img src=x")));
    EXPECT_THAT(html, Not(HasSubstr("<svg onload")));
    EXPECT_THAT(html, HasSubstr("script-src &#39;self&#39; file:; style-src"));
    EXPECT_THAT(html, Not(HasSubstr(" style=")));
    EXPECT_THAT(html, Not(HasSubstr("href=\"javascript")));
  }
}

TEST(FindIndex, HostileTextStaysInItsString) {
  FindIndex index;
  TubeFiles tubes;
  const Book book = MakeBook(1, {HostileManual()}, {}, {});
  TubeUses uses;
  AddTubeUses(book, uses);
  index.Add(book, uses, tubes);
  const auto rules = Rules::Load(SourceFolder() / "config");
  ASSERT_TRUE(rules);
  const std::string script = index.Script(**rules);
  EXPECT_THAT(script, Not(HasSubstr("<")));
  EXPECT_THAT(script, Not(HasSubstr("\xE2\x80\xA8")));
  EXPECT_THAT(script, HasSubstr("p\\tC112\\t"));
  EXPECT_THAT(script, HasSubstr("sheet-0001.html#at-c112\\tpart-c112"));
}

}  // namespace
}  // namespace benchleaf::binder
