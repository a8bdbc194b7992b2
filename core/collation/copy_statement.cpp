#include "core/collation/copy_statement.h"

#include <algorithm>
#include <array>
#include <set>

#include <fmt/format.h>

#include "core/collation/collate.h"
#include "core/collation/finding_places.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

// What a finding comes to in a sentence; {} is the leaves.
constexpr std::array<std::string_view, 17> kSaid{"lacks {}",
                                                 "{} loose",
                                                 "{} detached",
                                                 "{} misbound",
                                                 "{} bound in twice",
                                                 "{} cancelled",
                                                 "{} inserted",
                                                 "{} supplied from another copy",
                                                 "{} in facsimile",
                                                 "{} misnumbered",
                                                 "{} missigned",
                                                 "{} torn with loss",
                                                 "{} torn",
                                                 "{} trimmed into the text",
                                                 "lacks the blank {}",
                                                 "{} a folded plate",
                                                 "{}"};

std::set<std::size_t> leavesOfKinds(const LaidBook& book, const CopyRecords& copy,
                                    std::initializer_list<CollationKind> kinds) {
    std::set<std::size_t> leaves;
    for (const CollationKind kind : kinds) {
        const auto some = leavesFound(book, copy.findings, kind);
        leaves.insert(some.begin(), some.end());
    }
    return leaves;
}

// A finding that says more than its kind stands by itself.
bool isPlain(const CollationFinding& finding) {
    return finding.found.empty() && finding.kind != CollationKind::other;
}

std::string detailOf(const CollationFinding& finding) {
    switch (finding.kind) {
    case CollationKind::misnumbered:
    case CollationKind::missigned:
        return finding.expected.empty()
                   ? " " + finding.found
                   : fmt::format(" {} for {}", finding.found, finding.expected);
    case CollationKind::misbound:
        return finding.expected.empty()
                   ? fmt::format(" ({})", finding.found)
                   : fmt::format(" ({}; belongs {})", finding.found, finding.expected);
    case CollationKind::other:
        return finding.note.empty() ? std::string{} : ": " + finding.note;
    default:
        return fmt::format(" ({})", finding.found);
    }
}

std::string said(CollationKind kind, const std::string& place) {
    return fmt::format(fmt::runtime(kSaid[static_cast<std::size_t>(kind)]),
                       place.empty() ? "a leaf" : place);
}

// Findings of one kind together, in the order of the kinds, which is that of their weight.
std::vector<std::string> departures(const LaidBook& book, const CopyRecords& copy) {
    std::vector<std::string> out;
    for (std::size_t at = 0; at < kSaid.size(); ++at) {
        const auto kind = static_cast<CollationKind>(at);
        std::vector<CollationFinding> plain;
        std::vector<std::string> unplaced;
        for (const CollationFinding& finding : copy.findings) {
            if (finding.kind != kind) {
                continue;
            }
            if (!isPlain(finding)) {
                out.push_back(said(kind, finding.place) + detailOf(finding));
            } else if (leavesAt(book, finding.place).empty()) {
                unplaced.push_back(said(kind, finding.place));
            } else {
                plain.push_back(finding);
            }
        }
        if (!plain.empty()) {
            out.push_back(said(kind, toText(toLeafSet(book, leavesFound(book, plain, kind)))));
        }
        out.insert(out.end(), unplaced.begin(), unplaced.end());
    }
    return out;
}

std::vector<WalkState> statesOf(const LaidBook& book, const CopyRecords& copy) {
    std::vector<WalkState> states;
    for (const Walk& walk : copy.walks) {
        if (walk.kind == WalkKind::againstMakeUp && walk.formula == copy.formula) {
            const auto entries = entriesOf(walk, copy.entries);
            states.push_back(stateOf(book, entries));
            for (LeafWalked& leaf : states.back().leaves) {
                leaf.read = nullptr; // the entries go
            }
        }
    }
    return states;
}

std::string nameOf(const CopyRecords& copy, const std::optional<Id<Person>>& who) {
    const auto found = std::ranges::find_if(
        copy.people, [&](const Person& person) { return who && person.id == *who; });
    return found == copy.people.end() ? std::string{} : found->name;
}

std::string daysOf(const std::vector<WalkEntry>& entries, const Walk& walk, const Clock& clock) {
    const Day first = clock.dayOf(walk.startedAt);
    const Day last = entries.empty() ? first : clock.dayOf(entries.back().at);
    return first == last ? dayText(first) : dayText(first) + " to " + dayText(last);
}

} // namespace

std::optional<int> CopyTally::leavesPresent() const {
    return leavesCalledFor ? std::optional{*leavesCalledFor - leavesLacking} : std::nullopt;
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
    for (const CalledPlate& plate : copy.plates) {
        ++tally.platesCalledFor;
        tally.platesPresent +=
            plate.presence == PlatePresence::present || plate.presence == PlatePresence::misplaced
                ? 1
                : 0;
        tally.platesLacking += plate.presence == PlatePresence::lacking ? 1 : 0;
        tally.platesSupplied += plate.presence == PlatePresence::supplied ? 1 : 0;
    }
    return tally;
}

std::string tallyText(const CopyTally& tally) {
    std::string text;
    if (tally.leavesCalledFor) {
        text =
            fmt::format("{} called for, {} present",
                        counted(static_cast<std::size_t>(*tally.leavesCalledFor), "leaf", "leaves"),
                        *tally.leavesPresent());
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
    }
    return text;
}

std::string statementOf(const CopyRecords& copy) {
    const CollateAnswer answer = collate({copy.formula, copy.extent, {}});
    const LaidBook book{answer.makeUp, answer.leaves, answer.numbers, {}};
    std::string text = answer.formula.empty() ? std::string{} : answer.formula + ". ";
    if (answer.format.ends_with('o') && !text.empty()) {
        text = answer.format.substr(0, answer.format.size() - 1) + "°: " + text;
    }
    std::string departs;
    for (const std::string& one : departures(book, copy)) {
        departs += (departs.empty() ? "" : "; ") + one;
    }
    const bool isThrough = !copy.walks.empty() && notExamined(copy).empty();
    if (departs.empty()) {
        departs = isThrough ? "nothing lacking or out of order" : "no departure found so far";
    }
    text += sentence(capitalised(departs));
    const std::string tally = tallyText(tallyOf(copy));
    return tally.empty() ? text : text + " " + sentence(tally);
}

std::string methodOf(const CopyRecords& copy, const Clock& clock) {
    std::string text;
    for (const Walk& walk : copy.walks) {
        const auto entries = entriesOf(walk, copy.entries);
        if (entries.empty()) {
            continue;
        }
        const std::string who = nameOf(copy, walk.who);
        text += text.empty() ? "" : " ";
        text += fmt::format("Gone through{}{}, {}", who.empty() ? "" : " by ", who,
                            daysOf(entries, walk, clock));
        if (walk.kind == WalkKind::inferring) {
            text += fmt::format(": {} read as they are bound, the make-up inferred.",
                                counted(entries.size(), "leaf", "leaves"));
            continue;
        }
        const WalkedBook walked = walkedBook(walk.formula, walk.extent);
        const WalkState state = stateOf(walked.book, entries);
        text +=
            ": " + coverageText(walked.book, coverageOf({state}, walked.book.leaves.size())) + ".";
    }
    return text;
}

std::string notExamined(const CopyRecords& copy) {
    const WalkedBook walked = walkedBook(copy.formula, copy.extent);
    const auto missed =
        coverageOf(statesOf(walked.book, copy), walked.book.leaves.size()).notLooked;
    std::string text = missed.empty() ? std::string{} : toText(toLeafSet(walked.book, missed));
    const auto plates =
        std::ranges::count(copy.plates, PlatePresence::notLookedFor, &CalledPlate::presence);
    if (plates > 0) {
        text += text.empty() ? "" : ", ";
        text += counted(static_cast<std::size_t>(plates), "plate", "plates");
    }
    return text;
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
    std::vector<std::string> said = departures(walked.book, grave);
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
