#include "cli/man_page.h"

#include "cli/exit_codes.h"

#include <sstream>

namespace benchleaf {
namespace {

// Text that troff takes for nothing but text. Hyphens are minus signs, so that options can be copied from a terminal.
std::string Plain(const std::string& text) {
  std::string plain;
  for (const char c : text) {
    switch (c) {
      case '\\':
        plain += "\\e";
        break;
      case '-':
        plain += "\\-";
        break;
      case '`':
        plain += "\\(ga";
        break;
      case '\'':
        plain += "\\(aq";
        break;
      case '~':
        plain += "\\(ti";
        break;
      case '^':
        plain += "\\(ha";
        break;
      default:
        plain += c;
    }
  }
  // A line must not begin with what troff takes for a request.
  if (!plain.empty() && plain.front() == '.') plain.insert(0, "\\&");
  return plain;
}

std::string Bold(const std::string& text) { return "\\fB" + Plain(text) + "\\fR"; }
std::string Italic(const std::string& text) { return "\\fI" + Plain(text) + "\\fR"; }

std::string Shown(const ArgumentOutline& argument) {
  std::string shown = Italic(argument.value.name);
  if (argument.repeats) shown += "...";
  return argument.required ? shown : "[" + shown + "]";
}

std::string Shown(const OptionOutline& option) {
  std::string shown;
  for (const std::string& name : option.names) shown += (shown.empty() ? "" : ", ") + Bold(name);
  if (!option.value.name.empty()) shown += " " + Italic(option.value.name);
  return shown;
}

std::string Entry(const std::string& head, const std::string& text) {
  return ".TP\n" + head + "\n" + Plain(text) + "\n";
}

// Notes as they stand under the options: indented lines are to be typed as they are, the others are prose.
std::string Notes(const std::string& notes) {
  std::string text;
  std::istringstream lines(notes);
  bool typed = false;
  for (std::string line; std::getline(lines, line);) {
    const bool is_typed = line.rfind("  ", 0) == 0;
    if (is_typed != typed) text += is_typed ? ".PP\n.in +4n\n.nf\n" : ".fi\n.in\n";
    if (!is_typed) text += line.empty() || typed ? ".PP\n" : "";
    if (!line.empty()) text += Plain(is_typed ? line.substr(2) : line) + "\n";
    typed = is_typed;
  }
  return text + (typed ? ".fi\n.in\n" : "");
}

std::string Command(const CommandOutline& command) {
  std::string text = ".SS " + command.name + "\n" + Bold("benchleaf " + command.name);
  for (const ArgumentOutline& argument : command.arguments) text += " " + Shown(argument);
  text += " [options]\n.PP\n" + Plain(command.description) + ".\n";
  for (const ArgumentOutline& argument : command.arguments) {
    text += Entry(Italic(argument.value.name), argument.description);
  }
  for (const OptionOutline& option : command.options) text += Entry(Shown(option), option.description);
  if (!command.notes.empty()) text += ".PP\n" + Notes(command.notes);
  return text;
}

}  // namespace

std::string ManPage(const ProgramOutline& program, const std::string& version) {
  std::string page =
      ".TH BENCHLEAF 1 \"\" \"benchleaf " + version + "\" \"User commands\"\n" +
      ".SH NAME\nbenchleaf \\- index scanned service manuals and answer from them\n" +
      ".SH SYNOPSIS\n\\fBbenchleaf\\fR \\fICOMMAND\\fR [\\fIarguments\\fR] [\\fIoptions\\fR]\n" + ".SH DESCRIPTION\n" +
      Plain(program.description) + "\n.PP\n" +
      Plain(
          "Values and places were read by a machine from bad scans: check them on the page before you act on them. "
          "A chassis may be live, capacitors hold a charge after the plug is out, and a picture tube can implode.") +
      "\n";
  for (const OptionOutline& option : program.options) page += Entry(Shown(option), option.description);
  page += ".SH COMMANDS\n";
  for (const CommandOutline& command : program.commands) page += Command(command);
  page += ".SH EXIT STATUS\n";
  for (const ExitCodeMeaning& code : kExitCodes) {
    page += Entry(Bold(std::to_string(static_cast<int>(code.code))), std::string(code.meaning));
  }
  page +=
      ".SH ENVIRONMENT\n" + Entry(Bold("BENCHLEAF_LIBRARY"), "the library's folder, where --library does not say") +
      Entry(Bold("BENCHLEAF_CONFIG"), "the folder of data files, where --config does not say") +
      Entry(Bold("NO_COLOR"), "where set and not empty, tables have no colours") +
      Entry(Bold("XDG_STATE_HOME"), "benchleaf/last-find in it keeps what was found last (default: ~/.local/state)");
  page += ".SH FILES\n" + Entry(Italic("LIBRARY/.benchleaf"), "the index") +
          Entry(Italic("LIBRARY/library.csv"), "which file belongs to which set, where names do not tell") +
          Entry(Italic("LIBRARY/*.tsv"), "your own rows over those of the data files of the same name") +
          Entry(Italic("PREFIX/share/benchleaf"), "the data files");
  return page;
}

}  // namespace benchleaf
