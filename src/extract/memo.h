// Remembers what was found for a text, for rules that are asked about the same few words on every page.

#ifndef BENCHLEAF_SRC_EXTRACT_MEMO_H_
#define BENCHLEAF_SRC_EXTRACT_MEMO_H_

#include "extract/text_hash.h"

#include <array>
#include <cstddef>
#include <mutex>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::extract {

// Safe to share between threads. Of a bounded size: a key has one place, found by a single look at memory, and whatever
// is asked next for that place takes it.
template <class Value>
class Memo {
 public:
  Memo() = default;
  ~Memo() = default;
  // A copy begins empty: what it belongs to may be changed.
  Memo(const Memo&) {}
  Memo& operator=(const Memo&) = delete;

  // What `make` gives; of a key that was asked before, perhaps what it gave then.
  // REQUIRES: the key alone decides what `make` gives.
  template <class Make>
  Value Of(std::string_view key, const Make& make) const {
    const std::size_t hash = TextHash{}(key);
    Shelf& shelf = shelves_[hash % kShelves];
    const std::size_t place = hash / kShelves % kPlaces;
    {
      const std::lock_guard lock(shelf.mutex);
      if (!shelf.places.empty() && shelf.places[place] && shelf.places[place]->key == key) {
        return shelf.places[place]->value;
      }
    }
    Value made = make();
    const std::lock_guard lock(shelf.mutex);
    shelf.places.resize(kPlaces);  // room is taken with the first that is kept
    shelf.places[place] = Known{std::string(key), made};
    return made;
  }

 private:
  static constexpr std::size_t kShelves = 16;  // few threads want the same one at the same time
  static constexpr std::size_t kPlaces = 2048;

  struct Known {
    std::string key;
    Value value;
  };
  struct Shelf {
    std::mutex mutex;
    std::vector<std::optional<Known>> places;
  };

  mutable std::array<Shelf, kShelves> shelves_;
};

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_MEMO_H_
