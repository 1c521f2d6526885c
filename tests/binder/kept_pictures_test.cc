#include "binder/kept_pictures.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <fstream>
#include <string>
#include <utility>

namespace benchleaf::binder {
namespace {

namespace fs = std::filesystem;

class KeptPicturesTest : public testing::Test {
 protected:
  void SetUp() override {
    binder_ = fs::temp_directory_path() / ("benchleaf-kept-" + std::to_string(getpid()) + "-" +
                                           testing::UnitTest::GetInstance()->current_test_info()->name());
    fs::remove_all(binder_);
    KeptPictures pictures;
    Write("sets/0001-a/pictures/0001.jpg", files_.page);
    Write("sets/0001-a/thumbs/0001.jpg", files_.thumb);
    pictures.Add("key", "sets/0001-a/pictures/0001.jpg", "sets/0001-a/thumbs/0001.jpg", files_);
    pictures.Add("", "sets/0001-a/pictures/0002.jpg", "sets/0001-a/thumbs/0002.jpg", files_);
    Write(KeptPictures::kFile, pictures.ToText());
  }
  void TearDown() override { fs::remove_all(binder_); }

  void Write(const std::string& name, const std::string& bytes) const {
    fs::create_directories((binder_ / name).parent_path());
    std::ofstream(binder_ / name, std::ios::binary) << bytes;
  }

  fs::path binder_;
  const PageFiles files_{{100, 200, std::nullopt}, "a page", "its thumb"};
};

TEST_F(KeptPicturesTest, AreFoundByTheirKeyAsTheyWere) {
  const KeptPictures kept = KeptPictures::Of(binder_);
  EXPECT_EQ(kept.Find("key"), files_);
  EXPECT_EQ(kept.Find("another"), std::nullopt);
  EXPECT_EQ(kept.Find(""), std::nullopt) << "a scan that could not be looked at";
}

TEST_F(KeptPicturesTest, AreNotKeptOnceSomebodyTouchedThem) {
  Write("sets/0001-a/thumbs/0001.jpg", "its thum8");
  EXPECT_EQ(KeptPictures::Of(binder_).Find("key"), std::nullopt);
  fs::remove(binder_ / "sets/0001-a/thumbs/0001.jpg");
  EXPECT_EQ(KeptPictures::Of(binder_).Find("key"), std::nullopt);
}

TEST_F(KeptPicturesTest, OfAListThatIsNoneOrLeadsOutAreNone) {
  Write("secret", "a page");
  const std::string heading = "scan and settings\twidth\theight\tpage\tthumb\tdigest\n";
  KeptPictures same;
  same.Add("key", "x", "x", files_);
  const std::string digest = same.ToText().substr(same.ToText().rfind('\t') + 1);
  for (const std::string& text :
       {std::string(), std::string("nonsense"), heading + "key\t1\t2", heading + "key\t0\t0\tsets/a\tsets/b\t" + digest,
        heading + "key\t100\t200\tsets/../secret\tsets/0001-a/thumbs/0001.jpg\t" + digest,
        heading + "key\t100\t200\t" + (binder_ / "secret").string() + "\tsets/0001-a/thumbs/0001.jpg\t" + digest}) {
    Write(KeptPictures::kFile, text);
    EXPECT_EQ(KeptPictures::Of(binder_).Find("key"), std::nullopt) << text;
  }
  EXPECT_EQ(KeptPictures::Of(binder_ / "nowhere").Find("key"), std::nullopt);
}

TEST(PictureKey, DiffersWhereThePictureMay) {
  const PictureSource source{"hash", 1000, 5, 2, 90, 1650};
  const std::string key = PictureKey(source);
  EXPECT_EQ(PictureKey(source), key);
  const auto with = [&](auto change) {
    PictureSource other = source;
    change(other);
    return PictureKey(other);
  };
  EXPECT_NE(with([](auto& s) { s.scan_hash = "other"; }), key);
  EXPECT_NE(with([](auto& s) { s.scan_bytes = 1001; }), key);
  EXPECT_NE(with([](auto& s) { s.scan_changed_ns = 6; }), key);
  EXPECT_NE(with([](auto& s) { s.page = 3; }), key);
  EXPECT_NE(with([](auto& s) { s.orientation = 0; }), key);
  EXPECT_NE(with([](auto& s) { s.side = 1651; }), key);
}

}  // namespace
}  // namespace benchleaf::binder
