#include "core/report/compose_proposal.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/report/hazard_words.h"
#include "core/report/letterhead.h"
#include "core/report/proposal_prices.h"
#include "core/report/sign_line.h"
#include "core/report/work_words.h"
#include "core/report/writing.h"
#include "core/treatment/cost.h"
#include "core/treatment/totals.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

using report::addFact;
using report::addIf;
using report::itemTitle;
using report::letterheadOf;
using report::money;
using report::personName;
using report::plain;
using report::row;

std::string said(const std::string& text) {
    return capitalised(sentence(text));
}

Section bookSection(const JobFile& file, const Proposal& proposal) {
    Section section{.key = "proposal_book", .title = "The book and the aim"};
    Facts facts;
    addFact(facts, "Owner", file.owner.name, refOf(file.owner.id));
    addFact(facts, "Book", itemTitle(file.item), refOf(file.item.id));
    addFact(facts, "Asked for", said(file.job.request), refOf(file.job.id));
    addFact(facts, "Sent on", proposal.sentOn ? dayText(*proposal.sentOn) : "", refOf(proposal.id));
    addFact(facts, "Aim", said(proposal.aim), refOf(proposal.id));
    addFact(facts, "Risks", said(proposal.risks), refOf(proposal.id));
    addIf(section, std::move(facts));
    report::addHazards(section, file, report::HazardReader::owner);
    return section;
}

// What can't be undone catches the eye; that all can be is said in plain words.
void addLasting(Section& section, const JobFile& file, const ProposalOption& option, bool isWork) {
    const std::string text = report::lastingText(file, option);
    if (!text.empty()) {
        section.blocks.emplace_back(Caution{"Can't be undone", text, refOf(option.id)});
    } else if (isWork && !option.irreversible.empty()) {
        section.blocks.emplace_back(Paragraph{plain("All of it can be undone."), refOf(option.id)});
    }
}

Section optionSection(const JobFile& file, const Proposal& proposal, const ProposalOption& option) {
    Section section{.key = "proposal_option",
                    .title = option.name.empty() ? "An option" : option.name};
    Facts facts;
    addFact(facts, "What it does", said(option.effect), refOf(option.id));
    addFact(facts, "Risk", said(option.risk), refOf(option.id));
    addIf(section, std::move(facts));
    const OptionCost cost = costOf(file, proposal, option.id);
    addLasting(section, file, option, !cost.lines.empty());
    if (cost.lines.empty()) {
        section.blocks.emplace_back(Statement{"No work is charged for this option."});
        return section;
    }
    section.blocks.emplace_back(report::priceTable(file, cost, proposal));
    if (cost.unpriced > 0) {
        section.blocks.emplace_back(Statement{fmt::format(
            "{} without a price.", counted(cost.unpriced, "line stands", "lines stand"))});
    }
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
    Section section{.key = "proposal_answer_signed", .title = "Your answer"};
    Table table{{{"", 1}, {"I choose", 7}, {"Not above, without asking me", 5}}, {}};
    for (const ProposalOption* option : optionsOf(file, proposal.id)) {
        const bool isWork = !linesOf(file, option->id).empty();
        table.rows.push_back(row({"☐", option->name.empty() ? "An option" : option->name,
                                  isWork ? report::kSignLine : ""},
                                 refOf(option->id)));
    }
    section.blocks.emplace_back(std::move(table));
    Facts facts;
    facts.facts.push_back({"Name", plain(report::kSignLine)});
    facts.facts.push_back({"By what right", plain(report::kSignLine)});
    facts.facts.push_back({"Date, signature", plain(report::kSignLine)});
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
                      .author = personName(file, proposal.who),
                      .letterhead = letterheadOf(file)};
    document.runningTitle = headingOf(file.item);
    document.sections.push_back(bookSection(file, proposal));
    for (const ProposalOption* option : optionsOf(file, proposal.id)) {
        document.sections.push_back(optionSection(file, proposal, *option));
    }
    document.sections.push_back(termsSection(file, proposal));
    document.sections.push_back(answerSection(file, proposal));
    return document;
}

} // namespace headcap::core
