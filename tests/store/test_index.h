// What tests of the index need: a folder of their own and the project's rules.

#ifndef BENCHLEAF_TESTS_STORE_TEST_INDEX_H_
#define BENCHLEAF_TESTS_STORE_TEST_INDEX_H_

#include "places/places.h"
#include "record/sample_manual.h"

#include "benchleaf/extract/rules.h"
#include "benchleaf/store/index_reader.h"
#include "benchleaf/store/index_writer.h"

#include <gtest/gtest.h>
#include <stdlib.h>

#include <filesystem>
#include <fstream>
#include <memory>
#include <string>
#include <system_error>

namespace benchleaf {

// Throws, and so fails the test, when the rules are not there.
inline std::shared_ptr<const Rules> TestRules() {
  static const std::shared_ptr<const Rules> rules = Rules::Load(SourceFolder() / "config").value();
  return rules;
}

class IndexTest : public testing::Test {
 protected:
  IndexTest() {
    std::string pattern = (std::filesystem::temp_directory_path() / "benchleaf-store-XXXXXX").string();
    if (mkdtemp(pattern.data()) == nullptr) throw std::system_error(errno, std::generic_category(), pattern);
    root_ = pattern;
  }
  ~IndexTest() override {
    std::error_code ignored;
    std::filesystem::remove_all(root_, ignored);
  }

  const std::filesystem::path& root() const { return root_; }
  std::filesystem::path folder() const { return root_ / "index"; }

  std::unique_ptr<IndexWriter> Writer() const { return IndexWriter::Open(folder(), TestRules()).value(); }
  std::unique_ptr<IndexReader> Reader() const { return IndexReader::Open(folder(), TestRules()).value(); }

  // Writes the manuals into the index, one after the other.
  template <class... Manuals>
  void Store(const Manuals&... manuals) const {
    const std::unique_ptr<IndexWriter> writer = Writer();
    for (const ManualRecord* manual : {&manuals...}) {
      const Result<void> replaced = writer->ReplaceManual(*manual);
      ASSERT_TRUE(replaced) << replaced.error().ToString();
    }
  }

  static void WriteFile(const std::filesystem::path& path, const std::string& content) {
    std::filesystem::create_directories(path.parent_path());
    std::ofstream(path) << content;
  }

 private:
  std::filesystem::path root_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_TESTS_STORE_TEST_INDEX_H_
