#include "core/materials/material_kinds.h"

#include <algorithm>
#include <array>

#include <nlohmann/json.hpp>

#include "core/values/unit_text.h"
#include "core/vocabulary/vocabulary_file.h"

namespace headcap::core {
namespace {

constexpr std::array<std::string_view, 6> kUnitNames{"gram",  "millilitre", "square_millimetre",
                                                     "metre", "sheet",      "piece"};

std::vector<MaterialKind> readAll() {
    using namespace vocabulary;
    std::vector<MaterialKind> all;
    const auto json = file("material_kinds.json");
    for (const auto& entry : member(json, "kinds")) {
        all.push_back(
            {.key = text(entry, "key"),
             .name = text(entry, "name"),
             .kind = named<MaterialClass>(EnumNames<MaterialClass>::kNames, text(entry, "class")),
             .unit = named<Unit>(kUnitNames, text(entry, "unit")),
             .properties = texts(entry, "properties"),
             .shelfLifeDays = numberOr(entry, "shelf_life_days"),
             .reversibility = named<Reversibility>(EnumNames<Reversibility>::kNames,
                                                   text(entry, "reversibility")),
             .removal = text(entry, "removal"),
             .caution = textOr(entry, "caution"),
             .aat = textOr(entry, "aat"),
             .sources = texts(entry, "sources")});
    }
    return all;
}

} // namespace

const std::vector<MaterialKind>& materialKinds() {
    static const std::vector<MaterialKind> kAll = readAll();
    return kAll;
}

const MaterialKind* materialKindNamed(std::string_view key) {
    const auto& all = materialKinds();
    const auto found = std::ranges::find(all, key, &MaterialKind::key);
    return found == all.end() ? nullptr : &*found;
}

Material materialFrom(const MaterialKind& kind, const Id<Material>& id) {
    return {.id = id,
            .name = kind.name,
            .kind = kind.kind,
            .unit = kind.unit,
            .shelfLifeDays = kind.shelfLifeDays,
            .removal = kind.removal,
            .reversibility = kind.reversibility,
            .caution = kind.caution,
            .kindKey = kind.key};
}

// The kind whose name it begins with, the longest: "Kozo tissue, 9 g/m²" is a "Kozo tissue".
static const MaterialKind* kindCalled(std::string_view name) {
    const MaterialKind* found = nullptr;
    for (const MaterialKind& kind : materialKinds()) {
        const std::size_t length = kind.name.size();
        const bool ends = name.size() == length ||
                          (name.size() > length && (name[length] == ' ' || name[length] == ','));
        if (ends && sameLetters(name.substr(0, length), kind.name) &&
            (found == nullptr || found->name.size() < length)) {
            found = &kind;
        }
    }
    return found;
}

Material materialNamed(const Material& before, const Material& after) {
    const MaterialKind* now = kindCalled(after.name);
    if (now == nullptr || before.name == after.name) {
        return after;
    }
    const MaterialKind* was = kindCalled(before.name);
    Material untouched = was == nullptr ? Material{.id = before.id} : materialFrom(*was, before.id);
    untouched.name = after.name;
    if (untouched != after && !before.name.empty()) {
        return after;
    }
    Material made = materialFrom(*now, after.id);
    made.name = after.name;
    return made;
}

std::string_view wordsFor(MaterialClass kind) {
    constexpr std::array<std::string_view, 13> kWords{
        "paper",       "tissue",        "board",        "leather",           "vellum",
        "cloth",       "thread",        "dry adhesive", "prepared adhesive", "solvent",
        "consolidant", "ink or colour", "consumable"};
    return kWords[static_cast<std::size_t>(kind)];
}

std::string_view pieceName(MaterialClass kind) {
    return kind == MaterialClass::leather || kind == MaterialClass::vellum ? "skin" : "piece";
}

} // namespace headcap::core
