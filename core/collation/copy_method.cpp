#include "core/collation/copy_statement.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/values/english.h"

namespace headcap::core {
namespace {

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

} // namespace

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

std::string methodBeside(const std::string& typed, const std::string& written) {
    if (typed.empty() || written.starts_with(typed)) {
        return written;
    }
    return typed.find(written) != typed.npos ? typed : typed + " " + written;
}

LookedAt lookedAt(const CopyRecords& copy) {
    if (copy.walks.empty()) {
        return copy.findings.empty() ? LookedAt::notAtAll : LookedAt::whole;
    }
    const WalkedBook walked = walkedBook(copy.formula, copy.extent);
    const std::size_t leaves = walked.book.leaves.size();
    const std::size_t missed = coverageOf(statesOf(walked.book, copy), leaves).notLooked.size();
    return missed == 0 ? LookedAt::whole : missed < leaves ? LookedAt::inPart : LookedAt::notAtAll;
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

} // namespace headcap::core
