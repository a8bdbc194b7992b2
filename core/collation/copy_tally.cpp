#include "core/collation/copy_statement.h"

#include <algorithm>
#include <set>

#include <fmt/format.h>

#include "core/collation/collate.h"
#include "core/collation/finding_places.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

std::set<std::size_t> leavesOfKinds(const LaidBook& book, const CopyRecords& copy,
                                    std::initializer_list<CollationKind> kinds) {
    std::set<std::size_t> leaves;
    for (const CollationKind kind : kinds) {
        const auto some = leavesFound(book, copy.findings, kind);
        leaves.insert(some.begin(), some.end());
    }
    return leaves;
}

} // namespace

std::optional<int> CopyTally::leavesPresent() const {
    return leavesCalledFor && arePresentKnown ? std::optional{*leavesCalledFor - leavesLacking}
                                              : std::nullopt;
}

CopyTally tallyOf(const CopyRecords& copy) {
    const CollateAnswer answer = collate({copy.formula, copy.extent, {}});
    const LaidBook book{answer.makeUp, answer.leaves, answer.numbers, {}};
    CopyTally tally;
    tally.leavesCalledFor = copy.formula.empty() ? std::nullopt : answer.leafTotal;
    auto lacking = leavesOfKinds(book, copy, {CollationKind::lacking, CollationKind::blankLacking});
    for (std::size_t i = 0; i < book.leaves.size(); ++i) {
        if (book.leaves[i].lacking) {
            lacking.insert(i);
        }
    }
    auto supplied = leavesOfKinds(book, copy, {CollationKind::supplied, CollationKind::facsimile});
    for (const Facsimile& leaf : copy.facsimiles) {
        const auto some = leavesAt(book, leaf.place);
        supplied.insert(some.begin(), some.end());
    }
    tally.leavesLacking = static_cast<int>(lacking.size());
    tally.leavesSupplied = static_cast<int>(supplied.size());
    tally.arePresentKnown = lookedAt(copy) == LookedAt::whole;
    for (const CalledPlate& plate : copy.plates) {
        ++tally.platesCalledFor;
        tally.platesPresent +=
            plate.presence == PlatePresence::present || plate.presence == PlatePresence::misplaced
                ? 1
                : 0;
        tally.platesLacking += plate.presence == PlatePresence::lacking ? 1 : 0;
        tally.platesSupplied += plate.presence == PlatePresence::supplied ? 1 : 0;
        tally.platesNotLookedFor += plate.presence == PlatePresence::notLookedFor ? 1 : 0;
    }
    return tally;
}

std::string tallyText(const CopyTally& tally) {
    std::string text;
    if (tally.leavesCalledFor) {
        text = counted(static_cast<std::size_t>(*tally.leavesCalledFor), "leaf", "leaves") +
               " called for";
        text += tally.arePresentKnown ? fmt::format(", {} present", *tally.leavesPresent()) : "";
        text += tally.leavesLacking > 0 ? fmt::format(", {} lacking", tally.leavesLacking) : "";
        text += tally.leavesSupplied > 0 ? fmt::format(", {} supplied", tally.leavesSupplied) : "";
    }
    if (tally.platesCalledFor > 0) {
        text += text.empty() ? "" : "; ";
        text +=
            fmt::format("{} called for, {} present",
                        counted(static_cast<std::size_t>(tally.platesCalledFor), "plate", "plates"),
                        tally.platesPresent);
        text += tally.platesLacking > 0 ? fmt::format(", {} lacking", tally.platesLacking) : "";
        text += tally.platesSupplied > 0 ? fmt::format(", {} supplied", tally.platesSupplied) : "";
        text += tally.platesNotLookedFor > 0
                    ? fmt::format(", {} not looked for", tally.platesNotLookedFor)
                    : "";
    }
    return text;
}

} // namespace headcap::core
