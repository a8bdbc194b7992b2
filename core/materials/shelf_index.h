// A shelf as lists and plans ask of it: each lot's kind and balance at hand, whatever the number of
// lots. Made in one pass over the shelf, which must outlive it.
#pragma once

#include <map>
#include <optional>

#include "core/materials/shelf.h"

namespace headcap::core {

class ShelfIndex {
public:
    explicit ShelfIndex(const Shelf& shelf);

    [[nodiscard]] const Material* material(const Id<Material>& id) const;
    // As Shelf::balanceOf.
    [[nodiscard]] std::optional<Amount> balanceOf(const Lot& lot) const;

private:
    std::map<Id<Material>, const Material*> m_materials{};
    std::map<Id<Lot>, std::optional<Amount>> m_balances{};
};

} // namespace headcap::core
