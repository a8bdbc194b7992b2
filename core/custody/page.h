// The eight pages of a job, in the order of the work, and which page keeps which records.
#pragma once

#include <array>
#include <string_view>

#include "core/record/record_kind.h"

namespace headcap::core {

enum class Page { book, collation, survey, proposal, bench, materials, photographs, report };

template <>
struct EnumNames<Page> {
    static constexpr std::array<std::string_view, 8> kNames{
        "book", "collation", "survey", "proposal", "bench", "materials", "photographs", "report"};
};

// A facsimile stands with the leaf it makes good, on the page of the collation.
[[nodiscard]] constexpr Page pageOf(RecordKind kind) {
    switch (kind) {
    case RecordKind::collation:
    case RecordKind::collationFinding:
    case RecordKind::facsimile:
    case RecordKind::walk:
    case RecordKind::walkEntry:
    case RecordKind::calledPlate:
    case RecordKind::leafTask:
        return Page::collation;
    case RecordKind::examination:
    case RecordKind::finding:
    case RecordKind::test:
    case RecordKind::hazard:
        return Page::survey;
    case RecordKind::proposal:
    case RecordKind::proposalOption:
    case RecordKind::proposalLine:
    case RecordKind::decision:
        return Page::proposal;
    case RecordKind::step:
    case RecordKind::benchClock:
    case RecordKind::setting:
    case RecordKind::stepCheck:
    case RecordKind::explanation:
        return Page::bench;
    case RecordKind::materialUse:
    case RecordKind::material:
    case RecordKind::lot:
    case RecordKind::lotPart:
    case RecordKind::ledgerEntry:
    case RecordKind::cutting:
    case RecordKind::cutPart:
    case RecordKind::recipe:
    case RecordKind::recipePart:
        return Page::materials;
    case RecordKind::photograph:
        return Page::photographs;
    case RecordKind::issuedReport:
    case RecordKind::releaseCheck:
    case RecordKind::handBack:
        return Page::report;
    default:
        return Page::book;
    }
}

} // namespace headcap::core
