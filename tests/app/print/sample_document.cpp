#include "tests/app/print/sample_document.h"

#include <utility>

namespace headcap::app::print::test {

using namespace core;

namespace {

using Style = Run::Style;

Section theBook() {
    Facts facts{{
        {"Author", plainRun("Josias Harrowgate")},
        {"Title",
         {{"A Booke of Grafting, shewing the moſt approved "},
          {"Inſtruments", Style::italic},
          {" and the ſeaſons thereto belonging"}}},
        {"Imprint", plainRun("Norbury: printed by T. Vellacott for the widow Penmarsh, 1612")},
        {"Collation",
         {{"8°: π² A–K⁸ χ1; 83 leaves, pp. [4] 1–160 [2]; "},
          {"2A", Style::plain},
          {"x", Style::raised},
          {" not called for"}}},
        {"Size", plainRun("182 × 121 × 24 mm")},
        {"Binding", plainRun("Limp vellum, sewn on three alum-tawed thongs; ties lacking")},
        {"Owner’s marks",
         plainRun("Inscription “Eliz. Tolliver her book” on π1r; ¶ in the margin of "
                  "C4v; stamp † of a former library; a Hebrew word, ספר, on K8v")},
    }};
    return {"item", "The book", 1, {facts}};
}

Section condition() {
    return {
        "condition",
        "Condition as received",
        1,
        {Caution{"Suspected: arsenical green",
                 "The green paper of the later wrapper has not been tested. Gloves were worn "
                 "and the wrapper is kept apart in a closed bag. Follow local rules and ask a "
                 "qualified person before it is handled."},
         Paragraph{{{"The text block was softened by damp at the tail; the first two "
                     "gatherings were loose, their folds split for some 90 mm. The "},
                    {"officinal", Style::italic},
                    {" stains of the fly-leaf are old and were left. Offsets of the afflicted "
                     "ſpecial fonts ſtand on B1v."}}},
         Subheading{"Leaves"},
         List{{{plainRun("K2 lacking; its conjugate K7 loose, held by the catchword “grafts”")},
               {plainRun("K5 a facsimile of an earlier repair, not described before")},
               {{{"χ1", Style::bold}, {" torn with loss of some 1,240 mm² at the fore edge"}}}}},
         Subheading{"Binding"},
         Paragraph{plainRun("Vellum cockled and shrunken from the boards’ place; 12 mm of the "
                            "spine fold split at the headcap.")}}};
}

Section steps() {
    Table table;
    table.columns = {{"Date", 2},
                     {"By", 2},
                     {"What was done", 7},
                     {"Material and lot", 4},
                     {"Minutes", 1, true}};
    const std::vector<std::string> acts{
        "Surface cleaned with soft brush and vulcanised rubber sponge, A1–K8",
        "Washed gatherings A and B in two baths of deionised water at 30 °C, ink tested first on "
        "A3r with no bleeding after 60 s; dried between felts under light weight",
        "Guarded K7 and mended the fold of K1.8",
        "Supplied facsimile leaf K2 tipped to a guard of kozo tissue, 3 mm wide",
        "Resewn on the old stations, all along, linen thread 25/3"};
    const std::vector<std::string> lots{"none", "deionised water",
                                        "Wheat starch paste 31-006, 0.6 g; "
                                        "Kozo tissue 5 g/m² 29-102, 12 cm²",
                                        "Kozo tissue 29-102; paste 31-006",
                                        "Linen thread 28-011, 4.2 m"};
    for (int i = 0; i < 30; ++i) {
        const auto kind = static_cast<std::size_t>(i) % acts.size();
        TableRow row;
        row.cells = {plainRun(std::to_string(3 + i % 25) + " March 2031"), plainRun("M. Orrin"),
                     plainRun(acts[kind]), plainRun(lots[kind]),
                     plainRun(std::to_string(10 + 7 * (i % 13)))};
        row.struck = i == 4;
        if (row.struck) {
            row.cells[2].push_back({" (struck out: entered twice)"});
        }
        table.rows.push_back(std::move(row));
    }
    return {"steps", "The log of steps", 1, {table}};
}

std::vector<Section> disclosures() {
    Table supplied;
    supplied.columns = {
        {"Leaf", 1}, {"Source", 4}, {"Printed on", 3}, {"Attached with", 3}, {"How to remove", 3}};
    supplied.rows = {{{plainRun("K2"),
                       {{"Thornbury Municipal Library, shelfmark "},
                        {"Ob. 7. 61", Style::italic},
                        {"; edition of 1612, consulted 2 February 2031; same setting"}},
                       plainRun("Gampi-blend paper 90 g/m², lot 30-044"),
                       plainRun("Wheat starch paste, lot 31-006"),
                       plainRun("Damp the guard with 1 % methylcellulose for 10 min and lift")}},
                     {{plainRun("π2"), plainRun("The same copy, by the same photographs"),
                       plainRun("Gampi-blend paper 90 g/m², lot 30-044"),
                       plainRun("Wheat starch paste 31-006"), plainRun("As K2")}}};
    return {
        {"disclosures", "Disclosures", 1, {}},
        {"disclosures_a", "A  Facsimiles and leaves supplied", 2, {supplied}},
        {"disclosures_b",
         "B  Repairs and parts replaced",
         2,
         {Paragraph{plainRun("Folds of K1.8 and K7 guarded; two tears of B4 mended.")}}},
        {"disclosures_d",
         "D  Original matter removed, moved or kept aside",
         2,
         {Statement{"No original matter was removed, moved or kept aside."}}},
        {"disclosures_e",
         "E  Acts that can’t be undone",
         2,
         {Caution{"Washing", "Gatherings A and B were washed: soluble matter of the paper and "
                             "some of its size are gone."}}},
        {"disclosures_f",
         "F  What is unresolved or sought",
         2,
         {Statement{"Nothing is unresolved or sought."}}},
    };
}

Section figures() {
    Figures all{
        {figureOf(1, FigureWidth::column, 6000, 4000), figureOf(2, FigureWidth::column, 4000, 6000),
         figureOf(3, FigureWidth::full, 6000, 4000), figureOf(4, FigureWidth::column, 6000, 4000)}};
    all.figures[0].caption = "Before: upper cover, raking light from the left";
    all.figures[1].caption = "Before: title page, A1r, with the inscription of Elizabeth Tolliver "
                             "and the tide line at the tail";
    all.figures[2].caption = "After: the opening K1v–K2r, the facsimile leaf on the right with its "
                             "mark in the lower margin";
    all.figures[3].caption = "Detail: fold of K7 with its guard";
    return {"figures", "Photographs", 1, {all}};
}

class TextCollector {
public:
    void operator()(const Paragraph& block) { add(block.runs); }
    void operator()(const Statement& block) { texts.push_back(block.text); }
    void operator()(const Caution& block) {
        texts.push_back(block.title);
        texts.push_back(block.text);
    }
    void operator()(const Facts& block) {
        for (const Fact& fact : block.facts) {
            texts.push_back(fact.label);
            add(fact.value);
        }
    }
    void operator()(const Table& block) {
        for (const TableColumn& column : block.columns) {
            texts.push_back(column.title);
        }
        for (const TableRow& row : block.rows) {
            for (const auto& cell : row.cells) {
                add(cell);
            }
        }
    }
    void operator()(const List& block) {
        for (const ListItem& item : block.items) {
            add(item.runs);
        }
    }
    void operator()(const Figures& block) {
        for (const Figure& figure : block.figures) {
            texts.push_back("Figure " + std::to_string(figure.number));
            texts.push_back(figure.caption);
        }
    }
    void operator()(const Subheading& block) { texts.push_back(block.text); }

    std::vector<std::string> texts;

private:
    void add(const std::vector<Run>& runs) {
        std::string all;
        for (const Run& run : runs) {
            all += run.text;
        }
        texts.push_back(all);
    }
};

} // namespace

RecordRef anyRecord() {
    return {RecordKind::photograph, *Uuid::fromText("01890a5d-ac96-774b-bcce-b302099a8057")};
}

std::vector<Run> plainRun(const std::string& text) {
    return {Run{text}};
}

Figure figureOf(int number, FigureWidth width, std::int64_t widthPx, std::int64_t heightPx) {
    return {
        number,     sha256("photograph " + std::to_string(number)), widthPx, heightPx, width, {},
        anyRecord()};
}

Document documentOf(std::vector<Block> blocks) {
    Document document;
    document.title = "Treatment report";
    document.subtitle = "Josias Harrowgate, A Booke of Grafting, 1612";
    document.jobNumber = "2031-014";
    document.date = Day{std::chrono::year{2031} / 3 / 28};
    document.author = "Maud Orrin";
    document.letterhead = {"The Sallow Lane Bindery",
                           {"4 Sallow Lane, Norbury", "maud@sallowlane.example · 0555 014 014"}};
    document.sections = {{"only", "Only section", 1, std::move(blocks)}};
    return document;
}

Document sampleDocument(bool isDraft) {
    Document document = documentOf({});
    document.isDraft = isDraft;
    document.version = isDraft ? 0 : 2;
    document.journalHead = sha256("a journal").hex();
    document.sections = {theBook(), condition(), steps()};
    for (Section& section : disclosures()) {
        document.sections.push_back(std::move(section));
    }
    document.sections.push_back(figures());
    document.sections.push_back(
        {"care",
         "Advice for care",
         1,
         {Paragraph{plainRun("Keep flat, in its box, between 35 and 60 % relative humidity. Open "
                             "to 110° at most, on a cradle.")}}});
    return document;
}

std::vector<std::string> textsOf(const Document& document) {
    TextCollector collector;
    collector.texts = {document.title, document.subtitle, document.jobNumber, document.author,
                       document.letterhead.name};
    for (const std::string& line : document.letterhead.lines) {
        collector.texts.push_back(line);
    }
    for (const Section& section : document.sections) {
        collector.texts.push_back(section.title);
        for (const Block& block : section.blocks) {
            std::visit(collector, block);
        }
    }
    return collector.texts;
}

} // namespace headcap::app::print::test
