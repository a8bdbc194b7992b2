#include "core/collation/copy_statement.h"

#include <algorithm>

#include "core/collation/bound_order.h"
#include "core/collation/collate.h"
#include "core/collation/finding_words.h"
#include "core/collation/format_name.h"
#include "core/values/english.h"

namespace headcap::core {

std::string statementOf(const CopyRecords& copy) {
    const CollateAnswer answer = collate({copy.formula, copy.extent, {}});
    const LaidBook book{answer.makeUp, answer.leaves, answer.numbers, {}};
    std::string text = answer.formula.empty() ? std::string{} : answer.formula + ". ";
    if (answer.format.ends_with('o') && !text.empty()) {
        text = formatText(answer.format) + ": " + text;
    }
    std::string departs;
    for (const std::string& one : departuresOf(book, copy.findings)) {
        departs += (departs.empty() ? "" : "; ") + one;
    }
    const LookedAt looked = lookedAt(copy);
    if (departs.empty()) {
        const bool isThrough = looked == LookedAt::whole && notExamined(copy).empty();
        departs = isThrough                      ? "nothing lacking or out of order"
                  : looked == LookedAt::notAtAll ? "not gone through"
                                                 : "no departure found so far";
    }
    text += sentence(capitalised(departs));
    if (looked == LookedAt::inPart) {
        text += " Not looked at: " + sentence(notExamined(copy));
    }
    if (const std::string moves = sentenceOf(book, movesFor(book, copy.findings)); !moves.empty()) {
        text += " " + moves;
    }
    const std::string tally = tallyText(tallyOf(copy));
    return tally.empty() ? text : text + " " + sentence(tally);
}

std::string wordToOwner(const CopyRecords& copy) {
    CopyRecords grave = copy;
    std::erase_if(grave.findings, [](const CollationFinding& finding) {
        const bool isGrave =
            finding.kind == CollationKind::lacking || finding.kind == CollationKind::tornWithLoss ||
            finding.kind == CollationKind::blankLacking ||
            finding.kind == CollationKind::supplied || finding.kind == CollationKind::facsimile ||
            finding.kind == CollationKind::misbound;
        return !finding.onArrival || !isGrave;
    });
    const WalkedBook walked = walkedBook(copy.formula, copy.extent);
    std::vector<std::string> said = departuresOf(walked.book, grave.findings);
    for (const CalledPlate& plate : copy.plates) {
        if (plate.presence == PlatePresence::lacking) {
            said.push_back("the plate " + plate.name + " is lacking");
        }
    }
    std::string text;
    for (const std::string& one : said) {
        text += (text.empty() ? "" : "; ") + one;
    }
    return text.empty() ? text
                        : sentence("Collated as it came, before anything was taken down, this "
                                   "copy shows: " +
                                   text);
}

} // namespace headcap::core
