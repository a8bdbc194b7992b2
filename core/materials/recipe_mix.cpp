#include "core/materials/recipe_mix.h"

#include <algorithm>
#include <iterator>

#include <fmt/format.h>

#include "core/materials/material_kinds.h"

namespace headcap::core {
namespace {

constexpr std::string_view kWater = "solvent/water";
constexpr std::string_view kOurOwn = "our own";

class Mixing {
public:
    Mixing(const RecipeMix& mix, Shelf shelf, const Hand& hand, IdSource& ids)
        : m_mix(mix), m_shelf(std::move(shelf)), m_hand(hand), m_ids(ids) {}

    tl::expected<Change, LedgerProblem> booked() {
        const auto makes = kindMade();
        if (!makes) {
            return tl::unexpected(LedgerProblem::materialUnknown);
        }
        std::vector<MixPart> taken;
        for (std::size_t i = 0; i < m_mix.parts.size(); ++i) {
            const auto lot = lotFor(m_mix.recipe.parts[i], m_mix.parts[i]);
            if (!lot) {
                return tl::unexpected(lot.error());
            }
            taken.push_back({*lot, m_mix.parts[i].amount, m_mix.parts[i].why});
        }
        Lot lot = lotMixed(m_mix.recipe, *m_shelf.material(*makes), m_mix.number, m_ids.next<Lot>(),
                           m_hand, m_mix.on);
        lot.goodUntil = m_mix.goodUntil;
        lot.keptAt = m_mix.keptAt;
        auto mixed = mixLot(lot, taken, m_mix.yield, m_shelf, m_hand, m_ids);
        if (!mixed) {
            return mixed;
        }
        take(*mixed);
        m_change.who = m_hand.who;
        m_change.sentence = mixed->sentence;
        if (!m_received.empty()) {
            m_change.sentence += "; received with it: " + m_received;
        }
        return std::move(m_change);
    }

private:
    void take(Change& change) {
        std::ranges::move(change.writes, std::back_inserter(m_change.writes));
    }

    std::optional<Id<Material>> begun(const std::string& key) {
        const MaterialKind* kind = materialKindNamed(key);
        if (kind == nullptr) {
            return std::nullopt;
        }
        const Material material = materialFrom(*kind, m_ids.next<Material>());
        m_shelf.materials.push_back(material);
        m_change.add(material);
        return material.id;
    }

    std::optional<Id<Material>> kindMade() {
        const Material* known = materialMade(m_mix.recipe, m_shelf);
        return known != nullptr ? std::optional{known->id} : begun(m_mix.recipe.makesKind);
    }

    tl::expected<Id<Lot>, LedgerProblem> lotFor(const RecipeCardPart& part,
                                                const PartTaken& taken) {
        if (taken.lot) {
            return *taken.lot;
        }
        const Material* known = materialOf(part, m_shelf);
        const auto kind = known != nullptr ? std::optional{known->id} : begun(part.kindKey);
        if (!kind) {
            return tl::unexpected(LedgerProblem::materialUnknown);
        }
        const bool isWater = part.kindKey == kWater;
        if (const Lot* tap = isWater ? ownLotOf(*kind) : nullptr) {
            return received(*tap, takeIn(*tap, taken.amount, m_shelf, m_hand, m_ids));
        }
        const Lot lot{.id = m_ids.next<Lot>(),
                      .number = taken.number,
                      .material = *kind,
                      .supplier = isWater ? std::string{kOurOwn} : "",
                      .receivedOn = m_mix.on};
        const auto id = received(lot, receiveLot(lot, taken.amount, m_shelf, m_hand, m_ids));
        m_shelf.lots.push_back(lot);
        return id;
    }

    // Water of our own is one lot: more of it comes in with every mix.
    [[nodiscard]] const Lot* ownLotOf(const Id<Material>& kind) const {
        const auto found = std::ranges::find_if(m_shelf.lots, [&](const Lot& lot) {
            return lot.material == kind && !lot.finished && lot.supplier.starts_with(kOurOwn);
        });
        return found == m_shelf.lots.end() ? nullptr : &*found;
    }

    tl::expected<Id<Lot>, LedgerProblem> received(const Lot& lot,
                                                  tl::expected<Change, LedgerProblem> change) {
        if (!change) {
            return tl::unexpected(change.error());
        }
        for (const Write& write : change->writes) {
            if (const auto* entry = std::get_if<LedgerEntry>(&write.record)) {
                m_shelf.ledger.push_back(*entry);
            }
        }
        m_received += fmt::format("{}{}, {}", m_received.empty() ? "" : "; ", lot.number,
                                  m_shelf.material(lot.material)->name);
        take(*change);
        return lot.id;
    }

    const RecipeMix& m_mix;
    Shelf m_shelf;
    const Hand& m_hand;
    IdSource& m_ids;
    Change m_change;
    std::string m_received;
};

} // namespace

tl::expected<Change, LedgerProblem> mixByRecipe(const RecipeMix& mix, Shelf shelf, const Hand& hand,
                                                IdSource& ids) {
    return Mixing{mix, std::move(shelf), hand, ids}.booked();
}

} // namespace headcap::core
