#include "core/materials/job_materials.h"

#include <algorithm>

#include "core/materials/conversion.h"
#include "core/materials/ledger.h"
#include "core/materials/shelf.h"

namespace headcap::core {
namespace {

class Gathering {
public:
    Gathering(const JobFile& file, const Clock& clock) : m_file(file), m_clock(clock) {}

    void add(const MaterialUse& use) {
        const Step* step = m_file.step(use.step);
        if (step == nullptr || step->struckAt) {
            return;
        }
        JobMaterial& material = entryOf(use.lot, use.material);
        material.uses.push_back(
            {.use = &use,
             .step = step,
             .ageThen = material.lot == nullptr
                            ? LotAge::keeps
                            : ageOf(*material.lot, material.kind, m_clock.dayOf(step->at)),
             .place = use.place.empty() ? step->place : use.place,
             .removal = use.removal.empty() ? step->undoing : use.removal});
    }

    void add(const Facsimile& leaf) {
        if (leaf.printedOn) {
            entryOf(leaf.printedOn, {}).facsimiles.push_back({&leaf, true, false});
        }
        if (leaf.attachedWith && leaf.attachedWith == leaf.printedOn) {
            entryOf(leaf.attachedWith, {}).facsimiles.back().isAttachedWith = true;
        } else if (leaf.attachedWith) {
            entryOf(leaf.attachedWith, {}).facsimiles.push_back({&leaf, false, true});
        }
    }

    std::vector<JobMaterial> done() {
        for (JobMaterial& material : m_all) {
            std::ranges::stable_sort(material.uses, {},
                                     [](const MaterialInStep& one) { return one.step->at; });
            material.used = sumOf(material);
        }
        std::ranges::stable_sort(m_all, [](const JobMaterial& a, const JobMaterial& b) {
            if ((a.lot == nullptr) != (b.lot == nullptr)) {
                return a.lot != nullptr;
            }
            return a.lot == nullptr ? a.name < b.name : a.lot->number < b.lot->number;
        });
        return std::move(m_all);
    }

private:
    JobMaterial& entryOf(const std::optional<Id<Lot>>& id, const std::string& words) {
        const Lot* lot = m_file.lot(id);
        const auto known = std::ranges::find_if(m_all, [&](const JobMaterial& one) {
            return one.lot == lot && (lot != nullptr || one.name == words);
        });
        if (known != m_all.end()) {
            return *known;
        }
        JobMaterial made{.lot = lot, .name = words};
        if (lot != nullptr) {
            made.kind = m_file.material(lot->material);
            made.name = lotName(*lot, made.kind);
            made.balance = made.kind == nullptr
                               ? std::nullopt
                               : balanceOf(lot->id, made.kind->unit, m_file.ledger);
            made.goodUntil = goodUntilOf(*lot, made.kind);
            made.ageNow = ageOf(*lot, made.kind, m_clock.today());
        }
        return m_all.emplace_back(std::move(made));
    }

    // In the unit of the lot; without one, in that of the uses.
    static std::optional<Amount> sumOf(const JobMaterial& material) {
        std::optional<Amount> total;
        for (const MaterialInStep& one : material.uses) {
            std::optional<Amount> amount = one.use->amount;
            if (amount && material.kind != nullptr) {
                const auto counted = asCounted(*amount, *material.lot, *material.kind);
                amount = counted ? std::optional{*counted} : std::nullopt;
            }
            if (amount && total) {
                amount = sum(*total, *amount);
            }
            if (!amount) {
                return std::nullopt;
            }
            total = amount;
        }
        return total;
    }

    const JobFile& m_file;
    const Clock& m_clock;
    std::vector<JobMaterial> m_all;
};

} // namespace

std::vector<JobMaterial> jobMaterials(const JobFile& file, const Clock& clock) {
    Gathering gathering{file, clock};
    for (const MaterialUse& use : file.uses) {
        gathering.add(use);
    }
    for (const Facsimile& leaf : file.facsimiles) {
        gathering.add(leaf);
    }
    return gathering.done();
}

} // namespace headcap::core
