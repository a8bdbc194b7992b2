#include "db/sqlite/apply_change.h"

#include <algorithm>

namespace headcap::db {
namespace {

using core::Refusal;
using core::Write;

tl::unexpected<Refusal> refuse(Refusal::Code code, const core::RecordRef& ref,
                               std::string detail = {}) {
    return tl::unexpected(Refusal{code, ref, std::move(detail)});
}

bool isStriking(const core::AnyRecord& before, const core::AnyRecord& after) {
    const auto* was = std::get_if<core::Step>(&before);
    const auto* is = std::get_if<core::Step>(&after);
    if (was == nullptr || is == nullptr || was->struckAt || !is->struckAt) {
        return false;
    }
    core::Step unstruck = *is;
    unstruck.struckAt = was->struckAt;
    unstruck.struckBy = was->struckBy;
    unstruck.struckWhy = was->struckWhy;
    return unstruck == *was;
}

enum class Verdict { write, alreadySo };

tl::expected<Verdict, Refusal> judge(const Write& write, const std::optional<core::Found>& found) {
    const core::RecordRef ref = core::refOf(write.record);
    if (write.what == Write::What::add) {
        if (!found) {
            return Verdict::write;
        }
        if (found->record == write.record) {
            return Verdict::alreadySo;
        }
        return refuse(Refusal::Code::keyTaken, ref, "another record has its key");
    }
    if (!found) {
        return refuse(Refusal::Code::missing, ref);
    }
    if (write.what == Write::What::remove) {
        if (core::permanenceOf(ref.kind) == core::Permanence::permanent) {
            return refuse(Refusal::Code::neverDeleted, ref);
        }
    } else if (found->record == write.record) {
        return Verdict::alreadySo;
    }
    if (found->revision != write.read) {
        return refuse(Refusal::Code::changedSince, ref,
                      "it was changed by entry " + std::to_string(found->revision.sequence) +
                          " of the journal, and had been read at entry " +
                          std::to_string(write.read.sequence));
    }
    if (write.what == Write::What::update && !mayBecome(found->record, write.record)) {
        return refuse(Refusal::Code::neverChanged, ref);
    }
    return Verdict::write;
}

} // namespace

bool mayBecome(const core::AnyRecord& before, const core::AnyRecord& after) {
    return core::permanenceOf(core::kindOf(before)) != core::Permanence::permanent ||
           isStriking(before, after);
}

tl::expected<Applied, Refusal> applyChange(RecordedTransaction& transaction,
                                           const core::Change& change, core::Instant now) {
    core::Revision latest;
    for (const Write& write : change.writes) {
        const auto found = transaction.find(core::refOf(write.record));
        const auto verdict = judge(write, found);
        if (!verdict) {
            return tl::unexpected(verdict.error());
        }
        if (*verdict == Verdict::alreadySo) {
            latest = std::max(latest, found->revision);
            continue;
        }
        if (auto done = transaction.write(write.what, write.record, found); !done) {
            return tl::unexpected(done.error());
        }
    }
    if (auto named = transaction.checkNames(); !named) {
        return tl::unexpected(named.error());
    }
    if (transaction.isEmpty()) {
        return Applied{std::nullopt, latest};
    }
    auto entry = transaction.commit({.at = now, .who = change.who, .sentence = change.sentence});
    if (!entry) {
        return tl::unexpected(entry.error());
    }
    const core::Revision revision{entry->sequence};
    return Applied{*std::move(entry), revision};
}

} // namespace headcap::db
