#include "extract/assembly_prefix.h"
#include "extract/dashed_designators.h"
#include "extract/plain_text.h"
#include "extract/tube_form.h"

#include "benchleaf/extract/extract.h"

#include <algorithm>
#include <cstddef>
#include <string_view>

namespace benchleaf {
namespace {

void AddOnce(std::vector<std::string>& forms, std::string form) {
  if (!form.empty() && std::find(forms.begin(), forms.end(), form) == forms.end()) {
    forms.push_back(std::move(form));
  }
}

// 6SN7GTB, 6SN7GT, 6SN7: revisions are taken off before bulbs.
void AddTube(std::vector<std::string>& forms, const std::string& type) {
  AddOnce(forms, type);
  const std::string base = extract::TubeBase(type);
  std::string suffix = type.substr(base.size());
  if (base != type && suffix.size() > 1 && suffix != "GT") {
    suffix.pop_back();
    if (suffix.back() == '/') {
      suffix.pop_back();
    }
    AddOnce(forms, base + suffix);
  }
  AddOnce(forms, base);
}

}  // namespace

std::vector<std::string> DesignatorForms(const std::string& canonical) {
  std::vector<std::string> forms;
  AddOnce(forms, canonical);
  if (canonical.empty()) {
    return forms;
  }
  const std::string own = canonical.substr(extract::AssemblyLength(canonical));
  AddOnce(forms, own);
  // Asked for as it is printed, R-12: the index has it as R12.
  if (const std::size_t dash = extract::DashBehindLetters(own); dash > 0) {
    AddOnce(forms, own.substr(0, dash) + own.substr(dash + 1));
  }
  if (own.size() > 2 && extract::IsUpper(own.back()) && extract::IsDigit(own[own.size() - 2])) {
    AddOnce(forms, canonical.substr(0, canonical.size() - 1));
    AddOnce(forms, own.substr(0, own.size() - 1));
  }
  return forms;
}

std::vector<std::string> TubeForms(const std::string& canonical) {
  std::vector<std::string> forms;
  AddOnce(forms, canonical);
  std::size_t from = 0;
  while (from < canonical.size()) {
    std::size_t slash = std::min(canonical.find('/', from), canonical.size());
    if (canonical.compare(slash, std::string::npos, "/G") == 0) {
      slash = canonical.size();  // the G of 6J5GT/G is a bulb, no second name
    }
    AddTube(forms, canonical.substr(from, slash - from));
    from = slash + 1;
  }
  return forms;
}

}  // namespace benchleaf
