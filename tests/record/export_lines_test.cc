#include "record/sample_manual.h"

#include "benchleaf/record/codec.h"

#include <gtest/gtest.h>

namespace benchleaf {
namespace {

// The whole text, so that a changed field, order or number shows.
TEST(ExportLinesTest, WritesPagesSightingsEntriesAndLinks) {
  EXPECT_EQ(
      ExportLines(MakeManual()),
      R"({"record":"page","set":"MEADOWLARK 5R1","manual":"service","file":"MEADOWLARK 5R1/service.pdf","page":1,"kind":"schematic","width":2000,"height":1000,"dpi":200,"status":"read","reason":"","printed_number":"8-17"}
{"record":"page","set":"MEADOWLARK 5R1","manual":"service","file":"MEADOWLARK 5R1/service.pdf","page":2,"kind":"parts list","width":2000,"height":1000,"dpi":200,"status":"read","reason":"","printed_number":""}
{"record":"page","set":"MEADOWLARK 5R1","manual":"service","file":"MEADOWLARK 5R1/service.pdf","page":3,"kind":"other","width":0,"height":0,"dpi":0,"status":"failed","reason":"timeout: reading took more than 120 s","printed_number":""}
{"record":"sighting","set":"MEADOWLARK 5R1","manual":"service","file":"MEADOWLARK 5R1/service.pdf","page":1,"kind":"designator","text":"C112","read":"C 1I2","box":[0.25,0.5,0.0125,0.01],"turn":90,"confidence":0.9}
{"record":"sighting","set":"MEADOWLARK 5R1","manual":"service","file":"MEADOWLARK 5R1/service.pdf","page":1,"kind":"tube","text":"6CB6A","read":"6CB6A","box":[0.4,0.5,0.0125,0.01],"turn":0,"confidence":0.8}
{"record":"entry","set":"MEADOWLARK 5R1","manual":"service","file":"MEADOWLARK 5R1/service.pdf","page":2,"designator":"C112","assembly":"A4","item":"","description":"CAP, FXD, .047 MFD 400V","part_number":"281-0047-00","quantity":"1","value":".047MFD","box":[0.125,0.25,0.75,0.02]}
{"record":"entry","set":"MEADOWLARK 5R1","manual":"service","file":"MEADOWLARK 5R1/service.pdf","page":2,"designator":"","assembly":"","item":"12A","description":"KNOB","part_number":"366-1","quantity":"2","value":"","box":[0.125,0.5,0.75,0.02]}
{"record":"link","set":"MEADOWLARK 5R1","manual":"service","designator":"C112","assembly":"A4","item":"","entry":{"file":"MEADOWLARK 5R1/service.pdf","page":2,"box":[0.125,0.25,0.75,0.02]},"seen":{"file":"MEADOWLARK 5R1/service.pdf","page":1,"box":[0.25,0.5,0.0125,0.01]},"confidence":0.875,"reason":"same assembly"}
)");
}

TEST(ExportLinesTest, AManualWithoutPagesHasNoLines) { EXPECT_EQ(ExportLines(ManualRecord()), ""); }

TEST(ExportLinesTest, MendsNamesThatAreNotUtf8) {
  ManualRecord manual;
  manual.set = "caf\xE9";
  manual.pages = {MakePage("caf\xE9.pdf", 1, PageKind::kText)};
  EXPECT_NE(ExportLines(manual).find(R"("set":"caf)"
                                     "\xEF\xBF\xBD"),
            std::string::npos);
}

}  // namespace
}  // namespace benchleaf
