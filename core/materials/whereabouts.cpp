// What a lot reaches, found in the store by what names it.
#include <algorithm>
#include <set>

#include "core/materials/trace.h"

namespace headcap::core {
namespace {

// Only what is not there yet.
class Loading {
public:
    Loading(const RecordStore& store, Whereabouts& all, std::optional<std::size_t> mostUses)
        : m_store(store), m_all(all), m_mostUses(mostUses) {}

    void from(const Id<Lot>& id) {
        std::vector<Id<Lot>> waiting{id};
        while (!waiting.empty()) {
            const Id<Lot> lot = waiting.back();
            waiting.pop_back();
            if (!one(m_all.lots, lot)) {
                continue;
            }
            one(m_all.materials, m_all.lots.back().material);
            for (auto& part : allWith(m_store, &LotPart::source, lot)) {
                waiting.push_back(part.record.lot);
                m_all.parts.push_back(part.record);
            }
            for (const auto& offcut : allWith(m_store, &Lot::parent, lot)) {
                waiting.push_back(offcut.record.id);
            }
            for (auto& use : usesOf(lot)) {
                one(m_all.steps, use.record.step);
                jobOf(use.record.job);
                m_all.uses.push_back(std::move(use.record));
            }
            for (auto& part : allWith(m_store, &CutPart::sheet, lot)) {
                if (one(m_all.cuttings, part.record.cutting) && m_all.cuttings.back().job) {
                    jobOf(*m_all.cuttings.back().job);
                }
                m_all.cutParts.push_back(std::move(part.record));
            }
            leaves(&Facsimile::printedOn, lot);
            leaves(&Facsimile::attachedWith, lot);
        }
    }

private:
    template <class Record>
    bool one(std::vector<Record>& records, const Id<Record>& id) {
        if (!m_seen.insert(refOf(id)).second) {
            return false;
        }
        auto found = find(m_store, id);
        if (found) {
            records.push_back(std::move(found->record));
        }
        return found.has_value();
    }

    // In the order of their making.
    std::vector<Stored<MaterialUse>> usesOf(const Id<Lot>& lot) {
        if (!m_mostUses) {
            return allWith(m_store, &MaterialUse::lot, lot);
        }
        auto newest = typed<MaterialUse>(m_store.newestWith(
            RecordKind::materialUse, fieldName(&MaterialUse::lot), lot.text(), *m_mostUses));
        m_all.hasMoreUses = m_all.hasMoreUses || newest.size() == *m_mostUses;
        std::ranges::reverse(newest);
        return newest;
    }

    void leaves(std::optional<Id<Lot>> Facsimile::*member, const Id<Lot>& lot) {
        for (auto& leaf : allWith(m_store, member, lot)) {
            jobOf(leaf.record.job);
            if (m_seen.insert(refOf(leaf.record.id)).second) {
                m_all.facsimiles.push_back(std::move(leaf.record));
            }
        }
    }

    void jobOf(const Id<Job>& id) {
        if (!one(m_all.jobs, id)) {
            return;
        }
        const Job& job = m_all.jobs.back();
        one(m_all.owners, job.owner);
        if (one(m_all.items, job.item)) {
            one(m_all.owners, m_all.items.back().owner);
        }
    }

    const RecordStore& m_store;
    Whereabouts& m_all;
    std::optional<std::size_t> m_mostUses;
    std::set<RecordRef> m_seen;
};

} // namespace

Whereabouts loadWhereabouts(const RecordStore& store, const Id<Lot>& lot,
                            std::optional<std::size_t> mostUses) {
    Whereabouts all;
    Loading{store, all, mostUses}.from(lot);
    all.techniques = loadTechniques(store);
    return all;
}

} // namespace headcap::core
