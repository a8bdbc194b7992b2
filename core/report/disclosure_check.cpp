#include "core/report/disclosure_check.h"

#include <algorithm>
#include <map>

#include "core/values/english.h"

namespace headcap::core {
namespace {

struct Said {
    std::string label;
    std::string text;
};
using SaidBy = std::map<std::pair<std::string, RecordRef>, std::vector<Said>>;

// What a document says of each record, section by section.
class Reader {
public:
    explicit Reader(const Document& document) {
        for (const Section& section : document.sections) {
            m_section = section.key;
            for (const Block& block : section.blocks) {
                std::visit(*this, block);
            }
        }
    }
    [[nodiscard]] const SaidBy& said() const { return m_said; }

    void operator()(const Paragraph& block) { add(block.source, plainText(block.runs)); }
    void operator()(const Statement&) {}
    void operator()(const Subheading&) {}
    void operator()(const Caution& block) { add(block.source, block.title + "\n" + block.text); }
    void operator()(const Facts& block) {
        for (const Fact& fact : block.facts) {
            add(fact.source, plainText(fact.value), fact.label);
        }
    }
    void operator()(const Table& block) {
        std::string group; // said of each of its rows
        for (const TableRow& row : block.rows) {
            std::string text;
            for (const auto& cell : row.cells) {
                text += plainText(cell) + "\n";
            }
            if (row.kind == TableRow::Kind::group) {
                group = text;
            }
            add(row.source, row.kind == TableRow::Kind::group ? text : group + text);
        }
    }
    void operator()(const List& block) {
        for (const ListItem& item : block.items) {
            add(item.source, plainText(item.runs));
            for (const RecordRef& other : item.also) {
                add(other, plainText(item.runs));
            }
        }
    }
    void operator()(const Figures& block) {
        for (const Figure& figure : block.figures) {
            add(figure.source, figure.caption);
        }
    }

private:
    void add(const std::optional<RecordRef>& source, std::string text, std::string label = {}) {
        if (source) {
            m_said[{m_section, *source}].push_back({std::move(label), std::move(text)});
        }
    }

    std::string m_section;
    SaidBy m_said;
};

// As it was written, but for the letter that begins a sentence and the stop that ends one.
bool holds(const std::string& text, std::string wanted) {
    if (wanted.ends_with('.')) {
        wanted.pop_back();
    }
    return text.find(wanted) != std::string::npos ||
           text.find(capitalised(wanted)) != std::string::npos;
}

bool isSaid(const SaidBy& said, const Disclosure& wanted) {
    const auto found = said.find({wanted.section, wanted.record});
    return found != said.end() && std::ranges::any_of(found->second, [&](const Said& one) {
               return (wanted.label.empty() || one.label == wanted.label) &&
                      holds(one.text, wanted.text);
           });
}

} // namespace

std::vector<RecordRef> undisclosed(const JobFile& file, const Document& document) {
    const SaidBy said = Reader{document}.said();
    std::vector<RecordRef> missing;
    for (const Disclosure& wanted : disclosuresOf(file)) {
        if (!isSaid(said, wanted) && std::ranges::find(missing, wanted.record) == missing.end()) {
            missing.push_back(wanted.record);
        }
    }
    return missing;
}

} // namespace headcap::core
