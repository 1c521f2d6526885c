#include "work/protocol.h"

#include "work/message_fields.h"

#include "benchleaf/record/codec.h"

#include <utility>

namespace benchleaf {
namespace {

constexpr std::size_t kMaxErrorBytes = 4096;
constexpr int kMaxPictureSide = 32000;  // px, as that of a page that is read
constexpr std::string_view kGreeting = "benchleaf worker";

constexpr std::size_t kBytesPerPixel = 3;

enum OutcomeByte : std::uint8_t {
  kPageCountByte,
  kReadingByte,
  kErrorByte,
  kUnfitByte,
  kViewByte,
  kPictureByte,
  kCopyByte
};

tl::unexpected<Error> NotUnderstood(const char* what) {
  return Fail(ErrorCode::kDamaged, std::string(what) + " between reader and indexer cannot be understood");
}

void PutError(std::string& out, const Error& error) {
  PutText(out, Name(error.code));
  PutText(out, std::string_view(error.message).substr(0, kMaxErrorBytes));
}

void PutSize(std::string& out, int value) { PutNumber(out, static_cast<std::uint32_t>(value)); }

// A number of pixels; one that is none counts as a field that does not fit.
int TakeSize(Fields& fields, int most) {
  const std::uint32_t value = fields.Number();
  if (value > static_cast<std::uint32_t>(most)) {
    fields.Refuse();
    return 0;
  }
  return static_cast<int>(value);
}

void PutView(std::string& out, const PageView& view) {
  for (const int size : {view.page_width, view.page_height, view.image.width, view.image.height}) {
    PutSize(out, size);
  }
  PutText(out, {reinterpret_cast<const char*>(view.image.pixels.data()), view.image.pixels.size()});
}

PageView TakeView(Fields& fields) {
  PageView view;
  view.page_width = TakeSize(fields, kMaxViewedPage);
  view.page_height = TakeSize(fields, kMaxViewedPage);
  view.image.width = TakeSize(fields, kMaxViewSide);
  view.image.height = TakeSize(fields, kMaxViewSide);
  const std::string_view pixels = fields.Text();
  const std::size_t wanted =
      static_cast<std::size_t>(view.image.width) * static_cast<std::size_t>(view.image.height) * kBytesPerPixel;
  if (wanted == 0 || pixels.size() != wanted || view.page_width == 0 || view.page_height == 0) {
    fields.Refuse();
    return {};
  }
  view.image.pixels.assign(pixels.begin(), pixels.end());
  return view;
}

// The text goes into the index and to a terminal, so a worker that has gone wrong may not make it long.
Error TakeError(Fields& fields) {
  const std::string_view code = fields.Text();
  const std::string_view message = fields.Text().substr(0, kMaxErrorBytes);
  return Error{ErrorCodeNamed(code), std::string(message), {}, 0};
}

CopyPiece TakeCopyPiece(Fields& fields) {
  CopyPiece piece;
  piece.pieces = TakeSize(fields, kMaxPagesPerFile);
  if (piece.pieces < 1) fields.Refuse();
  piece.digest = fields.Text();
  const int left_out = TakeSize(fields, kMaxPagesPerFile);
  for (int i = 0; i < left_out && !fields.failed(); ++i) {
    Error error = TakeError(fields);
    error.source = fields.Text();
    error.page = TakeSize(fields, kMaxPagesPerFile);
    piece.left_out.push_back(std::move(error));
  }
  piece.bytes = fields.Text();
  return piece;
}

}  // namespace

std::string Framed(std::string_view body) {
  std::string message;
  message.reserve(kNumberBytes + body.size());
  PutText(message, body);
  return message;
}

std::string EncodeGreeting() {
  std::string body;
  PutText(body, kGreeting);
  PutNumber(body, kProtocolVersion);
  return body;
}

bool IsGreeting(std::string_view body) { return body == EncodeGreeting(); }

std::string EncodeJob(const Job& job) {
  std::string body;
  PutNumber(body, job.number);
  PutByte(body, static_cast<std::uint8_t>(job.operation));
  PutByte(body, job.mode == ReadingMode::kPlain ? 1 : 0);
  PutNumber(body, static_cast<std::uint32_t>(job.page));
  PutSize(body, job.orientation);
  PutSize(body, job.side);
  PutText(body, job.path);
  PutText(body, job.name);
  for (const int size :
       {job.view.part.x, job.view.part.y, job.view.part.width, job.view.part.height, job.view.longest_side_px}) {
    PutSize(body, size);
  }
  return body;
}

Result<Job> DecodeJob(std::string_view body) {
  Fields fields(body);
  Job job;
  job.number = fields.Number();
  const std::uint8_t operation = fields.Byte();
  const std::uint8_t mode = fields.Byte();
  const std::uint32_t page = fields.Number();
  job.orientation = TakeSize(fields, 270);
  job.side = TakeSize(fields, kMaxPictureSide);
  job.path = fields.Text();
  job.name = fields.Text();
  job.view.part.x = TakeSize(fields, kMaxViewedPage);
  job.view.part.y = TakeSize(fields, kMaxViewedPage);
  job.view.part.width = TakeSize(fields, kMaxViewedPage);
  job.view.part.height = TakeSize(fields, kMaxViewedPage);
  job.view.longest_side_px = TakeSize(fields, kMaxViewSide);
  if (!fields.Finished() || operation > 5 || mode > 1 || page > static_cast<std::uint32_t>(kMaxPagesPerFile) ||
      job.orientation % 90 != 0) {
    return NotUnderstood("a job");
  }
  job.operation = static_cast<Operation>(operation);
  job.mode = mode == 1 ? ReadingMode::kPlain : ReadingMode::kFull;
  job.page = static_cast<int>(page);
  if ((job.operation == Operation::kCountPages) != (job.page == 0) ||
      (job.operation == Operation::kViewPage) != (job.view.longest_side_px > 0) ||
      (job.operation == Operation::kPicturePage) != (job.side > 0)) {
    return NotUnderstood("a job");
  }
  return job;
}

std::string EncodeAnswer(const Answer& answer) {
  std::string body;
  PutNumber(body, answer.number);
  if (const auto* count = std::get_if<PageCount>(&answer.outcome)) {
    PutByte(body, kPageCountByte);
    PutNumber(body, static_cast<std::uint32_t>(count->pages));
  } else if (const auto* reading = std::get_if<PageReading>(&answer.outcome)) {
    PutByte(body, kReadingByte);
    PutText(body, EncodeReading(*reading));
  } else if (const auto* view = std::get_if<PageView>(&answer.outcome)) {
    PutByte(body, kViewByte);
    PutView(body, *view);
  } else if (const auto* error = std::get_if<Error>(&answer.outcome)) {
    PutByte(body, kErrorByte);
    PutError(body, *error);
  } else if (const auto* files = std::get_if<binder::PageFiles>(&answer.outcome)) {
    PutByte(body, kPictureByte);
    PutSize(body, files->size.width);
    PutSize(body, files->size.height);
    PutText(body, files->page);
    PutText(body, files->thumb);
  } else if (const auto* piece = std::get_if<CopyPiece>(&answer.outcome)) {
    PutByte(body, kCopyByte);
    PutNumber(body, static_cast<std::uint32_t>(piece->pieces));
    PutText(body, piece->digest);
    PutNumber(body, static_cast<std::uint32_t>(piece->left_out.size()));
    for (const Error& page : piece->left_out) {
      PutError(body, page);
      PutText(body, page.source);
      PutSize(body, page.page);
    }
    PutText(body, piece->bytes);
  } else {
    PutByte(body, kUnfitByte);
    PutError(body, std::get<Unfit>(answer.outcome).error);
  }
  return body;
}

Result<Answer> DecodeAnswer(std::string_view body) {
  Fields fields(body);
  Answer answer;
  answer.number = fields.Number();
  switch (fields.Byte()) {
    case kPageCountByte: {
      const std::uint32_t pages = fields.Number();
      if (pages < 1 || pages > static_cast<std::uint32_t>(kMaxPagesPerFile)) {
        return NotUnderstood("an answer");
      }
      answer.outcome = PageCount{static_cast<int>(pages)};
      break;
    }
    case kReadingByte: {
      Result<PageReading> reading = DecodeReading(fields.Text());
      if (!reading) {
        return tl::unexpected(std::move(reading.error()));
      }
      if (reading->words.size() > kMaxWordsPerPage) {
        return NotUnderstood("an answer");
      }
      answer.outcome = std::move(*reading);
      break;
    }
    case kErrorByte:
      answer.outcome = TakeError(fields);
      break;
    case kUnfitByte:
      answer.outcome = Unfit{TakeError(fields)};
      break;
    case kViewByte:
      answer.outcome = TakeView(fields);
      break;
    case kPictureByte: {
      binder::PageFiles files;
      files.size.width = TakeSize(fields, kMaxPictureSide);
      files.size.height = TakeSize(fields, kMaxPictureSide);
      if (files.size.width == 0 || files.size.height == 0) {
        fields.Refuse();
      }
      files.page = fields.Text();
      files.thumb = fields.Text();
      answer.outcome = std::move(files);
      break;
    }
    case kCopyByte:
      answer.outcome = TakeCopyPiece(fields);
      break;
    default:
      return NotUnderstood("an answer");
  }
  if (!fields.Finished()) {
    return NotUnderstood("an answer");
  }
  return answer;
}

Result<std::optional<std::string>> MessageReader::Next() {
  if (pending_.size() < kNumberBytes) {
    return std::nullopt;
  }
  const std::size_t size = NumberAt(pending_);
  if (size > max_body_bytes_) {
    return Fail(ErrorCode::kDamaged, "a message of " + std::to_string(size) + " bytes is over the limit");
  }
  if (pending_.size() - kNumberBytes < size) {
    return std::nullopt;
  }
  std::string body = pending_.substr(kNumberBytes, size);
  pending_.erase(0, kNumberBytes + size);
  return body;
}

}  // namespace benchleaf
