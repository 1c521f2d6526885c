#include "cli/completion.h"
#include "cli/shell_words.h"

namespace benchleaf {
namespace {

// Offers what may stand in place of the value.
std::string Offer(const ValueOutline& value) {
  switch (value.kind) {
    case ValueKind::kSet:
      return "_benchleaf_lines \"$cur\" \"$(_benchleaf_sets)\"";
    case ValueKind::kFolder:
      return "mapfile -t COMPREPLY < <(compgen -d -- \"$cur\"); compopt -o filenames";
    case ValueKind::kFile:
      return "mapfile -t COMPREPLY < <(compgen -f -- \"$cur\"); compopt -o filenames";
    case ValueKind::kChoice: {
      std::string lines;
      for (const std::string& choice : value.choices) lines += (lines.empty() ? "" : "\n") + choice;
      return "_benchleaf_lines \"$cur\" " + Quoted(lines);
    }
    case ValueKind::kAnything:
      break;
  }
  return ":";
}

std::vector<std::string> NamesOf(const std::vector<OptionOutline>& options) {
  std::vector<std::string> names;
  for (const OptionOutline& option : options) names.insert(names.end(), option.names.begin(), option.names.end());
  return names;
}

constexpr const char* kHead = R"bash(# Completes benchleaf's commands in bash. Written by `benchleaf completion bash`.

# Offers the lines of $2 that begin with $1, each as one word. Case does not matter.
_benchleaf_lines() {
  local typed=${1#[\"\']} line
  typed=${typed//\\/}
  while IFS= read -r line; do
    [[ -n $line && ${line,,} == "${typed,,}"* ]] && COMPREPLY+=("$(printf '%q' "$line")")
  done <<< "$2"
}

# The names of the sets in the index that the line names.
_benchleaf_sets() {
  local i where=()
  for ((i = 2; i < COMP_CWORD; ++i)); do
    case ${COMP_WORDS[i]} in
      --library | --db | --config) where+=("${COMP_WORDS[i]}" "${COMP_WORDS[i + 1]/#\~/$HOME}") ;;
    esac
  done
  "${COMP_WORDS[0]/#\~/$HOME}" sets --names "${where[@]}" 2> /dev/null
}

_benchleaf() {
  local cur=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD - 1]} options
  COMPREPLY=()
)bash";

}  // namespace

std::string BashCompletion(const ProgramOutline& program) {
  std::vector<std::string> first = NamesOf(program.options);
  for (const CommandOutline& command : program.commands) first.push_back(command.name);
  std::string words;
  for (const std::string& word : first) words += (words.empty() ? "" : " ") + word;
  std::string script = kHead;
  script += "  if ((COMP_CWORD == 1)); then\n    mapfile -t COMPREPLY < <(compgen -W " + Quoted(words) +
            " -- \"$cur\")\n    return\n  fi\n  case ${COMP_WORDS[1]} in\n";
  for (const CommandOutline& command : program.commands) {
    std::string options;
    for (const std::string& name : NamesOf(command.options)) options += (options.empty() ? "" : " ") + name;
    script += "    " + command.name + ")\n      options=" + Quoted(options) + "\n      case $before in\n";
    for (const OptionOutline& option : command.options) {
      if (option.value.name.empty()) continue;
      std::string names;
      for (const std::string& name : option.names) names += (names.empty() ? "" : " | ") + name;
      script += "        " + names + ")\n          " + Offer(option.value) + "\n          return\n          ;;\n";
    }
    script += "      esac\n";
    if (!command.arguments.empty()) {
      script += "      [[ $cur == -* ]] || { " + Offer(command.arguments.front().value) + "; }\n";
    }
    script += "      ;;\n";
  }
  script +=
      "  esac\n  [[ $cur == -* ]] && mapfile -t COMPREPLY < <(compgen -W \"$options\" -- \"$cur\")\n"
      "  return 0\n}\n\ncomplete -F _benchleaf benchleaf\n";
  return script;
}

}  // namespace benchleaf
