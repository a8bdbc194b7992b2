// Sums by key over the ledger, and the laws of cut sheets among its laws. Inside of ledger_laws.
#pragma once

#include <cstdint>
#include <limits>
#include <map>
#include <vector>

#include "core/materials/ledger_laws.h"

namespace headcap::core {

// Beyond counting it stays at the last that can be counted, and so never looks balanced.
template <class Key>
void addTo(std::map<Key, std::int64_t>& sums, const Key& key, std::int64_t count) {
    std::int64_t& sum = sums[key];
    if (__builtin_add_overflow(sum, count, &sum)) {
        sum = count < 0 ? std::numeric_limits<std::int64_t>::min() + 1
                        : std::numeric_limits<std::int64_t>::max();
    }
}

template <class Key>
[[nodiscard]] std::int64_t valueOf(const std::map<Key, std::int64_t>& sums, const Key& key) {
    const auto at = sums.find(key);
    return at == sums.end() ? 0 : at->second;
}

// What cuttings say against the sheets and against what the ledger says was cut of each lot.
[[nodiscard]] std::vector<LedgerBreach> cuttingBreaches(const LedgerBook& book,
                                                        const std::map<Id<Lot>, std::int64_t>& cut);

} // namespace headcap::core
