#include "core/materials/trace.h"

#include <algorithm>
#include <set>
#include <tuple>

#include "core/materials/by_key.h"

namespace headcap::core {
namespace {

// Pairs of a lot and what was made from it, sorted, so that all that came of a lot stand together.
using Descent = std::vector<std::pair<const Lot*, const Lot*>>;

Descent descentOf(const Whereabouts& all, const ByKey<Lot>& lots) {
    Descent descent;
    descent.reserve(all.parts.size() + all.lots.size());
    const auto note = [&](const Lot* source, const Lot* made) {
        if (source != nullptr && made != nullptr && source != made) {
            descent.emplace_back(source, made);
        }
    };
    for (const LotPart& part : all.parts) {
        note(lots.find(part.source), lots.find(part.lot));
    }
    for (const Lot& lot : all.lots) {
        note(lots.find(lot.parent), &lot);
    }
    std::ranges::sort(descent);
    descent.erase(std::ranges::unique(descent).begin(), descent.end());
    return descent;
}

class Tracing {
public:
    Tracing(const Whereabouts& all, const ByKey<Lot>& lots, const Lot& from)
        : m_all(all), m_lots(lots), m_jobs(all.jobs), m_items(all.items), m_owners(all.owners),
          m_steps(all.steps) {
        m_trace.lot = &from;
    }

    LotTrace done() {
        reach();
        for (const MaterialUse& use : m_all.uses) {
            const Lot* lot = reached(use.lot);
            const Step* step = lot == nullptr ? nullptr : m_steps.find(use.step);
            if (step != nullptr && !step->struckAt) {
                addTo(use.job, [&](TracedJob& job) { job.uses.push_back({lot, &use, step}); });
            }
        }
        for (const Facsimile& leaf : m_all.facsimiles) {
            for (const auto& [id, isPrintedOn] :
                 {std::pair{leaf.printedOn, true}, std::pair{leaf.attachedWith, false}}) {
                if (const Lot* lot = reached(id)) {
                    addTo(leaf.job, [&, printed = isPrintedOn](TracedJob& job) {
                        job.leaves.push_back({lot, &leaf, printed});
                    });
                }
            }
        }
        const ByKey<Cutting> cuttings{m_all.cuttings};
        for (const CutPart& part : m_all.cutParts) {
            const Cutting* cutting = cuttings.find(part.cutting);
            const Lot* lot = reached(part.sheet);
            if (lot != nullptr && cutting != nullptr && cutting->job && !cutting->takenBackAt &&
                part.kind == CutPartKind::piece) {
                addTo(*cutting->job, [&](TracedJob& job) {
                    job.pieces.push_back({lot, cutting, &part});
                });
            }
        }
        for (auto& [job, traced] : m_traced) {
            std::ranges::stable_sort(traced.uses, {},
                                     [](const TracedUse& one) { return one.step->at; });
            m_trace.jobs.push_back(std::move(traced));
        }
        std::ranges::stable_sort(m_trace.jobs, {},
                                 [](const TracedJob& one) { return one.job->number; });
        return std::move(m_trace);
    }

private:
    // One ring of lots after the other.
    void reach() {
        const Descent descent = descentOf(m_all, m_lots);
        m_reached.insert(m_trace.lot);
        std::vector<const Lot*> ring{m_trace.lot};
        while (!ring.empty()) {
            std::vector<const Lot*> next;
            for (const Lot* source : ring) {
                for (auto at =
                         std::ranges::lower_bound(descent, source, {}, &Descent::value_type::first);
                     at != descent.end() && at->first == source; ++at) {
                    if (at->second != m_trace.lot) {
                        m_trace.madeFrom[at->second].push_back(source);
                    }
                    if (m_reached.insert(at->second).second) {
                        next.push_back(at->second);
                    }
                }
            }
            std::ranges::sort(next, {},
                              [](const Lot* lot) { return std::tie(lot->number, lot->id); });
            m_trace.lots.insert(m_trace.lots.end(), next.begin(), next.end());
            ring = std::move(next);
        }
        for (const Lot* lot : m_reached) {
            m_near.emplace_back(lot->id, lot);
        }
        std::ranges::sort(m_near, {}, &Near::first);
    }

    // Among the few that were reached, not among all there are.
    const Lot* reached(const std::optional<Id<Lot>>& id) const {
        if (!id) {
            return nullptr;
        }
        const auto at = std::ranges::lower_bound(m_near, *id, {}, &Near::first);
        return at == m_near.end() || at->first != *id ? nullptr : at->second;
    }

    template <class Add>
    void addTo(const Id<Job>& id, Add add) {
        const Job* job = m_jobs.find(id);
        if (job == nullptr) {
            return;
        }
        auto& traced = m_traced.try_emplace(job, TracedJob{.job = job}).first->second;
        if (traced.owner == nullptr) {
            traced.item = m_items.find(job->item);
            traced.owner = m_owners.find(job->owner);
            const Owner* now = traced.item == nullptr ? nullptr : m_owners.find(traced.item->owner);
            traced.ownerNow = now == traced.owner ? nullptr : now;
        }
        add(traced);
    }

    const Whereabouts& m_all;
    const ByKey<Lot>& m_lots;
    ByKey<Job> m_jobs;
    ByKey<Item> m_items;
    ByKey<Owner> m_owners;
    ByKey<Step> m_steps;
    using Near = std::pair<Id<Lot>, const Lot*>;
    std::set<const Lot*> m_reached;
    std::vector<Near> m_near;
    std::map<const Job*, TracedJob> m_traced;
    LotTrace m_trace;
};

// Only what is not there yet.
class Loading {
public:
    Loading(const RecordStore& store, Whereabouts& all) : m_store(store), m_all(all) {}

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
                m_all.parts.push_back(std::move(part.record));
            }
            for (const auto& offcut : allWith(m_store, &Lot::parent, lot)) {
                waiting.push_back(offcut.record.id);
            }
            for (auto& use : allWith(m_store, &MaterialUse::lot, lot)) {
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
    std::set<RecordRef> m_seen;
};

} // namespace

Whereabouts loadWhereabouts(const RecordStore& store, const Id<Lot>& lot) {
    Whereabouts all;
    Loading{store, all}.from(lot);
    all.techniques = loadTechniques(store);
    return all;
}

std::optional<LotTrace> traceLot(const Whereabouts& all, const Id<Lot>& lot) {
    const ByKey<Lot> lots{all.lots};
    const Lot* from = lots.find(lot);
    if (from == nullptr) {
        return std::nullopt;
    }
    LotTrace trace = Tracing{all, lots, *from}.done();
    trace.techniques = all.techniques;
    return trace;
}

std::vector<const Lot*> LotTrace::through(const Lot& used) const {
    std::set<const Lot*> on;
    std::vector<const Lot*> waiting{&used};
    while (!waiting.empty()) {
        const Lot* here = waiting.back();
        waiting.pop_back();
        if (here == lot || !on.insert(here).second) {
            continue;
        }
        if (const auto at = madeFrom.find(here); at != madeFrom.end()) {
            waiting.insert(waiting.end(), at->second.begin(), at->second.end());
        }
    }
    if (on.empty()) {
        return {};
    }
    std::vector<const Lot*> way;
    std::ranges::copy_if(lots, std::back_inserter(way),
                         [&](const Lot* one) { return one != &used && on.contains(one); });
    way.push_back(&used);
    return way;
}

} // namespace headcap::core
