#include "bench/miss_list.h"

#include <cstdio>
#include <stdexcept>

namespace benchleaf::bench {
namespace {

std::string Text(const FractionBox& box) {
  char text[64];
  std::snprintf(text, sizeof text, "%.4f %.4f %.4f %.4f", box.x, box.y, box.width, box.height);
  return text;
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

MissList::MissList(const std::string& path) {
  if (path.empty()) {
    return;
  }
  file_.open(path);
  if (!file_) {
    throw std::runtime_error(path + " cannot be written");
  }
  file_ << "grade\treader\tsheet\twhat\ttext\tturn\tbox\tread\n";
}

void MissList::Add(const MissPlace& place, const PageVerdict& verdict, const std::vector<Seen>& words) {
  if (!file_.is_open()) {
    return;
  }
  const auto line = [&](const char* what, const std::string& text, const std::string& turn, const FractionBox& box) {
    file_ << place.grade << '\t' << place.reader << '\t' << place.sheet << '\t' << what << '\t' << text << '\t' << turn
          << '\t' << Text(box) << '\t' << WordsAt(box, words) << '\n';
  };
  for (const TruthVerdict& one : verdict.truth) {
    if (!one.found) {
      line("missed", one.term.text, std::to_string(one.term.turn), one.term.box);
    }
  }
  for (const SeenVerdict& one : verdict.seen) {
    if (one.judgement != Judgement::kRight) {
      line(one.judgement == Judgement::kFalse ? "false" : "other", one.seen.text, "", one.seen.box);
    }
  }
}

}  // namespace benchleaf::bench
