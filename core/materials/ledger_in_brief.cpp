#include "core/materials/ledger_in_brief.h"

#include <algorithm>
#include <limits>

namespace headcap::core {
namespace {

// One amount, or two that add up to nothing that can be counted.
std::vector<std::int64_t> amountsOf(const LedgerInBrief::Sum& sum) {
    std::int64_t whole = 0;
    if (!__builtin_mul_overflow(sum.millions, LedgerInBrief::kMillion, &whole) &&
        !__builtin_add_overflow(whole, sum.rest, &whole)) {
        return {whole};
    }
    using Limits = std::numeric_limits<std::int64_t>;
    const std::int64_t beyond = sum.millions > 0 ? Limits::max() : Limits::min();
    return {beyond, beyond};
}

} // namespace

void LedgerInBrief::add(const LedgerEntry& entry) {
    add({entry.lot, entry.kind, entry.amount.unit, entry.amount.count > 0},
        {entry.id, entry.at, entry.amount.count / kMillion, entry.amount.count % kMillion});
}

void LedgerInBrief::add(const Group& group, const Sum& sum) {
    const auto [at, isNew] = m_sums.try_emplace(group, sum);
    if (!isNew) {
        Sum& known = at->second;
        known.last = std::max(known.last, sum.last);
        known.at = std::max(known.at, sum.at);
        known.millions += sum.millions;
        known.rest += sum.rest;
    }
}

void LedgerInBrief::forget(const Id<Lot>& lot) {
    std::erase_if(m_sums, [&](const auto& one) { return one.first.lot == lot; });
}

std::vector<LedgerEntry> LedgerInBrief::lines() const {
    std::vector<LedgerEntry> lines;
    lines.reserve(m_sums.size());
    for (const auto& [group, sum] : m_sums) {
        for (const std::int64_t amount : amountsOf(sum)) {
            lines.push_back({.id = sum.last,
                             .lot = group.lot,
                             .at = sum.at,
                             .kind = group.kind,
                             .amount = {amount, group.unit}});
        }
    }
    return lines;
}

std::vector<LedgerEntry> inBrief(const std::vector<LedgerEntry>& whole) {
    LedgerInBrief brief;
    for (const LedgerEntry& entry : whole) {
        brief.add(entry);
    }
    return brief.lines();
}

std::shared_ptr<const Shelf> shelfInBrief(const RecordStore& store) {
    if (const auto* brief = dynamic_cast<const BriefStore*>(&store)) {
        return brief->shelfInBrief();
    }
    auto shelf = std::make_shared<Shelf>(loadShelf(store));
    shelf->ledger = inBrief(shelf->ledger);
    return shelf;
}

} // namespace headcap::core
