// The commands and their options as plain values, taken from the definition that the arguments are parsed by: what the
// manual page and the completion scripts are written from.

#ifndef BENCHLEAF_SRC_CLI_COMMAND_OUTLINE_H_
#define BENCHLEAF_SRC_CLI_COMMAND_OUTLINE_H_

#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace benchleaf {

// What may stand in the place of a value, as far as a shell can offer it.
enum class ValueKind { kAnything, kSet, kFolder, kFile, kChoice };

struct ValueOutline {
  std::string name;  // "SET", "N"; empty for a flag
  ValueKind kind = ValueKind::kAnything;
  std::vector<std::string> choices;  // of kChoice
};

struct OptionOutline {
  std::vector<std::string> names;  // "-q", "--quiet"; short ones first
  ValueOutline value;
  std::string description;
  bool repeats = false;
};

struct ArgumentOutline {
  ValueOutline value;
  std::string description;
  bool required = false;
  bool repeats = false;
};

struct CommandOutline {
  std::string name;
  std::string description;
  std::string notes;  // examples and what else stands under the options
  std::vector<ArgumentOutline> arguments;
  std::vector<OptionOutline> options;
};

struct ProgramOutline {
  std::string description;
  std::vector<OptionOutline> options;    // before a command
  std::vector<CommandOutline> commands;  // those that help lists, in its order
};

ProgramOutline OutlineOf(const CLI::App& app);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_COMMAND_OUTLINE_H_
