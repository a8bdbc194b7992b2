// The kinds of record a workshop keeps, in the order of AnyRecord (any_record.h).
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

#include "core/record/describe.h"

namespace headcap::core {

enum class RecordKind {
    workshop,
    person,
    owner,
    item,
    work,
    job,
    stateChange,
    piece,
    custodyMove,
    hazard,
    notice,
    followUp,
    attachment,
    examination,
    finding,
    test,
    collation,
    collationFinding,
    facsimile,
    proposal,
    proposalOption,
    proposalLine,
    decision,
    step,
    materialUse,
    material,
    lot,
    lotPart,
    ledgerEntry,
    photograph,
    issuedReport,
    walk,
    walkEntry,
    calledPlate,
    leafTask,
    cutting,
    cutPart,
    recipe,
    recipePart,
    houseValue,
    houseTechnique,
    benchClock,
    setting,
    stepCheck,
    releaseCheck,
    explanation,
    handBack,
};

template <>
struct EnumNames<RecordKind> {
    static constexpr std::array<std::string_view, 47> kNames{"workshop",
                                                             "person",
                                                             "owner",
                                                             "item",
                                                             "work",
                                                             "job",
                                                             "state_change",
                                                             "piece",
                                                             "custody_move",
                                                             "hazard",
                                                             "notice",
                                                             "follow_up",
                                                             "attachment",
                                                             "examination",
                                                             "finding",
                                                             "test",
                                                             "collation",
                                                             "collation_finding",
                                                             "facsimile",
                                                             "proposal",
                                                             "proposal_option",
                                                             "proposal_line",
                                                             "decision",
                                                             "step",
                                                             "material_use",
                                                             "material",
                                                             "lot",
                                                             "lot_part",
                                                             "ledger_entry",
                                                             "photograph",
                                                             "issued_report",
                                                             "walk",
                                                             "walk_entry",
                                                             "called_plate",
                                                             "leaf_task",
                                                             "cutting",
                                                             "cut_part",
                                                             "recipe",
                                                             "recipe_part",
                                                             "house_value",
                                                             "house_technique",
                                                             "bench_clock",
                                                             "setting",
                                                             "step_check",
                                                             "release_check",
                                                             "explanation",
                                                             "hand_back"};
};

inline constexpr std::size_t kRecordKindCount = EnumNames<RecordKind>::kNames.size();

[[nodiscard]] constexpr std::optional<RecordKind> recordKindNamed(std::string_view name) {
    for (std::size_t i = 0; i < kRecordKindCount; ++i) {
        if (EnumNames<RecordKind>::kNames[i] == name) {
            return static_cast<RecordKind>(i);
        }
    }
    return std::nullopt;
}

} // namespace headcap::core
