// The workshop's own recipes, and the house values it goes by in place of the ones that ship.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/materials/material.h"
#include "core/record/describe.h"
#include "core/values/id.h"

namespace headcap::core {

// How a mixed lot is made.
struct Recipe {
    Id<Recipe> id;
    std::string name{};
    std::optional<Id<Material>> makes;
    std::optional<Strength> strength{};
    std::optional<Amount> yields{}; // what its parts come to
    std::string method{};
    std::int64_t keepsDays = 0; // 0: not said
    std::string caution{};
    std::string source{}; // who published it, or "house recipe"
    std::string note{};

    friend bool operator==(const Recipe&, const Recipe&) = default;
};

// One thing that goes into it.
struct RecipePart {
    Id<RecipePart> id;
    Id<Recipe> recipe;
    std::int64_t position = 1;
    std::optional<Id<Material>> material;
    std::string what{}; // in words, where the workshop has no such kind
    Amount amount{};

    friend bool operator==(const RecipePart&, const RecipePart&) = default;
};

// A figure of the house, by its key ("cutting.trim", "sewing.swell"): text that the reader of that
// key understands.
struct HouseValue {
    Id<HouseValue> id;
    std::string key{};
    std::string value{};
    std::string source{}; // why this figure
    std::string note{};

    friend bool operator==(const HouseValue&, const HouseValue&) = default;
};

template <>
struct Description<Recipe> {
    static constexpr std::string_view kKind = "recipe";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Recipe>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          searched("name", &R::name),
                          field("makes", &R::makes),
                          field("strength", &R::strength),
                          field("yields", &R::yields),
                          searched("method", &R::method),
                          field("keeps_days", &R::keepsDays),
                          field("caution", &R::caution),
                          field("source", &R::source),
                          searched("note", &R::note)};
    }
};

template <>
struct Description<RecipePart> {
    static constexpr std::string_view kKind = "recipe_part";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = RecipePart>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("recipe", &R::recipe),
                          field("position", &R::position),
                          field("material", &R::material),
                          field("what", &R::what),
                          field("amount", &R::amount)};
    }
};

template <>
struct Description<HouseValue> {
    static constexpr std::string_view kKind = "house_value";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = HouseValue>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id), field("key", &R::key), field("value", &R::value),
                          field("source", &R::source), field("note", &R::note)};
    }
};

} // namespace headcap::core
