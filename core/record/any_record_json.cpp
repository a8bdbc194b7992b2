// Records as JSON of their columns, as the journal keeps them.
#include <nlohmann/json.hpp>

#include "core/record/any_record.h"

namespace headcap::core {
namespace {

// Nothing, but for a proposal's line: it was for one of what it is done to.
std::int64_t youngerNumber(RecordKind kind, std::string_view column) {
    return kind == RecordKind::proposalLine && column == "count" ? 1 : 0;
}

// Nothing, but for a use of material: how its grain lies was not said.
std::string youngerText(RecordKind kind, std::string_view column) {
    return kind == RecordKind::materialUse && column == "grain_at_spine"
               ? std::string{nameOf(GrainAtSpine::notSaid)}
               : std::string{};
}

} // namespace

nlohmann::json toJson(const AnyRecord& record) {
    const auto& columns = columnsOf(kindOf(record));
    const auto values = valuesOf(record);
    auto object = nlohmann::json::object();
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (const auto* number = std::get_if<std::int64_t>(&values[i])) {
            object[columns[i].name] = *number;
        } else if (const auto* string = std::get_if<std::string>(&values[i])) {
            object[columns[i].name] = *string;
        }
    }
    return object;
}

tl::expected<AnyRecord, DecodeError> recordFrom(RecordKind kind, const nlohmann::json& object) {
    const auto& columns = columnsOf(kind);
    std::vector<ColumnValue> values(columns.size());
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const auto member = object.find(columns[i].name);
        if (member == object.end()) {
            // A column younger than the entry: what the change of schema gave to the rows.
            if (!columns[i].mayBeNull) {
                values[i] = columns[i].isText ? ColumnValue{youngerText(kind, columns[i].name)}
                                              : ColumnValue{youngerNumber(kind, columns[i].name)};
            }
        } else if (member->is_number_integer()) {
            values[i] = member->get<std::int64_t>();
        } else if (member->is_string()) {
            values[i] = member->get<std::string>();
        } else {
            return tl::unexpected(DecodeError{kind, columns[i].name});
        }
    }
    return recordFrom(kind, values);
}

} // namespace headcap::core
