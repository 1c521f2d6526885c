// Remembers what was found for a text, for rules that are asked about the same few words on every page.

#ifndef BENCHLEAF_SRC_EXTRACT_MEMO_H_
#define BENCHLEAF_SRC_EXTRACT_MEMO_H_

#include <array>
#include <cstddef>
#include <functional>
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
    const std::size_t hash = Hash{}(key);
    Shelf& shelf = shelves_[hash % kShelves];
    {
      const std::lock_guard lock(shelf.mutex);
      if (const auto found = shelf.known.find(key); found != shelf.known.end()) {
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

  // So that a text is looked up without a string being made of it.
  struct Hash {
    using is_transparent = void;
    std::size_t operator()(std::string_view text) const { return std::hash<std::string_view>{}(text); }
  };
  struct Shelf {
    std::mutex mutex;
    std::unordered_map<std::string, Value, Hash, std::equal_to<>> known;
  };

  mutable std::array<Shelf, kShelves> shelves_;
};

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_MEMO_H_
