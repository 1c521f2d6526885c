// What commands write for other programs: --json held against src/report/json.md, --csv against RFC 4180.

#include "cli/made_library.h"
#include "places/places.h"

#include "benchleaf/core/csv_table.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

using Json = nlohmann::ordered_json;

struct Field {
  std::string name;
  std::string value;  // "text", "count", "text or null", ...
  bool may_be_left_out = false;
};

// The tables of the page, by "hit", "summary of find", ...
std::map<std::string, std::vector<Field>> DocumentedAnswers() {
  std::map<std::string, std::vector<Field>> answers;
  std::ifstream page(SourceFolder() / "src" / "report" / "json.md");
  std::string answer;
  for (std::string line; std::getline(page, line);) {
    if (line.rfind("## ", 0) == 0) answer = line.substr(3);
    if (line.rfind("| ", 0) != 0 || line.rfind("| field", 0) == 0 || line.rfind("| ---", 0) == 0) continue;
    Field field;
    std::istringstream cells(line.substr(2));
    std::getline(cells, field.name, '|');
    std::getline(cells, field.value, '|');
    for (std::string* cell : {&field.name, &field.value}) {
      cell->erase(0, cell->find_first_not_of(' '));
      cell->erase(cell->find_last_not_of(' ') + 1);
    }
    field.may_be_left_out = field.name.back() == '?';
    if (field.may_be_left_out) field.name.pop_back();
    answers[answer].push_back(field);
  }
  return answers;
}

bool IsBox(const Json& value) {
  return value.is_array() && value.size() == 4 && std::all_of(value.begin(), value.end(), [](const Json& one) {
           return one.is_number() && one >= 0 && one <= 1;
         });
}

bool Fits(const Json& value, const std::string& kind) {
  if (kind == "text") return value.is_string();
  if (kind == "text or null") return value.is_string() || value.is_null();
  if (kind == "number") return value.is_number();
  if (kind == "count") return value.is_number_integer() && value >= 0;
  if (kind == "truth") return value.is_boolean();
  if (kind == "list") return value.is_array();
  if (kind == "object") return value.is_object();
  return kind == "box" && IsBox(value);
}

// What does not fit: fields that are missing, out of order, of another kind, or not documented.
std::string Misfits(const Json& object, const std::vector<Field>& fields) {
  std::string misfits;
  auto at = object.begin();
  ++at;  // type
  for (const Field& field : fields) {
    if (at == object.end() || at.key() != field.name) {
      if (!field.may_be_left_out) misfits += " lacks " + field.name + " here;";
      continue;
    }
    if (!Fits(at.value(), field.value)) misfits += " " + field.name + " is no " + field.value + ";";
    ++at;
  }
  if (at != object.end()) misfits += " has " + at.key() + " besides;";
  return misfits;
}

class JsonAnswers : public MadeLibrary {};

TEST_F(JsonAnswers, AreWhatThePageAboutThemTells) {
  const auto documented = DocumentedAnswers();
  const std::string table = (folder_ / "tubes.csv").string();
  std::ofstream(table) << "type,count,condition,tester\n6CB6A,1,new,\n80,many,,\n";
  const std::string out = (folder_ / "out").string();
  const std::vector<std::vector<std::string>> commands = {
      {"find", "C112"},
      {"find", "X999"},
      {"find", "vertical hold"},
      {"parts", "QUILLHAVEN"},
      {"tube", "6CB6"},
      {"tube", "99ZZ9"},
      {"lineup", "QUILLHAVEN"},
      {"lineup", "BRACKENFORD"},
      {"lineup", "QUILLHAVEN", "BRACKENFORD"},
      {"gaps", "QUILLHAVEN"},
      {"stock", table},
      {"replace", "QUILLHAVEN"},
      {"replace", "QUILLHAVEN", "--only", "paper"},
      {"sets"},
      {"sets", "QUILLHAVEN"},
      {"picture", "R7", "-o", out + "1.png"},
      {"picture", "R7", "6CB6", "-t", "-o", out + "2.png"},
      {"picture", "t7.png", "-o", out + "3.png"},
      {"picture", "6CB6", "--sheet", "-o", out + "4.png"},
      {"searchable", "BRACKENFORD", "-o", out + ".pdf"},
  };
  std::set<std::string> seen;
  const auto check = [&](const std::string& command, const RunResult& result) {
    std::istringstream lines(result.out);
    std::string last;
    for (std::string line; std::getline(lines, line);) {
      const Json object = Json::parse(line, nullptr, false);
      ASSERT_TRUE(object.is_object()) << command << ": " << line;
      ASSERT_EQ(object.begin().key(), "type") << line;
      std::string name = object["type"];
      if (name == "summary") name += " of " + object["command"].get<std::string>();
      ASSERT_TRUE(documented.contains(name)) << name << " is not told in src/report/json.md";
      EXPECT_EQ(Misfits(object, documented.at(name)), "") << command << ": " << line;
      seen.insert(name);
      last = name;
    }
    EXPECT_EQ(last, "summary of " + command) << result.err;
  };
  for (std::vector<std::string> command : commands) {
    command.emplace_back("--json");
    check(command.front(), Ask(command));
  }
  check("files", RunProgram({"files", library_.string(), "--json"}));

  // Those that this small library cannot give are tested by name where they are made.
  std::vector<std::string> unseen;
  for (const auto& [name, fields] : documented) {
    if (!seen.contains(name)) unseen.push_back(name);
  }
  const std::vector<std::string> elsewhere = {"compared-function", "compared-type", "lineup-unplaced",
                                              "order-unread",      "stock-claims",  "summary of binder",
                                              "summary of index"};
  for (const std::string& name : unseen) EXPECT_THAT(elsewhere, testing::Contains(name));
}

class CsvAnswers : public MadeLibrary {};

TEST_F(CsvAnswers, HaveAHeaderAndAsManyFieldsInEveryRecordAndEndInCrLf) {
  const std::string table = (folder_ / "tubes.csv").string();
  std::ofstream(table) << "type,count\n6CB6A,1\n";
  for (const std::vector<std::string>& command :
       std::vector<std::vector<std::string>>{{"parts", "QUILLHAVEN", "--csv"},
                                             {"lineup", "QUILLHAVEN", "--csv"},
                                             {"gaps", "QUILLHAVEN", "--csv"},
                                             {"stock", table, "--csv"},
                                             {"replace", "QUILLHAVEN", "--only", "paper", "--csv"}}) {
    const RunResult result = Ask(command);
    const CsvTable csv = ParseCsv(result.out);
    EXPECT_TRUE(csv.faults.empty()) << command.front();
    ASSERT_GE(csv.rows.size(), 2U) << command.front() << ": " << result.err;
    for (const CsvRow& row : csv.rows) EXPECT_EQ(row.cells.size(), csv.rows.front().cells.size()) << result.out;
    // RFC 4180, 2.1: every record ends in CR LF, and none of these cells holds a line break.
    EXPECT_EQ(std::count(result.out.begin(), result.out.end(), '\n'), static_cast<long>(csv.rows.size()));
    EXPECT_EQ(std::count(result.out.begin(), result.out.end(), '\r'), static_cast<long>(csv.rows.size()));
  }
}

}  // namespace
}  // namespace benchleaf
