// Records found by their key in the time of a binary search, whatever order they come in: where
// they come in order, as a store gives them, nothing is made; else an index, at the first that is
// not found. Points into the records it was made from.
#pragma once

#include <algorithm>
#include <optional>
#include <vector>

#include "core/values/id.h"

namespace headcap::core {

template <class Record>
class ByKey {
public:
    explicit ByKey(const std::vector<Record>& records) : m_records(&records) {}

    [[nodiscard]] const Record* find(const Id<Record>& id) const {
        if (!m_index.empty()) {
            return findIndexed(id);
        }
        // What a search finds is there, in order or not.
        const auto at = std::ranges::lower_bound(*m_records, id, {}, &Record::id);
        if (at != m_records->end() && at->id == id) {
            return &*at;
        }
        if (m_isInOrder) {
            return nullptr;
        }
        m_isInOrder = std::ranges::is_sorted(*m_records, {}, &Record::id);
        return m_isInOrder ? nullptr : findIndexed(id);
    }
    [[nodiscard]] const Record* find(const std::optional<Id<Record>>& id) const {
        return id ? find(*id) : nullptr;
    }

private:
    const Record* findIndexed(const Id<Record>& id) const {
        if (m_index.empty()) {
            for (const Record& record : *m_records) {
                m_index.push_back(&record);
            }
            std::ranges::sort(m_index, {}, keyOf);
        }
        const auto at = std::ranges::lower_bound(m_index, id, {}, keyOf);
        return at == m_index.end() || (*at)->id != id ? nullptr : *at;
    }
    static const Id<Record>& keyOf(const Record* record) { return record->id; }

    const std::vector<Record>* m_records;
    mutable std::vector<const Record*> m_index;
    mutable bool m_isInOrder = false;
};

} // namespace headcap::core
