// Remembers what was found for a text, for rules that are asked about the same few words on every page.

#ifndef BENCHLEAF_SRC_EXTRACT_MEMO_H_
#define BENCHLEAF_SRC_EXTRACT_MEMO_H_

#include "extract/text_hash.h"

#include <array>
#include <cstddef>
#include <mutex>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>

namespace benchleaf::extract {

// Safe to share between threads. Of a bounded size: what is full is emptied, and fills again with what is asked often.
template <class Value>
class Memo {
 public:
  Memo() = default;
  ~Memo() = default;
  // A copy begins empty: what it belongs to may be changed.
  Memo(const Memo&) {}
  Memo& operator=(const Memo&) = delete;

  // What `make` gives; of a key that was asked before, what it gave then.
  // REQUIRES: the key alone decides what `make` gives.
  template <class Make>
  Value Of(std::string_view key, const Make& make) const {
    const Asked asked{key, TextHash{}(key)};
    Shelf& shelf = shelves_[asked.hash % kShelves];
    {
      const std::lock_guard lock(shelf.mutex);
      if (const auto found = shelf.known.find(asked); found != shelf.known.end()) {
        return found->second;
      }
    }
    Value made = make();
    const std::lock_guard lock(shelf.mutex);
    if (shelf.known.size() >= kMostOfShelf) {
      shelf.known.clear();
    }
    shelf.known.try_emplace(std::string(key), made);
    return made;
  }

 private:
  static constexpr std::size_t kShelves = 16;  // few threads want the same one at the same time
  static constexpr std::size_t kMostOfShelf = 4096;

  // A key whose hash is known: it tells the shelf, and then the place there.
  struct Asked {
    std::string_view key;
    std::size_t hash = 0;
  };
  struct Hash : TextHash {
    using TextHash::operator();
    std::size_t operator()(const Asked& asked) const { return asked.hash; }
  };
  struct Same {
    using is_transparent = void;
    bool operator()(std::string_view a, std::string_view b) const { return a == b; }
    bool operator()(const Asked& asked, std::string_view known) const { return asked.key == known; }
    bool operator()(std::string_view known, const Asked& asked) const { return asked.key == known; }
  };
  struct Shelf {
    std::mutex mutex;
    std::unordered_map<std::string, Value, Hash, Same> known;
  };

  mutable std::array<Shelf, kShelves> shelves_;
};

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_MEMO_H_
