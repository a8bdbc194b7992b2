// Records of any kind, filled by chance, that a workshop takes: what they name is there.
#pragma once

#include <map>
#include <vector>

#include "core/record/stores.h"
#include "tests/support/random_record.h"

namespace headcap::test {

class ValidRecords {
public:
    ValidRecords(core::Stores stores, core::IdSource& ids, Chance& chance)
        : m_stores(stores), m_ids(ids), m_chance(chance) {}

    // Nothing where a kind that it must name has no record yet.
    std::optional<core::AnyRecord> make(core::RecordKind kind) {
        return fitted(randomOf(kind), m_ids.nextUuid());
    }
    // Another of the same kind under the same key.
    std::optional<core::AnyRecord> remake(const core::AnyRecord& record) {
        return fitted(randomOf(core::kindOf(record)), core::refOf(record).id);
    }

    std::optional<core::Found> any(core::RecordKind kind) {
        const auto all = m_stores.records.all(kind);
        return all.empty() ? std::nullopt : std::optional{all[index(all.size())]};
    }
    core::RecordKind anyKind() {
        return static_cast<core::RecordKind>(index(core::kRecordKindCount));
    }

private:
    std::size_t index(std::size_t size) {
        return static_cast<std::size_t>(m_chance.between(0, static_cast<std::int64_t>(size) - 1));
    }
    core::AnyRecord randomOf(core::RecordKind kind) {
        return oneOfEachKind(m_chance)[static_cast<std::size_t>(kind)];
    }

    std::optional<core::AnyRecord> fitted(const core::AnyRecord& record, const core::Uuid& id) {
        const core::RecordKind kind = core::kindOf(record);
        const auto& columns = core::columnsOf(kind);
        auto values = core::valuesOf(record);
        values[0] = id.text();
        for (std::size_t i = 1; i < columns.size(); ++i) {
            if (columns[i].references && !refer(columns[i], values[i])) {
                return std::nullopt;
            }
        }
        auto made = core::recordFrom(kind, values);
        if (!made) {
            return std::nullopt;
        }
        if (auto* attachment = std::get_if<core::Attachment>(&*made)) {
            const auto job = any(core::RecordKind::job);
            if (!job) {
                return std::nullopt;
            }
            attachment->subject = core::refOf(job->record);
        }
        return *std::move(made);
    }

    bool refer(const core::Column& column, core::ColumnValue& value) {
        const auto named = any(*column.references);
        if (named && (!column.mayBeNull || !std::holds_alternative<std::monostate>(value))) {
            value = core::refOf(named->record).id.text();
            return true;
        }
        value = std::monostate{};
        return column.mayBeNull;
    }

    core::Stores m_stores;
    core::IdSource& m_ids;
    Chance& m_chance;
};

} // namespace headcap::test
