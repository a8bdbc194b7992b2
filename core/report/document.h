// A report as a document: sections of paragraphs, facts, tables, statements and figures, with no
// word of how it is drawn. Composed in core/report, drawn in app/print, searched by tests. What
// comes from a record says from which, so that nothing can be left out unnoticed.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/photo/photograph.h"
#include "core/record/record_ref.h"
#include "core/values/digest.h"
#include "core/values/time.h"

namespace headcap::core {

// A run of text in one style. Superscripts that Unicode has are in the text itself.
struct Run {
    enum class Style { plain, italic, bold, raised };
    std::string text;
    Style style = Style::plain;
};

struct Paragraph {
    std::vector<Run> runs;
    std::optional<RecordRef> source{};
};

// A sentence that a whole section comes down to: "No facsimile leaf was supplied."
struct Statement {
    std::string text;
};

// Something that must catch the eye: a hazard, what can't be undone.
struct Caution {
    std::string title;
    std::string text;
    std::optional<RecordRef> source{};
};

// A label and what belongs to it, set in two columns.
struct Fact {
    std::string label;
    std::vector<Run> value;
    std::optional<RecordRef> source{};
};
struct Facts {
    std::vector<Fact> facts;
};

struct TableColumn {
    std::string title; // with its unit where it has one: "Amount"
    int weight = 1;    // share of the width
    bool alignRight = false;
};
struct TableRow {
    // A group is the heading of the rows below it, set across: its words, and what they come to. A
    // total adds up the rows above, and is not parted from them.
    enum class Kind { entry, group, total };
    std::vector<std::vector<Run>> cells; // one a column
    std::optional<RecordRef> source{};
    bool struck = false; // of the log: kept, but no longer said
    Kind kind = Kind::entry;
};
struct Table {
    std::vector<TableColumn> columns;
    std::vector<TableRow> rows;
};

struct ListItem {
    std::vector<Run> runs;
    std::optional<RecordRef> source{};
    std::vector<RecordRef> also{}; // further records it tells of
};
struct List {
    std::vector<ListItem> items;
};

struct Figure {
    int number = 0; // through the report
    Digest photograph;
    std::int64_t widthPx = 0; // upright
    std::int64_t heightPx = 0;
    FigureWidth width = FigureWidth::column;
    std::string caption;
    RecordRef source;
};
struct Figures {
    std::vector<Figure> figures; // column figures stand two in a row
};

// A heading within a section.
struct Subheading {
    std::string text;
};

using Block = std::variant<Paragraph, Statement, Caution, Facts, Table, List, Figures, Subheading>;

struct Section {
    std::string key;   // "disclosures_a", for links and tests; never shown
    std::string title; // "Disclosure A: facsimiles and leaves supplied"
    int level = 1;     // 2: under the section before
    std::vector<Block> blocks;
};

struct Letterhead {
    std::string name;
    std::vector<std::string> lines; // address, telephone, e-mail, membership
};

struct Document {
    std::string title;    // "Treatment report"
    std::string subtitle; // the book: author, title, date
    std::string jobNumber;
    Day date;
    bool isDraft = true;
    int version = 0; // of an issued report
    std::string language = "en-GB";
    std::string author;      // who made it
    std::string journalHead; // 64 digits; empty where there is none to print
    Letterhead letterhead;
    std::vector<Section> sections;
    std::string runningTitle{}; // over every page but the first; the subtitle where there is none
};

// All its text, a line a block or row, for tests and for copying.
[[nodiscard]] std::string plainText(const Document& document);
[[nodiscard]] std::string plainText(const std::vector<Run>& runs);

} // namespace headcap::core
