#include "bench/verdict_list.h"

#include <cstdio>
#include <stdexcept>

namespace benchleaf::bench {
namespace {

std::string Text(const FractionBox& box) {
  char text[64];
  static_cast<void>(std::snprintf(text, sizeof text, "%.4f %.4f %.4f %.4f", box.x, box.y, box.width, box.height));
  return text;
}

std::string What(const SeenVerdict& verdict) {
  switch (verdict.judgement) {
    case Judgement::kRight:
      return "right";
    case Judgement::kOtherText:
      return verdict.stands_as;
    case Judgement::kFalse:
      break;
  }
  return "false";
}

std::string WordsAt(const FractionBox& box, const std::vector<Seen>& words) {
  std::string found;
  for (const Seen& word : words) {
    if (OverlapOfSmaller(word.box, box) > 0.2) {
      found += (found.empty() ? "" : " ") + word.text;
    }
  }
  return found;
}

}  // namespace

VerdictList::VerdictList(const std::string& path) {
  if (path.empty()) {
    return;
  }
  file_.open(path);
  if (!file_) {
    throw std::runtime_error(path + " cannot be written");
  }
  file_ << "grade\treader\tsheet\tkind\twhat\ttext\tturn\tsure\tbox\tread\n";
}

void VerdictList::Add(const VerdictPlace& place, const PageVerdict& verdict, const std::vector<Seen>& words) {
  if (!file_.is_open()) {
    return;
  }
  const auto line = [&](const std::string& what, const std::string& text, const std::string& turn,
                        const std::string& sure, const FractionBox& box) {
    file_ << place.grade << '\t' << place.reader << '\t' << place.sheet << '\t' << place.kind << '\t' << what << '\t'
          << text << '\t' << turn << '\t' << sure << '\t' << Text(box) << '\t' << WordsAt(box, words) << '\n';
  };
  for (const TruthVerdict& one : verdict.truth) {
    if (!one.found) {
      line("missed", one.term.text, std::to_string(one.term.turn), "", one.term.box);
    }
  }
  for (const SeenVerdict& one : verdict.seen) {
    line(What(one), one.seen.text, "", std::to_string(one.seen.confidence), one.seen.box);
  }
}

}  // namespace benchleaf::bench
