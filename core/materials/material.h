// Materials and lots. A material is a kind; a lot is what is on the shelf: bought, saved from
// another binding, mixed from other lots, or cut off another lot.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/record/describe.h"
#include "core/treatment/step.h"
#include "core/values/amount.h"
#include "core/values/id.h"
#include "core/values/measures.h"
#include "core/values/money.h"
#include "core/values/strength.h"
#include "core/values/time.h"

namespace headcap::core {

struct Job;
struct Person;

enum class MaterialClass {
    paper,
    tissue,
    board,
    leather,
    vellum,
    cloth,
    thread,
    adhesiveDry,
    adhesivePrepared,
    solvent,
    consolidant,
    ink,
    consumable
};

enum class LotOrigin { bought, saved, mixed, offcut };

enum class Grain { none, alongHeight, alongWidth };

struct Material {
    Id<Material> id;
    std::string name{};
    MaterialClass kind = MaterialClass::paper;
    Unit unit = Unit::piece; // its lots are counted in it
    std::string composition{};
    std::int64_t grammageMgM2 = 0; // mg/m², 0: not known
    std::optional<Length> thickness{};
    std::string standard{};         // met, and the evidence for it: "ISO 9706, maker's certificate"
    std::int64_t shelfLifeDays = 0; // from opening or mixing; 0: keeps
    std::string removal{};          // how it is usually taken off again
    Reversibility reversibility = Reversibility::unknown;
    std::string caution{};
    std::string note{};
    std::string kindKey{}; // of resources/material_kinds.json, where it was begun from one
    std::string fibre{};
    std::string tannage{};
    std::optional<Strength> solids{};
    std::optional<std::int64_t> phHundredths{}; // of a cold extract
    std::optional<std::int64_t>
        alkaliReserveMmolKg{}; // acid neutralised, in mmol/kg: ISO 9706 asks for 400
    std::optional<std::int64_t> densityMgMl{};
    std::optional<std::int64_t> stretchAcrossPpm{}; // on pasting
    std::optional<std::int64_t> stretchAlongPpm{};
    std::string evidence{};       // for the standard met
    bool keptBack = false;        // rare: spent last
    std::optional<Money> price{}; // of one of its unit

    friend bool operator==(const Material&, const Material&) = default;
};

struct Lot {
    Id<Lot> id;
    std::string number{}; // "26-014", on its label
    Id<Material> material;
    LotOrigin origin = LotOrigin::bought;
    std::string supplier{};
    std::string maker{};
    std::string product{};
    std::string batch{};
    std::optional<Day> receivedOn{};
    std::optional<Day> openedOn{};
    std::optional<Money> cost{};
    std::string savedFrom{};        // the object it was saved from
    std::optional<Id<Job>> savedIn; // the job it was saved in
    std::string whyFree{};          // why it was free to use
    std::string watermark{};
    std::optional<Day> mixedOn{};
    std::optional<Id<Person>> mixedBy;
    std::string recipe{};
    std::optional<Strength> strength{};
    std::optional<Day> goodUntil{};
    std::string keptAt{};
    std::optional<Length> sheetWidth{};
    std::optional<Length> sheetHeight{};
    Grain grain = Grain::none;
    std::optional<Id<Lot>> parent; // of an offcut
    bool finished = false;         // used up or thrown away: no longer offered
    std::string note{};
    std::optional<std::int64_t> phHundredths{};
    std::optional<std::int64_t> alkaliReserveMmolKg{};
    std::string evidence{}; // certificate, own test
    bool keptBack = false;

    friend bool operator==(const Lot&, const Lot&) = default;
};

// What a mixed lot was made from.
struct LotPart {
    Id<LotPart> id;
    Id<Lot> lot;
    Id<Lot> source;
    Amount amount{};

    friend bool operator==(const LotPart&, const LotPart&) = default;
};

template <>
struct EnumNames<Unit> {
    static constexpr std::array<std::string_view, 6> kNames{"g", "ml",    "mm2",
                                                            "m", "sheet", "piece"};
};

template <>
struct EnumNames<MaterialClass> {
    static constexpr std::array<std::string_view, 13> kNames{
        "paper",       "tissue", "board",        "leather",           "vellum",
        "cloth",       "thread", "adhesive_dry", "adhesive_prepared", "solvent",
        "consolidant", "ink",    "consumable"};
};

template <>
struct EnumNames<LotOrigin> {
    static constexpr std::array<std::string_view, 4> kNames{"bought", "saved", "mixed", "offcut"};
};

template <>
struct EnumNames<Grain> {
    static constexpr std::array<std::string_view, 3> kNames{"none", "along_height", "along_width"};
};

template <>
struct Description<Material> {
    static constexpr std::string_view kKind = "material";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Material>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          searched("name", &R::name),
                          field("kind", &R::kind),
                          field("unit", &R::unit),
                          searched("composition", &R::composition),
                          field("grammage_mg_m2", &R::grammageMgM2),
                          field("thickness", &R::thickness),
                          field("standard", &R::standard),
                          field("shelf_life_days", &R::shelfLifeDays),
                          field("removal", &R::removal),
                          field("reversibility", &R::reversibility),
                          field("caution", &R::caution),
                          searched("note", &R::note),
                          field("kind_key", &R::kindKey),
                          field("fibre", &R::fibre),
                          field("tannage", &R::tannage),
                          field("solids", &R::solids),
                          field("ph_hundredths", &R::phHundredths),
                          field("alkali_reserve_mmol_kg", &R::alkaliReserveMmolKg),
                          field("density_mg_ml", &R::densityMgMl),
                          field("stretch_across_ppm", &R::stretchAcrossPpm),
                          field("stretch_along_ppm", &R::stretchAlongPpm),
                          field("evidence", &R::evidence),
                          field("kept_back", &R::keptBack),
                          field("price", &R::price)};
    }
};

template <>
struct Description<Lot> {
    static constexpr std::string_view kKind = "lot";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Lot>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          searched("number", &R::number),
                          field("material", &R::material),
                          field("origin", &R::origin),
                          searched("supplier", &R::supplier),
                          field("maker", &R::maker),
                          searched("product", &R::product),
                          searched("batch", &R::batch),
                          field("received_on", &R::receivedOn),
                          field("opened_on", &R::openedOn),
                          field("cost", &R::cost),
                          searched("saved_from", &R::savedFrom),
                          field("saved_in", &R::savedIn),
                          field("why_free", &R::whyFree),
                          searched("watermark", &R::watermark),
                          field("mixed_on", &R::mixedOn),
                          field("mixed_by", &R::mixedBy),
                          searched("recipe", &R::recipe),
                          field("strength", &R::strength),
                          field("good_until", &R::goodUntil),
                          field("kept_at", &R::keptAt),
                          field("sheet_width", &R::sheetWidth),
                          field("sheet_height", &R::sheetHeight),
                          field("grain", &R::grain),
                          field("parent", &R::parent),
                          field("finished", &R::finished),
                          searched("note", &R::note),
                          field("ph_hundredths", &R::phHundredths),
                          field("alkali_reserve_mmol_kg", &R::alkaliReserveMmolKg),
                          field("evidence", &R::evidence),
                          field("kept_back", &R::keptBack)};
    }
};

template <>
struct Description<LotPart> {
    static constexpr std::string_view kKind = "lot_part";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = LotPart>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id), field("lot", &R::lot), field("source", &R::source),
                          field("amount", &R::amount)};
    }
};

} // namespace headcap::core
