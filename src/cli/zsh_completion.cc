#include "cli/completion.h"
#include "cli/shell_words.h"

namespace benchleaf {
namespace {

// A description within an _arguments specification, in which brackets and colons have a meaning.
std::string Told(const std::string& text) {
  std::string told;
  for (const char c : text) {
    if (c == '[' || c == ']' || c == ':' || c == '\\') told += '\\';
    told += c;
  }
  return told;
}

std::string Action(const ValueOutline& value) {
  switch (value.kind) {
    case ValueKind::kSet:
      return "_benchleaf_sets";
    case ValueKind::kFolder:
      return "_files -/";
    case ValueKind::kFile:
      return "_files";
    case ValueKind::kChoice: {
      std::string choices = "(";
      for (const std::string& choice : value.choices) {
        if (choices.size() > 1) choices += ' ';
        for (const char c : choice) choices += c == ' ' ? std::string("\\ ") : std::string(1, c);
      }
      return choices + ")";
    }
    case ValueKind::kAnything:
      break;
  }
  return " ";
}

std::string Specification(const OptionOutline& option) {
  std::string names;
  if (option.names.size() > 1) {
    std::string all;
    for (const std::string& name : option.names) {
      all += (all.empty() ? "" : " ") + name;
      names += (names.empty() ? "" : ",") + name;
    }
    names = Quoted((option.repeats ? "*" : "(" + all + ")")) + "{" + names + "}";
  } else {
    names = option.repeats ? Quoted("*" + option.names.front()) : Quoted(option.names.front());
  }
  std::string rest = "[" + Told(option.description) + "]";
  if (!option.value.name.empty()) rest += ":" + Told(option.value.name) + ":" + Action(option.value);
  return names + Quoted(rest);
}

}  // namespace

std::string ZshCompletion(const ProgramOutline& program) {
  std::string script =
      "#compdef benchleaf\n"
      "# Completes benchleaf's commands in zsh. Written by `benchleaf completion zsh`.\n\n"
      "_benchleaf_sets() {\n"
      "  local -a sets\n"
      "  sets=(${(f)\"$(_call_program sets ${words[1]} sets --names 2>/dev/null)\"})\n"
      "  compadd -a sets\n"
      "}\n\n"
      "_benchleaf() {\n"
      "  local -a commands\n"
      "  commands=(\n";
  for (const CommandOutline& command : program.commands) {
    script += "    " + Quoted(command.name + ":" + Told(command.description)) + "\n";
  }
  script += "  )\n  if ((CURRENT == 2)); then\n    _describe command commands\n";
  std::string first;
  for (const OptionOutline& option : program.options) {
    for (const std::string& name : option.names) first += (first.empty() ? "" : " ") + Quoted(name);
  }
  script += "    compadd -- " + first + "\n    return\n  fi\n  case ${words[2]} in\n";
  for (const CommandOutline& command : program.commands) {
    script += "    " + command.name + ")\n      shift words\n      ((CURRENT -= 1))\n      _arguments \\\n";
    for (const OptionOutline& option : command.options) script += "        " + Specification(option) + " \\\n";
    for (const ArgumentOutline& argument : command.arguments) {
      script += "        " +
                Quoted((argument.repeats ? "*" : "") + std::string(":") + Told(argument.value.name) + ":" +
                       Action(argument.value)) +
                " \\\n";
    }
    script.resize(script.size() - 3);
    script += "\n      ;;\n";
  }
  return script + "  esac\n}\n\n_benchleaf \"$@\"\n";
}

}  // namespace benchleaf
