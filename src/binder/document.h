// What all documents of the binder have in common: head, bar, cautions, and how pages and sureness are worded.

#ifndef BENCHLEAF_SRC_BINDER_DOCUMENT_H_
#define BENCHLEAF_SRC_BINDER_DOCUMENT_H_

#include "binder/markup.h"

#include "benchleaf/binder/book.h"

#include <string>

namespace benchleaf::binder {

struct Document {
  std::string title;
  std::string root;   // from the document's folder to the binder's: "", "../", "../../"
  std::string style;  // class of its body
  Markup main;        // what it says
};

// The whole file. Its policy lets no script and no style run that is not a file of the binder.
std::string WholeHtml(const Document& document);

// The divider tabs of a set: which of its documents is open, and ways to the others.
enum class SetTab { kPages, kParts, kTubes, kGaps, kPaper, kSheet };
Markup SetHead(const Book& book, SetTab open);

// What a person must know before the chassis is opened, whole and in a line.
Markup Cautions();
Markup CautionLine();

// "Sheet 8", "Sheet 8, printed page 8-17", with the volume where there are several, and the manual.
std::string PageName(const Book& book, const BookPage& page);
// "sheet 8": for links in tables.
std::string ShortPageName(const BookPage& page);

// What the part is, in a line: its description, value and part number.
std::string PartWords(const Entry& entry);
// The part's designator with its assembly; "(none)" for a row without one.
std::string PartName(const Entry& entry);

// A table that the script can sort and narrow, in a frame that scrolls sideways where it must. `name` says what it is.
struct TableColumn {
  std::string title;
  std::string style;  // class of its fields
};
Markup DataTable(const std::string& name, const std::string& id, const std::vector<TableColumn>& columns,
                 const Markup& rows);

}  // namespace benchleaf::binder

#endif  // BENCHLEAF_SRC_BINDER_DOCUMENT_H_
