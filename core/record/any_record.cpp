#include "core/record/any_record.h"

#include <algorithm>
#include <array>
#include <tuple>

#include "core/record/codec.h"
#include "core/values/contract.h"

namespace headcap::core {
namespace {

using codec::Codec;

template <class Record, class T>
T valueType(T Record::*);

// Calls visit(field, first column, Codec) for each field of a record type, in order.
template <class Record, class Visit>
void forEachField(Visit&& visit) {
    std::size_t at = 0;
    std::apply(
        [&](const auto&... fields) {
            (
                [&](const auto& f) {
                    using Value = decltype(valueType(f.member));
                    visit(f, at, std::type_identity<Value>{});
                    at += Codec<Value>::kParts.size();
                }(fields),
                ...);
        },
        Description<Record>::fields());
}

template <class Record>
std::vector<Column> describeColumns() {
    std::vector<Column> columns;
    forEachField<Record>([&](const auto& f, std::size_t, auto type) {
        using Value = typename decltype(type)::type;
        const bool isKey = columns.empty();
        for (const auto& part : Codec<Value>::kParts) {
            columns.push_back({std::string{f.name} + std::string{part.suffix}, part.isText,
                               codec::kIsOptional<Value>,
                               isKey ? std::nullopt : codec::Names<Value>::kind()});
        }
    });
    return columns;
}

template <std::size_t... I>
std::array<std::vector<Column>, kRecordKindCount> describeAll(std::index_sequence<I...>) {
    return {describeColumns<std::variant_alternative_t<I, RecordOfSomeKind>>()...};
}

// Reads each field in turn and builds the aggregate from them, in its own order.
template <class Record>
tl::expected<AnyRecord, DecodeError> build(std::span<const ColumnValue> values) {
    const auto& columns = columnsOf(kindOf<Record>());
    if (values.size() != columns.size()) {
        return tl::unexpected(DecodeError{kindOf<Record>(), "the number of columns"});
    }
    std::optional<std::size_t> unread;
    std::size_t at = 0;
    const auto take = [&](auto member) {
        using Value = decltype(valueType(member));
        const std::size_t first = at;
        at += Codec<Value>::kParts.size();
        auto value = Codec<Value>::take(values.subspan(first));
        if (!value && !unread) {
            unread = first;
        }
        return value;
    };
    return std::apply(
        [&](const auto&... fields) -> tl::expected<AnyRecord, DecodeError> {
            // Braces, so that the fields are read from left to right.
            auto parts = std::tuple{take(fields.member)...};
            if (unread) {
                return tl::unexpected(DecodeError{kindOf<Record>(), columns[*unread].name});
            }
            return std::apply([](auto&&... part) { return AnyRecord{Record{std::move(*part)...}}; },
                              std::move(parts));
        },
        Description<Record>::fields());
}

template <std::size_t... I>
tl::expected<AnyRecord, DecodeError> buildKind(RecordKind kind, std::span<const ColumnValue> values,
                                               std::index_sequence<I...>) {
    using Builder = tl::expected<AnyRecord, DecodeError> (*)(std::span<const ColumnValue>);
    static constexpr std::array<Builder, kRecordKindCount> kBuilders{
        &build<std::variant_alternative_t<I, RecordOfSomeKind>>...};
    return kBuilders[static_cast<std::size_t>(kind)](values);
}

template <std::size_t... I>
Permanence permanence(RecordKind kind, std::index_sequence<I...>) {
    static constexpr std::array<Permanence, kRecordKindCount> kPermanences{
        Description<std::variant_alternative_t<I, RecordOfSomeKind>>::kPermanence...};
    return kPermanences[static_cast<std::size_t>(kind)];
}

using AllKinds = std::make_index_sequence<kRecordKindCount>;

// The order of the kinds and of the variant is one order.
template <std::size_t... I>
constexpr bool kindsAreInOrder(std::index_sequence<I...>) {
    return ((EnumNames<RecordKind>::kNames[I] ==
             Description<std::variant_alternative_t<I, RecordOfSomeKind>>::kKind) &&
            ...);
}
static_assert(kindsAreInOrder(AllKinds{}));

} // namespace

RecordRef refOf(const AnyRecord& record) {
    return std::visit([](const auto& r) { return refOf(r.id); }, record);
}

Permanence permanenceOf(RecordKind kind) {
    return permanence(kind, AllKinds{});
}

const std::vector<Column>& columnsOf(RecordKind kind) {
    static const auto kColumns = describeAll(AllKinds{});
    return kColumns[static_cast<std::size_t>(kind)];
}

std::vector<ColumnValue> valuesOf(const AnyRecord& record) {
    return std::visit(
        [](const auto& r) {
            using Record = std::remove_cvref_t<decltype(r)>;
            std::vector<ColumnValue> values(columnsOf(kindOf<Record>()).size());
            forEachField<Record>([&](const auto& f, std::size_t at, auto type) {
                using Value = typename decltype(type)::type;
                Codec<Value>::put(r.*f.member, std::span{values}.subspan(at));
            });
            return values;
        },
        record);
}

tl::expected<AnyRecord, DecodeError> recordFrom(RecordKind kind,
                                                std::span<const ColumnValue> values) {
    return buildKind(kind, values, AllKinds{});
}

std::vector<RecordRef> referencesOf(const AnyRecord& record) {
    std::vector<RecordRef> refs;
    const auto& columns = columnsOf(kindOf(record));
    const auto values = valuesOf(record);
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const auto* key = std::get_if<std::string>(&values[i]);
        if (!columns[i].references || key == nullptr) {
            continue;
        }
        const auto uuid = Uuid::fromText(*key);
        HEADCAP_CONTRACT(uuid.has_value());
        const RecordRef ref{*columns[i].references, *uuid};
        if (std::find(refs.begin(), refs.end(), ref) == refs.end()) {
            refs.push_back(ref);
        }
    }
    return refs;
}

std::optional<Id<Job>> jobOf(const AnyRecord& record) {
    if (const auto* job = std::get_if<Job>(&record)) {
        return job->id;
    }
    return std::visit(
        [](const auto& r) -> std::optional<Id<Job>> {
            if constexpr (requires { r.job; }) {
                return r.job;
            } else {
                return std::nullopt;
            }
        },
        record);
}

std::string searchTextOf(const AnyRecord& record) {
    std::string words;
    std::visit(
        [&](const auto& r) {
            using Record = std::remove_cvref_t<decltype(r)>;
            forEachField<Record>([&](const auto& f, std::size_t, auto type) {
                using Value = typename decltype(type)::type;
                if constexpr (std::is_same_v<Value, std::string>) {
                    const std::string& text = r.*f.member;
                    if (f.searched && !text.empty()) {
                        words += words.empty() ? text : " · " + text;
                    }
                }
            });
        },
        record);
    return words;
}

} // namespace headcap::core
