#include "core/record/contrary.h"

#include <algorithm>
#include <set>

#include "core/values/contract.h"

namespace headcap::core {
namespace {

constexpr const char* kTakenBack = "Taken back";

bool wasAdded(const JournalRecord& record) {
    return !record.before && record.after;
}

bool adds(const JournalEntry& entry, const RecordRef& ref) {
    return std::any_of(
        entry.records.begin(), entry.records.end(),
        [&](const JournalRecord& record) { return record.ref == ref && wasAdded(record); });
}

bool isPermanent(const RecordRef& ref) {
    return permanenceOf(ref.kind) == Permanence::permanent;
}

bool sends(const JournalRecord& record) {
    const auto* after = record.after ? std::get_if<Proposal>(&*record.after) : nullptr;
    const auto* before = record.before ? std::get_if<Proposal>(&*record.before) : nullptr;
    return after != nullptr && after->sentOn && (before == nullptr || !before->sentOn);
}

std::vector<Write> one(Write::What what, AnyRecord record) {
    std::vector<Write> writes;
    writes.push_back({what, std::move(record), {}});
    return writes;
}

std::vector<Write> contrary(const Step& step, const TakingBack& taking) {
    if (step.struckAt) {
        return {};
    }
    Step struck = step;
    struck.struckAt = taking.at;
    struck.struckBy = taking.who;
    struck.struckWhy = kTakenBack;
    return one(Write::What::update, struck);
}

std::vector<Write> contrary(const Cutting& cutting, const TakingBack& taking) {
    if (cutting.takenBackAt) {
        return {};
    }
    Cutting back = cutting;
    back.takenBackAt = taking.at;
    back.takenBackBy = taking.who;
    return one(Write::What::update, back);
}

std::vector<Write> contrary(const LedgerEntry& entry, const TakingBack& taking, IdSource& keys) {
    return one(Write::What::add, LedgerEntry{.id = keys.next<LedgerEntry>(),
                                             .lot = entry.lot,
                                             .at = taking.at,
                                             .who = taking.who,
                                             .kind = LedgerKind::contrary,
                                             .amount = entry.amount.negated(),
                                             .use = entry.use,
                                             .contraryOf = entry.id,
                                             .note = kTakenBack});
}

std::vector<Write> contrary(const StateChange& change, const TakingBack& taking, IdSource& keys) {
    return one(Write::What::add, StateChange{.id = keys.next<StateChange>(),
                                             .job = change.job,
                                             .fromState = change.toState,
                                             .toState = change.fromState,
                                             .at = taking.at,
                                             .who = taking.who,
                                             .why = kTakenBack});
}

std::vector<Write> contrary(const CustodyMove& move, const TakingBack& taking, IdSource& keys) {
    return one(Write::What::add, CustodyMove{.id = keys.next<CustodyMove>(),
                                             .job = move.job,
                                             .at = taking.at,
                                             .who = taking.who,
                                             .fromPlace = move.toPlace,
                                             .toPlace = move.fromPlace,
                                             .why = kTakenBack});
}

} // namespace

std::optional<Refusal> whyNotTakenBack(const JournalEntry& entry) {
    for (const JournalRecord& record : entry.records) {
        if (record.ref.kind == RecordKind::issuedReport) {
            return Refusal{Refusal::Code::cannotUndo, record.ref,
                           "a report that was issued stays issued"};
        }
        if (sends(record)) {
            return Refusal{Refusal::Code::cannotUndo, record.ref,
                           "a proposal that was sent stays sent"};
        }
        const auto* use = record.after ? std::get_if<MaterialUse>(&*record.after) : nullptr;
        if (use != nullptr && !adds(entry, refOf(use->step))) {
            return Refusal{Refusal::Code::cannotUndo, record.ref,
                           "a use of material stays in the log; strike its step instead"};
        }
    }
    return std::nullopt;
}

std::vector<Write> contraryOf(const AnyRecord& record, const JournalEntry& entry,
                              const TakingBack& taking, IdSource& keys) {
    HEADCAP_CONTRACT(isPermanent(refOf(record)));
    if (const auto* step = std::get_if<Step>(&record)) {
        return contrary(*step, taking);
    }
    if (const auto* cutting = std::get_if<Cutting>(&record)) {
        return contrary(*cutting, taking);
    }
    if (const auto* line = std::get_if<LedgerEntry>(&record)) {
        return contrary(*line, taking, keys);
    }
    if (const auto* change = std::get_if<StateChange>(&record)) {
        // A job made in the same entry is withdrawn, which says it all.
        return adds(entry, refOf(change->job)) ? std::vector<Write>{}
                                               : contrary(*change, taking, keys);
    }
    if (const auto* move = std::get_if<CustodyMove>(&record)) {
        return contrary(*move, taking, keys);
    }
    return {};
}

std::vector<RecordRef> heldByPermanent(const JournalEntry& entry) {
    std::set<RecordRef> held;
    std::vector<const AnyRecord*> waiting;
    for (const JournalRecord& record : entry.records) {
        if (wasAdded(record) && isPermanent(record.ref)) {
            waiting.push_back(&*record.after);
        }
    }
    while (!waiting.empty()) {
        const AnyRecord* holder = waiting.back();
        waiting.pop_back();
        const auto named = referencesOf(*holder);
        for (const JournalRecord& record : entry.records) {
            const bool isNamed = std::find(named.begin(), named.end(), record.ref) != named.end();
            if (isNamed && wasAdded(record) && !isPermanent(record.ref) &&
                held.insert(record.ref).second) {
                waiting.push_back(&*record.after);
            }
        }
    }
    return {held.begin(), held.end()};
}

std::vector<Write> insteadOfRemoval(const AnyRecord& record, const TakingBack& taking,
                                    IdSource& keys) {
    if (const auto* lot = std::get_if<Lot>(&record); lot != nullptr && !lot->finished) {
        Lot finished = *lot;
        finished.finished = true;
        return one(Write::What::update, finished);
    }
    if (const auto* job = std::get_if<Job>(&record);
        job != nullptr && job->state != JobState::withdrawn) {
        Job withdrawn = *job;
        withdrawn.state = JobState::withdrawn;
        auto writes = one(Write::What::update, withdrawn);
        writes.push_back({Write::What::add,
                          StateChange{.id = keys.next<StateChange>(),
                                      .job = job->id,
                                      .fromState = job->state,
                                      .toState = JobState::withdrawn,
                                      .at = taking.at,
                                      .who = taking.who,
                                      .why = kTakenBack},
                          {}});
        return writes;
    }
    return {};
}

std::optional<AnyRecord> fieldsPutBack(const AnyRecord& now, const AnyRecord& before,
                                       const AnyRecord& after) {
    auto values = valuesOf(now);
    const auto were = valuesOf(before);
    const auto became = valuesOf(after);
    HEADCAP_CONTRACT(values.size() == were.size() && were.size() == became.size());
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (were[i] == became[i]) {
            continue;
        }
        if (values[i] != became[i]) {
            return std::nullopt;
        }
        values[i] = were[i];
    }
    auto back = recordFrom(kindOf(now), values);
    return back ? std::optional{*std::move(back)} : std::nullopt;
}

} // namespace headcap::core
