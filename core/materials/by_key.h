// Records found by their key in the time of a binary search, whatever order they come in. Points
// into the records it was made from.
#pragma once

#include <algorithm>
#include <optional>
#include <vector>

#include "core/values/id.h"

namespace headcap::core {

template <class Record>
class ByKey {
public:
    explicit ByKey(const std::vector<Record>& records) {
        m_records.reserve(records.size());
        for (const Record& record : records) {
            m_records.push_back(&record);
        }
        if (!std::ranges::is_sorted(m_records, {}, keyOf)) {
            std::ranges::sort(m_records, {}, keyOf);
        }
    }

    [[nodiscard]] const Record* find(const Id<Record>& id) const {
        const auto at = std::ranges::lower_bound(m_records, id, {}, keyOf);
        return at == m_records.end() || (*at)->id != id ? nullptr : *at;
    }
    [[nodiscard]] const Record* find(const std::optional<Id<Record>>& id) const {
        return id ? find(*id) : nullptr;
    }

private:
    static const Id<Record>& keyOf(const Record* record) { return record->id; }
    std::vector<const Record*> m_records;
};

} // namespace headcap::core
