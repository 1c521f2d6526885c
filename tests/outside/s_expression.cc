#include "outside/s_expression.h"

#include <algorithm>
#include <charconv>
#include <stdexcept>
#include <utility>

namespace benchleaf::outside {
namespace {

constexpr std::string_view kBlank = " \t\r\n";

// Reads the string whose opening quote is at `at`; leaves `at` behind the closing one.
std::string Quoted(std::string_view text, std::size_t& at) {
  std::string word;
  for (++at; at < text.size() && text[at] != '"'; ++at) {
    if (text[at] != '\\') {
      word += text[at];
    } else if (++at < text.size()) {
      word += text[at] == 'n' ? '\n' : text[at];
    }
  }
  if (at >= text.size()) {
    throw std::runtime_error("a quoted text has no end");
  }
  ++at;
  return word;
}

std::string Bare(std::string_view text, std::size_t& at) {
  const std::size_t end = std::min(text.find_first_of(" \t\r\n()\"", at), text.size());
  const std::size_t begin = std::exchange(at, end);
  return std::string(text.substr(begin, end - begin));
}

}  // namespace

const Node* Node::Find(std::string_view wanted) const {
  const auto found = std::find_if(items.begin(), items.end(), [&](const Node& item) { return item.name() == wanted; });
  return found == items.end() ? nullptr : &*found;
}

std::vector<const Node*> Node::All(std::string_view wanted) const {
  std::vector<const Node*> found;
  for (const Node& item : items) {
    if (item.name() == wanted) {
      found.push_back(&item);
    }
  }
  return found;
}

bool Node::Has(std::string_view wanted) const {
  return std::any_of(items.begin(), items.end(),
                     [&](const Node& item) { return item.items.empty() && item.word == wanted; });
}

std::string Node::Text(std::size_t index) const { return index < items.size() ? items[index].word : std::string(); }

double Node::Number(std::size_t index) const {
  double number = 0;
  if (index < items.size()) {
    const std::string& digits = items[index].word;
    std::from_chars(digits.data(), digits.data() + digits.size(), number);
  }
  return number;
}

Node ParseSExpression(std::string_view text) {
  std::vector<Node> open(1);  // the innermost list last; the first holds the finished tree
  for (std::size_t at = text.find_first_not_of(kBlank); at < text.size(); at = text.find_first_not_of(kBlank, at)) {
    if (text[at] == '(') {
      open.emplace_back();
      ++at;
    } else if (text[at] == ')') {
      if (open.size() < 2) {
        throw std::runtime_error("a bracket closes that was never opened");
      }
      Node done = std::move(open.back());
      open.pop_back();
      open.back().items.push_back(std::move(done));
      ++at;
    } else {
      open.back().items.push_back({text[at] == '"' ? Quoted(text, at) : Bare(text, at), {}});
    }
  }
  if (open.size() != 1 || open[0].items.size() != 1) {
    throw std::runtime_error("not one tree with matching brackets");
  }
  return std::move(open[0].items[0]);
}

}  // namespace benchleaf::outside
