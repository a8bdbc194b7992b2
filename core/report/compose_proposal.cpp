#include "core/report/compose_proposal.h"

#include <fmt/format.h>

#include "core/report/letterhead.h"
#include "core/report/writing.h"
#include "core/treatment/approval.h"
#include "core/treatment/cost.h"
#include "core/treatment/totals.h"
#include "core/values/decimal.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

using report::addFact;
using report::addIf;
using report::itemTitle;
using report::joined;
using report::letterheadOf;
using report::personName;
using report::plain;
using report::row;
using report::told;

std::string money(const std::optional<Money>& sum) {
    return sum ? toText(*sum) : std::string{};
}

std::string taxName(const Proposal& proposal) {
    constexpr int kPercentPlaces = 4; // of parts per million
    return fmt::format("Tax {} %", decimalText(proposal.taxPpm, kPercentPlaces));
}

std::string said(const std::string& text) {
    return capitalised(sentence(text));
}

std::string lineText(const JobFile& file, const ProposalLine& line) {
    const std::string name = capitalised(file.techniques.nameOf(line.technique));
    return told(
        {line.count > 1 ? fmt::format("{} ({})", name, line.count) : name, line.description});
}

Section bookSection(const JobFile& file, const Proposal& proposal) {
    Section section{.key = "proposal_book", .title = "The book and the aim"};
    Facts facts;
    addFact(facts, "Owner", file.owner.name, refOf(file.owner.id));
    addFact(facts, "Book", itemTitle(file.item), refOf(file.item.id));
    addFact(facts, "Asked for", said(file.job.request), refOf(file.job.id));
    addFact(facts, "Aim", said(proposal.aim), refOf(proposal.id));
    addFact(facts, "Risks", said(proposal.risks), refOf(proposal.id));
    addIf(section, std::move(facts));
    return section;
}

// Columns for what the lines have: an empty column is left out.
Table costTable(const JobFile& file, const OptionCost& cost, const Proposal& proposal) {
    const bool hasTax = proposal.taxPerLine && proposal.taxPpm != 0;
    Table table{
        {{"Work", 6}, {"Place", 3}, {"Time", 2, true}, {"Work", 2, true}, {"Materials", 2, true}},
        {}};
    if (hasTax) {
        table.columns.push_back({taxName(proposal), 2, true});
        table.columns.push_back({"In all", 2, true});
    }
    for (const LineCost& one : cost.lines) {
        TableRow made = row({lineText(file, *one.line), one.line->place,
                             one.line->minutes > Minutes{0} ? minutesText(one.line->minutes) : "",
                             money(one.work), money(one.materials)},
                            refOf(one.line->id));
        if (hasTax) {
            made.cells.push_back(plain(money(one.tax)));
            made.cells.push_back(plain(money(one.gross)));
        }
        table.rows.push_back(std::move(made));
    }
    return table;
}

Facts totalFacts(const OptionCost& cost, const Proposal& proposal) {
    Facts facts;
    for (const CostTotal& total : cost.totals) {
        addFact(facts, "Work", toText(total.work));
        if (total.materials.minor != 0) {
            addFact(facts, "Materials", toText(total.materials));
        }
        if (proposal.taxPpm != 0) {
            addFact(facts, "Before tax", toText(total.net));
            addFact(facts, taxName(proposal),
                    toText(total.tax) +
                        (proposal.taxPerLine ? ", rounded by line" : ", on the total"));
        }
        addFact(facts, "In all", toText(total.gross));
    }
    if (cost.unpriced > 0) {
        addFact(facts, "Without a price", counted(cost.unpriced, "line", "lines"));
    }
    return facts;
}

Section optionSection(const JobFile& file, const Proposal& proposal, const ProposalOption& option) {
    Section section{.key = "proposal_option",
                    .title = option.name.empty() ? "An option" : option.name};
    Facts facts;
    addFact(facts, "What it does", said(option.effect), refOf(option.id));
    addFact(facts, "Risk", said(option.risk), refOf(option.id));
    addIf(section, std::move(facts));
    std::vector<std::string> lasting;
    for (const ProposalLine* line : irreversibleLines(file, option.id)) {
        lasting.push_back(lineTitle(*line, file.techniques));
    }
    const std::string irreversible =
        joined({sentence(option.irreversible),
                lasting.empty() ? "" : "By its nature: " + sentence(listed(lasting))},
               " ");
    if (!irreversible.empty()) {
        section.blocks.emplace_back(Caution{"Can't be undone", irreversible, refOf(option.id)});
    }
    const OptionCost cost = costOf(file, proposal, option.id);
    if (cost.lines.empty()) {
        section.blocks.emplace_back(Statement{"Nothing is done to the book, and nothing charged."});
        return section;
    }
    section.blocks.emplace_back(costTable(file, cost, proposal));
    addIf(section, totalFacts(cost, proposal));
    return section;
}

std::string dayOrNothing(const std::optional<Day>& day) {
    return day ? dayText(*day) : std::string{};
}

Section termsSection(const JobFile& file, const Proposal& proposal) {
    Section section{.key = "proposal_terms", .title = "Terms"};
    Facts facts;
    addFact(facts, "Not included", said(proposal.notIncluded), refOf(proposal.id));
    addFact(facts, "Deposit", money(proposal.deposit), refOf(proposal.id));
    addFact(facts, "Insured for", money(proposal.insuredValue), refOf(proposal.id));
    addFact(facts, "Begins", dayOrNothing(proposal.startOn), refOf(proposal.id));
    addFact(facts, "Ready", dayOrNothing(proposal.readyOn), refOf(proposal.id));
    addFact(facts, "Valid until", dayOrNothing(proposal.validUntil), refOf(proposal.id));
    addFact(facts, "Note", said(proposal.note), refOf(proposal.id));
    if (file.workshop) {
        addFact(facts, "Always", said(file.workshop->terms), refOf(file.workshop->id));
    }
    addIf(section, std::move(facts));
    section.blocks.emplace_back(
        Paragraph{plain("A significant change later is put to you as a new proposal, and is not "
                        "begun before you agree.")});
    return section;
}

Section answerSection(const JobFile& file, const Proposal& proposal) {
    Section section{.key = "proposal_answer", .title = "Your answer"};
    Table table{{{"I choose", 6}, {"Not above, without asking me", 4}, {"", 1}}, {}};
    for (const ProposalOption* option : optionsOf(file, proposal.id)) {
        table.rows.push_back(
            row({option->name.empty() ? "An option" : option->name, "", "☐"}, refOf(option->id)));
    }
    section.blocks.emplace_back(std::move(table));
    Facts facts;
    facts.facts.push_back({"Name", plain("……………………………………………………………………")});
    facts.facts.push_back({"By what right", plain("……………………………………………………………………")});
    facts.facts.push_back({"Date, signature", plain("……………………………………………………………………")});
    section.blocks.emplace_back(std::move(facts));
    return section;
}

} // namespace

Document composeProposal(const JobFile& file, const Proposal& proposal, Day today) {
    Document document{.title = fmt::format("Proposal {}", proposal.version),
                      .subtitle = itemTitle(file.item),
                      .jobNumber = file.job.number,
                      .date = proposal.sentOn.value_or(today),
                      .isDraft = !proposal.sentOn,
                      .version = static_cast<int>(proposal.version),
                      .author = personName(file, proposal.who),
                      .letterhead = letterheadOf(file)};
    document.sections.push_back(bookSection(file, proposal));
    for (const ProposalOption* option : optionsOf(file, proposal.id)) {
        document.sections.push_back(optionSection(file, proposal, *option));
    }
    document.sections.push_back(termsSection(file, proposal));
    document.sections.push_back(answerSection(file, proposal));
    return document;
}

} // namespace headcap::core
