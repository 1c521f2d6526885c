#include "benchleaf/store/prepared_manual.h"

#include "store/documents.h"
#include "store/prepared_documents.h"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace benchleaf {
namespace {

// Beyond so many, documents are made one after the other when they are written.
constexpr std::size_t kMostPages = 200;

}  // namespace

PreparedManual::PreparedManual(ManualRecord manual, const Rules& rules)
    : record_(std::move(manual)), documents_(std::make_unique<Documents>()) {
  const std::size_t pages = std::min(record_.pages.size(), kMostPages);
  documents_->of_first_pages.reserve(2 * pages);
  for (std::size_t i = 0; i < pages; ++i) {
    for (Xapian::Document& document : store::PageDocuments(record_, record_.pages[i], rules)) {
      documents_->of_first_pages.push_back(std::move(document));
    }
  }
}

PreparedManual::~PreparedManual() = default;
PreparedManual::PreparedManual(PreparedManual&& other) noexcept = default;
PreparedManual& PreparedManual::operator=(PreparedManual&& other) noexcept = default;

}  // namespace benchleaf
