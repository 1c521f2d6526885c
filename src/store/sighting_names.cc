#include "store/sighting_names.h"

#include "benchleaf/extract/extract.h"

namespace benchleaf::store {

std::string Canonical(std::string_view text) {
  constexpr std::string_view kSpaces = " \t\n\v\f\r";
  std::string canonical;
  for (const char c : text) {
    if (kSpaces.find(c) != std::string_view::npos) continue;
    canonical += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
  }
  return canonical;
}

std::vector<std::string> OtherForms(TermKind kind, const std::string& text) {
  std::vector<std::string> forms;
  if (kind == TermKind::kDesignator) forms = DesignatorForms(text);
  if (kind == TermKind::kTube) forms = TubeForms(text);
  std::erase(forms, text);
  return forms;
}

}  // namespace benchleaf::store
