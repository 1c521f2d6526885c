#include "cli/command_outline.h"

#include "cli/choices.h"
#include "cli/gaps_command.h"
#include "cli/picture_command.h"

#include "benchleaf/orders/part_kinds.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <utility>

namespace benchleaf {
namespace {

// The values that have names of their own.
std::vector<std::string> ChoicesOf(const std::string& command, const std::string& option) {
  if (option == "--kind") return PageKinds();
  if (option == "--view") return PictureViews();
  if (option == "--only" && command == "gaps") return GapKinds();
  if (option == "--only" && command == "replace") return OrderableKindNames();
  if (option == "SHELL") return {"bash", "zsh", "fish"};
  return {};
}

ValueOutline ValueOf(const std::string& command, const std::string& option, const std::string& name) {
  ValueOutline value{name, ValueKind::kAnything, ChoicesOf(command, option)};
  if (!value.choices.empty()) {
    value.kind = ValueKind::kChoice;
  } else if (name == "SET" || name == "OTHER") {
    value.kind = ValueKind::kSet;
  } else if (name == "DIR" || name == "LIBRARY") {
    value.kind = ValueKind::kFolder;
  } else if (name == "FILE" || name == "OUT") {
    value.kind = ValueKind::kFile;
  }
  return value;
}

OptionOutline OptionOf(const std::string& command, const CLI::Option& option) {
  OptionOutline outline;
  for (const std::string& name : option.get_snames()) outline.names.push_back("-" + name);
  for (const std::string& name : option.get_lnames()) outline.names.push_back("--" + name);
  const bool is_flag = option.get_items_expected_max() == 0;
  if (!is_flag) {
    const std::string& shown = option.get_option_text();
    const std::string name = shown.empty() ? option.get_type_name() : shown;
    // CLI11 tells bounds behind the name: "N:INT in [1 - 256]".
    outline.value = ValueOf(command, outline.names.back(), name.substr(0, name.find(':')));
  }
  outline.description = option.get_description();
  outline.repeats = option.get_expected_max() > 1 && !is_flag;
  return outline;
}

CommandOutline CommandOf(const CLI::App& command) {
  CommandOutline outline{command.get_name(), command.get_description(), command.get_footer(), {}, {}};
  for (const CLI::Option* option : command.get_options()) {
    if (option->get_positional()) {
      const std::string name = option->get_name(true);
      outline.arguments.push_back({ValueOf(outline.name, name, name), option->get_description(), option->get_required(),
                                   option->get_expected_max() > 1});
    } else {
      outline.options.push_back(OptionOf(outline.name, *option));
    }
  }
  return outline;
}

}  // namespace

ProgramOutline OutlineOf(const CLI::App& app) {
  ProgramOutline outline;
  outline.description = app.get_description();
  for (const CLI::Option* option : app.get_options()) outline.options.push_back(OptionOf("", *option));
  for (const CLI::App* command : app.get_subcommands([](const CLI::App* c) { return !c->get_group().empty(); })) {
    outline.commands.push_back(CommandOf(*command));
  }
  return outline;
}

}  // namespace benchleaf
