// What the record keeps of a cutting that was booked: from which sheets, what came of each sheet,
// and what became of it. Pieces, offcuts and waste of a sheet add up to the sheet.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/materials/material.h"
#include "core/record/describe.h"
#include "core/values/id.h"
#include "core/values/time.h"

namespace headcap::core {

enum class CutPartKind { piece, offcut, waste };

// Booked in one change with its ledger entries and offcuts. Only that it was taken back may be
// added to it.
struct Cutting {
    Id<Cutting> id;
    std::optional<Id<Job>> job;
    Instant at;
    std::optional<Id<Person>> who;
    std::string plan{}; // the plan as it was booked, as JSON
    std::string note{};
    std::optional<Instant> takenBackAt{};
    std::optional<Id<Person>> takenBackBy;

    friend bool operator==(const Cutting&, const Cutting&) = default;
};

// One rectangle of one sheet, or the waste of that sheet as a whole.
struct CutPart {
    Id<CutPart> id;
    Id<Cutting> cutting;
    Id<Lot> sheet;                // the lot it was cut from
    std::int64_t sheetNumber = 1; // of the lot's sheets, from 1
    CutPartKind kind = CutPartKind::piece;
    std::string name{}; // what the piece is for
    std::optional<Length> width{};
    std::optional<Length> height{};
    Area area{};
    std::optional<Id<Lot>> offcut; // the lot the offcut became

    friend bool operator==(const CutPart&, const CutPart&) = default;
};

template <>
struct EnumNames<CutPartKind> {
    static constexpr std::array<std::string_view, 3> kNames{"piece", "offcut", "waste"};
};

template <>
struct Description<Cutting> {
    static constexpr std::string_view kKind = "cutting";
    static constexpr Permanence kPermanence = Permanence::permanent;
    template <class R = Cutting>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("at", &R::at),
                          field("who", &R::who),
                          field("plan", &R::plan),
                          searched("note", &R::note),
                          field("taken_back_at", &R::takenBackAt),
                          field("taken_back_by", &R::takenBackBy)};
    }
};

template <>
struct Description<CutPart> {
    static constexpr std::string_view kKind = "cut_part";
    static constexpr Permanence kPermanence = Permanence::permanent;
    template <class R = CutPart>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),       field("cutting", &R::cutting),
                          field("sheet", &R::sheet), field("sheet_number", &R::sheetNumber),
                          field("kind", &R::kind),   searched("name", &R::name),
                          field("width", &R::width), field("height", &R::height),
                          field("area", &R::area),   field("offcut", &R::offcut)};
    }
};

} // namespace headcap::core
