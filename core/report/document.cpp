#include "core/report/document.h"

namespace headcap::core {
namespace {

void addLine(std::string& text, const std::string& line) {
    if (!line.empty()) {
        text += line + "\n";
    }
}

std::string rowText(const TableRow& row) {
    std::string line;
    for (const auto& cell : row.cells) {
        const std::string text = plainText(cell);
        line += (line.empty() || text.empty() ? "" : " · ") + text;
    }
    return line;
}

struct BlockText {
    std::string& text;

    void operator()(const Paragraph& block) const { addLine(text, plainText(block.runs)); }
    void operator()(const Statement& block) const { addLine(text, block.text); }
    void operator()(const Caution& block) const {
        addLine(text, block.title);
        addLine(text, block.text);
    }
    void operator()(const Facts& block) const {
        for (const Fact& fact : block.facts) {
            addLine(text, fact.label + ": " + plainText(fact.value));
        }
    }
    void operator()(const Table& block) const {
        std::string titles;
        for (const TableColumn& column : block.columns) {
            titles += (titles.empty() ? "" : " · ") + column.title;
        }
        addLine(text, titles);
        for (const TableRow& row : block.rows) {
            addLine(text, rowText(row));
        }
    }
    void operator()(const List& block) const {
        for (const ListItem& item : block.items) {
            addLine(text, plainText(item.runs));
        }
    }
    void operator()(const Figures& block) const {
        for (const Figure& figure : block.figures) {
            addLine(text, "Figure " + std::to_string(figure.number) + ". " + figure.caption);
        }
    }
    void operator()(const Subheading& block) const { addLine(text, block.text); }
};

} // namespace

std::string plainText(const std::vector<Run>& runs) {
    std::string text;
    for (const Run& run : runs) {
        text += run.text;
    }
    return text;
}

std::string plainText(const Document& document) {
    std::string text;
    addLine(text, document.title);
    addLine(text, document.subtitle);
    for (const Section& section : document.sections) {
        addLine(text, section.title);
        for (const Block& block : section.blocks) {
            std::visit(BlockText{text}, block);
        }
    }
    return text;
}

} // namespace headcap::core
