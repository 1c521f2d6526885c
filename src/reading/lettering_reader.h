// The reader of drawings' lettering: our own net behind plain values. Private to reading/.

#ifndef BENCHLEAF_SRC_READING_LETTERING_READER_H_
#define BENCHLEAF_SRC_READING_LETTERING_READER_H_

#include "reading/token.h"

#include "benchleaf/core/image.h"
#include "benchleaf/core/result.h"
#include "benchleaf/lettering/lettering_net.h"

#include <filesystem>
#include <memory>
#include <vector>

namespace benchleaf {

// Not safe for use by several threads.
class LetteringReader {
 public:
  // Fails with kMissing when `config`/lettering.net is not there or is damaged.
  static Result<std::unique_ptr<LetteringReader>> Create(const std::filesystem::path& config);
  // That file.
  static std::filesystem::path Model(const std::filesystem::path& config);

  // One line of upright text with a light border, its capitals kReaderCapPx high. Ink that is no lettering is read as
  // kNoText, also where the net sees nothing at all.
  std::vector<Token> ReadLine(const GreyImage& line);

 private:
  explicit LetteringReader(std::unique_ptr<LetteringNet> net);
  std::unique_ptr<LetteringNet> net_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_READING_LETTERING_READER_H_
