// What the parent and its worker processes say to each other, as bytes.
//
// A message is the length of its body (4 bytes, little-endian) and the body. A body holds fields in a fixed order and
// nothing after them: `byte`, `number` (4 bytes, little-endian), `text` (a number, its length, then that many bytes).
//
//   greeting  text "benchleaf worker", number kProtocolVersion
//   job       number, byte operation (0 count pages, 1 read a page, 2 view a page, 3 picture a page, 4 a piece of
//             a searchable copy, 5 its pages up to one), byte mode (0 full, 1 plain), number page (of a copy: the
//             piece, or the page of its plan; from 1), numbers of the picture (orientation, side), text path, text
//             name, numbers of the view (part: x, y, width, height; longest side)
//   answer    number of the job, byte outcome, then
//               0  number of pages; of a copy, of those that were taken
//               1  text: the reading as EncodeReading gives it
//               2  text code, text message: the job failed
//               3  text code, text message: the worker is unfit for any job
//               4  numbers width and height of the whole page, width and height of the part as shown, text: its pixels
//               5  numbers width and height of the whole page, text page, text thumb: two JPEG files
//               6  number of pieces, text digest of them all, number of pages left out and for each text code, text
//                  message, text file, number page; text: the bytes of the piece
//
// The worker greets once, then answers each job before it is given the next. The parent trusts nothing that comes from
// a worker: whatever does not fit this page counts as a crash of the worker.

#ifndef BENCHLEAF_SRC_WORK_PROTOCOL_H_
#define BENCHLEAF_SRC_WORK_PROTOCOL_H_

#include "benchleaf/binder/page_picture.h"
#include "benchleaf/core/result.h"
#include "benchleaf/reading/page_reader.h"
#include "benchleaf/reading/page_reading.h"
#include "benchleaf/work/page_viewer.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace benchleaf {

inline constexpr std::uint32_t kProtocolVersion = 4;
inline constexpr std::size_t kMaxJobBytes = 64U << 10U;
inline constexpr std::size_t kMaxAnswerBytes = 64U << 20U;  // a fold-out of ten thousand words takes about 2 MiB
// A fold-out crowded with lettering has some ten thousand words. The parent searches them, in a time that grows faster
// than their number, so a worker that has gone wrong may not make them many.
inline constexpr std::size_t kMaxWordsPerPage = 30000;
inline constexpr int kMaxPagesPerFile = 20000;
inline constexpr int kMaxViewSide = 4096;       // px; 4096 x 4096 x 3 bytes fit into an answer
inline constexpr int kMaxViewedPage = 1 << 20;  // px a side of the page that a view is cut from

enum class Operation : std::uint8_t { kCountPages, kReadPage, kViewPage, kPicturePage, kCopyPiece, kCopyPages };

struct Job {
  std::uint32_t number = 0;
  Operation operation = Operation::kCountPages;
  ReadingMode mode = ReadingMode::kFull;  // matters for kReadPage only
  int page = 0;                           // counts from 1; 0 for kCountPages; of the plan for kCopyPages; the piece's
                                          // number for kCopyPiece
  int orientation = 0;                    // of the picture: degrees clockwise that make the scan upright
  int side = 0;                           // px, of the picture's longer side at most; 0 for other operations
  std::string path;                       // where the file lies
  std::string name;                       // what errors call it
  ViewedPart view = {};                   // matters for kViewPage only

  friend bool operator==(const Job&, const Job&) = default;
};

struct PageCount {
  int pages = 0;  // 1 to kMaxPagesPerFile

  friend bool operator==(const PageCount&, const PageCount&) = default;
};

// A searchable copy is as long as its scans, so it comes in pieces.
inline constexpr std::size_t kCopyPieceBytes = 16U << 20U;

struct CopyPiece {
  std::string bytes;
  int pieces = 1;      // of the whole copy
  std::string digest;  // of the whole copy: a worker that had to begin again must make the same
  std::vector<Error> left_out;

  friend bool operator==(const CopyPiece&, const CopyPiece&) = default;
};

// The worker can do no job at all, for instance because the language data is not installed.
struct Unfit {
  Error error;

  friend bool operator==(const Unfit&, const Unfit&) = default;
};

struct Answer {
  std::uint32_t number = 0;  // of the job
  // Errors carry code and message only.
  std::variant<PageCount, PageReading, PageView, binder::PageFiles, CopyPiece, Error, Unfit> outcome;

  friend bool operator==(const Answer&, const Answer&) = default;
};

// The length and the body.
std::string Framed(std::string_view body);

// Bodies. Decoding fails with kDamaged for bytes that do not fit, whatever they are.
std::string EncodeGreeting();
bool IsGreeting(std::string_view body);
std::string EncodeJob(const Job& job);
Result<Job> DecodeJob(std::string_view body);
std::string EncodeAnswer(const Answer& answer);
Result<Answer> DecodeAnswer(std::string_view body);

// Cuts a stream of bytes, which arrive in pieces of any size, into the bodies of messages.
class MessageReader {
 public:
  explicit MessageReader(std::size_t max_body_bytes) : max_body_bytes_(max_body_bytes) {}

  void Add(std::string_view bytes) { pending_.append(bytes); }

  // The next body; nothing while it has not arrived in full. Fails with kDamaged when a length is over the bound,
  // after which the stream cannot be made sense of any more.
  Result<std::optional<std::string>> Next();

 private:
  std::size_t max_body_bytes_;
  std::string pending_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_PROTOCOL_H_
