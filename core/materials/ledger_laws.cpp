#include "core/materials/ledger_laws.h"

#include <map>
#include <set>

#include <fmt/format.h>

#include "core/materials/by_key.h"
#include "core/materials/conversion.h"
#include "core/materials/ledger_sums.h"
#include "core/treatment/bench_log.h"

namespace headcap::core {
namespace {

// Scales and vessels are not exact, and a mix may take up water while it is kept.
constexpr std::int64_t kMixGainPerMille = 20;

class Laws {
public:
    explicit Laws(const LedgerBook& book)
        : m_book(book), m_lots(book.shelf.lots), m_materials(book.shelf.materials),
          m_entries(book.shelf.ledger), m_steps(book.steps) {}

    std::vector<LedgerBreach> run() {
        for (const LedgerEntry& entry : m_book.shelf.ledger) {
            units(entry);
            contraries(entry);
            add(entry);
        }
        for (const Lot& lot : m_book.shelf.lots) {
            balance(lot);
        }
        mixes();
        for (const MaterialUse& use : m_book.uses) {
            booked(use);
        }
        for (LedgerBreach& breach : cuttingBreaches(m_book, m_cut)) {
            m_breaches.push_back(std::move(breach));
        }
        return std::move(m_breaches);
    }

private:
    template <class Record>
    void found(LedgerLaw law, const Record& record, std::string sentence) {
        m_breaches.push_back({law, refOf(record.id), std::move(sentence)});
    }

    const Material* kindOf(const Lot* lot) const {
        return lot == nullptr ? nullptr : m_materials.find(lot->material);
    }
    std::string numberOf(const Id<Lot>& id) const {
        const Lot* lot = m_lots.find(id);
        return lot == nullptr ? "not known" : lot->number;
    }
    // Of a contrary, what it takes back.
    LedgerKind meaningOf(const LedgerEntry& entry) const {
        const LedgerEntry* first = m_entries.find(entry.contraryOf);
        return first == nullptr ? entry.kind : first->kind;
    }

    void units(const LedgerEntry& entry) {
        const Material* kind = kindOf(m_lots.find(entry.lot));
        if (kind != nullptr && kind->unit != entry.amount.unit) {
            found(LedgerLaw::sameUnit, entry,
                  fmt::format("An entry of lot {} is in {}, and the lot is counted in {}.",
                              numberOf(entry.lot), nameOf(entry.amount.unit), nameOf(kind->unit)));
        }
    }

    void contraries(const LedgerEntry& entry) {
        if (entry.kind != LedgerKind::contrary) {
            return;
        }
        const LedgerEntry* first = m_entries.find(entry.contraryOf);
        if (first == nullptr || first->lot != entry.lot ||
            first->amount != entry.amount.negated() || !m_takenBack.insert(first->id).second) {
            found(
                LedgerLaw::contrary, entry,
                fmt::format("A contrary entry of lot {} does not balance the entry it takes back.",
                            numberOf(entry.lot)));
        }
    }

    void add(const LedgerEntry& entry) {
        if (m_lots.find(entry.lot) == nullptr) {
            return;
        }
        addTo(m_balance, entry.lot, entry.amount.count);
        const LedgerKind meaning = meaningOf(entry);
        if (meaning == LedgerKind::mixedOut) {
            addTo(m_mixedOut, entry.lot, entry.amount.count);
        } else if (meaning == LedgerKind::mixedIn) {
            addTo(m_mixedIn, entry.lot, entry.amount.count);
        } else if (meaning == LedgerKind::cut) {
            addTo(m_cut, entry.lot, entry.amount.count);
        } else if (meaning == LedgerKind::used && !entry.use) {
            found(LedgerLaw::useSaid, entry,
                  fmt::format("Lot {} was used by {}, and no step says so.", numberOf(entry.lot),
                              toText(entry.amount.negated())));
        }
        if (entry.use) {
            addTo(m_booked, *entry.use, entry.amount.count);
        }
    }

    void balance(const Lot& lot) {
        const Material* kind = kindOf(&lot);
        const auto at = m_balance.find(lot.id);
        if (kind != nullptr && at != m_balance.end() && at->second < 0) {
            found(
                LedgerLaw::notBelowNothing, lot,
                fmt::format("Lot {} is below nothing by {}: count it, or correct what was booked.",
                            lot.number, toText(Amount{-at->second, kind->unit})));
        }
    }

    void mixes() {
        std::map<Id<Lot>, std::int64_t> saidTaken;
        std::set<Id<Lot>> made;
        for (const LotPart& part : m_book.shelf.parts) {
            made.insert(part.lot);
            if (!isTakenBack(part.lot)) {
                addTo(saidTaken, part.source, part.amount.count);
            }
        }
        for (const Lot& lot : m_book.shelf.lots) {
            const std::int64_t said = valueOf(saidTaken, lot.id);
            const std::int64_t left = -valueOf(m_mixedOut, lot.id);
            const Material* kind = kindOf(&lot);
            if (kind != nullptr && said != left) {
                found(LedgerLaw::mixTook, lot,
                      fmt::format("{} of lot {} left for mixes, and the mixes say {}.",
                                  toText(Amount{left, kind->unit}), lot.number,
                                  toText(Amount{said, kind->unit})));
            }
            if (kind != nullptr && valueOf(m_mixedIn, lot.id) > 0) {
                gave(lot, *kind, made.contains(lot.id));
            }
        }
    }

    // Undone: what it gave has its contrary, and so has what it took; what it was made of stays on
    // record.
    bool isTakenBack(const Id<Lot>& mix) const {
        const auto given = m_mixedIn.find(mix);
        return given != m_mixedIn.end() && given->second == 0;
    }

    void gave(const Lot& lot, const Material& kind, bool isMadeOfSomething) {
        const Amount yield{valueOf(m_mixedIn, lot.id), kind.unit};
        if (!isMadeOfSomething && lot.recipe.empty()) {
            found(LedgerLaw::mixGave, lot,
                  fmt::format("Lot {} was mixed, {}, and says nothing of what from.", lot.number,
                              toText(yield)));
            return;
        }
        const auto taken = isMadeOfSomething ? weightTaken(lot) : std::nullopt;
        if (taken && yield.unit == Unit::gram &&
            yield.count - *taken > *taken / 1'000 * kMixGainPerMille) {
            found(LedgerLaw::mixGave, lot,
                  fmt::format("Lot {} came to {}, and only {} went into it.", lot.number,
                              toText(yield), toText(Amount{*taken, Unit::gram})));
        }
    }

    std::optional<std::int64_t> weightOf(const LotPart& part) const {
        const Lot* source = m_lots.find(part.source);
        const Material* kind = kindOf(source);
        if (kind == nullptr) {
            return std::nullopt;
        }
        if (part.amount.unit == Unit::millilitre) {
            std::int64_t weight = 0; // µl by mg/ml is µg
            return kind->densityMgMl &&
                           !__builtin_mul_overflow(part.amount.count, *kind->densityMgMl, &weight)
                       ? std::optional{weight}
                       : std::nullopt;
        }
        const auto grams = converted(part.amount, Unit::gram, measuresOf(*source, *kind));
        return grams ? std::optional{grams->count} : std::nullopt;
    }

    // µg of all that went in; nothing where one part's weight is not known.
    std::optional<std::int64_t> weightTaken(const Lot& lot) const {
        std::int64_t weight = 0;
        for (const LotPart* part : partsOf(lot)) {
            const auto grams = weightOf(*part);
            if (!grams) {
                return std::nullopt;
            }
            weight += *grams;
        }
        return weight;
    }

    std::vector<const LotPart*> partsOf(const Lot& lot) const {
        if (m_partsOf.empty()) {
            for (const LotPart& part : m_book.shelf.parts) {
                m_partsOf[part.lot].push_back(&part);
            }
        }
        const auto at = m_partsOf.find(lot.id);
        return at == m_partsOf.end() ? std::vector<const LotPart*>{} : at->second;
    }

    void booked(const MaterialUse& use) {
        const Lot* lot = m_lots.find(use.lot);
        const Material* kind = kindOf(lot);
        const Step* step = m_steps.find(use.step);
        if (kind == nullptr || step == nullptr) {
            return;
        }
        const auto counted = use.amount ? asCounted(*use.amount, *lot, *kind)
                                        : tl::expected<Amount, ConversionProblem>{Amount{}};
        const std::int64_t said = counted && !step->struckAt ? counted->count : 0;
        const Amount book{-valueOf(m_booked, use.id), kind->unit};
        if (!counted || book.count != said) {
            found(LedgerLaw::useBooked, use,
                  fmt::format("{} used {} of lot {}, and the ledger says {}.",
                              stepTitle(*step, m_book.techniques),
                              use.amount && !step->struckAt ? toText(*use.amount) : "nothing",
                              lot->number, toText(book)));
        }
    }

    const LedgerBook& m_book;
    ByKey<Lot> m_lots;
    ByKey<Material> m_materials;
    ByKey<LedgerEntry> m_entries;
    ByKey<Step> m_steps;
    std::map<Id<Lot>, std::int64_t> m_balance;
    std::map<Id<Lot>, std::int64_t> m_mixedOut;
    std::map<Id<Lot>, std::int64_t> m_mixedIn;
    std::map<Id<Lot>, std::int64_t> m_cut;
    std::map<Id<MaterialUse>, std::int64_t> m_booked;
    mutable std::map<Id<Lot>, std::vector<const LotPart*>> m_partsOf;
    std::set<Id<LedgerEntry>> m_takenBack;
    std::vector<LedgerBreach> m_breaches;
};

} // namespace

std::vector<LedgerBreach> ledgerBreaches(const LedgerBook& book) {
    return Laws{book}.run();
}

} // namespace headcap::core
