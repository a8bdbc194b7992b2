#include <fmt/format.h>

#include "core/report/labels.h"
#include "core/report/sections.h"
#include "core/report/trade_words.h"
#include "core/report/writing.h"
#include "core/values/english.h"

namespace headcap::core::report {
namespace {

std::string tallyText(std::string_view one, std::string_view many, std::int64_t calledFor,
                      std::int64_t present) {
    if (calledFor == 0 && present == 0) {
        return "";
    }
    const auto some = [&](std::int64_t count) {
        return counted(static_cast<std::size_t>(count), one, many);
    };
    return calledFor == 0 ? some(present) + " present"
                          : fmt::format("{} called for, {} present", some(calledFor), present);
}

void addCollation(Section& section, const JobFile& file, const Collation& collation) {
    const RecordRef source = refOf(collation.id);
    const std::string part = placeIn(file, collation.part, "");
    if (!part.empty()) {
        section.blocks.emplace_back(Subheading{capitalised(part)});
    }
    Facts facts;
    addFact(facts, labels::kThisCopy,
            collation.statement.empty() ? "no statement is written" : collation.statement, source);
    addFact(facts, labels::kFormula, formulaText(collation.formula), source);
    addFact(facts, labels::kExtent, collation.extent, source);
    addFact(facts, labels::kAgainst, collation.authority, source);
    addFact(
        facts, labels::kTally,
        joined({tallyText("leaf", "leaves", collation.leavesCalledFor, collation.leavesPresent),
                tallyText("plate", "plates", collation.platesCalledFor, collation.platesPresent)}),
        source);
    addFact(facts, labels::kEstablished, collation.method, source);
    addFact(facts, labels::kNotLookedAt, collation.notExamined, source);
    addFact(facts, labels::kFinished,
            joined({collation.finishedOn ? dayText(*collation.finishedOn) : "not finished",
                    personName(file, collation.who)},
                   ", "),
            source);
    addIf(section, std::move(facts));
}

// "misnumbered, 12 for 21".
std::string foundText(const CollationFinding& finding) {
    const std::string expected = finding.expected.empty() ? "" : "for " + finding.expected;
    return joined({std::string{wordsFor(finding.kind)}, joined({finding.found, expected}, " ")},
                  ", ");
}

} // namespace

Section collationSection(const Context& at) {
    const JobFile& file = at.file;
    Section section{.key = "collation", .title = "Collation"};
    if (file.collations.empty()) {
        section.blocks.emplace_back(
            Statement{"The book was not collated: whether it is complete is not known."});
        // Of a book that nobody went through nothing is said to be in order.
        if (file.collationFindings.empty() && file.walks.empty() && file.plates.empty()) {
            return section;
        }
    }
    for (const Collation& collation : file.collations) {
        addCollation(section, file, collation);
    }
    addWalks(section, at);
    Table findings{{{"Leaves", 2}, {"Found", 4}, {"When", 2}, {"What was done", 4}}, {}};
    for (const CollationFinding& finding : file.collationFindings) {
        findings.rows.push_back(row(
            {placeIn(file, finding.part, finding.place), told({foundText(finding), finding.note}),
             finding.onArrival ? "on arrival" : "later",
             told({std::string{wordsFor(finding.decision)}, finding.decisionNote})},
            refOf(finding.id)));
    }
    section.blocks.emplace_back(Subheading{"Findings of the collation"});
    addOr(section, std::move(findings), "Nothing out of order was found in collating.");
    addOrder(section, at);
    addPlates(section, at);
    addOwnersWord(section, at);
    return section;
}

} // namespace headcap::core::report
