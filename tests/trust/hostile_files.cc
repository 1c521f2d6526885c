#include "trust/hostile_files.h"

#include "raster/sample_files.h"

#include <zlib.h>

#include <cstddef>

namespace benchleaf {
namespace {

using namespace std::string_literals;

std::string Deflated(const std::string& bytes) {
  uLongf size = compressBound(bytes.size());
  std::string packed(size, '\0');
  compress2(reinterpret_cast<Bytef*>(packed.data()), &size, reinterpret_cast<const Bytef*>(bytes.data()), bytes.size(),
            Z_BEST_COMPRESSION);
  packed.resize(size);
  return packed;
}

std::string BigEndian(std::size_t value) {
  std::string bytes;
  for (int shift = 24; shift >= 0; shift -= 8) {
    bytes += static_cast<char>(value >> static_cast<unsigned>(shift) & 0xFFU);
  }
  return bytes;
}

std::string PngChunk(const std::string& kind, const std::string& data) {
  const std::string body = kind + data;
  return BigEndian(data.size()) + body +
         BigEndian(crc32(0, reinterpret_cast<const Bytef*>(body.data()), static_cast<uInt>(body.size())));
}

std::string Png(unsigned width, unsigned height, const std::string& data) {
  return "\x89PNG\r\n\x1a\n" + PngChunk("IHDR", BigEndian(width) + BigEndian(height) + "\x01\0\0\0\0"s) +
         PngChunk("IDAT", data) + PngChunk("IEND", "");
}

// Headers of a JPEG (ITU-T T.81, B.2) that says it has that size, and no picture after them.
std::string JpegOfSize(unsigned side) {
  const std::string size = BigEndian(side).substr(2);
  return "\xFF\xD8\xFF\xE0\0\x10JFIF\0\x01\x01\0\0\x01\0\x01\0\0"s + "\xFF\xC0\0\x0B\x08"s + size + size +
         "\x01\x01\x11\0"s + "\xFF\xDA\0\x08\x01\x01\0\0\x3F\0"s + std::string(64, '\0') + "\xFF\xD9";
}

std::string TiffOfSize(const std::string& side) {
  std::string tiff = SampleTiff({NoisePicture(8, 8)}, 300);
  // The fields of width and height (TIFF 6.0, section 2): tag, type long, one value.
  for (const char tag : {'\0', '\x01'}) {
    const std::string field = std::string(1, tag) + "\x01\x04\0\x01\0\0\0"s;
    tiff.replace(tiff.find(field) + field.size(), 4, side);
  }
  return tiff;
}

// A page that shows a picture of that kind.
std::string PdfOfPicture(const std::string& entries, const std::string& data, const std::string& box = "0 0 612 792") {
  SamplePdf pdf;
  const int picture = pdf.AddStream("/Type /XObject /Subtype /Image " + entries, data);
  pdf.AddPage(box, DrawnAs("P", picture), "q 612 0 0 792 0 0 cm /P Do Q");
  return pdf.Finish();
}

std::string PdfOfContent(const std::string& entries, const std::string& data) {
  SamplePdf pdf;
  const int content = pdf.AddStream(entries, data);
  pdf.AddPage("0 0 612 792", "", "", "/Contents " + std::to_string(content) + " 0 R");
  std::string file = pdf.Finish();
  return file;
}

std::string PdfOfPages(int count) {
  SamplePdf pdf;
  for (int i = 0; i < count; ++i) {
    pdf.AddPage("0 0 612 792", "", "");
  }
  return pdf.Finish();
}

// Without a table of objects, which readers then make up.
std::string PdfOfObjects(const std::string& objects) {
  return "%PDF-1.5\n" + objects + "trailer\n<< /Root 1 0 R /Size 9 >>\n%%EOF\n";
}

constexpr const char* kGreyOfSize =
    "/ColorSpace /DeviceGray /BitsPerComponent 8 /Width 100000 /Height 100000 /Filter /FlateDecode";

}  // namespace

std::string WhitePng(unsigned width, unsigned height) {
  const std::string row = "\0"s + std::string((width + 7) / 8, '\xFF');
  std::string rows;
  for (unsigned y = 0; y < height; ++y) {
    rows += row;
  }
  return Png(width, height, Deflated(rows));
}

std::string HarmlessPdf() { return PdfOfPages(1); }

std::vector<HostileFile> HostilePictures() {
  const std::string white = WhitePng(200, 100);
  return {
      {"huge.png", Png(100000, 100000, Deflated(std::string(1 << 20, '\0'))), "measures 100000 x 100000 px"},
      {"negative.png", Png(0xFFFFFFFF, 0xFFFFFFFF, Deflated("")), "cannot be read"},
      {"no pixels.png", Png(0, 100, Deflated("")), "cannot be read"},
      {"few pixels.png", Png(5000, 5000, Deflated("")), "cannot be decoded"},
      {"too many pixels.png", Png(16, 16, Deflated(std::string(std::size_t{64} << 20U, '\0'))), ""},
      {"huge.jpg", JpegOfSize(65500), "measures 65500 x 65500 px"},
      {"huge.tif", TiffOfSize("\xA0\x86\x01\0"s), "measures 100000 x 100000 px"},
      {"negative.tif", TiffOfSize("\xFF\xFF\xFF\xFF"), ""},
      {"empty.png", "", "holds no bytes"},
      {"cut.png", white.substr(0, white.size() / 2), "cannot be decoded"},
      {"two bytes.jpg", "\xFF\xD8", "is no PDF, TIFF, PNG or JPEG"},
      {"text.tif", "no scan at all", "is no PDF, TIFF, PNG or JPEG"},
      {"a png.pdf", white, ""},
  };
}

std::vector<HostileFile> HostilePdfs() {
  const std::string spaces(std::size_t{30} << 20U, ' ');
  std::string nested;
  for (int i = 0; i < 20000; ++i) {
    nested += "[";
  }
  const std::string whole = HarmlessPdf();
  return {
      {"huge picture.pdf", PdfOfPicture(kGreyOfSize, Deflated("")), "over the limit"},
      {"huge page.pdf",
       PdfOfPicture("/ColorSpace /DeviceGray /BitsPerComponent 8 /Width 8 /Height 8", std::string(64, 'x'),
                    "0 0 1000000 1000000"),
       "huge page.pdf, page 1"},
      {"page of no size.pdf", PdfOfPicture("", "", "0 0 0 0"), ""},
      {"many pages.pdf", PdfOfPages(50000), "has 50000 pages; at most 20000 are read, split the file"},
      {"more pages said than held.pdf",
       PdfOfObjects("1 0 obj << /Type /Catalog /Pages 2 0 R >> endobj\n"
                    "2 0 obj << /Type /Pages /Count 2000000000 /Kids [] >> endobj\n"),
       "more pages said than held.pdf"},
      {"content that unpacks to 30 MiB.pdf", PdfOfContent("/Filter /FlateDecode", Deflated(spaces)), ""},
      {"content packed twice.pdf", PdfOfContent("/Filter [/FlateDecode /FlateDecode]", Deflated(Deflated(spaces))), ""},
      {"pages in pages.pdf",
       PdfOfObjects("1 0 obj << /Type /Catalog /Pages 2 0 R >> endobj\n"
                    "2 0 obj << /Type /Pages /Count 1 /Kids [2 0 R] >> endobj\n"),
       "pages in pages.pdf"},
      {"a length that is itself.pdf",
       PdfOfObjects("1 0 obj << /Type /Catalog /Pages 2 0 R >> endobj\n"
                    "2 0 obj << /Type /Pages /Count 1 /Kids [3 0 R] >> endobj\n"
                    "3 0 obj << /Type /Page /Parent 2 0 R /MediaBox [0 0 9 9] /Contents 4 0 R >> endobj\n"
                    "4 0 obj << /Length 4 0 R >> stream\nq Q\nendstream endobj\n"),
       ""},
      {"a form that draws itself.pdf",
       PdfOfObjects("1 0 obj << /Type /Catalog /Pages 2 0 R >> endobj\n"
                    "2 0 obj << /Type /Pages /Count 1 /Kids [3 0 R] >> endobj\n"
                    "3 0 obj << /Type /Page /Parent 2 0 R /MediaBox [0 0 99 99] /Contents 4 0 R "
                    "/Resources << /XObject << /F 5 0 R >> >> >> endobj\n"
                    "4 0 obj << /Length 5 >> stream\n/F Do\nendstream endobj\n"
                    "5 0 obj << /Type /XObject /Subtype /Form /BBox [0 0 9 9] /Length 11 /Resources << /XObject << /F "
                    "5 0 R >> >> >> stream\n/F Do /F Do\nendstream endobj\n"),
       ""},
      {"nested.pdf", PdfOfObjects("1 0 obj << /Type /Catalog /Pages " + nested + " >> endobj\n"), ""},
      {"jbig2.pdf",
       PdfOfPicture("/ColorSpace /DeviceGray /BitsPerComponent 1 /Width 3000 /Height 3000 /Filter /JBIG2Decode",
                    // A segment of page information (ITU-T T.88, 7.4.8) of 4,294,967,295 px, then noise.
                    "\0\0\0\0\x30\0\x01\0\0\0\x13\xFF\xFF\xFF\xFF\xFF\xFF\xFF\xFF\0\0\0\0\0\0\0\0\0\0\0"s +
                        Bytes(NoisePicture(40, 40))),
       ""},
      {"jpx.pdf",
       PdfOfPicture("/Width 3000 /Height 3000 /Filter /JPXDecode",
                    // A code stream (ITU-T T.800, A.5.1) whose SIZ says 2,147,483,647 px a side in tiles of 1 px.
                    "\xFF\x4F\xFF\x51\0\x29\0\0\x7F\xFF\xFF\xFF\x7F\xFF\xFF\xFF\0\0\0\0\0\0\0\0\0\0\0\x01\0\0\0\x01\0"
                    "\0\0\0\0\0\0\0\0\x01\x07\x01\x01"s +
                        Bytes(NoisePicture(40, 40))),
       ""},
      {"fax.pdf",
       PdfOfPicture("/ColorSpace /DeviceGray /BitsPerComponent 1 /Width 3000 /Height 3000 /Filter /CCITTFaxDecode "
                    "/DecodeParms << /K -1 /Columns 2147483647 /Rows 2147483647 >>",
                    Bytes(NoisePicture(40, 40))),
       ""},
      {"cut.pdf", whole.substr(0, whole.size() / 3), "cut.pdf"},
      {"header only.pdf", "%PDF-1.7\n", "header only.pdf"},
  };
}

}  // namespace benchleaf
