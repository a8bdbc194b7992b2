#include "core/report/writing.h"

#include <cctype>

#include "core/collation/formula.h"
#include "core/materials/material_kinds.h"
#include "core/materials/shelf.h"
#include "core/survey/condition_terms.h"
#include "core/values/amount_words.h"
#include "core/values/english.h"
#include "core/values/fold.h"

namespace headcap::core::report {

std::vector<Run> plain(std::string text) {
    return {Run{std::move(text), Run::Style::plain}};
}

std::vector<Run> italic(std::string text) {
    return {Run{std::move(text), Run::Style::italic}};
}

std::vector<Run> bold(std::string text) {
    return {Run{std::move(text), Run::Style::bold}};
}

void addFact(Facts& facts, std::string_view label, std::string value,
             std::optional<RecordRef> source) {
    if (!value.empty()) {
        facts.facts.push_back({std::string{label}, plain(std::move(value)), source});
    }
}

TableRow row(std::initializer_list<std::string> cells, std::optional<RecordRef> source) {
    TableRow made{.cells = {}, .source = source};
    for (const std::string& cell : cells) {
        made.cells.push_back(plain(cell));
    }
    return made;
}

TableRow group(std::string name, std::string said, std::string sum,
               std::optional<RecordRef> source) {
    std::vector<Run> head{{std::move(name), Run::Style::bold}};
    if (!said.empty()) {
        head.push_back({": " + std::move(said)});
    }
    return {.cells = {std::move(head), {{std::move(sum), Run::Style::bold}}},
            .source = source,
            .kind = TableRow::Kind::group};
}

void addOr(Section& section, Table table, std::string_view nothing) {
    if (table.rows.empty()) {
        section.blocks.emplace_back(Statement{std::string{nothing}});
    } else {
        section.blocks.emplace_back(std::move(table));
    }
}

void addOr(Section& section, List list, std::string_view nothing) {
    if (list.items.empty()) {
        section.blocks.emplace_back(Statement{std::string{nothing}});
    } else {
        section.blocks.emplace_back(std::move(list));
    }
}

void addIf(Section& section, Facts facts) {
    if (!facts.facts.empty()) {
        section.blocks.emplace_back(std::move(facts));
    }
}

void addPart(Section& section, std::string heading, Table table) {
    if (!table.rows.empty()) {
        section.blocks.emplace_back(Subheading{std::move(heading)});
        section.blocks.emplace_back(std::move(table));
    }
}

std::string placeIn(const JobFile& file, const std::optional<Id<Item>>& part,
                    const std::string& place) {
    const Item* item = file.part(part);
    if (item == nullptr || item->id == file.item.id) {
        return place;
    }
    const std::string label = item->volumeLabel.empty() ? headingOf(*item) : item->volumeLabel;
    // "wrapper of SR 19" says already which volume it is.
    const std::size_t at = place.find(label);
    const std::size_t after = at + label.size();
    const bool isNamed =
        at != std::string::npos &&
        (after == place.size() || !std::isalnum(static_cast<unsigned char>(place[after])));
    return place.empty() ? label : isNamed ? place : label + ": " + place;
}

std::string partAndPlace(const JobFile& file, const Finding& finding) {
    const std::string component = componentName(finding.component);
    const std::string place = placeIn(file, finding.part, finding.place);
    return foldForSearch(place) == foldForSearch(component) ? component
                                                            : joined({component, place}, ", ");
}

std::string lowerFirst(std::string_view text) {
    std::string made{text};
    if (!made.empty() && made.front() >= 'A' && made.front() <= 'Z') {
        made.front() = static_cast<char>(made.front() - 'A' + 'a');
    }
    return made;
}

std::string orUnnamed(std::string place) {
    return place.empty() ? "a place not named" : place;
}

std::string orNot(std::string text) {
    return text.empty() ? "NOT RECORDED" : text;
}

std::string personName(const JobFile& file, const std::optional<Id<Person>>& id) {
    const Person* person = file.person(id);
    return person ? person->name : "";
}

std::string lotText(const JobFile& file, const std::optional<Id<Lot>>& id) {
    const Lot* lot = file.lot(id);
    return lot ? "lot " + lotName(*lot, file.material(lot->material)) : "";
}

std::string grainText(GrainAtSpine grain) {
    switch (grain) {
    case GrainAtSpine::notSaid:
        break;
    case GrainAtSpine::along:
        return "grain along the spine";
    case GrainAtSpine::across:
        return "grain across the spine";
    case GrainAtSpine::noGrain:
        return "without grain";
    }
    return {};
}

std::string amountText(const JobFile& file, Amount amount, const std::optional<Id<Lot>>& lot) {
    const Lot* of = file.lot(lot);
    const Material* kind = of ? file.material(of->material) : nullptr;
    return amountWords(amount, kind ? pieceName(kind->kind) : pieceName(MaterialClass::paper));
}

std::string amountText(const JobFile& file, const MaterialUse& use) {
    return use.amount ? amountText(file, *use.amount, use.lot) : "";
}

std::string useText(const JobFile& file, const MaterialUse& use) {
    const std::string lot = lotText(file, use.lot);
    const std::string what =
        joined({lot.empty() ? use.material : lot, lot.empty() ? "" : use.material}, ", ");
    const std::string named = what.empty() ? "a material not named" : what;
    const std::string used = use.amount ? amountText(file, use) + " of " + named : named;
    return joined({used, grainText(use.grainAtSpine)}, ", ");
}

std::string formulaText(const std::string& formula) {
    std::string dashed;
    for (std::size_t at = 0; at < formula.size(); ++at) {
        const bool isWithin =
            at > 0 && at + 1 < formula.size() && formula[at - 1] != ' ' && formula[at + 1] != ' ';
        dashed += formula[at] == '-' && isWithin ? "–" : std::string{formula[at]};
    }
    const bool isSame =
        toFormula(readFormula(dashed).makeUp) == toFormula(readFormula(formula).makeUp);
    return isSame ? dashed : formula;
}

std::string itemTitle(const Item& item) {
    const std::string title = item.title.empty() ? item.shortTitle : item.title;
    const std::string date = item.date ? toText(*item.date) : "";
    return joined({item.author, title, date}, ", ");
}

std::string joined(const std::vector<std::string>& texts, std::string_view with) {
    std::string all;
    for (const std::string& text : texts) {
        if (text.empty()) {
            continue;
        }
        if (!all.empty()) {
            if (all.back() == '.' && with.front() != ' ') {
                all.pop_back();
            }
            all += with;
        }
        all += text;
    }
    return all;
}

std::string told(const std::vector<std::string>& texts) {
    std::string all;
    for (const std::string& text : texts) {
        if (!text.empty()) {
            all = all.empty() ? capitalised(text) : sentence(all) + " " + capitalised(text);
        }
    }
    return all;
}

} // namespace headcap::core::report
