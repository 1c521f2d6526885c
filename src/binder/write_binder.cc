#include "benchleaf/binder/write_binder.h"

#include "binder/find_index.h"
#include "binder/kept_pictures.h"
#include "binder/library_documents.h"
#include "binder/output_folder.h"
#include "binder/set_documents.h"

#include <fstream>
#include <iterator>
#include <sstream>
#include <utility>

namespace benchleaf::binder {
namespace {

namespace fs = std::filesystem;

Result<std::string> FileBytes(const fs::path& path) {
  std::ifstream stream(path, std::ios::binary);
  std::ostringstream content;
  content << stream.rdbuf();
  std::string bytes = content.str();
  if (bytes.empty()) {
    return Fail(ErrorCode::kMissing,
                "cannot be read; it belongs to benchleaf's data files, --config names their folder", path.string());
  }
  return bytes;
}

}  // namespace

class BinderWriter::Impl {
 public:
  explicit Impl(std::unique_ptr<OutputFolder> folder)
      : folder_(std::move(folder)), kept_(KeptPictures::Of(folder_->place())) {}

  Result<void> AddLook(const fs::path& look) {
    for (const char* name : {"binder.css", "binder.js"}) {
      const auto bytes = FileBytes(look / name);
      if (!bytes) return tl::unexpected(bytes.error());
      if (auto written = folder_->Write(std::string(kLookFolder) + '/' + name, *bytes); !written) return written;
    }
    return {};
  }

  Result<void> AddPicture(const Book& book, std::size_t page, const std::string& key, const PageFiles& files) {
    const std::string front = FrontOf(book);
    const std::string picture = front + PictureFile(book.pages[page]);
    const std::string thumb = front + ThumbFile(book.pages[page]);
    pictures_.Add(key, picture, thumb, files);
    auto written = folder_->Write(picture, files.page);
    return written ? folder_->Write(thumb, files.thumb) : written;
  }

  Result<std::optional<PagePicture>> KeepPicture(const Book& book, std::size_t page, const std::string& key) {
    const auto kept = kept_.Find(key);
    if (!kept) return std::nullopt;
    if (auto added = AddPicture(book, page, key, *kept); !added) return tl::unexpected(added.error());
    return kept->size;
  }

  Result<void> AddSet(const Book& book, const std::vector<PagePicture>& pictures) {
    const std::string front = FrontOf(book);
    const auto add = [&](const std::string& name, const std::string& html) {
      if (written_) written_ = folder_->Write(front + name, html);
    };
    written_ = {};
    add("index.html", PagesHtml(book, pictures));
    add("parts.html", PartsHtml(book));
    add("paper.html", PaperHtml(book, pictures));
    add("tubes.html", LineupHtml(book, tube_files_));
    add("gaps.html", GapsHtml(book));
    for (std::size_t i = 0; i < book.pages.size(); ++i) {
      add(SheetFile(book.pages[i]), SheetHtml(book, i, pictures[i], tube_files_));
    }
    cards_.push_back(CardOf(book, pictures));
    TubeUses uses;
    AddTubeUses(book, uses);
    find_.Add(book, uses, tube_files_);
    for (auto& [type, sets] : uses) {
      std::vector<TubeUse>& all = uses_[type];
      all.insert(all.end(), std::make_move_iterator(sets.begin()), std::make_move_iterator(sets.end()));
    }
    return written_;
  }

  Result<void> Finish(const TubeTable& tubes, const Rules& rules) {
    written_ = {};
    const auto add = [&](const std::string& name, const std::string& bytes) {
      if (written_) written_ = folder_->Write(name, bytes);
    };
    add("index.html", SetsHtml(cards_));
    add("tubes.html", TubesHtml(uses_, tubes, tube_files_));
    add("help.html", HelpHtml());
    for (const auto& [type, sets] : uses_) {
      add(std::string(kTubesFolder) + '/' + tube_files_.NameOf(type), TubeHtml(type, uses_, tubes, tube_files_));
    }
    add(std::string(kDataFolder) + "/find.js", find_.Script(rules));
    add(KeptPictures::kFile, pictures_.ToText());
    return written_ ? folder_->TakePlace() : written_;
  }

 private:
  static std::string FrontOf(const Book& book) { return std::string(kSetsFolder) + '/' + book.folder + '/'; }

  std::unique_ptr<OutputFolder> folder_;
  KeptPictures kept_;      // of the binder that is to be replaced
  KeptPictures pictures_;  // of this one
  TubeFiles tube_files_;
  FindIndex find_;
  std::vector<SetCard> cards_;
  TubeUses uses_;
  Result<void> written_;
};

BinderWriter::BinderWriter(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
BinderWriter::~BinderWriter() = default;

Result<std::unique_ptr<BinderWriter>> BinderWriter::Begin(const fs::path& out, const fs::path& look) {
  auto folder = OutputFolder::Begin(out);
  if (!folder) return tl::unexpected(folder.error());
  auto impl = std::make_unique<Impl>(std::move(*folder));
  if (auto looks = impl->AddLook(look); !looks) return tl::unexpected(looks.error());
  return std::unique_ptr<BinderWriter>(new BinderWriter(std::move(impl)));
}

Result<void> BinderWriter::AddPicture(const Book& book, std::size_t page, const std::string& key,
                                      const PageFiles& files) {
  return impl_->AddPicture(book, page, key, files);
}

Result<std::optional<PagePicture>> BinderWriter::KeepPicture(const Book& book, std::size_t page,
                                                             const std::string& key) {
  return impl_->KeepPicture(book, page, key);
}

Result<void> BinderWriter::AddSet(const Book& book, const std::vector<PagePicture>& pictures) {
  return impl_->AddSet(book, pictures);
}

Result<void> BinderWriter::Finish(const TubeTable& tubes, const Rules& rules) { return impl_->Finish(tubes, rules); }

}  // namespace benchleaf::binder
