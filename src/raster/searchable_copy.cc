#include "benchleaf/raster/searchable_copy.h"

#include "raster/file_bytes.h"
#include "raster/searchable_text.h"

#include "benchleaf/pixels/image_file.h"
#include "benchleaf/pixels/pdf_picture.h"
#include "benchleaf/raster/page_source.h"

// Tells qpdf that its old pointer type is not used here, as its headers ask for.
#define POINTERHOLDER_TRANSITION 4
#include <qpdf/Pipeline.hh>
#include <qpdf/Pl_Flate.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include <algorithm>
#include <array>
#include <exception>
#include <map>
#include <memory>
#include <optional>
#include <utility>

namespace benchleaf {
namespace {

constexpr double kPointsPerInch = 72;
constexpr double kUnknownSide = 11 * kPointsPerInch;  // a page of unknown size is as long as a letter sheet
constexpr const char* kFontPrefix = "BenchleafLaid";

// Collects what is written.
class IntoString : public Pipeline {
 public:
  explicit IntoString(std::string& out) : Pipeline("copy", nullptr), out_(out) {}
  void write(unsigned char const* data, size_t size) override {
    out_.append(reinterpret_cast<const char*>(data), size);
  }
  void finish() override {}

 private:
  std::string& out_;
};

// A stream of text of ours, deflated.
QPDFObjectHandle TextStream(QPDF& pdf, const std::string& text) {
  std::string packed;
  IntoString collected(packed);
  Pl_Flate deflate("text", &collected, Pl_Flate::a_deflate);
  deflate.write(reinterpret_cast<unsigned char const*>(text.data()), text.size());
  deflate.finish();
  QPDFObjectHandle stream = QPDFObjectHandle::newStream(&pdf);
  stream.replaceStreamData(packed, QPDFObjectHandle::newName("/FlateDecode"), QPDFObjectHandle::newNull());
  return stream;
}

// Names the file and page of what the libraries throw.
Error Thrown(const PageToCopy& page, const std::exception& thrown) {
  return {ErrorCode::kDamaged, std::string("the page cannot be copied, its file is damaged: ") + thrown.what(),
          page.name, page.page};
}

tl::unexpected<Error> NoSuchPage(int last) {
  return Fail(ErrorCode::kMissing, "there is no such page; the last one is " + std::to_string(last));
}

double Real(QPDFObjectHandle number) { return number.isNumber() ? number.getNumericValue() : 0; }

// The visible part of a page, as the renderer takes it: the crop box, cut to the media box.
PageLayout LayoutOf(QPDFPageObjectHelper& page) {
  const auto corners = [](QPDFObjectHandle box) {
    std::array<double, 4> sides{};
    if (box.isArray() && box.getArrayNItems() == 4) {
      for (int i = 0; i < 4; ++i) sides.at(static_cast<std::size_t>(i)) = Real(box.getArrayItem(i));
    }
    if (sides[0] > sides[2]) std::swap(sides[0], sides[2]);
    if (sides[1] > sides[3]) std::swap(sides[1], sides[3]);
    return sides;
  };
  const auto media = corners(page.getMediaBox());
  const auto crop = corners(page.getCropBox());
  PageLayout layout;
  layout.left = std::max(media[0], crop[0]);
  layout.bottom = std::max(media[1], crop[1]);
  layout.width = std::min(media[2], crop[2]) - layout.left;
  layout.height = std::min(media[3], crop[3]) - layout.bottom;
  QPDFObjectHandle turn = page.getAttribute("/Rotate", false);
  const auto degrees = turn.isInteger() ? turn.getIntValueAsInt() : 0;
  layout.turn = (degrees % 360 + 360) % 360 / 90 * 90;
  return layout;
}

}  // namespace

class SearchableCopier::Impl {
 public:
  explicit Impl(std::vector<PageToCopy> pages) : pages_(std::move(pages)) {}

  void CopyPages(std::size_t count) {
    if (failure_) return;
    try {
      if (next_ == 0) Begin();
      for (count = std::min(count, pages_.size()); next_ < count; ++next_) {
        if (whole_) {
          LayOnWhole(pages_[next_]);
        } else {
          Append(pages_[next_]);
        }
      }
    } catch (const std::exception& thrown) {
      failure_ = Thrown(pages_.front(), thrown);
    }
  }

  Result<SearchableCopy> Finish() {
    if (pages_.empty()) return Fail(ErrorCode::kEmpty, "there is no page to copy");
    CopyPages(pages_.size());
    if (failure_) return tl::unexpected(*failure_);
    if (laid_.empty()) return tl::unexpected(copy_.left_out.front());
    try {
      AddFonts();
      Write();
    } catch (const std::exception& thrown) {
      return tl::unexpected(Thrown(pages_.front(), thrown));
    }
    return std::move(copy_);
  }

 private:
  // A file that is no picture is tried as a PDF.
  static bool IsPdf(const PageToCopy& page) {
    const auto bytes = FileBytes::Map(page.path, page.name, RasterLimits{}.max_file_bytes);
    return bytes && !CountPictures(bytes->view());
  }

  // Nothing for a file that cannot be opened; it is tried once.
  QPDF* Opened(const PageToCopy& page) {
    const auto [source, is_new] = sources_.try_emplace(page.path);
    if (!is_new) return source->second.get();
    auto pdf = std::make_unique<QPDF>();
    pdf->setSuppressWarnings(true);
    try {
      pdf->processFile(page.path.c_str());
      source->second = std::move(pdf);
    } catch (const std::exception&) {
      return nullptr;  // the caller says so
    }
    return source->second.get();
  }

  void Begin() {
    const bool one_file =
        std::all_of(pages_.begin(), pages_.end(), [&](const PageToCopy& p) { return p.path == pages_.front().path; });
    whole_ = one_file && IsPdf(pages_.front());
    if (!whole_) {
      out_.emptyPDF();
      return;
    }
    out_.setSuppressWarnings(true);
    out_.processFile(pages_.front().path.c_str());
    all_ = QPDFPageDocumentHelper(out_).getAllPages();
  }

  // A page of the document itself: what is not copied stays in it without words.
  void LayOnWhole(const PageToCopy& page) {
    if (page.page < 1 || static_cast<std::size_t>(page.page) > all_.size()) {
      copy_.left_out.push_back({ErrorCode::kMissing, "there is no such page", page.name, page.page});
      return;
    }
    Lay(page, all_[static_cast<std::size_t>(page.page) - 1]);
  }

  void Append(const PageToCopy& page) {
    try {
      auto made = IsPdf(page) ? FromPdf(page) : FromPicture(page);
      if (!made) {
        Error error = made.error();
        error.source = page.name;
        error.page = page.page;
        copy_.left_out.push_back(std::move(error));
        return;
      }
      QPDFPageDocumentHelper(out_).addPage(*made, false);
      QPDFPageObjectHelper added = QPDFPageDocumentHelper(out_).getAllPages().back();
      Lay(page, added);
    } catch (const std::exception& thrown) {
      copy_.left_out.push_back(Thrown(page, thrown));
    }
  }

  Result<QPDFPageObjectHelper> FromPdf(const PageToCopy& page) {
    QPDF* const source = Opened(page);
    if (source == nullptr) {
      return Fail(ErrorCode::kDamaged,
                  "the scan cannot be opened: it is damaged, or another since it was indexed; index the library again");
    }
    std::vector<QPDFPageObjectHelper> all = QPDFPageDocumentHelper(*source).getAllPages();
    if (page.page < 1 || static_cast<std::size_t>(page.page) > all.size()) {
      return NoSuchPage(static_cast<int>(all.size()));
    }
    return all[static_cast<std::size_t>(page.page) - 1];
  }

  // A page that shows one picture at its own size.
  Result<QPDFPageObjectHelper> FromPicture(const PageToCopy& page) {
    const auto bytes = FileBytes::Map(page.path, page.name, RasterLimits{}.max_file_bytes);
    if (!bytes) return tl::unexpected(bytes.error());
    const auto pictures = CountPictures(bytes->view());
    if (!pictures) return tl::unexpected(pictures.error());
    if (page.page < 1 || page.page > *pictures) return NoSuchPage(*pictures);
    const auto header = ReadPictureHeader(bytes->view(), page.page);
    if (!header) return tl::unexpected(header.error());
    if (std::max(header->width, header->height) > RasterLimits{}.max_side_px) {
      return Fail(ErrorCode::kTooLarge, "its picture is over the limits");
    }
    auto picture = PackForPdf(bytes->view(), page.page);
    if (!picture) return tl::unexpected(picture.error());
    double points = page.dpi > 0 ? kPointsPerInch / page.dpi : 0;
    if (points == 0) points = kUnknownSide / std::max(picture->width, picture->height);
    const std::string width = std::to_string(picture->width * points);
    const std::string height = std::to_string(picture->height * points);

    QPDFObjectHandle image = QPDFObjectHandle::newStream(&out_);
    image.replaceDict(QPDFObjectHandle::parse(ImageDictionary(*picture)));
    image.replaceStreamData(picture->bytes, QPDFObjectHandle::newName(FilterOf(*picture)),
                            QPDFObjectHandle::parse(FilterParameters(*picture)));
    QPDFObjectHandle made = QPDFObjectHandle::parse("<< /Type /Page /MediaBox [0 0 " + width + " " + height + "] >>");
    QPDFObjectHandle resources = QPDFObjectHandle::parse("<< /XObject << >> >>");
    resources.getKey("/XObject").replaceKey("/Scan", image);
    made.replaceKey("/Resources", resources);
    made.replaceKey("/Contents",
                    QPDFObjectHandle::newStream(&out_, "q " + width + " 0 0 " + height + " 0 0 cm /Scan Do Q\n"));
    return QPDFPageObjectHelper(out_.makeIndirectObject(made));
  }

  static std::string ImageDictionary(const PdfPicture& picture) {
    const char* space = picture.components == 1   ? "/DeviceGray"
                        : picture.components == 3 ? "/DeviceRGB"
                                                  : "/DeviceCMYK";
    std::string dictionary = "<< /Type /XObject /Subtype /Image /Width " + std::to_string(picture.width) + " /Height " +
                             std::to_string(picture.height) + " /ColorSpace " + space + " /BitsPerComponent " +
                             std::to_string(picture.bits);
    if (picture.inverted) {
      dictionary += " /Decode [";
      for (int i = 0; i < picture.components; ++i) dictionary += "1 0 ";
      dictionary += ']';
    }
    return dictionary + " >>";
  }

  static std::string FilterOf(const PdfPicture& picture) {
    switch (picture.coding) {
      case PdfPicture::Coding::kJpeg:
        return "/DCTDecode";
      case PdfPicture::Coding::kGroup4:
        return "/CCITTFaxDecode";
      case PdfPicture::Coding::kPng:
        break;
    }
    return "/FlateDecode";
  }

  // ISO 32000-1, 7.4.4.3 and 7.4.6.
  static std::string FilterParameters(const PdfPicture& picture) {
    const std::string columns = " /Columns " + std::to_string(picture.width);
    switch (picture.coding) {
      case PdfPicture::Coding::kJpeg:
        return "null";
      case PdfPicture::Coding::kGroup4:
        return "<< /K -1" + columns + " /Rows " + std::to_string(picture.height) + " >>";
      case PdfPicture::Coding::kPng:
        break;
    }
    return "<< /Predictor 15 /Colors " + std::to_string(picture.components) + " /BitsPerComponent " +
           std::to_string(picture.bits) + columns + " >>";
  }

  // The words come before the page's own content, whose unbalanced states could not be told of; text that is not drawn
  // is found there just as well.
  void Lay(const PageToCopy& page, QPDFPageObjectHelper& onto) {
    const PageLayout layout = LayoutOf(onto);
    if (!page.words.empty() && layout.width > 0 && layout.height > 0) {
      onto.addPageContents(TextStream(out_, LayWords(page.words, layout, kFontPrefix, characters_)), true);
    }
    laid_.push_back(onto);
  }

  // A font by a name of its own: readers take the measures of one that they know from themselves, not from here.
  QPDFObjectHandle Font(int number) {
    QPDFObjectHandle font = QPDFObjectHandle::parse(
        "<< /Type /Font /Subtype /Type1 /BaseFont /BenchleafLaid /FirstChar 1 /LastChar 255 "
        "/Encoding << /Type /Encoding /Differences [" +
        characters_.Differences(number) +
        "] >> /FontDescriptor << /Type /FontDescriptor /FontName /BenchleafLaid /Flags 33 /FontBBox [0 0 600 1000] "
        "/ItalicAngle 0 /Ascent 1000 /Descent -1 /CapHeight 1000 /StemV 80 /MissingWidth 600 >> >>");
    QPDFObjectHandle widths = QPDFObjectHandle::newArray();
    for (int i = 1; i <= LaidCharacters::kPerFont; ++i) {
      widths.appendItem(QPDFObjectHandle::newInteger(LaidCharacters::kWidth));
    }
    font.replaceKey("/Widths", widths);
    font.replaceKey("/ToUnicode", TextStream(out_, characters_.ToUnicode(number)));
    return out_.makeIndirectObject(font);
  }

  void AddFonts() {
    std::vector<QPDFObjectHandle> fonts;
    for (int i = 0; i < characters_.fonts(); ++i) fonts.push_back(Font(i));
    for (QPDFPageObjectHelper& page : laid_) {
      // What the page shares with others, or inherits, becomes its own first.
      QPDFObjectHandle resources = page.getAttribute("/Resources", true);
      if (!resources.isDictionary()) {
        resources = QPDFObjectHandle::newDictionary();
        page.getObjectHandle().replaceKey("/Resources", resources);
      }
      QPDFObjectHandle known = resources.getKey("/Font");
      QPDFObjectHandle own = known.isDictionary() ? known.shallowCopy() : QPDFObjectHandle::newDictionary();
      for (std::size_t i = 0; i < fonts.size(); ++i) {
        own.replaceKey("/" + std::string(kFontPrefix) + std::to_string(i), fonts[i]);
      }
      resources.replaceKey("/Font", own);
    }
  }

  void Write() {
    IntoString pipe(copy_.pdf);
    QPDFWriter writer(out_);
    writer.setOutputPipeline(&pipe);
    writer.setStreamDataMode(qpdf_s_preserve);
    writer.setObjectStreamMode(qpdf_o_preserve);
    // The same scans and words give the same bytes; a PDF under a password has its identity in its key.
    if (!out_.isEncrypted()) writer.setDeterministicID(true);
    writer.write();
  }

  const std::vector<PageToCopy> pages_;
  std::size_t next_ = 0;  // of pages_
  std::optional<Error> failure_;
  bool whole_ = false;                                              // the copy is one PDF, words laid on its own pages
  std::vector<QPDFPageObjectHelper> all_;                           // those
  std::map<std::filesystem::path, std::unique_ptr<QPDF>> sources_;  // needed until the copy is written
  QPDF out_;
  std::vector<QPDFPageObjectHelper> laid_;
  LaidCharacters characters_;
  SearchableCopy copy_;
};

SearchableCopier::SearchableCopier(std::vector<PageToCopy> pages) : impl_(std::make_unique<Impl>(std::move(pages))) {}
SearchableCopier::~SearchableCopier() = default;

void SearchableCopier::CopyPages(std::size_t count) { impl_->CopyPages(count); }

Result<SearchableCopy> SearchableCopier::Finish() { return impl_->Finish(); }

}  // namespace benchleaf
