// Kinds of material to begin a workshop's own list with: how each is counted, what is worth knowing
// of it, how long it keeps, how it comes off. Data in resources/material_kinds.json; shelf lives
// are house values.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/materials/material.h"

namespace headcap::core {

struct MaterialKind {
    std::string key; // "adhesive_prepared/wheat_paste"
    std::string name;
    MaterialClass kind = MaterialClass::paper;
    Unit unit = Unit::piece;
    std::vector<std::string> properties; // worth noting of a lot
    std::int64_t shelfLifeDays = 0;
    Reversibility reversibility = Reversibility::unknown;
    std::string removal;
    std::string caution;
    std::string aat;
    std::vector<std::string> sources;
};

[[nodiscard]] const std::vector<MaterialKind>& materialKinds();
[[nodiscard]] const MaterialKind* materialKindNamed(std::string_view key);

// A material of the workshop, begun from a kind.
[[nodiscard]] Material materialFrom(const MaterialKind& kind, const Id<Material>& id);

// A material whose name was changed: what the vocabulary knows of the new name comes with it, where
// nothing had been said yet, or only what the vocabulary knew of the name before.
[[nodiscard]] Material materialNamed(const Material& before, const Material& after);

// "paper", "prepared adhesive".
[[nodiscard]] std::string_view wordsFor(MaterialClass kind);

// What one piece of it is called: "skin" of leather and vellum, else "piece".
[[nodiscard]] std::string_view pieceName(MaterialClass kind);

} // namespace headcap::core
