#include "core/materials/trace.h"

#include <algorithm>
#include <set>
#include <tuple>

#include "core/materials/by_key.h"

namespace headcap::core {
namespace {

// Pairs of a lot and what was made from it, in the order of the first, so that all that came of a
// lot stand together. By key: of the lots themselves only those that are reached are looked up.
using Descent = std::vector<std::pair<Id<Lot>, Id<Lot>>>;

Descent descentOf(const Whereabouts& all) {
    Descent descent;
    descent.reserve(all.parts.size() + all.lots.size());
    for (const LotPart& part : all.parts) {
        descent.emplace_back(part.source, part.lot);
    }
    for (const Lot& lot : all.lots) {
        if (lot.parent) {
            descent.emplace_back(*lot.parent, lot.id);
        }
    }
    std::ranges::sort(descent);
    // std::ranges::unique gives what clang 14 can't read of this library.
    descent.erase(std::unique(descent.begin(), descent.end()), descent.end());
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
        const Descent descent = descentOf(m_all);
        m_reached.insert(m_trace.lot);
        std::vector<const Lot*> ring{m_trace.lot};
        while (!ring.empty()) {
            std::vector<const Lot*> next;
            for (const Lot* source : ring) {
                for (const Lot* made : madeFrom(descent, *source)) {
                    if (made != m_trace.lot) {
                        m_trace.madeFrom[made].push_back(source);
                    }
                    if (m_reached.insert(made).second) {
                        next.push_back(made);
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

    std::vector<const Lot*> madeFrom(const Descent& descent, const Lot& source) const {
        std::vector<const Lot*> made;
        for (auto at =
                 std::ranges::lower_bound(descent, source.id, {}, &Descent::value_type::first);
             at != descent.end() && at->first == source.id; ++at) {
            const Lot* lot = m_lots.find(at->second);
            if (lot != nullptr && lot != &source) {
                made.push_back(lot);
            }
        }
        return made;
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

} // namespace

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
