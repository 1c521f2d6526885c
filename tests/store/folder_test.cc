#include "store/folder.h"

#include "store/schema.h"
#include "store/test_index.h"

#include <gmock/gmock.h>

namespace benchleaf::store {
namespace {

using FolderTest = IndexTest;
using testing::HasSubstr;

FolderState StateOf(const std::filesystem::path& folder) { return LookAt(folder).value(); }

TEST_F(FolderTest, TellsNothingDatabaseAndOtherApart) {
  EXPECT_EQ(StateOf(root() / "missing"), FolderState::kNothing);
  EXPECT_EQ(StateOf(root()), FolderState::kNothing) << "empty";
  Writer();
  EXPECT_EQ(StateOf(folder()), FolderState::kDatabase);
  WriteFile(root() / "scans" / "a.pdf", "%PDF");
  EXPECT_EQ(StateOf(root() / "scans"), FolderState::kOther);
  EXPECT_EQ(StateOf(root() / "scans" / "a.pdf"), FolderState::kOther) << "a file";
}

TEST_F(FolderTest, ADatabaseThatWasBeingMadeIsBegun) {
  WriteFile(folder() / "flintlock", "");
  WriteFile(folder() / "postlist.glass", "");
  EXPECT_EQ(StateOf(folder()), FolderState::kBegun);
  WriteFile(folder() / "termlist.glass", "content");
  EXPECT_EQ(StateOf(folder()), FolderState::kOther) << "a table with content is somebody's";
}

TEST_F(FolderTest, KnowsItsOwnSchema) {
  Writer();
  EXPECT_EQ(CheckSchema(Xapian::Database(folder().string()), folder()).value(), SchemaState::kOurs);
}

TEST_F(FolderTest, ADatabaseWithoutContentIsNew) {
  Xapian::WritableDatabase database(folder().string());
  EXPECT_EQ(CheckSchema(database, folder()).value(), SchemaState::kNew);
  database.set_metadata("other", "1");
  EXPECT_EQ(CheckSchema(database, folder()).error().code, ErrorCode::kForeign);
}

TEST_F(FolderTest, ADatabaseWithDocumentsIsForeign) {
  Xapian::WritableDatabase database(folder().string());
  database.add_document(Xapian::Document());
  const auto state = CheckSchema(database, folder());
  ASSERT_FALSE(state);
  EXPECT_EQ(state.error().code, ErrorCode::kForeign);
  EXPECT_THAT(state.error().message, HasSubstr("another program"));
  EXPECT_EQ(state.error().source, folder().string());
}

TEST_F(FolderTest, AnotherVersionIsForeignAndNamed) {
  Xapian::WritableDatabase database(folder().string());
  database.set_metadata(kSchemaKey, "77");
  const auto state = CheckSchema(database, folder());
  ASSERT_FALSE(state);
  EXPECT_EQ(state.error().code, ErrorCode::kForeign);
  EXPECT_THAT(state.error().message, HasSubstr("schema 77"));
}

}  // namespace
}  // namespace benchleaf::store
