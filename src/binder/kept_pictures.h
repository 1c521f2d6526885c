// The pictures that a binder holds and what each was drawn from, so that the next one need not draw them again.

#ifndef BENCHLEAF_SRC_BINDER_KEPT_PICTURES_H_
#define BENCHLEAF_SRC_BINDER_KEPT_PICTURES_H_

#include "benchleaf/binder/page_picture.h"

#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace benchleaf::binder {

class KeptPictures {
 public:
  // The file of a binder that lists them.
  static constexpr const char* kFile = "data/pictures.tsv";

  // Those that the binder in that folder lists; none where there is no such list or it cannot be understood.
  static KeptPictures Of(const std::filesystem::path& binder);

  // Lists a picture; its files' names are relative to the binder. A key that is empty is not listed.
  void Add(const std::string& key, const std::string& page_file, const std::string& thumb_file, const PageFiles& files);

  // The picture with that key, as its files are now. Nothing where there is none, and where the files are not what was
  // written.
  std::optional<PageFiles> Find(const std::string& key) const;

  // What kFile holds: a line of a heading, then key, width, height, page's file, thumb's file and the digest of both
  // for each picture, parted by tabs.
  std::string ToText() const;

 private:
  struct Kept {
    PagePicture size;
    std::string page_file;
    std::string thumb_file;
    std::string digest;
  };

  std::filesystem::path binder_;
  std::map<std::string, Kept, std::less<>> pictures_;
};

}  // namespace benchleaf::binder

#endif  // BENCHLEAF_SRC_BINDER_KEPT_PICTURES_H_
