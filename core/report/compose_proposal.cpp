#include "core/report/compose_proposal.h"

#include <algorithm>
#include <cctype>

#include <fmt/format.h>

#include "core/report/hazard_words.h"
#include "core/report/letterhead.h"
#include "core/report/sign_line.h"
#include "core/report/writing.h"
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

bool beginsSo(const std::string& text, const std::string& word) {
    return text.size() >= word.size() &&
           std::equal(word.begin(), word.end(), text.begin(), [](char a, char b) {
               return std::tolower(static_cast<unsigned char>(a)) ==
                      std::tolower(static_cast<unsigned char>(b));
           });
}

// The technique, unless the words begin with it, and what goes into the book with it.
std::vector<Run> lineRuns(const JobFile& file, const ProposalLine& line) {
    std::string name = capitalised(file.techniques.nameOf(line.technique));
    if (line.count > 1) {
        name = fmt::format("{} ({})", name, line.count);
    }
    std::vector<Run> runs =
        plain(told({beginsSo(line.description, name) ? "" : name, line.description}));
    if (!line.materials.empty()) {
        runs.push_back({" With " + sentence(line.materials), Run::Style::italic});
    }
    return runs;
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

// What stands in the columns of a cost table: an empty column is left out.
struct CostColumns {
    bool hasPlace = false;
    bool hasTime = false;
    bool hasMaterials = false; // at a price of their own
    bool hasTax = false;       // by line
    [[nodiscard]] bool hasSum() const { return hasMaterials || hasTax; }
};

CostColumns columnsOf(const OptionCost& cost, const Proposal& proposal) {
    CostColumns columns{.hasTax = proposal.taxPerLine && proposal.taxPpm != 0};
    for (const LineCost& one : cost.lines) {
        columns.hasPlace = columns.hasPlace || !one.line->place.empty();
        columns.hasTime = columns.hasTime || one.line->minutes > Minutes{0};
        columns.hasMaterials = columns.hasMaterials || one.materials.has_value();
    }
    return columns;
}

// A row of the money columns, with what stands before them.
TableRow moneyRow(const CostColumns& columns, std::vector<Run> what, std::string place,
                  std::string time, const std::vector<std::string>& sums) {
    TableRow made;
    made.cells.push_back(std::move(what));
    if (columns.hasPlace) {
        made.cells.push_back(plain(std::move(place)));
    }
    if (columns.hasTime) {
        made.cells.push_back(plain(std::move(time)));
    }
    const std::vector<bool> has{true, columns.hasMaterials, columns.hasTax, columns.hasSum()};
    for (std::size_t i = 0; i < sums.size(); ++i) {
        if (has[i]) {
            made.cells.push_back(plain(sums[i]));
        }
    }
    return made;
}

std::vector<Run> bold(std::string text) {
    return {Run{std::move(text), Run::Style::bold}};
}

// What the columns add up to, and what the whole comes to, in the last of them.
void addTotals(Table& table, const CostColumns& columns, const OptionCost& cost,
               const Proposal& proposal) {
    const auto last = [&](std::vector<Run> what, const Money& sum, bool isBold) {
        const std::string text = toText(sum);
        TableRow made = moneyRow(columns, std::move(what), "", "",
                                 columns.hasSum() ? std::vector<std::string>{"", "", "", text}
                                                  : std::vector<std::string>{text, "", "", ""});
        if (isBold) {
            made.cells.back() = bold(text);
        }
        table.rows.push_back(std::move(made));
    };
    for (const CostTotal& total : cost.totals) {
        if (columns.hasSum()) {
            table.rows.push_back(
                moneyRow(columns, plain("Together"), "", "",
                         {toText(total.work), toText(total.materials), toText(total.tax),
                          toText(columns.hasTax ? total.gross : total.net)}));
        } else if (proposal.taxPpm != 0) {
            last(plain("Before tax"), total.net, false);
        }
        if (proposal.taxPpm == 0) {
            last(bold("In all; no tax is added"), total.gross, true);
            continue;
        }
        if (!columns.hasTax) {
            last(plain(taxName(proposal) + ", on the total"), total.tax, false);
        }
        last(
            bold(columns.hasTax ? "In all, with its tax, rounded by line" : "In all, with its tax"),
            total.gross, true);
    }
}

Table costTable(const JobFile& file, const OptionCost& cost, const Proposal& proposal) {
    const CostColumns columns = columnsOf(cost, proposal);
    Table table{{{"What is done", 7}}, {}};
    const auto add = [&](bool isThere, std::string title, int weight, bool isRight) {
        if (isThere) {
            table.columns.push_back({std::move(title), weight, isRight});
        }
    };
    add(columns.hasPlace, "Place", 3, false);
    add(columns.hasTime, "Time", 2, true);
    add(true, columns.hasSum() ? "For the work" : "Price", 2, true);
    add(columns.hasMaterials, "For materials", 2, true);
    add(columns.hasTax, taxName(proposal), 2, true);
    add(columns.hasSum(), "In all", 2, true);
    for (const LineCost& one : cost.lines) {
        TableRow made =
            moneyRow(columns, lineRuns(file, *one.line), one.line->place,
                     one.line->minutes > Minutes{0} ? minutesText(one.line->minutes) : "",
                     {money(one.work), money(one.materials), money(one.tax),
                      money(columns.hasTax ? one.gross : one.net)});
        made.source = refOf(one.line->id);
        table.rows.push_back(std::move(made));
    }
    addTotals(table, columns, cost, proposal);
    return table;
}

// "Taking down (whole book); washing (A1–F2)".
std::string lastingText(const JobFile& file, const ProposalOption& option) {
    std::vector<std::string> lasting;
    for (const ProposalLine* line : irreversibleLines(file, option.id)) {
        const std::string name = file.techniques.nameOf(line->technique);
        lasting.push_back(line->place.empty() ? name : fmt::format("{} ({})", name, line->place));
    }
    return joined(lasting);
}

bool saysNothing(const std::string& text) {
    return text.empty() ||
           beginsSo("nothing", text.back() == '.' ? text.substr(0, text.size() - 1) : text);
}

// What can't be undone catches the eye; that all can be is said in plain words.
void addLasting(Section& section, const JobFile& file, const ProposalOption& option, bool isWork) {
    const std::string lasting = lastingText(file, option);
    const std::string said = saysNothing(option.irreversible) ? "" : sentence(option.irreversible);
    const std::string text =
        joined({said, lasting.empty()
                          ? ""
                          : sentence((said.empty() ? "By its nature: " : "Also by its nature: ") +
                                     lasting)},
               " ");
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
    section.blocks.emplace_back(costTable(file, cost, proposal));
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
        table.rows.push_back(row(
            {"☐", option->name.empty() ? "An option" : option->name, isWork ? "……………………………" : ""},
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
