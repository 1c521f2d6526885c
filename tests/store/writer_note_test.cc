#include "store/writer_note.h"

#include "store/test_index.h"

#include <gmock/gmock.h>
#include <sys/wait.h>
#include <unistd.h>

namespace benchleaf::store {
namespace {

using WriterNoteTest = IndexTest;

TEST_F(WriterNoteTest, NamesTheWriterWhileItLives) {
  EXPECT_EQ(WriterNamed(root()), "another process");
  {
    const WriterNote note(root());
    EXPECT_THAT(WriterNamed(root()), testing::StartsWith("process " + std::to_string(getpid()) + " on "));
  }
  EXPECT_FALSE(std::filesystem::exists(root() / kWriterNoteName));
}

TEST_F(WriterNoteTest, DoesNotNameAProcessThatIsGone) {
  const pid_t child = fork();
  if (child == 0) {
    new WriterNote(root());  // left behind, as by a kill
    _exit(0);
  }
  ASSERT_EQ(waitpid(child, nullptr, 0), child);
  ASSERT_TRUE(std::filesystem::exists(root() / kWriterNoteName));
  EXPECT_EQ(WriterNamed(root()), "another process");
}

TEST_F(WriterNoteTest, TakesAnyContent) {
  for (const char* content : {"", "x", "12", "-5\nhost\nnow\n", "99999999999999999999\nhost\nnow\n"}) {
    WriteFile(root() / kWriterNoteName, content);
    EXPECT_EQ(WriterNamed(root()), "another process") << content;
  }
}

}  // namespace
}  // namespace benchleaf::store
