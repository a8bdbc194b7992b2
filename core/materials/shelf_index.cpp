#include "core/materials/shelf_index.h"

#include "core/materials/ledger.h"

namespace headcap::core {

ShelfIndex::ShelfIndex(const Shelf& shelf) {
    for (const Material& material : shelf.materials) {
        m_materials.emplace(material.id, &material);
    }
    for (const Lot& lot : shelf.lots) {
        if (const Material* kind = material(lot.material)) {
            m_balances.emplace(lot.id, Amount{0, kind->unit});
        }
    }
    for (const LedgerEntry& entry : shelf.ledger) {
        const auto at = m_balances.find(entry.lot);
        if (at != m_balances.end() && at->second) {
            at->second = sum(*at->second, entry.amount);
        }
    }
}

const Material* ShelfIndex::material(const Id<Material>& id) const {
    const auto at = m_materials.find(id);
    return at == m_materials.end() ? nullptr : at->second;
}

std::optional<Amount> ShelfIndex::balanceOf(const Lot& lot) const {
    const auto at = m_balances.find(lot.id);
    return at == m_balances.end() ? std::nullopt : at->second;
}

} // namespace headcap::core
