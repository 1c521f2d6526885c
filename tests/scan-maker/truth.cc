#include "scan-maker/truth.h"

#include <nlohmann/json.hpp>  // for the tests' own files; benchleaf's are written by record/

#include <sstream>
#include <stdexcept>

namespace benchleaf::scanmaker {
namespace {

using nlohmann::ordered_json;

ordered_json FromBox(const FractionBox& box) { return ordered_json::array({box.x, box.y, box.width, box.height}); }

FractionBox ToBox(const ordered_json& json) {
  return {json.at(0).get<double>(), json.at(1).get<double>(), json.at(2).get<double>(), json.at(3).get<double>()};
}

ordered_json FromPage(const PageTruth& page) {
  ordered_json terms = ordered_json::array();
  for (const TruthTerm& term : page.terms) {
    terms.push_back({{"kind", term.kind}, {"text", term.text}, {"box", FromBox(term.box)}, {"turn", term.turn}});
  }
  ordered_json entries = ordered_json::array();
  for (const TruthEntry& entry : page.entries) {
    entries.push_back({{"designator", entry.designator},
                       {"assembly", entry.assembly},
                       {"description", entry.description},
                       {"part_number", entry.part_number},
                       {"value", entry.value},
                       {"box", FromBox(entry.box)},
                       {"item", entry.item}});
  }
  return {{"file", page.file}, {"page", page.page}, {"kind", page.kind}, {"printed_number", page.printed_number},
          {"terms", terms},    {"entries", entries}};
}

PageTruth ToPage(const ordered_json& json) {
  PageTruth page;
  page.file = json.at("file").get<std::string>();
  page.page = json.at("page").get<int>();
  page.kind = json.at("kind").get<std::string>();
  page.printed_number = json.at("printed_number").get<std::string>();
  for (const ordered_json& term : json.at("terms")) {
    page.terms.push_back({term.at("kind").get<std::string>(), term.at("text").get<std::string>(), ToBox(term.at("box")),
                          term.at("turn").get<int>()});
  }
  for (const ordered_json& entry : json.at("entries")) {
    page.entries.push_back({entry.at("designator").get<std::string>(), entry.at("assembly").get<std::string>(),
                            entry.at("description").get<std::string>(), entry.at("part_number").get<std::string>(),
                            entry.at("value").get<std::string>(), ToBox(entry.at("box")),
                            entry.at("item").get<std::string>()});
  }
  return page;
}

}  // namespace

std::string ToJsonLines(const std::vector<PageTruth>& pages) {
  std::string text;
  for (const PageTruth& page : pages) text += FromPage(page).dump() + "\n";
  return text;
}

std::vector<PageTruth> FromJsonLines(const std::string& text) {
  std::vector<PageTruth> pages;
  std::istringstream lines(text);
  int number = 0;
  for (std::string line; std::getline(lines, line);) {
    ++number;
    if (line.empty()) {
      continue;
    }
    try {
      pages.push_back(ToPage(ordered_json::parse(line)));
    } catch (const nlohmann::json::exception& problem) {
      throw std::runtime_error("line " + std::to_string(number) + " is no page of truth: " + problem.what());
    }
  }
  return pages;
}

}  // namespace benchleaf::scanmaker
