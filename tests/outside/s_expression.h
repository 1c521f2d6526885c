// Trees of words in brackets: the syntax of KiCad's files.

#ifndef BENCHLEAF_TESTS_OUTSIDE_S_EXPRESSION_H_
#define BENCHLEAF_TESTS_OUTSIDE_S_EXPRESSION_H_

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::outside {

// A word (no items) or a list, whose first item is a word that names it.
struct Node {
  std::string word = {};
  std::vector<Node> items = {};

  // Of a list; empty for a word.
  std::string_view name() const { return items.empty() ? std::string_view() : std::string_view(items[0].word); }

  // The first list of that name among the items, or nullptr.
  const Node* Find(std::string_view wanted) const;
  std::vector<const Node*> All(std::string_view wanted) const;
  // Whether that word stands among the items.
  bool Has(std::string_view wanted) const;

  // Item `index` as a word or number; "" and 0 when there is none.
  std::string Text(std::size_t index) const;
  double Number(std::size_t index) const;
};

// Throws std::runtime_error when the brackets do not match or text follows the tree.
Node ParseSExpression(std::string_view text);

}  // namespace benchleaf::outside

#endif  // BENCHLEAF_TESTS_OUTSIDE_S_EXPRESSION_H_
