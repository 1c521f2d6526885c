#include "raster/pdf_pictures.h"

// Tells qpdf that its old pointer type is not used here, as its headers ask for.
#define POINTERHOLDER_TRANSITION 4
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>
#include <qpdf/QPDFPageObjectHelper.hh>

#include <algorithm>
#include <cstddef>
#include <exception>
#include <limits>
#include <optional>
#include <string>

namespace benchleaf {
namespace {

constexpr int kDeepestForm = 8;
constexpr long kMostObjects = 5'000'000;  // of all content streams of a page
constexpr std::size_t kMostPictures = 100'000;
constexpr std::size_t kMostOperands = 256;   // an inline image's dictionary has most
constexpr std::size_t kDeepestState = 1024;  // of saved graphics states

// What all content streams of a page share.
struct PageSearch {
  std::vector<PlacedPicture> found;
  long objects_left = kMostObjects;
};

int Pixels(QPDFObjectHandle value) {
  long long pixels = 0;
  if (!value.getValueAsInt(pixels) || pixels < 0) {
    return 0;
  }
  return static_cast<int>(std::min<long long>(pixels, std::numeric_limits<int>::max()));
}

// Widens the picture to the size of its mask: in layered scans the mask holds the lettering, at twice and more the
// resolution of the colours behind it.
void TakeMask(PlacedPicture& picture, QPDFObjectHandle mask) {
  if (mask.isStream()) {
    picture.width = std::max(picture.width, Pixels(mask.getDict().getKey("/Width")));
    picture.height = std::max(picture.height, Pixels(mask.getDict().getKey("/Height")));
  }
}

// Follows the operators of one content stream that place pictures (ISO 32000-1, 8.4.4, 8.8, 8.9.7, 8.10).
class ContentWalker : public QPDFObjectHandle::ParserCallbacks {
 public:
  ContentWalker(PageSearch& search, const QPDFObjectHandle& resources, const Affine& matrix, int depth)
      : search_(search), resources_(resources), matrix_(matrix), depth_(depth) {}

  void handleObject(QPDFObjectHandle object) override {
    if (--search_.objects_left < 0 || search_.found.size() >= kMostPictures) {
      terminateParsing();
    }
    std::string name;
    if (object.getValueAsOperator(name)) {
      Operate(name);
      operands_.clear();
    } else if (operands_.size() < kMostOperands) {
      operands_.push_back(object);
    }
  }

  void handleEOF() override {}

 private:
  void Operate(const std::string& name) {
    if (name == "q") {
      if (saved_.size() < kDeepestState) {
        saved_.push_back(matrix_);
      }
    } else if (name == "Q") {
      if (!saved_.empty()) {
        matrix_ = saved_.back();
        saved_.pop_back();
      }
    } else if (name == "cm") {
      if (const auto matrix = MatrixOf(operands_)) {
        matrix_ = Chained(*matrix, matrix_);
      }
    } else if (name == "Do") {
      Draw();
    } else if (name == "ID") {
      DrawInline();
    }
  }

  static std::optional<Affine> MatrixOf(const std::vector<QPDFObjectHandle>& numbers) {
    if (numbers.size() < 6) {
      return std::nullopt;
    }
    Affine matrix;
    const std::size_t first = numbers.size() - 6;
    double* const targets[] = {&matrix.a, &matrix.b, &matrix.c, &matrix.d, &matrix.e, &matrix.f};
    for (std::size_t i = 0; i < 6; ++i) {
      QPDFObjectHandle number = numbers[first + i];
      if (!number.getValueAsNumber(*targets[i])) {
        return std::nullopt;
      }
    }
    return matrix;
  }

  void Draw() {
    if (operands_.empty() || !operands_.back().isName() || !resources_.isDictionary()) {
      return;
    }
    QPDFObjectHandle objects = resources_.getKey("/XObject");
    QPDFObjectHandle object =
        objects.isDictionary() ? objects.getKey(operands_.back().getName()) : QPDFObjectHandle::newNull();
    if (!object.isStream()) {
      return;
    }
    QPDFObjectHandle dictionary = object.getDict();
    QPDFObjectHandle subtype = dictionary.getKey("/Subtype");
    if (subtype.isNameAndEquals("/Image")) {
      PlacedPicture picture{Pixels(dictionary.getKey("/Width")), Pixels(dictionary.getKey("/Height")), matrix_};
      TakeMask(picture, dictionary.getKey("/SMask"));
      TakeMask(picture, dictionary.getKey("/Mask"));
      Keep(picture);
    } else if (subtype.isNameAndEquals("/Form") && depth_ < kDeepestForm) {
      DrawForm(object, dictionary);
    }
  }

  void DrawForm(QPDFObjectHandle form, QPDFObjectHandle dictionary) {
    Affine matrix = matrix_;
    QPDFObjectHandle own = dictionary.getKey("/Matrix");
    if (own.isArray()) {
      if (const auto first = MatrixOf(own.getArrayAsVector())) {
        matrix = Chained(*first, matrix);
      }
    }
    QPDFObjectHandle resources = dictionary.getKey("/Resources");
    // Forms without resources of their own use the page's (ISO 32000-1, 7.8.3).
    ContentWalker walker(search_, resources.isDictionary() ? resources : resources_, matrix, depth_ + 1);
    form.parseAsContents(&walker);
  }

  void DrawInline() {
    PlacedPicture picture{0, 0, matrix_};
    for (std::size_t i = 0; i + 1 < operands_.size(); i += 2) {
      const std::string key = operands_[i].isName() ? operands_[i].getName() : std::string();
      if (key == "/W" || key == "/Width") {
        picture.width = Pixels(operands_[i + 1]);
      } else if (key == "/H" || key == "/Height") {
        picture.height = Pixels(operands_[i + 1]);
      }
    }
    Keep(picture);
  }

  void Keep(const PlacedPicture& picture) {
    if (picture.width > 0 && picture.height > 0) {
      search_.found.push_back(picture);
    }
  }

  PageSearch& search_;
  QPDFObjectHandle resources_;
  Affine matrix_;
  int depth_;
  std::vector<Affine> saved_;
  std::vector<QPDFObjectHandle> operands_;
};

}  // namespace

class PdfPictures::Impl {
 public:
  explicit Impl(const std::filesystem::path& path) {
    try {
      pdf_.setSuppressWarnings(true);
      pdf_.processFile(path.c_str());
      pages_ = pdf_.getAllPages();
    } catch (const std::exception&) {
      pages_.clear();  // documented: such a file has no pictures
    }
  }

  std::vector<PlacedPicture> OnPage(int page, const Affine& base) {
    PageSearch search;
    if (page < 1 || static_cast<std::size_t>(page) > pages_.size()) {
      return {};
    }
    try {
      QPDFPageObjectHelper helper(pages_[static_cast<std::size_t>(page) - 1]);
      ContentWalker walker(search, helper.getAttribute("/Resources", false), base, 0);
      helper.parseContents(&walker);
    } catch (const std::exception&) {
      return std::move(search.found);  // documented: what comes before the damage
    }
    return std::move(search.found);
  }

 private:
  QPDF pdf_;
  std::vector<QPDFObjectHandle> pages_;
};

PdfPictures::PdfPictures(const std::filesystem::path& path) : impl_(std::make_unique<Impl>(path)) {}

PdfPictures::~PdfPictures() = default;

std::vector<PlacedPicture> PdfPictures::OnPage(int page, const Affine& base) { return impl_->OnPage(page, base); }

}  // namespace benchleaf
