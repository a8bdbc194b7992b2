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
    friend bool operator==(const Run&, const Run&) = default;
};

struct Paragraph {
    std::vector<Run> runs;
    std::optional<RecordRef> source{};
    friend bool operator==(const Paragraph&, const Paragraph&) = default;
};

// A sentence that a whole section comes down to: "No facsimile leaf was supplied."
struct Statement {
    std::string text;
    friend bool operator==(const Statement&, const Statement&) = default;
};

// Something that must catch the eye: a hazard, what can't be undone.
struct Caution {
    std::string title;
    std::string text;
    std::optional<RecordRef> source{};
    friend bool operator==(const Caution&, const Caution&) = default;
};

// A label and what belongs to it, set in two columns.
struct Fact {
    std::string label;
    std::vector<Run> value;
    std::optional<RecordRef> source{};
    friend bool operator==(const Fact&, const Fact&) = default;
};
struct Facts {
    std::vector<Fact> facts;
    friend bool operator==(const Facts&, const Facts&) = default;
};

struct TableColumn {
    std::string title; // with its unit where it has one: "Amount"
    int weight = 1;    // share of the width
    bool alignRight = false;
    friend bool operator==(const TableColumn&, const TableColumn&) = default;
};
struct TableRow {
    // A group is the heading of the rows below it, set across: its words, and what they come to. A
    // total adds up the rows above, and is not parted from them.
    enum class Kind { entry, group, total };
    std::vector<std::vector<Run>> cells; // one a column
    std::optional<RecordRef> source{};
    bool struck = false; // of the log: kept, but no longer said
    Kind kind = Kind::entry;
    friend bool operator==(const TableRow&, const TableRow&) = default;
};
struct Table {
    std::vector<TableColumn> columns;
    std::vector<TableRow> rows;
    friend bool operator==(const Table&, const Table&) = default;
};

struct ListItem {
    std::vector<Run> runs;
    std::optional<RecordRef> source{};
    std::vector<RecordRef> also{}; // further records it tells of
    friend bool operator==(const ListItem&, const ListItem&) = default;
};
struct List {
    std::vector<ListItem> items;
    friend bool operator==(const List&, const List&) = default;
};

struct Figure {
    int number = 0; // through the report
    Digest photograph;
    std::int64_t widthPx = 0; // upright
    std::int64_t heightPx = 0;
    FigureWidth width = FigureWidth::column;
    std::string caption;
    RecordRef source;
    friend bool operator==(const Figure&, const Figure&) = default;
};
struct Figures {
    std::vector<Figure> figures; // column figures stand two in a row
    friend bool operator==(const Figures&, const Figures&) = default;
};

// A heading within a section.
struct Subheading {
    std::string text;
    friend bool operator==(const Subheading&, const Subheading&) = default;
};

using Block = std::variant<Paragraph, Statement, Caution, Facts, Table, List, Figures, Subheading>;

struct Section {
    std::string key;   // "disclosures_a", for links and tests; never shown
    std::string title; // "Disclosure A: facsimiles and leaves supplied"
    int level = 1;     // 2: under the section before
    std::vector<Block> blocks;
    friend bool operator==(const Section&, const Section&) = default;
};

struct Letterhead {
    std::string name;
    std::vector<std::string> lines; // address, telephone, e-mail, membership
    friend bool operator==(const Letterhead&, const Letterhead&) = default;
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
    friend bool operator==(const Document&, const Document&) = default;
};

// All its text, a line a block or row, for tests and for copying.
[[nodiscard]] std::string plainText(const Document& document);
[[nodiscard]] std::string plainText(const std::vector<Run>& runs);

} // namespace headcap::core
