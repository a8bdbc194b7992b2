// Any record of the workshop as a value, and what can be said of it without knowing its kind:
// its key, its columns, its JSON, the records it names, the words that find it.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

#include <nlohmann/json_fwd.hpp>
#include <tl/expected.hpp>

#include "core/collation/collation_record.h"
#include "core/collation/walk_record.h"
#include "core/custody/custody.h"
#include "core/custody/item.h"
#include "core/custody/job.h"
#include "core/custody/people.h"
#include "core/custody/release_record.h"
#include "core/facsimile/facsimile.h"
#include "core/materials/cutting_record.h"
#include "core/materials/ledger_entry.h"
#include "core/materials/material.h"
#include "core/materials/recipe_record.h"
#include "core/photo/photograph.h"
#include "core/record/record_ref.h"
#include "core/report/issued_report.h"
#include "core/survey/finding.h"
#include "core/treatment/bench_record.h"
#include "core/treatment/house_technique.h"
#include "core/treatment/proposal.h"
#include "core/treatment/step.h"

namespace headcap::core {

using RecordOfSomeKind =
    std::variant<Workshop, Person, Owner, Item, Work, Job, StateChange, Piece, CustodyMove, Hazard,
                 Notice, FollowUp, Attachment, Examination, Finding, Test, Collation,
                 CollationFinding, Facsimile, Proposal, ProposalOption, ProposalLine, Decision,
                 Step, MaterialUse, Material, Lot, LotPart, LedgerEntry, Photograph, IssuedReport,
                 Walk, WalkEntry, CalledPlate, LeafTask, Cutting, CutPart, Recipe, RecipePart,
                 HouseValue, HouseTechnique, BenchClock, Setting, StepCheck, ReleaseCheck,
                 Explanation, HandBack>;

static_assert(std::variant_size_v<RecordOfSomeKind> == kRecordKindCount);

template <class T>
concept RecordType = requires {
    Description<T>::kKind;
};

// A record of any of the kinds. It is made, copied and ended in one place: what may be of any kind
// is slow to compile, and nearly every source can hold one.
class AnyRecord : public RecordOfSomeKind {
public:
    template <RecordType Record>
    AnyRecord(Record record); // NOLINT(google-explicit-constructor): as a variant is made
    AnyRecord(const AnyRecord& other);
    AnyRecord(AnyRecord&& other) noexcept;
    AnyRecord& operator=(const AnyRecord& other);
    AnyRecord& operator=(AnyRecord&& other) noexcept;
    ~AnyRecord();
};

template <class Record>
constexpr RecordKind kindOf() {
    return *recordKindNamed(Description<Record>::kKind);
}

[[nodiscard]] inline RecordKind kindOf(const AnyRecord& record) {
    return static_cast<RecordKind>(record.index());
}

template <class Record>
RecordRef refOf(const Id<Record>& id) {
    return {kindOf<Record>(), id.uuid()};
}

[[nodiscard]] RecordRef refOf(const AnyRecord& record);
[[nodiscard]] Permanence permanenceOf(RecordKind kind);

// What one column keeps: nothing, a whole number, or text.
using ColumnValue = std::variant<std::monostate, std::int64_t, std::string>;

struct Column {
    std::string name;   // with its unit: "height_nm"
    bool isText = true; // or a whole number
    bool mayBeNull = false;
    std::optional<RecordKind> references; // the kind whose key it holds
};

// The columns of a kind, the key first, in the order of the record's fields. The table of a kind
// has its name.
[[nodiscard]] const std::vector<Column>& columnsOf(RecordKind kind);

// One value a column, in that order.
[[nodiscard]] std::vector<ColumnValue> valuesOf(const AnyRecord& record);

struct DecodeError {
    RecordKind kind;
    std::string column; // the first that could not be read
};
[[nodiscard]] tl::expected<AnyRecord, DecodeError> recordFrom(RecordKind kind,
                                                              std::span<const ColumnValue> values);

// One object, a member a column, nulls left out.
[[nodiscard]] nlohmann::json toJson(const AnyRecord& record);
[[nodiscard]] tl::expected<AnyRecord, DecodeError> recordFrom(RecordKind kind,
                                                              const nlohmann::json& object);

// The records it names by key, each once, in the order of its columns.
[[nodiscard]] std::vector<RecordRef> referencesOf(const AnyRecord& record);

// The job it belongs to; a job is its own. Nothing for what belongs to none.
[[nodiscard]] std::optional<Id<Job>> jobOf(const AnyRecord& record);

// The words that find it, unfolded, its searched fields joined by " · ".
[[nodiscard]] std::string searchTextOf(const AnyRecord& record);

// The name of a field as columns are built from it: fieldName(&Finding::job) is "job".
template <class Record, class T>
std::string_view fieldName(T Record::*member) {
    std::string_view name;
    std::apply(
        [&](const auto&... fields) {
            (
                [&](const auto& f) {
                    if constexpr (std::is_same_v<decltype(f.member), T Record::*>) {
                        if (f.member == member) {
                            name = f.name;
                        }
                    }
                }(fields),
                ...);
        },
        Description<Record>::fields());
    return name;
}

} // namespace headcap::core
