#include "cli/completion.h"

namespace benchleaf {
namespace {

// In single quotes by fish's rules, in which a backslash escapes a quote and itself.
std::string FishQuoted(const std::string& text) {
  std::string quoted = "'";
  for (const char c : text) {
    if (c == '\'' || c == '\\') quoted += '\\';
    quoted += c;
  }
  return quoted + "'";
}

std::string Offered(const ValueOutline& value) {
  switch (value.kind) {
    case ValueKind::kSet:
      return " -x -a '(benchleaf sets --names 2>/dev/null)'";
    case ValueKind::kFolder:
      return " -x -a '(__fish_complete_directories)'";
    case ValueKind::kFile:
      return " -r -F";
    case ValueKind::kChoice: {
      std::string choices;
      for (const std::string& choice : value.choices) choices += (choices.empty() ? "" : " ") + FishQuoted(choice);
      return " -x -a " + FishQuoted(choices);
    }
    case ValueKind::kAnything:
      break;
  }
  return " -x";
}

std::string Option(const std::string& head, const OptionOutline& option) {
  std::string line = head;
  for (const std::string& name : option.names) {
    line += name.rfind("--", 0) == 0 ? " -l " + name.substr(2) : " -s " + name.substr(1);
  }
  if (!option.value.name.empty()) line += Offered(option.value);
  return line + " -d " + FishQuoted(option.description) + "\n";
}

}  // namespace

std::string FishCompletion(const ProgramOutline& program) {
  std::string script =
      "# Completes benchleaf's commands in fish. Written by `benchleaf completion fish`.\n\n"
      "complete -c benchleaf -f\n";
  for (const OptionOutline& option : program.options) {
    script += Option("complete -c benchleaf -n __fish_use_subcommand", option);
  }
  for (const CommandOutline& command : program.commands) {
    script += "\ncomplete -c benchleaf -n __fish_use_subcommand -a " + command.name + " -d " +
              FishQuoted(command.description) + "\n";
    const std::string head = "complete -c benchleaf -n '__fish_seen_subcommand_from " + command.name + "'";
    for (const OptionOutline& option : command.options) script += Option(head, option);
    if (!command.arguments.empty() && command.arguments.front().value.kind != ValueKind::kAnything) {
      script += head + Offered(command.arguments.front().value) + "\n";
    }
  }
  return script;
}

}  // namespace benchleaf
