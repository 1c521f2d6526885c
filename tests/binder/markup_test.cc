#include "binder/markup.h"

#include <gtest/gtest.h>

namespace benchleaf::binder {
namespace {

TEST(Markup, ForeignTextStaysText) {
  EXPECT_EQ(Tag("p", "<b>\"R&D\"</b> 'x'").html(), "<p>&lt;b&gt;&quot;R&amp;D&quot;&lt;/b&gt; &#39;x&#39;</p>\n");
  EXPECT_EQ(Tag("a", {{"href", "\" onclick=\"x"}}, "x").html(), "<a href=\"&quot; onclick=&quot;x\">x</a>");
}

TEST(Markup, ElementsWithoutAnEndHaveNone) {
  EXPECT_EQ(Empty("img", {{"src", "a.jpg"}, {"alt", ""}}).html(), "<img src=\"a.jpg\" alt=\"\">");
}

TEST(ScriptString, HoldsNothingThatEndsAScriptOrALine) {
  const std::string literal = ScriptString("</script><!--\xE2\x80\xA8\xE2\x80\xA9\"\\\n");
  EXPECT_EQ(literal, "\"\\u003c/script\\u003e\\u003c!--\\u2028\\u2029\\\"\\\\\\n\"");
}

TEST(Slug, IsAPlainNameWhateverTheTextIs) {
  struct Case {
    const char* why;
    const char* text;
    const char* slug;
  };
  for (const Case& c :
       {Case{"a set", "Osterwick TV-217", "osterwick-tv-217"}, Case{"a way out", "../../etc/passwd", "etc-passwd"},
        Case{"nothing plain", "\xC3\x84//..", "set"}, Case{"two names", "12AX7A/ECC83", "12ax7a-ecc83"},
        Case{"cut at 16", "abcdefghijklmnopqrst", "abcdefghijklmnop"}}) {
    EXPECT_EQ(Slug(c.text, 16, "set"), c.slug) << c.why;
  }
}

}  // namespace
}  // namespace benchleaf::binder
